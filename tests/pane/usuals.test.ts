/** Usual values of arguments: what a form tells is what the function takes. */
import { worksheetFunctions } from "../../functions";
import { catalogue } from "../../scripts/catalogue";
import { byId, type FunctionEntry } from "../../src/pane/catalogue";
import { withWorking } from "../../src/math/working";
import { cases } from "../cases/index";

const functions = byId(catalogue());

function usual(id: string, name: string) {
  return functions.get(id)!.parameters.find((parameter) => parameter.name === name)!.usual;
}

test.each([
  ["CUTGEESE", "mark", "corners"],
  ["BEDSIZE", "drop", "crib"],
])("%s: no usual %s is told, since that depends on a choice", (id, name) => {
  expect(usual(id, name)).toEqual({ in: undefined, cm: undefined });
});

test.each([
  ["CUTGEESE", "mark", /with "corners" 0 \(usual\)/],
  ["BEDSIZE", "drop", /for a crib 0/],
])("%s: the text of %s tells it instead", (id, name, words) => {
  expect(functions.get(id)!.parameters.find((parameter) => parameter.name === name)!.description).toMatch(words);
});

test.each([["TUBEUNITS"], ["TUBELENGTH"]])("%s tells what is usual in centimeters, too", (id) => {
  expect(usual(id, "seam")).toEqual({ in: "1/4 in", cm: "0.75 cm" });
  expect(usual(id, "ears")).toEqual({ in: "clipped", cm: "clipped" });
});

/** The sentence in which a function tells what it took for an argument that was left out. */
function taken(line: string): [name: string, value: string] | undefined {
  const found = /^(.*?): (.*), as usual where none is given$/.exec(line);
  return found ? [found[1].replace(/\s/g, "").toLowerCase(), found[2]] : undefined;
}

function toldFor(entry: FunctionEntry, name: string, cells: readonly unknown[]): string | undefined {
  const at = entry.parameters.findIndex((parameter) => parameter.name === "units");
  return entry.parameters.find((parameter) => parameter.name.toLowerCase() === name)?.usual[
    cells[at] === "cm" ? "cm" : "in"
  ];
}

test("wherever a usual value is told, every check value that leaves the argument out takes it", () => {
  const rows = Object.values(cases)
    .flat()
    .filter(({ fails }) => fails === undefined);
  let compared = 0;
  for (const { call, cells } of rows) {
    const entry = functions.get(call)!;
    const { assumptions } = withWorking((): unknown => worksheetFunctions.get(call)!(...cells));
    for (const line of assumptions) {
      const [name, value] = taken(line) ?? ["", ""];
      const told = toldFor(entry, name, cells);
      if (told === undefined) continue;
      compared += 1;
      expect({ call, cells, name, told }).toEqual({ call, cells, name, told: value });
    }
  }
  expect(compared).toBeGreaterThan(500);
});
