/** The QUILT calls of a formula, each with what it was given and what came out, from the inside out. */
import { type Part, partsOf } from "../workbooks/syntax";
import { type Given, isAnswered, type Outcome, workOut } from "./answer";
import { Evaluation, quiltName, textOf, type Value } from "./evaluate";
import { type CellValue, SheetProblem } from "./sheet";

export interface Call {
  id: string;
  /** As it stands in the formula, such as QUILT.CUTSQUARE(B4). */
  text: string;
  /** The text of each argument. */
  argumentTexts: string[];
  /** What the arguments come to; undefined where one cannot be followed. */
  cells?: Given[];
  outcome: Outcome;
  /** Whether the formula is this call and nothing else. */
  whole: boolean;
}

/** A formula's calls, or a sentence where the formula cannot be read. */
export async function readCalls(
  formula: string,
  cellsOf: (reference: string) => Promise<CellValue[][]>,
): Promise<Call[] | string> {
  const parts = partsOf(formula);
  if (!parts) return "This formula cannot be read.";
  const calls: Call[] = [];
  const answers = new Map<readonly Part[][], Value>();
  const evaluation = new Evaluation({
    cells: cellsOf,
    call: async (id, given) => {
      if (!answers.has(given)) await follow(id, given, `QUILT.${id}`);
      const answer = answers.get(given);
      if (answer === undefined) throw new SheetProblem(`The call of ${id} in it has no answer`);
      return answer;
    },
  });

  async function follow(id: string, given: readonly Part[][], name: string): Promise<void> {
    const argumentTexts = given.map(textOf);
    const call = { id, text: `${name}(${argumentTexts.join(", ")})`, argumentTexts, whole: false };
    try {
      const cells: Given[] = [];
      for (const argument of given) cells.push(await evaluation.evaluate(argument));
      const outcome = readError(cells) ?? workOut(id, cells);
      calls.push({ ...call, cells, outcome });
      if (isAnswered(outcome)) answers.set(given, outcome.value);
    } catch (thrown) {
      if (!(thrown instanceof SheetProblem)) throw thrown;
      calls.push({ ...call, outcome: { code: "", sentence: `The steps cannot be told: ${thrown.message}.` } });
    }
  }

  /** Looks for calls outside of any other, whatever stands around them. */
  async function search(list: readonly Part[]): Promise<void> {
    for (const part of list) {
      if (part.kind === "group") await search(part.parts);
      if (part.kind !== "call") continue;
      const id = quiltName(part.name);
      if (id === undefined) for (const given of part.given) await search(given);
      else if (!answers.has(part.given)) await follow(id, part.given, `QUILT.${id}`);
    }
  }

  await search(parts);
  const [only] = parts.filter((part) => part.kind !== "leaf" || part.text.trim() !== "");
  const last = calls.at(-1);
  const single = parts.filter((part) => part.kind !== "leaf" || !/^[=\s]*$/.test(part.text)).length === 1;
  if (last && single && only.kind === "call" && quiltName(only.name) === last.id) last.whole = true;
  return calls;
}

/** An error that a cell hands over stays that error. */
function readError(cells: readonly Given[]): Outcome | undefined {
  const code = cells.flat(2).find((cell) => typeof cell === "string" && /^#[A-Z][A-Z0-9/]*[!?]?$/.test(cell));
  if (typeof code !== "string") return undefined;
  return { code, sentence: `A cell that this formula reads shows ${code}. Mend that cell first.` };
}
