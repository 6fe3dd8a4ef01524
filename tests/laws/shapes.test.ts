import fc from "fast-check";
import { cutDiamond, cutHalfRectangle, cutHexagon, cutStar, cutTriangle } from "../../src/math/shapes";
import { atMost } from "../../src/math/rounding";
import { inches } from "../../src/math/units";
import { lengths } from "./arbitraries";
import { cutOutline, expectClose, extent, points, sideLengths } from "./outline";

const MARK = inches(1 / 8);
const sewnSeams = lengths(0.0625, 1);
const sizes = lengths(1, 20);

describe("cutHalfRectangle", () => {
  test("is the right triangle with all sides moved outward by the seam", () => {
    fc.assert(
      fc.property(sizes, sizes, sewnSeams, (width, height, seam) => {
        const outline = cutOutline(points([0, 0], [width, 0], [0, height]), seam);
        const cut = cutHalfRectangle(width, height, seam);
        expectClose(cut.width, extent(outline).width);
        expectClose(cut.height, extent(outline).height);
      }),
    );
  });

  test("width and height change places with the rectangle", () => {
    fc.assert(
      fc.property(sizes, sizes, sewnSeams, (width, height, seam) => {
        const [cut, turned] = [cutHalfRectangle(width, height, seam), cutHalfRectangle(height, width, seam)];
        expect(turned.width).toBeCloseTo(cut.height, 9);
        expect(turned.height).toBeCloseTo(cut.width, 9);
      }),
    );
  });
});

describe("cutTriangle", () => {
  test("is the triangle with all sides moved outward by the seam", () => {
    fc.assert(
      fc.property(sizes, sizes, sewnSeams, (base, height, seam) => {
        const outline = cutOutline(points([0, 0], [base, 0], [base / 2, height]), seam);
        const cut = cutTriangle(base, height, seam);
        expectClose(cut.base, extent(outline).width);
        expectClose(cut.height, extent(outline).height);
      }),
    );
  });

  test("shrunk toward its incenter until its sides have moved inward by the seam, it is the finished triangle", () => {
    fc.assert(
      fc.property(sizes, sizes, sewnSeams, (base, height, seam) => {
        const cut = cutTriangle(base, height, seam);
        const equalSides = Math.hypot(cut.base / 2, cut.height);
        const inradius = (cut.base * cut.height) / (cut.base + 2 * equalSides);
        const shrunk = (inradius - seam) / inradius;
        expect(cut.base * shrunk).toBeCloseTo(base, 9);
        expect(cut.height * shrunk).toBeCloseTo(height, 9);
      }),
    );
  });

  test("of three equal sides has a cut height 3 seams above the finished one, and stays one of equal sides", () => {
    fc.assert(
      fc.property(sizes, sewnSeams, (base, seam) => {
        const cut = cutTriangle(base, undefined, seam);
        expect(cut.height).toBeCloseTo((base * Math.sqrt(3)) / 2 + 3 * seam, 9);
        expect(Math.hypot(cut.base / 2, cut.height)).toBeCloseTo(cut.base, 9);
      }),
    );
  });
});

describe("cutDiamond", () => {
  const angles = fc.double({ min: 10, max: 170, noNaN: true });

  test("is the diamond with all sides moved outward by the seam", () => {
    fc.assert(
      fc.property(sizes, angles, sewnSeams, (side, angle, seam) => {
        const [x, y] = [side * Math.cos((angle * Math.PI) / 180), side * Math.sin((angle * Math.PI) / 180)];
        const outline = cutOutline(points([0, 0], [side, 0], [side + x, y], [x, y]), seam);
        const cut = cutDiamond(side, angle, seam);
        expectClose(cut.strip, extent(outline).height);
        for (const length of sideLengths(outline)) expectClose(cut.along, length);
      }),
    );
  });

  test("is the same whichever tip the angle is measured at", () => {
    fc.assert(
      fc.property(sizes, angles, (side, angle) => {
        const [one, other] = [cutDiamond(side, angle), cutDiamond(side, 180 - angle)];
        expect(other.strip).toBeCloseTo(one.strip, 9);
        expect(other.along).toBeCloseTo(one.along, 9);
      }),
    );
  });
});

describe("cutHexagon", () => {
  test("is the hexagon with all sides moved outward by the seam", () => {
    fc.assert(
      fc.property(sizes, sewnSeams, (side, seam) => {
        const around = Array.from({ length: 6 }, (_, k): [number, number] => [
          side * Math.cos((k * Math.PI) / 3),
          side * Math.sin((k * Math.PI) / 3),
        ]);
        const outline = cutOutline(points(...around), seam);
        const cut = cutHexagon(side, seam);
        expectClose(cut.flatToFlat, extent(outline).height);
        for (const length of sideLengths(outline)) expectClose(cut.side, length);
      }),
    );
  });
});

describe("cutStar", () => {
  test("the finished patches fill the block", () => {
    fc.assert(
      fc.property(lengths(4, 60), fc.integer({ min: 1, max: 12 }), (block, rows) => {
        const [diamond, corner, side] = cutStar(block, rows) as [Row, Row, Row];
        const areas = [
          diamond.count * diamond.finished ** 2 * Math.SQRT1_2,
          corner.count * corner.finished ** 2,
          // Cut twice, the square makes four right triangles on their long edge.
          4 * side.count * (side.finished / 2) ** 2,
        ];
        expect(areas.reduce((sum, each) => sum + each)).toBeCloseTo(block ** 2, 6);
      }),
    );
  });

  test("a corner square, a side triangle and a corner square make up a side of the block", () => {
    fc.assert(
      fc.property(lengths(4, 60), (block) => {
        const [, corner, side] = cutStar(block) as [Row, Row, Row];
        expect(2 * corner.finished + side.finished).toBeCloseTo(block, 9);
      }),
    );
  });

  test("a quarter of the cut side square is the side triangle with its sides moved outward", () => {
    fc.assert(
      fc.property(lengths(4, 60), sewnSeams, (block, seam) => {
        const side = cutStar(block, 1, seam)[2];
        const half = side.finished / 2;
        const outline = cutOutline(points([0, 0], [side.finished, 0], [half, half]), seam);
        expectClose(side.width, extent(outline).width);
      }),
    );
  });
});

test("at a mark no shape is below its exact size, nor a mark above it", () => {
  fc.assert(
    fc.property(sizes, sizes, sewnSeams, (a, b, seam) => {
      const both = (mark: number) => [
        ...Object.values(cutHalfRectangle(a, b, seam, inches(mark))),
        ...Object.values(cutTriangle(a, b, seam, inches(mark))),
        ...Object.values(cutDiamond(a, 45, seam, inches(mark))),
        ...Object.values(cutHexagon(a, seam, inches(mark))),
        ...cutStar(a, 1, seam, inches(mark))
          .slice(0, 3)
          .flatMap((patch) => [patch.width, patch.length]),
      ];
      const exact = both(0);
      both(MARK).forEach((marked, index) => {
        expect(atMost(exact[index], marked)).toBe(true);
        expect(marked - exact[index]).toBeLessThan(MARK);
      });
    }),
  );
});

type Row = ReturnType<typeof cutStar>[number];
