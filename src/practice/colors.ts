/** Colors as the grid writes them. */
import type { Nullable } from "@univerjs/core";

/** Such as #c0392b, from that, from C0392B or from rgb(192,57,43); undefined where it is none of these. */
export function hexColor(text: Nullable<string>): string | undefined {
  const hex = /^#?([0-9a-f]{6})$/i.exec(text ?? "");
  if (hex) return `#${hex[1].toLowerCase()}`;
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(text ?? "");
  return parts ? `#${parts.slice(1).map(inHex).join("")}` : undefined;
}

function inHex(part: string): string {
  return Math.min(Number(part), 255).toString(16).padStart(2, "0");
}
