/** Finished, unfinished and cut: what is told of a piece holds for whatever it is used for. */
import { catalogue } from "../../scripts/catalogue";
import { worksheetFunctions } from "../../functions";
import { byId, type Shown } from "../../src/pane/catalogue";
import { type Sizes, sizesOf } from "../../src/pane/sizes";

const functions = byId(catalogue());

function sizes(id: string, cells: unknown[]): Sizes | undefined {
  return sizesOf(functions.get(id)!, cells, worksheetFunctions.get(id)!(...cells) as Shown | Shown[][]);
}

test.each<[string, unknown[], Sizes]>([
  ["CUTHALFSQUARE", [3], { finished: "3 in", unfinished: "3 1/2 in", cut: "3 7/8 in" }],
  ["CUTSQUARE", [3.3], { finished: "3.3 in", unfinished: "3.8 in", cut: "3.8 in" }],
  ["CUTGEESE", [4], { finished: "4 in × 2 in", unfinished: "4 1/2 in × 2 1/2 in" }],
  ["CUTHALFRECTANGLE", [2, 4], { finished: "2 in × 4 in", cut: "2.6545 in × 5.309 in" }],
  ["UNITMADE", [6, "hourglass"], { finished: "4.7929 in", unfinished: "5.2929 in", cut: "6 in" }],
  ["FINISHEDSIZE", [3.5], { finished: "3 in", cut: "3 1/2 in" }],
])("%s of %j", (id, cells, expected) => {
  expect(sizes(id, cells)).toEqual(expected);
});

test.each<[string, unknown[], Sizes]>([
  ["CUTSQUARE", [3.3, null, "1/8"], { finished: "3 3/8 in", unfinished: "3 7/8 in", cut: "3 7/8 in" }],
  ["CUTCORNER", [1.3, null, "1/8"], { finished: "1 3/8 in", cut: "1 7/8 in" }],
  ["CUTHALFRECTANGLE", [2, 4, null, "1/2"], { finished: "2.3289 in × 4.2696 in", cut: "3 in × 5 1/2 in" }],
])("a patch that is rounded up and sewn as cut finishes larger: %s of %j", (id, cells, expected) => {
  expect(sizes(id, cells)).toEqual(expected);
});

test("a square cut twice makes setting triangles as well as hourglass units, which differ before they are sewn in", () => {
  expect(sizes("CUTQUARTERSQUARE", [8.4853])).toEqual({ finished: "8.4853 in", cut: "9 3/4 in" });
});

test.each([
  ["UNITMADE", { finished: "2.1464 in", unfinished: "2.6464 in" }],
  ["FINISHEDSIZE", { finished: "2.1464 in" }],
])("%s of half-square units: what is sewn again is not cut from the fabric", (id, expected) => {
  expect(sizes(id, [3, "Hourglass  from half squares"])).toEqual(expected);
});

test.each([
  ["TOPSIZE", [4, 5, 12], "48 1/2 in × 60 1/2 in (seams of 1/4 in)"],
  ["BORDERSIZE", [45, 54, 5], "55 1/2 in × 64 1/2 in (seams of 1/4 in)"],
  ["BORDERSIZE", [100, 120, 10, "cm"], "121.5 cm × 141.5 cm (seams of 0.75 cm)"],
])("%s of %j is given no seam, and tells the one taken", (id, cells, unfinished) => {
  expect(sizes(id, cells)?.unfinished).toBe(unfinished);
});
