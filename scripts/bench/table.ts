/** A table in Markdown: texts to the left, numbers to the right. */
export function table(columns: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const line = (cells: readonly (string | number)[]) => `| ${cells.join(" | ")} |`;
  return [line(columns), line(columns.map((_, at) => (at === 0 ? "---" : "---:"))), ...rows.map(line)].join("\n");
}
