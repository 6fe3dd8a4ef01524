import fc from "fast-check";
import { Problem } from "../../src/math/problem";
import { type Corner, cutTemplate } from "../../src/math/template";
import { inches } from "../../src/math/units";
import { lengths } from "./arbitraries";
import { area, expectClose, movedOutward, type Point } from "./outline";

const sewnSeams = lengths(0.0625, 1);

/** The library is less exact where two sides run on almost straight, inches. */
const CLOSE_CORNER = 1e-3;

/** A shape with 3 to 12 corners round a middle, each at its own distance: convex corners and notches, never crossing. */
const starShapes: fc.Arbitrary<Corner[]> = fc
  .array(fc.record({ distance: lengths(1, 12), turn: fc.double({ min: 0.5, max: 1.5, noNaN: true }) }), {
    minLength: 3,
    maxLength: 12,
  })
  .map((spokes) => {
    const whole = spokes.reduce((sum, { turn }) => sum + turn, 0);
    let angle = 0;
    return spokes.map(({ distance, turn }) => {
      angle += (turn / whole) * 2 * Math.PI;
      return { x: inches(distance * Math.cos(angle)), y: inches(distance * Math.sin(angle)) };
    });
  });

/** A comb: teeth of any width upward from a bar, with gaps that a seam may or may not fit into. */
const combs: fc.Arbitrary<Corner[]> = fc
  .array(fc.tuple(lengths(0.25, 3), lengths(0.25, 3), lengths(1, 5)), { minLength: 1, maxLength: 4 })
  .map((teeth) => {
    let x = 0;
    const upper = teeth.flatMap(([tooth, gap, height]) => {
      const corners = [at(x, 1), at(x, 1 + height), at(x + tooth, 1 + height), at(x + tooth, 1)];
      x += tooth + gap;
      return corners;
    });
    // The last gap is the free end of the bar.
    return [at(0, 0), ...upper.slice(1), at(x, 1), at(x, 0)].reverse();
  });

const outlines = fc.oneof(starShapes, combs);

function at(x: number, y: number): Corner {
  return { x: inches(x), y: inches(y) };
}

/** The cut corners, or the Problem that they are refused with. */
function attempt(corners: Corner[], seam: number): Corner[] | Problem {
  try {
    return cutTemplate(corners, inches(seam));
  } catch (thrown) {
    if (thrown instanceof Problem) return thrown;
    throw thrown;
  }
}

function nearest(point: Point, all: readonly Point[]): number {
  return Math.min(...all.map((other) => Math.hypot(point.x - other.x, point.y - other.y)));
}

describe("cutTemplate", () => {
  test("agrees with a polygon library, corner by corner, notches included", () => {
    const seen = { cut: 0, refused: 0 };
    fc.assert(
      fc.property(outlines, sewnSeams, (corners, seam) => {
        const cut = attempt(corners, seam);
        if (cut instanceof Problem) {
          seen.refused += 1;
          return;
        }
        seen.cut += 1;
        const library = movedOutward(corners, seam);
        expect(library).toHaveLength(1);
        expectClose(Math.abs(area(cut)), area(library[0]));
        // The library leaves out corners in the middle of a straight side; it adds none.
        for (const corner of library[0]) expect(nearest(corner, cut)).toBeLessThan(CLOSE_CORNER);
      }),
      { numRuns: 1000 },
    );
    expect(seen.cut).toBeGreaterThan(200);
    expect(seen.refused).toBeGreaterThan(50);
  });

  test("has no answer only where the library loses a side or closes a notch", () => {
    fc.assert(
      fc.property(outlines, sewnSeams, (corners, seam) => {
        const refused = attempt(corners, seam);
        if (!(refused instanceof Problem) || refused.kind !== "no answer") return;
        // A little less than the seam leaves room for what just touches.
        const library = movedOutward(corners, seam + 1e-3);
        expect(library.length !== 1 || library[0].length < corners.length).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  test("gives the same corners whichever way round and wherever the list begins", () => {
    fc.assert(
      fc.property(outlines, sewnSeams, fc.nat(), (corners, seam, nat) => {
        const cut = attempt(corners, seam);
        if (cut instanceof Problem) return;
        const start = nat % corners.length;
        const turned = [...corners.slice(start), ...corners.slice(0, start)].reverse();
        const again = cutTemplate(turned, seam).reverse();
        const back = [...again.slice(-start || again.length), ...again.slice(0, -start || again.length)];
        back.forEach((corner, index) => {
          expect(corner.x).toBeCloseTo(cut[index].x, 9);
          expect(corner.y).toBeCloseTo(cut[index].y, 9);
        });
      }),
    );
  });

  test("any corners give finite ones or a Problem with a sentence", () => {
    const anywhere = fc.oneof(fc.integer({ min: -3, max: 3 }), fc.double({ min: -1000, max: 1000, noNaN: true }));
    const anyCorners = fc.array(
      fc.tuple(anywhere, anywhere).map(([x, y]) => at(x, y)),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(anyCorners, lengths(0, 5), (corners, seam) => {
        const cut = attempt(corners, seam);
        if (cut instanceof Problem) {
          expect(cut.message.length).toBeGreaterThan(20);
          return;
        }
        for (const { x, y } of cut) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });

  test("takes up to 200 corners", () => {
    const around = (corners: number) =>
      Array.from({ length: corners }, (_, index) => {
        const angle = (2 * Math.PI * index) / corners;
        return at(10 * Math.cos(angle), 10 * Math.sin(angle));
      });
    expect(cutTemplate(around(200))).toHaveLength(200);
    expect(attempt(around(201), 0.25)).toBeInstanceOf(Problem);
  });
});
