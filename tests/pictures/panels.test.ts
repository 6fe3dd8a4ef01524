import fc from "fast-check";
import { boltPlan, planInPanels, type PlannedPanels } from "../../src/math/panels";
import type { ListedPatch } from "../../src/math/plans";
import { inches, toInches } from "../../src/math/units";
import { boltPlanPicture } from "../../src/pictures/bolts";
import { panelsPicture } from "../../src/pictures/panels";
import { boxOf, expectPixels, overlappingTexts, PIXEL, readPicture } from "./reading";

function row(label: string, width: number, height: number, count: number, grain: ListedPatch["grain"] = "any") {
  return { label, width: inches(width), height: inches(height), count, grain };
}

const halves = (least: number, most: number) =>
  fc.integer({ min: 2 * least, max: 2 * most }).map((count) => inches(count / 2));

describe("panelsPicture", () => {
  const rows = fc.record({
    label: fc.constantFrom("leaf", "a & b", "<i>", ""),
    width: halves(1, 10),
    height: halves(1, 10),
    count: fc.integer({ min: 1, max: 9 }),
    grain: fc.constantFrom("any" as const, "upright" as const),
  });
  const lists = fc.array(rows, { minLength: 1, maxLength: 4 });
  const draw = (planned: PlannedPanels) => readPicture(panelsPicture("Panels", planned));

  test("every patch of the list lies in one panel, and no two lie on one another", () => {
    fc.assert(
      fc.property(lists, (list) => {
        const planned = planInPanels(list, inches(21), inches(17.5));
        const picture = draw(planned);
        const panels = picture.shapes("panel").map(boxOf);
        const pieces = picture.shapes("piece").map(boxOf);
        expect(panels).toHaveLength(planned.cuts.panels.length);
        const within = (box: (typeof panels)[number], panel: (typeof panels)[number]) =>
          box.left > panel.left - PIXEL &&
          box.top > panel.top - PIXEL &&
          box.left + box.width < panel.left + panel.width + 2 * PIXEL &&
          box.top + box.height < panel.top + panel.height + 2 * PIXEL;
        const homes = pieces.map((piece) => panels.findIndex((panel) => within(piece, panel)));
        expect(homes).not.toContain(-1);
        const drawn = homes.reduce((sum, home) => sum + planned.cuts.panels[home].times, 0);
        expect(drawn).toBe(list.reduce((sum, { count }) => sum + count, 0));
        pieces.forEach((one, index) => {
          for (const other of pieces.slice(index + 1)) {
            const wide = Math.min(one.left + one.width, other.left + other.width) - Math.max(one.left, other.left);
            const high = Math.min(one.top + one.height, other.top + other.height) - Math.max(one.top, other.top);
            expect(Math.min(wide, high)).toBeLessThan(3 * PIXEL);
          }
        });
      }),
      { numRuns: 25 },
    );
  });

  test("patches are drawn to scale, whichever way the strips run", () => {
    fc.assert(
      fc.property(lists, (list) => {
        const planned = planInPanels(list, inches(21), inches(17.5));
        const picture = draw(planned);
        const scale = boxOf(picture.shapes("panel")[0]).width / 21;
        const sizes = list.flatMap(({ width, height }) => [`${width} ${height}`, `${height} ${width}`]);
        for (const piece of picture.shapes("piece").map(boxOf)) {
          const [width, height] = [piece.width, piece.height].map((side) => Math.round((side / scale) * 2) / 2);
          expect(sizes).toContain(`${width} ${height}`);
          expectPixels(piece.width, width * scale, 0.03);
        }
      }),
      { numRuns: 25 },
    );
  });

  test("an upright patch stands upright", () => {
    const picture = draw(planInPanels([row("tree", 3, 8, 5, "upright")], inches(21), inches(17.5)));
    for (const { width, height } of picture.shapes("piece").map(boxOf)) expect(height).toBeGreaterThan(width);
  });

  test("panels cut alike are drawn once, and the list explains the letters", () => {
    const svg = panelsPicture("Panels", planInPanels([row("square", 10.5, 8.5, 16)], inches(21), inches(17.5)));
    const { words, description } = readPicture(svg);
    expect(words).toEqual(expect.arrayContaining(["A  square: 16 of 10 1/2 in × 8 1/2 in", "4 panels", "21 in"]));
    expect(words.some((line) => line.startsWith("4 panels alike, strips a"))).toBe(true);
    expect(description).toContain("4 panels of 21 in × 17 1/2 in");
    const heightOf = (line: string) => Number(new RegExp(` y="([^"]+)"[^>]*>${line}<`).exec(svg)![1]);
    expect(heightOf("21 in")).toBeLessThan(heightOf("4 panels alike, strips a[a-z]+") - 10);
    expect(overlappingTexts(svg)).toEqual([]);
  });

  test("metric", () => {
    const size = toInches(10, "cm");
    const list = [{ ...row("square", 0, 0, 3), width: size, height: size }];
    const planned = planInPanels(list, toInches(55, "cm"), toInches(45, "cm"), { system: "cm" });
    const { words, description } = readPicture(panelsPicture("Panels", planned, "cm"));
    expect(words).toEqual(expect.arrayContaining(["55 cm", "45 cm", "A  square: 3 of 10 cm × 10 cm"]));
    expect(`${words.join()}${description}`).not.toMatch(/\d in\b/);
  });
});

describe("boltPlanPicture", () => {
  const yards = (count: number) => inches(36 * count);
  const cuts = fc.array(
    fc.record({
      label: fc.constantFrom("kit", "a & b", "<i>"),
      length: fc.integer({ min: 1, max: 24 }).map((eighths) => yards(eighths / 8)),
      count: fc.integer({ min: 1, max: 12 }),
    }),
    { minLength: 1, maxLength: 4 },
  );

  test("draws every cut of a bolt once, to scale, and counts up to the list", () => {
    fc.assert(
      fc.property(cuts, fc.constantFrom(0, 1), (list, spare) => {
        const planned = boltPlan(list, [{ label: "bolt", length: yards(15), count: 20 }], inches(spare));
        const picture = readPicture(boltPlanPicture("Bolts", planned));
        const [first] = picture.shapes("bolt").map(boxOf);
        const scale = first.width / yards(15);
        const drawn = picture.shapes("cut").map(boxOf);
        const total = drawn.reduce((sum, { width }) => sum + width, 0);
        const perBolt = new Map(planned.plan.bolts.map((bolt) => [JSON.stringify(bolt.cuts), bolt]));
        const expected = [...perBolt.values()].reduce((sum, bolt) => sum + bolt.length - bolt.left, 0) * planned.mark;
        expect(picture.shapes("bolt")).toHaveLength(perBolt.size);
        expectPixels(total, expected * scale, 0.02 * drawn.length + 0.1);
        for (const { label, count } of list) {
          expect(picture.words.some((line) => line.includes(`${label}: ${count} of `))).toBe(true);
        }
      }),
      { numRuns: 30 },
    );
  });

  test("bolts cut alike once, with how many; what is left; what each cut has to spare", () => {
    const planned = boltPlan(
      [{ label: "backing", length: yards(7), count: 4 }],
      [{ label: "full bolt", length: yards(15), count: 3 }],
      inches(2),
    );
    const svg = boltPlanPicture("Bolts", planned);
    const { words, description } = readPicture(svg);
    expect(words).toEqual(
      expect.arrayContaining(["full bolt, 15 yd, × 2", "A  backing: 4 of 7 yd", "each cut with 2 in to spare"]),
    );
    expect(words.some((line) => line.startsWith("2 bolts, 1.7778 yd left over"))).toBe(true);
    expect(description).toContain("full bolt, 15 yd, × 2: 2 of backing 7.0556 yd");
    expect(overlappingTexts(svg)).toEqual([]);
  });

  test("cuts too short to see are drawn as one, and named beside the bolt", () => {
    const planned = boltPlan(
      [{ label: "sample", length: yards(0.125), count: 200 }],
      [{ label: "bolt", length: yards(40), count: 1 }],
    );
    const picture = readPicture(boltPlanPicture("Bolts", planned));
    expect(picture.shapes("cut")).toHaveLength(0);
    expect(picture.shapes("cuts")).toHaveLength(1);
    expect(picture.words).toContain("200 A");
  });

  test("metric", () => {
    const meters = (count: number) => toInches(count, "m");
    const cut = { label: "kit", length: meters(1.5), count: 4 };
    const planned = boltPlan([cut], [{ label: "bolt", length: meters(10), count: 1 }], inches(0), "cm");
    const { words } = readPicture(boltPlanPicture("Bolts", planned, "cm"));
    expect(words).toEqual(expect.arrayContaining(["bolt, 10 m", "A  kit: 4 of 1.5 m", "4 m left"]));
  });
});
