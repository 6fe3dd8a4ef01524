/** The soak's targets among the readers of texts, blocks and workbooks: each answers or refuses with a Problem. */
import fc from "fast-check";
import { readBlock } from "../../src/math/blocks/grammar";
import { parseLength } from "../../src/math/length";
import { Problem } from "../../src/math/problem";
import { evaluateBook } from "../../src/practice/recalculate";
import { readXlsx } from "../../src/practice/xlsx/read";
import { workbooks } from "../../src/workbooks";
import { classCopy } from "../../src/workbooks/classCopy";
import { writeBook } from "../../src/workbooks/write";
import { sentenceFlaw, valueFlaw } from "../../tests/laws/hostileCells";
import { blockCells, lengthText } from "./draw";
import { damage } from "./files";
import { type Find, LONGEST_CALL, processorTime, type Target, timeFlaw } from "./target";

/** A file has many cells, and is opened once: milliseconds. */
const LONGEST_FILE = 10_000;

export async function readerTargets(): Promise<Target[]> {
  const files: Uint8Array[] = [];
  for (const workbook of workbooks) files.push(await writeBook(workbook.build(), evaluateBook));
  const damaged = fc.tuple(fc.constantFrom(...files), damage).map(([file, spoil]) => spoil(file));
  const shown = (file: Uint8Array) => `a file of ${file.length} bytes`;
  const options = { calls: 5, longest: LONGEST_FILE, shown };
  return [
    reader("length texts", fc.tuple(lengthText, fc.constantFrom("in", "cm")), {}, ([text, unit]) =>
      parseLength(text, unit),
    ),
    reader("block cells", blockCells, {}, (cells) => {
      readBlock(cells);
    }),
    reader("files to the practice sheet", damaged, options, (file) => readXlsx(file)),
    reader("files to a class copy", damaged, options, (file) =>
      classCopy(file, (asked) => Promise.resolve(asked.map(() => [[3.5]]))),
    ),
  ];
}

interface ReaderOptions<T> {
  readonly calls?: number;
  readonly longest?: number;
  readonly shown?: (given: T) => unknown;
}

function reader<T>(
  name: string,
  drawn: fc.Arbitrary<T>,
  { calls = 1000, longest = LONGEST_CALL, shown = (given) => given }: ReaderOptions<T>,
  read: (given: T) => unknown,
): Target {
  const judge = async (given: T): Promise<Find[]> => {
    const start = processorTime();
    const what = (await readFlaw(read, given)) ?? timeFlaw(processorTime() - start, longest);
    return what === undefined ? [] : [{ what, given: shown(given) }];
  };
  return {
    name,
    soak: async (seed) => {
      const finds: Find[] = [];
      for (const given of fc.sample(drawn, { seed, numRuns: calls })) finds.push(...(await judge(given)));
      return { calls, finds };
    },
  };
}

async function readFlaw<T>(read: (given: T) => unknown, given: T): Promise<string | undefined> {
  try {
    const value = await read(given);
    return typeof value === "number" ? valueFlaw(value) : undefined;
  } catch (thrown) {
    if (thrown instanceof Problem) return sentenceFlaw(thrown.sentence("in"), given);
    return `uncaught ${thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown)}`;
  }
}
