/** The look of cells: the grid's short form, and the form of spreadsheet files. */
import type { Alignment, Border, Borders, BorderStyle, Color, Style } from "@cj-tech-master/excelts";
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IBorderStyleData,
  type IStyleData,
  type Nullable,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import { hexColor } from "../colors";

/** What the grid writes in where a cell names no other. */
const USUAL = { font: "Arial", size: 11 };

const LINES: [BorderStyle, BorderStyleTypes][] = [
  ["thin", BorderStyleTypes.THIN],
  ["hair", BorderStyleTypes.HAIR],
  ["dotted", BorderStyleTypes.DOTTED],
  ["dashed", BorderStyleTypes.DASHED],
  ["dashDot", BorderStyleTypes.DASH_DOT],
  ["dashDotDot", BorderStyleTypes.DASH_DOT_DOT],
  ["double", BorderStyleTypes.DOUBLE],
  ["medium", BorderStyleTypes.MEDIUM],
  ["mediumDashed", BorderStyleTypes.MEDIUM_DASHED],
  ["mediumDashDot", BorderStyleTypes.MEDIUM_DASH_DOT],
  ["mediumDashDotDot", BorderStyleTypes.MEDIUM_DASH_DOT_DOT],
  ["slantDashDot", BorderStyleTypes.SLANT_DASH_DOT],
  ["thick", BorderStyleTypes.THICK],
];

const ACROSS: [Alignment["horizontal"], HorizontalAlign][] = [
  ["left", HorizontalAlign.LEFT],
  ["center", HorizontalAlign.CENTER],
  ["right", HorizontalAlign.RIGHT],
  ["justify", HorizontalAlign.JUSTIFIED],
  ["distributed", HorizontalAlign.DISTRIBUTED],
];

const DOWN: [Alignment["vertical"], VerticalAlign][] = [
  ["top", VerticalAlign.TOP],
  ["middle", VerticalAlign.MIDDLE],
  ["bottom", VerticalAlign.BOTTOM],
];

const SIDES = [
  ["top", "t"],
  ["right", "r"],
  ["bottom", "b"],
  ["left", "l"],
] as const;

/** The office palette in its usual order, for files that name a color by its place in it. */
const THEME = [
  "#ffffff",
  "#000000",
  "#e7e6e6",
  "#44546a",
  "#4472c4",
  "#ed7d31",
  "#a5a5a5",
  "#ffc000",
  "#5b9bd5",
  "#70ad47",
];

export function styleToFile(style: IStyleData): Partial<Style> {
  const font = {
    name: style.ff ?? USUAL.font,
    size: style.fs ?? USUAL.size,
    bold: style.bl === BooleanNumber.TRUE,
    italic: style.it === BooleanNumber.TRUE,
    underline: style.ul?.s === BooleanNumber.TRUE,
    strike: style.st?.s === BooleanNumber.TRUE,
    ...colorToFile("color", style.cl?.rgb),
  };
  const border: Partial<Borders> = {};
  for (const [side, short] of SIDES) {
    const line = style.bd?.[short];
    const kind = line && LINES.find(([, type]) => type === line.s)?.[0];
    if (kind) border[side] = { style: kind, ...colorToFile("color", line.cl.rgb) };
  }
  const horizontal = ACROSS.find(([, align]) => align === style.ht)?.[0];
  const vertical = DOWN.find(([, align]) => align === style.vt)?.[0];
  return {
    font,
    border,
    alignment: {
      ...(horizontal ? { horizontal } : {}),
      ...(vertical ? { vertical } : {}),
      ...(style.tb === WrapStrategy.WRAP ? { wrapText: true } : {}),
    },
    ...(style.bg?.rgb ? { fill: { type: "pattern", pattern: "solid", ...colorToFile("fgColor", style.bg.rgb) } } : {}),
    ...(style.n?.pattern ? { numFmt: style.n.pattern } : {}),
  };
}

export function styleFromFile(style: Partial<Style>): IStyleData | undefined {
  const { font, alignment, fill, numFmt } = style;
  const pattern = typeof numFmt === "string" ? numFmt : numFmt?.formatCode;
  const background = fill?.type === "pattern" && fill.pattern === "solid" ? colorFromFile(fill.fgColor) : undefined;
  const color = colorFromFile(font?.color);
  const across = ACROSS.find(([name]) => name === alignment?.horizontal)?.[1];
  const down = DOWN.find(([name]) => name === alignment?.vertical)?.[1];
  const borders = SIDES.flatMap(([side, short]) => {
    const line = borderFromFile(style.border?.[side]);
    return line ? [[short, line] as const] : [];
  });
  const result: IStyleData = {
    ...(font?.name && font.name !== USUAL.font ? { ff: font.name } : {}),
    ...(font?.size && font.size !== USUAL.size ? { fs: font.size } : {}),
    ...(font?.bold ? { bl: BooleanNumber.TRUE } : {}),
    ...(font?.italic ? { it: BooleanNumber.TRUE } : {}),
    ...(font?.underline && font.underline !== "none" ? { ul: { s: BooleanNumber.TRUE } } : {}),
    ...(font?.strike ? { st: { s: BooleanNumber.TRUE } } : {}),
    ...(color && color !== "#000000" ? { cl: { rgb: color } } : {}),
    ...(background ? { bg: { rgb: background } } : {}),
    ...(borders.length > 0 ? { bd: Object.fromEntries(borders) } : {}),
    ...(across ? { ht: across } : {}),
    ...(down ? { vt: down } : {}),
    ...(alignment?.wrapText ? { tb: WrapStrategy.WRAP } : {}),
    ...(pattern && pattern !== "General" ? { n: { pattern } } : {}),
  };
  return Object.keys(result).length > 0 ? result : undefined;
}

function borderFromFile(border: Partial<Border> | undefined): IBorderStyleData | undefined {
  const type = LINES.find(([name]) => name === border?.style)?.[1];
  return type === undefined ? undefined : { s: type, cl: { rgb: colorFromFile(border?.color) ?? "#000000" } };
}

function colorToFile<K extends string>(key: K, rgb: Nullable<string>): Partial<Record<K, Partial<Color>>> {
  const hex = hexColor(rgb);
  return hex ? ({ [key]: { argb: `FF${hex.slice(1).toUpperCase()}` } } as Record<K, Partial<Color>>) : {};
}

function colorFromFile(color: Partial<Color> | undefined): string | undefined {
  const argb = color && "argb" in color ? color.argb : undefined;
  if (argb && /^[0-9a-f]{8}$/i.test(argb)) return `#${argb.slice(2).toLowerCase()}`;
  const theme = color && "theme" in color ? color.theme : undefined;
  return theme === undefined ? undefined : THEME[theme];
}
