import { CutList, PanelPlan, PanelSize, planPanels } from "../../src/math/cutplan";
import { dice } from "./data";

/** Counts a plan of panels again: every patch once, strips within the panel, patches within their strips. */
function faults(plan: PanelPlan, list: CutList, size: PanelSize, trimming: boolean): string[] {
  const found: string[] = [];
  const cut = list.map(() => 0);
  let panels = 0;
  for (const { times, way, strips } of plan.panels) {
    panels += times;
    const [run, depth] = way === "across" ? [size.width, size.height] : [size.height, size.width];
    const heights = strips.reduce((sum, strip) => sum + strip.height * strip.times, 0);
    if (heights > depth) found.push("the strips are higher than the panel");
    for (const strip of strips) {
      const used = strip.pieces.reduce((sum, piece) => sum + piece.across * piece.count, 0);
      if (used > run) found.push("a strip is longer than the panel");
      for (const { row, across, along, turned, count } of strip.pieces) {
        cut[row] += count * strip.times * times;
        const { width, height, mayTurn } = list[row];
        if (trimming ? along > strip.height : along !== strip.height) found.push("a patch does not fit its strip");
        if (turned && !mayTurn) found.push("a patch is turned that must not be");
        // Along the panel, a patch that is not turned lies with its height along the strip.
        const [w, h] = (way === "across") === turned ? [height, width] : [width, height];
        if (across !== w || along !== h) found.push("a patch has the wrong size");
      }
    }
  }
  list.forEach(({ count }, row) => {
    if (cut[row] !== count) found.push(`row ${row}: ${cut[row]} cut, ${count} wanted`);
  });
  if (panels !== plan.panelCount) found.push("wrong number of panels");
  if (plan.panelBound > panels || plan.proved !== (plan.panelBound === panels)) found.push("wrong bound");
  return found;
}

describe("planPanels", () => {
  test("cuts every patch once, from panels that hold them", () => {
    const roll = dice(5);
    for (let round = 0; round < 60; round++) {
      const size = { width: 40 + roll(60), height: 40 + roll(60) };
      const trimming = roll(3) > 0;
      const list = Array.from({ length: 1 + roll(5) }, (_, i) => ({
        label: `patch ${i}`,
        width: 5 + roll(30),
        height: 5 + roll(30),
        count: 1 + roll(25),
        mayTurn: roll(2) === 1,
      }));
      const plan = planPanels(list, size, { trimming, budget: 3e6 });
      expect(faults(plan, list, size, trimming)).toEqual([]);
      const area = list.reduce((sum, { width, height, count }) => sum + width * height * count, 0);
      expect(plan.panelBound * size.width * size.height).toBeGreaterThanOrEqual(area);
    }
  });

  test("fits what fits exactly", () => {
    // A fat quarter of 18 by 21 in eighths: 4 by 4 squares of 36 use the height of 144 and 144 of the 168 in width.
    const square = { label: "square", width: 36, height: 36, count: 32, mayTurn: true };
    expect(planPanels([square], { width: 168, height: 144 })).toMatchObject({ panelCount: 2, proved: true });
    expect(planPanels([{ ...square, count: 33 }], { width: 168, height: 144 })).toMatchObject({ panelCount: 3 });
  });

  test("cuts a panel either way round", () => {
    // Three patches of 50 by 34 side by side are 102 high without turning, so the strips must run along the panel
    // of 50 by 102, or each patch is a strip of its own across it.
    const patch = { label: "patch", width: 50, height: 34, count: 3, mayTurn: false };
    expect(planPanels([patch], { width: 50, height: 102 })).toMatchObject({ panelCount: 1, proved: true });
    // Of 34 by 50 patches three make one strip along, and two such strips fill the panel.
    const list = [
      { label: "high", width: 20, height: 34, count: 3, mayTurn: false },
      { label: "wide", width: 30, height: 51, count: 2, mayTurn: false },
    ];
    const plan = planPanels(list, { width: 50, height: 102 });
    expect(plan).toMatchObject({ panelCount: 1, proved: true });
    expect(plan.panels[0].way).toBe("along");
  });
});
