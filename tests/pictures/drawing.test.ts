import fc from "fast-check";
import { Drawing, type TextStyle } from "../../src/pictures/drawing";
import { colorOf, hatchOf, hatchPattern, inkOn, luminance, plainColor } from "../../src/pictures/fabrics";
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

  test("128 fabrics differ in color or hatch, the first sixteen in their hatch", () => {
    const all = Array.from({ length: 128 }, (_, fabric) => `${colorOf(fabric)} ${hatchOf(fabric)}`);
    expect(new Set(all).size).toBe(128);
    expect(new Set(all.slice(0, 8).map((look) => look.split(" ")[0])).size).toBe(8);
    const hatches = Array.from({ length: 16 }, (_, fabric) => hatchPattern(hatchOf(fabric), "#1f2328"));
    expect(new Set(hatches.map((pattern) => pattern.replace(/id="\w+"/, ""))).size).toBe(16);
  });

  const color = fc
    .tuple(...Array.from({ length: 3 }, () => fc.integer({ min: 0, max: 255 })))
    .map((parts) => `#${parts.map((part) => part.toString(16).padStart(2, "0")).join("")}`);

  test("what is drawn on a maker's color stands out by 4.5 to 1", () => {
    fc.assert(
      fc.property(color, (fill) => {
        const [ground, ink] = [luminance(fill), luminance(inkOn(fill))].map((bright) => bright + 0.05);
        expect(Math.max(ground, ink) / Math.min(ground, ink)).toBeGreaterThan(4.5);
        const svg = new Drawing("t", "the description", 10, new Map([[1, fill]])).rectangle(0, 0, 1, 1, 1).svg();
        readPicture(svg);
        expect(svg).toContain(`fill="${fill}"`);
        expect(svg).toContain(`stroke="${inkOn(fill)}" stroke-width="1.6"`);
        expect(svg).toContain(`<g stroke="${inkOn(fill)}"`);
      }),
    );
    expect(luminance("#777777")).toBeCloseTo(0.1845, 3);
  });

  test("colors are read as six digits, or not at all", () => {
    expect(plainColor(" #C0392B ")).toBe("#c0392b");
    expect(plainColor("#fa0")).toBe("#ffaa00");
    for (const other of ["", "red", "#12345", '#123456"/><script>', "rgb(1,2,3)"]) {
      expect(plainColor(other)).toBeUndefined();
    }
  });
});

function placeOf(svg: string, words: string): { x: number; y: number } {
  const [, x, y] = new RegExp(`<text x="([^"]+)" y="([^"]+)"[^>]*>${words}</text>`).exec(svg)!;
  return { x: Number(x), y: Number(y) };
}
