import fc from "fast-check";
import { backingWays } from "../../src/math/backing";
import { mattressSize } from "../../src/math/beds";
import { borderFit, CORNERS } from "../../src/math/borders";
import { stripPatches, stripTriangles } from "../../src/math/strips";
import { EARS, tubeLayout, tubeLength, tubeUnits } from "../../src/math/tubes";
import { inches, toInches } from "../../src/math/units";
import { backingPicture } from "../../src/pictures/backing";
import { bedPicture } from "../../src/pictures/beds";
import { biasSquarePicture, diagonalJoinPicture } from "../../src/pictures/binding";
import { borderFitPicture, borderLengthsPicture } from "../../src/pictures/borders";
import { stripPatchesPicture, stripSetPicture, stripTrianglesPicture } from "../../src/pictures/strips";
import { tubePicture, tubeUnitsPicture } from "../../src/pictures/tubes";
import { lengths } from "../laws/arbitraries";
import { areaOf, boxOf, expectPixels, readPicture } from "./reading";

const cm = (value: number) => toInches(value, "cm");
const RUNS = { numRuns: 40 };

describe("strips", () => {
  test("as many patches as the strip yields, side by side", () => {
    fc.assert(
      fc.property(lengths(1, 20), lengths(21, 45), lengths(0, 1), (patch, width, squaring) => {
        const picture = readPicture(stripPatchesPicture(patch, { width, squaring }));
        const pieces = picture.shapes("piece").map(boxOf);
        expect(pieces).toHaveLength(stripPatches(patch, width, squaring));
        pieces.slice(1).forEach((piece, index) => {
          expectPixels(piece.left, pieces[index].left + pieces[index].width);
        });
        expectPixels(pieces[0].width, pieces[0].height);
      }),
      RUNS,
    );
  });

  test("as many triangles as the strip yields, no two on one another", () => {
    fc.assert(
      fc.property(lengths(2, 8), lengths(2, 12), lengths(15, 45), (height, base, width) => {
        const picture = readPicture(stripTrianglesPicture(height, base, { width }));
        const triangles = picture.shapes("piece");
        expect(triangles).toHaveLength(stripTriangles(height, base, width));
        const boxes = triangles.map(boxOf);
        boxes.slice(2).forEach((box, index) => {
          expectPixels(box.left, boxes[index].left + boxes[index].width, 0.05);
        });
        for (const triangle of triangles) {
          const box = boxOf(triangle);
          expect(Math.abs(areaOf(triangle) / ((box.width * box.height) / 2) - 1)).toBeLessThan(0.002);
        }
      }),
      RUNS,
    );
  });

  test("a strip set is as wide as its strips less their seams", () => {
    const picture = readPicture(stripSetPicture([1.5, 2.5, 3.5].map(inches), { segment: inches(3.5) }));
    const scale = boxOf(picture.shapes("strip")[0]).width / 42;
    const heights = picture.shapes("strip").map((shape) => boxOf(shape).height / scale);
    [1.25, 2, 3.25].forEach((expected, index) => {
      expect(heights[index]).toBeCloseTo(expected, 2);
    });
    expect(picture.words).toEqual(expect.arrayContaining(["6 1/2 in", "segment 3 1/2 in", "12 segments from one set"]));
  });

  test("patches too narrow to see are drawn as one", () => {
    const picture = readPicture(stripPatchesPicture(inches(0.01)));
    expect(picture.shapes("piece")).toHaveLength(0);
    expect(picture.title).toContain("4200 patches");
  });
});

describe("tubes", () => {
  const list = fc.array(fc.record({ trim: lengths(1, 3), count: fc.integer({ min: 0, max: 8 }) }), {
    minLength: 1,
    maxLength: 4,
  });

  test("every unit of the layout lies in the tube, to scale", () => {
    fc.assert(
      fc.property(list, fc.constantFrom(...EARS), (units, ears) => {
        fc.pre(units.some(({ count }) => count > 0));
        const tube = { stripWidth: inches(2.5), ears };
        const picture = readPicture(tubePicture(units, tube));
        const cuts = tubeLayout(units, tube);
        const [box] = picture.shapes("tube").map(boxOf);
        const scale = box.height / 2.5;
        expect(picture.shapes("unit")).toHaveLength(cuts.length);
        expect(Math.abs(box.width - tubeLength(units, tube) * scale)).toBeLessThan(0.5);
        picture.shapes("unit").forEach((shape, index) => {
          const expected = areaOf(cuts[index].outline.map(([x, y]) => ({ x, y }))) * scale ** 2;
          expect(Math.abs(areaOf(shape) / expected - 1)).toBeLessThan(0.005);
          const unit = boxOf(shape);
          if (cuts[index].seamLine === "upper") expectPixels(unit.top, box.top);
          else expectPixels(unit.top + unit.height, box.top + box.height);
        });
      }),
      RUNS,
    );
  });

  test("as many units as the length gives; long tubes are cut short", () => {
    const tube = { stripWidth: inches(2.5) };
    const picture = readPicture(tubeUnitsPicture(inches(34), inches(2.5), tube));
    expect(picture.shapes("unit")).toHaveLength(tubeUnits(inches(34), inches(2.5), tube));
    const long = readPicture(tubeUnitsPicture(inches(500), inches(2.5), tube));
    expect(long.shapes("unit")).toHaveLength(40);
    expect(long.words.at(-1)).toMatch(/^the first 40 of \d+ units are drawn$/);
  });

  test("the cut positions stand on the side of their seam line", () => {
    const svg = tubePicture([{ trim: inches(3), count: 3 }], { stripWidth: inches(2.5) });
    // From middle to middle head to tail: 3√2 − 2 = 2.243.
    const placed = [...svg.matchAll(/<text x="[^"]+" y="([^"]+)"[^>]*font-size="10.5">([^<]+)</g)];
    expect(placed.map(([, y, words]) => [Number(y) < 0 ? "upper" : "lower", words])).toEqual([
      ["lower", "0"],
      ["upper", "2 1/4"],
      ["lower", "4 1/2"],
    ]);
  });

  test("metric", () => {
    const tube = { stripWidth: cm(6.5) };
    const { words } = readPicture(tubePicture([{ trim: cm(7), count: 8 }], tube, { system: "cm" }));
    expect(words).toContain("8 trimmed to 7 cm");
    expect(words.join()).toContain("0.75 cm from the edges");
  });
});

describe("borders", () => {
  test("units and spacers bring the quilt to the outside size", () => {
    fc.assert(
      fc.property(lengths(20, 90), lengths(20, 90), lengths(2, 8), lengths(2, 8), (width, length, unit, depth) => {
        const fit = borderFit(width, length, unit, { depth });
        const picture = readPicture(borderFitPicture(width, length, unit, { depth }));
        expect(picture.shapes("unit")).toHaveLength(fit.units);
        const drawn = [...picture.shapes("unit"), ...picture.shapes("spacer"), ...picture.shapes("quilt")];
        const outside = boxOf(drawn.flat());
        expectPixels(outside.width / outside.height, fit.outside.width / fit.outside.length, 0.001);
        const area = drawn.reduce((sum, shape) => sum + areaOf(shape), 0);
        expect(Math.abs(area / (outside.width * outside.height) - 1)).toBeLessThan(0.005);
      }),
      RUNS,
    );
  });

  test("46 × 58 with units of 5", () => {
    const { words } = readPicture(borderFitPicture(inches(46), inches(58), inches(5)));
    expect(words).toEqual(
      expect.arrayContaining([
        "60 in",
        "70 in",
        "spacers at the sides: finish 2 in, cut 2 1/2 in",
        "spacers at top and bottom: finish 1 in, cut 1 1/2 in",
      ]),
    );
  });

  test("narrow units are drawn as one band; too many are refused", () => {
    const picture = readPicture(borderFitPicture(inches(60), inches(60), inches(0.25), { depth: inches(5) }));
    expect(picture.shapes("unit")).toHaveLength(8);
    expect(() => borderFitPicture(inches(600), inches(600), inches(0.25))).toThrow("too many to draw");
  });

  test.each(CORNERS)("%s corners: quilt and border cover the outside", (corner) => {
    const picture = readPicture(borderLengthsPicture(inches(60), inches(80), inches(6), { corner }));
    const parts = ["quilt", "side", "end", "cornerstone"].flatMap((part) => picture.shapes(part));
    const outside = boxOf(parts.flat());
    const area = parts.reduce((sum, shape) => sum + areaOf(shape), 0);
    expect(Math.abs(area / (outside.width * outside.height) - 1)).toBeLessThan(0.001);
    expectPixels(outside.width / outside.height, 72 / 92, 0.001);
  });
});

describe("backing", () => {
  test("both ways: panels cover the backing, the quilt lies inside with its margin", () => {
    fc.assert(
      fc.property(lengths(30, 110), lengths(30, 110), lengths(36, 110), (width, length, fabricWidth) => {
        const ways = backingWays(width, length, { fabricWidth });
        const picture = readPicture(backingPicture(width, length, { fabricWidth }));
        const [backings, quilts] = ["backing", "quilt"].map((part) => picture.shapes(part).map(boxOf));
        const panels = picture.shapes("panel");
        expect(panels).toHaveLength(ways[0].panels + ways[1].panels);
        const scale = quilts[0].width / width;
        ways.forEach((way, index) => {
          const [quilt, backing] = [quilts[index], backings[index]];
          expect(quilt.left - backing.left).toBeGreaterThan(4 * scale - 0.1);
          expect(quilt.top - backing.top).toBeGreaterThan(4 * scale - 0.1);
          expectPixels(quilt.height / scale, length, 0.05);
          const across = way.lies === "along" ? "width" : "height";
          const needed = (way.lies === "along" ? width : length) + 8;
          expectPixels(backing[across] / scale, needed + way.spareWidth, 0.05);
          const own = panels.slice(index === 0 ? 0 : ways[0].panels).slice(0, way.panels);
          const area = own.reduce((sum, panel) => sum + areaOf(panel), 0);
          expect(Math.abs(area / (backing.width * backing.height) - 1)).toBeLessThan(0.001);
          own.forEach((panel, place) => {
            const seams = Number(place > 0) + Number(place < own.length - 1);
            expectPixels(boxOf(panel)[across] / scale, fabricWidth - seams / 2, 0.05);
          });
        });
      }),
      RUNS,
    );
  });

  test("what to buy, and a print that must stand upright", () => {
    const options = { print: "upright", system: "cm" } as const;
    const { words } = readPicture(backingPicture(cm(150), cm(200), options));
    expect(words).toContain("not with an upright print");
    expect(words).toContain("least fabric");
    expect(words.join()).toMatch(/2 × 220 cm: buy 4\.4 m/);
  });

  test("refuses more panels than can be seen", () => {
    expect(() => backingPicture(inches(9000), inches(90))).toThrow("too many to draw");
  });
});

describe("binding and beds", () => {
  test("the join, the bias square and the bed", () => {
    expect(readPicture(diagonalJoinPicture(inches(2.5))).words).toContain("2 1/2 in lost");
    expect(readPicture(biasSquarePicture(inches(36), inches(2), { seam: inches(0) })).words).toContain(
      "gives 648 in of strip",
    );
    const bed = readPicture(bedPicture(mattressSize("twin")));
    expect(bed.words).toEqual(expect.arrayContaining(["63 in", "87 in", "hangs down 12 in"]));
    const [[quilt], [mattress]] = ["quilt", "mattress"].map((part) => bed.shapes(part).map(boxOf));
    expectPixels(mattress.width / quilt.width, 39 / 63, 0.001);
    expectPixels(mattress.top, quilt.top);
  });
});
