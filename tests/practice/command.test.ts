/** `npm run formula`, as it is typed. */
import { spawnSync } from "node:child_process";
import { BUILDING, ROOT } from "./started";

function run(words: string[], input = ""): { status: number | null; stdout: string } {
  return spawnSync(process.execPath, ["scripts/formula.mjs", ...words], { cwd: ROOT, input, encoding: "utf8" });
}

beforeAll(() => {
  run(["=1"]);
}, BUILDING);

test("a value is printed as it is", () => {
  expect(run(["=QUILT.CUTHALFSQUARE(3)"])).toMatchObject({ status: 0, stdout: "3.875\n" });
  expect(run(["=1=1", '="a"&"b"'])).toMatchObject({ status: 0, stdout: "TRUE\nab\n" });
});

test("a table is printed in rows, with tabs", () => {
  const lines = run(["=QUILT.BACKINGPLAN(66,77)"]).stdout.trimEnd().split("\n");
  expect(lines.map((line) => line.split("\t").length)).toEqual([7, 7, 7]);
  expect(lines[1]).toMatch(/^seams up and down\t2\t85\t4.75\t/);
});

test("an error is printed with its sentence, and ends with 1", () => {
  const { status, stdout } = run(['=SUM(1,QUILT.CUTSQUARE("x"))']);
  expect(status).toBe(1);
  expect(stdout).toMatch(/^#VALUE! finished size: cannot read a length in “x”/);
  expect(run(["1+1"])).toMatchObject({ status: 1, stdout: "#VALUE! A formula starts with =. Write =1+1\n" });
});

test("without a formula it says how it is used, and ends with 2", () => {
  expect(run([])).toMatchObject({ status: 2, stdout: "" });
});

describe("with --json", () => {
  test("each line gives one line, in order, whatever stands in it", () => {
    const formulas = [
      "=QUILT.CUTHALFSQUARE(3)",
      "",
      "nonsense",
      "=1+",
      "=QUILT.CUTSQUARE({1;2})",
      '=QUILT.CUTSQUARE("x")',
      "=TRUE",
    ];
    const { status, stdout } = run(["--json"], `${formulas.join("\n")}\n`);
    const lines = stdout
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(status).toBe(0);
    expect(lines.map(({ formula }) => formula)).toEqual(formulas);
    const refused = { error: "#VALUE!", message: expect.stringMatching(/\w/) as string };
    expect(lines).toMatchObject([
      { value: 3.875 },
      refused,
      refused,
      refused,
      { value: [[1.5], [2.5]] },
      refused,
      { value: true },
    ]);
    for (const line of lines) expect("value" in line).not.toBe("error" in line);
  });

  test("lines may end the way another system ends them, and the last one need not end", () => {
    const lines = run(["--json"], "=1\r\n=2").stdout.trimEnd().split("\n");
    expect(lines).toEqual(['{"formula":"=1","value":1}', '{"formula":"=2","value":2}']);
  });

  test("a thousand take seconds", () => {
    const formulas = Array.from({ length: 1000 }, (_, index) => `=QUILT.BACKINGPLAN(${index / 8 + 10},77)`);
    const started = Date.now();
    const lines = run(["--json"], formulas.join("\n")).stdout.trimEnd().split("\n");
    expect(Date.now() - started).toBeLessThan(15_000);
    expect(lines).toHaveLength(1000);
    expect(lines.every((line) => (JSON.parse(line) as { value?: unknown[] }).value?.length === 3)).toBe(true);
  });
});
