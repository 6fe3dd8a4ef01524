import fc from "fast-check";
import { biasLength, biasSquare, bindingFabric, bindingLength, bindingStrips } from "../../src/math/binding";
import { JOINS } from "../../src/math/joins";
import { atMost, TOLERANCE } from "../../src/math/rounding";
import { inches } from "../../src/math/units";
import { lengths } from "./arbitraries";

const EXACT = inches(0);
const sides = lengths(5, 130);

describe("bindingLength", () => {
  test("straight edges: four sides laid end to end, and the tail; turning the quilt changes nothing", () => {
    fc.assert(
      fc.property(sides, sides, lengths(0, 30), (width, length, tail) => {
        const sewn = [width, length, width, length, tail].reduce((sum: number, piece) => sum + piece, 0);
        expect(bindingLength(width, length, tail)).toBeCloseTo(sewn, 9);
        expect(bindingLength(length, width, tail)).toBeCloseTo(sewn, 9);
      }),
    );
  });

  test("a round edge is as long as many short chords of the oval", () => {
    const chords = 4000;
    fc.assert(
      fc.property(sides, lengths(0.4, 2.5), (width, stretch) => {
        const length = inches(width * stretch);
        const point = (turn: number) => {
          const angle = (2 * Math.PI * turn) / chords;
          return [(width / 2) * Math.cos(angle), (length / 2) * Math.sin(angle)] as const;
        };
        let around = 0;
        for (let turn = 1; turn <= chords; turn++) {
          const [from, to] = [point(turn - 1), point(turn)];
          around += Math.hypot(to[0] - from[0], to[1] - from[1]);
        }
        const round = bindingLength(width, length, EXACT, "round");
        expect(Math.abs(round / around - 1)).toBeLessThan(1e-5);
      }),
      { numRuns: 50 },
    );
  });
});

describe("bindingStrips", () => {
  const options = fc.record({
    strip: lengths(1, 4),
    fabricWidth: lengths(15, 60),
    tail: lengths(0, 20),
    join: fc.constantFrom(...JOINS),
    seam: lengths(0, 0.5),
  });

  test("agrees with strips joined one after another", () => {
    fc.assert(
      fc.property(sides, sides, options, (width, length, option) => {
        const needed = 2 * (width + length) + option.tail;
        let [strips, joined] = [1, option.fabricWidth as number];
        while (joined < needed - TOLERANCE * option.fabricWidth) {
          // Crossed at 45°, half a strip width of either strip lies beyond the middle of the seam.
          joined -= option.join === "diagonal" ? option.strip / 2 : option.seam;
          joined += option.fabricWidth - (option.join === "diagonal" ? option.strip / 2 : option.seam);
          strips += 1;
        }
        expect(bindingStrips(width, length, option)).toBe(strips);
      }),
    );
  });

  test("the strips that just reach round a quilt are enough, an eighth more takes another", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 30 }), lengths(1, 4), lengths(30, 60), (strips, strip, fabricWidth) => {
        const reach = strips * fabricWidth - (strips - 1) * strip;
        const side = inches(reach / 4);
        expect(bindingStrips(side, side, { strip, fabricWidth, tail: EXACT })).toBe(strips);
        expect(bindingStrips(side, side, { strip, fabricWidth, tail: inches(1 / 8) })).toBe(strips + 1);
      }),
    );
  });

  test("the fabric holds the strips, and less than a step more", () => {
    fc.assert(
      fc.property(sides, sides, options, lengths(0, 3), (width, length, option, squaring) => {
        fc.pre(option.fabricWidth < 20 || option.fabricWidth > 23);
        const taken = bindingStrips(width, length, option) * option.strip + squaring;
        const amount = bindingFabric(width, length, option, undefined, squaring);
        expect(atMost(taken, amount)).toBe(true);
        expect(amount - taken).toBeLessThan(4.5);
      }),
    );
  });
});

describe("biasSquare and biasLength", () => {
  const strips = lengths(0.75, 8);
  const seam = lengths(0, 0.5);

  test("there and back: the square yields the length, one an inch smaller does not", () => {
    fc.assert(
      fc.property(lengths(20, 1000), strips, seam, (length, strip, allowance) => {
        const square = biasSquare(length, strip, allowance);
        expect(atMost(length, biasLength(square, strip, allowance))).toBe(true);
        const smaller = inches(square - 1);
        if (atMost(strip * Math.SQRT2 + 2 * allowance, smaller)) {
          expect(atMost(length, biasLength(smaller, strip, allowance))).toBe(false);
        }
        expect(Number.isInteger(square)).toBe(true);
      }),
    );
  });

  test("the strip has the area of the slanted piece, which the two triangles make", () => {
    fc.assert(
      fc.property(lengths(8, 60), strips, seam, (side, strip, allowance) => {
        fc.pre(side - 2 * allowance > strip * Math.SQRT2 + 0.01);
        // Corners of the slant after the first seam: the second triangle lies beyond the seam, both cut back by allowances.
        const sewn = side - 2 * allowance;
        const corners = [
          [0, 0],
          [sewn, sewn],
          [sewn, 2 * sewn],
          [0, sewn],
        ] as const;
        const doubled = corners.reduce((sum, [x, y], index) => {
          const [nextX, nextY] = corners[(index + 1) % corners.length];
          return sum + x * nextY - nextX * y;
        }, 0);
        expect(biasLength(side, strip, allowance) * strip).toBeCloseTo(Math.abs(doubled) / 2, 6);
      }),
    );
  });

  test("a square holds the strip slantwise, however short the strip", () => {
    fc.assert(
      fc.property(lengths(0.5, 20), strips, (length, strip) => {
        const side = biasSquare(length, strip, EXACT, EXACT);
        expect(atMost(strip, side / Math.SQRT2)).toBe(true);
      }),
    );
  });
});
