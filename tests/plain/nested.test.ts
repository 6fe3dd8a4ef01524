/** Calls within calls, within built-in functions: the plain formula against the functions, one after the other. */
import { worksheetFunctions } from "../../functions";
import { CellError } from "../../functions/standIn";
import { translate } from "../../src/workbooks/translate";
import { isError, recalculate, type Shown } from "./engines";

type Cell = number | string | null;

const call = (id: string, ...cells: unknown[]): unknown => worksheetFunctions.get(id)!(...cells);

/** A formula over the cells A, B and C of its row, and the same by calling the functions. */
const NESTED: [string, (a: Cell, b: Cell, c: Cell) => unknown][] = [
  [
    "=QUILT.STRIPFABRIC(QUILT.STRIPSNEEDED(A,QUILT.CUTHALFSQUARE(B),C),QUILT.CUTHALFSQUARE(B))",
    (a, b, c) => call("STRIPFABRIC", call("STRIPSNEEDED", a, call("CUTHALFSQUARE", b), c), call("CUTHALFSQUARE", b)),
  ],
  [
    "=QUILT.CUTSQUARE(QUILT.LENGTH(A),QUILT.LENGTH(B))",
    (a, b) => call("CUTSQUARE", call("LENGTH", a), call("LENGTH", b)),
  ],
  [
    "=QUILT.STRIPPATCHES(3,QUILT.LENGTH(A),QUILT.LENGTH(B))",
    (a, b) => call("STRIPPATCHES", 3, call("LENGTH", a), call("LENGTH", b)),
  ],
  [
    '=QUILT.LENGTHTEXT(QUILT.CUTCHECK(A,B,"half square"))',
    (a, b) => call("LENGTHTEXT", call("CUTCHECK", a, b, "half square")),
  ],
  [
    "=QUILT.BORDERUNITS(INDEX(QUILT.BORDERSIZE(A,B,C),1,2),QUILT.BORDERGAP(A,B))",
    (a, b, c) => call("BORDERUNITS", (call("BORDERSIZE", a, b, c) as number[][])[0][1], call("BORDERGAP", a, b)),
  ],
  [
    '=QUILT.STRIPSFROM(QUILT.FABRIC(A,,"cm"),QUILT.CUTSQUARE(B),0)',
    (a, b) => call("STRIPSFROM", call("FABRIC", a, null, "cm"), call("CUTSQUARE", b), 0),
  ],
  [
    "=QUILT.SEAMLENGTH(QUILT.STRIPSNEEDED(A,2.5),QUILT.BORDERUNITS(B,2),C)",
    (a, b, c) => call("SEAMLENGTH", call("STRIPSNEEDED", a, 2.5), call("BORDERUNITS", b, 2), c),
  ],
  [
    "=QUILT.CUTSQUARE(IF(N(A)>3,QUILT.CUTSQUARE(B),5))*2",
    (a, b) => 2 * (call("CUTSQUARE", typeof a === "number" && a > 3 ? call("CUTSQUARE", b) : 5) as number),
  ],
];

const CELLS: Cell[] = [null, 0, -1, 2.5, 4, 40, 46089, "two"];

const rows = CELLS.flatMap((a) => CELLS.flatMap((b) => CELLS.map((c): [Cell, Cell, Cell] => [a, b, c])));
let sheets: Shown[][][] = [];

beforeAll(() => {
  sheets = recalculate(NESTED.map(([formula]) => rows.map((row, index) => [...row, plainIn(formula, index + 1)])));
});

test.each(NESTED.map(([formula, run], sheet) => ({ formula, run, sheet })))("$formula", ({ formula, run, sheet }) => {
  const wrong = rows.flatMap((row, index) => {
    const [wanted, got] = [answerOf(() => run(...row)), sheets[sheet][index][3]];
    // Where the first cell is still empty, the answer stays empty, whatever else is wrong.
    const waits = got === "" && wanted === undefined && row[0] === null;
    return waits || isSame(got, wanted) ? [] : [{ row, wanted, got, formula: plainIn(formula, index + 1) }];
  });
  expect(wrong.slice(0, 1)).toEqual([]);
});

/** The plain formula in one row of a sheet. */
function plainIn(formula: string, row: number): string {
  const { formula: plain, left } = translate(formula.replace(/\b([ABC])(?=[,)>])/g, `$1${row}`));
  if (left.length > 0) throw new Error(left[0].why);
  return plain;
}

function answerOf(run: () => unknown): unknown {
  try {
    return run();
  } catch (thrown) {
    if (thrown instanceof CellError) return undefined;
    throw thrown;
  }
}

function isSame(got: Shown, wanted: unknown): boolean {
  if (wanted === undefined) return isError(got);
  if (typeof wanted === "number") return typeof got === "number" && Math.abs(got - wanted) < 1e-9 * Math.max(1, wanted);
  return got === wanted;
}
