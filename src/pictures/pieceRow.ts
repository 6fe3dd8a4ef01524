/** Several pieces side by side at one scale: what to cut, and the unit that is made of it. */
import { spread, type Stretch } from "./cutShapes";
import { Drawing, type Fill, type Point } from "./drawing";
import { textWidth } from "./lettering";

export interface RowPiece {
  /** Its areas, from the upper left corner of the piece, inches; the first is the whole piece. */
  areas: readonly { corners: readonly Point[]; fill: Fill; part?: string }[];
  /** Lines across it: solid to cut, dashed to sew. */
  cuts?: readonly Stretch[];
  seams?: readonly Stretch[];
  /** Measure of its width, written above, and of its height, on the left. */
  across?: string;
  down?: string;
  /** What `across` measures, if not the whole width. */
  acrossOf?: Stretch;
  /** What it is and how many, a line each, below it. */
  words: readonly string[];
}

/** Pixels for all pieces together, and the most for one of them. */
const DRAWN_WIDTH = 420;
const LARGEST_PIECE = 210;
const GAP = 28;
const WORDS_LINE = 17;

/** Pieces in a row, each with its measures and words. */
export function pieceRow(title: string, pieces: readonly RowPiece[], notes: readonly string[] = []): string {
  const sizes = pieces.map(({ areas: [{ corners }] }) => ({
    width: spread(corners, "x"),
    height: spread(corners, "y"),
  }));
  const total = sizes.reduce((sum, { width }) => sum + width, 0);
  const largest = Math.max(...sizes.flatMap(({ width, height }) => [width, height]));
  const scale = Math.min(DRAWN_WIDTH / total, LARGEST_PIECE / largest);
  const facts = pieces.map(({ words, across, down }) => [words[0], across, down].filter((part) => part).join(" "));
  const drawing = new Drawing(title, `${title}: ${facts.join("; ")}`, scale);
  let left = 0;
  pieces.forEach((piece, index) => {
    const { width, height } = sizes[index];
    const measured = drawing.pixels(piece.down === undefined ? 0 : 30);
    const words = Math.max(...[...piece.words, piece.across ?? ""].map((line) => textWidth(line)));
    const column = Math.max(width + measured, drawing.pixels(words));
    const at = { x: left + measured + (column - measured - width) / 2, y: -height };
    drawPiece(drawing, piece, at, { width, height });
    left += column + drawing.pixels(GAP);
  });
  for (const line of notes) drawing.note(line);
  return drawing.svg();
}

function drawPiece(drawing: Drawing, piece: RowPiece, at: Point, size: { width: number; height: number }): void {
  const put = ({ x, y }: Point): Point => ({ x: at.x + x, y: at.y + y });
  for (const { corners, fill, part } of piece.areas) drawing.polygon(corners.map(put), fill, { part });
  for (const [from, to] of piece.cuts ?? []) drawing.line(put(from), put(to));
  for (const [from, to] of piece.seams ?? []) drawing.line(put(from), put(to), { dashed: true, thin: true });
  const [from, to] = piece.acrossOf ?? [
    { x: 0, y: 0 },
    { x: size.width, y: 0 },
  ];
  if (piece.across !== undefined) drawing.measure(put(from), put(to), piece.across, 12);
  if (piece.down !== undefined) drawing.measure(put({ x: 0, y: size.height }), at, piece.down, 12);
  const middle = put({ x: size.width / 2, y: size.height });
  piece.words.forEach((line, index) => {
    drawing.text(middle, line, { bold: index === 0 }, { x: 0, y: 18 + index * WORDS_LINE });
  });
}
