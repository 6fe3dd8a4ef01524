import fc from "fast-check";
import { Drawing, type TextStyle } from "../../src/pictures/drawing";
import { colorOf, hatchOf } from "../../src/pictures/fabrics";
import { areaOf, boxOf, expectPixels, readPicture } from "./reading";

describe("Drawing", () => {
  test("any words stay words", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", minLength: 1, maxLength: 30 }), (words) => {
        const drawing = new Drawing(`x${words}`, `${words} described`, 10);
        const svg = drawing.rectangle(0, 0, 1, 1, 1).text({ x: 0, y: 0 }, words).legend(2, words).note(words).svg();
        expect(() => readPicture(svg)).not.toThrow();
      }),
    );
  });

  test("marked characters are written out", () => {
    const svg = new Drawing("title", "a description", 1).text({ x: 0, y: 0 }, '<b> & "c"\u0000').svg();
    expect(svg).toContain("&lt;b&gt; &amp; &quot;c&quot;\ufffd</text>");
    expect(readPicture(svg).words).toContain('<b> & "c"\ufffd');
  });

  test("the view box holds the whole of every text, turned or not", () => {
    const styles: fc.Arbitrary<TextStyle> = fc.record({
      anchor: fc.constantFrom("start", "middle", "end"),
      turned: fc.integer({ min: -180, max: 180 }),
      small: fc.boolean(),
    });
    fc.assert(
      fc.property(styles, (style) => {
        const words = "a measure of some length";
        const svg = new Drawing("t", "the description", 1).text({ x: 0, y: 0 }, words, style).svg();
        const [left, top, width, height] = /viewBox="([^"]+)"/.exec(svg)![1].split(" ").map(Number);
        const length = words.length * (style.small ? 10.5 : 13) * 0.55;
        const from = style.anchor === "start" ? 0 : style.anchor === "end" ? -length : -length / 2;
        const angle = (style.turned! * Math.PI) / 180;
        for (const end of [from, from + length]) {
          expect(end * Math.cos(angle)).toBeGreaterThan(left);
          expect(end * Math.cos(angle)).toBeLessThan(left + width);
          expect(end * Math.sin(angle)).toBeGreaterThan(top);
          expect(end * Math.sin(angle)).toBeLessThan(top + height);
        }
      }),
    );
  });

  test("shapes are to scale", () => {
    const picture = readPicture(
      new Drawing("t", "the description", 7.5).rectangle(1, 2, 3, 4, 1, { part: "one" }).svg(),
    );
    const [corners] = picture.shapes("one");
    expect(boxOf(corners)).toEqual({ left: 7.5, top: 15, width: 22.5, height: 30 });
    expectPixels(areaOf(corners), 12 * 7.5 ** 2);
  });

  test("a measure stands beside its stretch, on the side that was asked for", () => {
    const above = new Drawing("t", "the description", 10).measure({ x: 0, y: 0 }, { x: 20, y: 0 }, "20", 12).svg();
    const below = new Drawing("t", "the description", 10).measure({ x: 0, y: 0 }, { x: 20, y: 0 }, "20", -12).svg();
    expect(placeOf(above, "20").y).toBeLessThan(-12);
    expect(placeOf(below, "20").y).toBeGreaterThan(12);
    const left = new Drawing("t", "the description", 10).measure({ x: 0, y: 20 }, { x: 0, y: 0 }, "20", 12).svg();
    expect(placeOf(left, "20").x).toBeLessThan(-12);
    expect(left).toContain("rotate(-90 ");
  });

  test("64 fabrics differ in color or hatch, the first eight in both", () => {
    const all = Array.from({ length: 64 }, (_, fabric) => `${colorOf(fabric)} ${hatchOf(fabric)}`);
    expect(new Set(all).size).toBe(64);
    const first = Array.from({ length: 8 }, (_, fabric) => fabric);
    expect(new Set(first.map(colorOf)).size).toBe(8);
    expect(new Set(first.map(hatchOf)).size).toBe(8);
  });
});

function placeOf(svg: string, words: string): { x: number; y: number } {
  const [, x, y] = new RegExp(`<text x="([^"]+)" y="([^"]+)"[^>]*>${words}</text>`).exec(svg)!;
  return { x: Number(x), y: Number(y) };
}
