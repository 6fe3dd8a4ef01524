import { Bolt, BoltCut, BoltPlan, planBolts } from "../../src/math/cutplan";
import { dice } from "./data";

function faults(plan: BoltPlan, cuts: readonly BoltCut[], bolts: readonly Bolt[]): string[] {
  const found: string[] = [];
  const cut = cuts.map(() => 0);
  const taken = bolts.map(() => 0);
  let left = 0;
  for (const bolt of plan.bolts) {
    taken[bolt.bolt]++;
    let used = 0;
    for (const { row, count, length } of bolt.cuts) {
      if (length !== cuts[row].length) found.push("a cut has the wrong length");
      cut[row] += count;
      used += count * length;
    }
    if (bolt.length !== bolts[bolt.bolt].length || bolt.left !== bolt.length - used || used > bolt.length) {
      found.push("more is cut than the bolt holds");
    }
    left += bolt.left;
  }
  cuts.forEach(({ count }, row) => {
    if (cut[row] !== count) found.push(`row ${row}: ${cut[row]} cut, ${count} wanted`);
  });
  bolts.forEach(({ count }, row) => {
    if (taken[row] > count) found.push("more bolts than there are");
  });
  if (left !== plan.left || plan.bolts.length !== plan.boltCount) found.push("wrong totals");
  return found;
}

/** Fewest bolts, then least left over, by putting each cut into every bolt. */
function bestByTrial(cuts: readonly BoltCut[], bolts: readonly Bolt[]): { count: number; left: number } | undefined {
  const pieces = cuts.flatMap(({ length, count }) => Array<number>(count).fill(length));
  const lengths = bolts.flatMap(({ length, count }) => Array<number>(count).fill(length));
  const room = [...lengths];
  let best: { count: number; left: number } | undefined;
  const place = (index: number): void => {
    if (index === pieces.length) {
      const used = room.flatMap((left, bolt) => (left < lengths[bolt] ? [left] : []));
      const left = used.reduce((sum, value) => sum + value, 0);
      if (!best || used.length < best.count || (used.length === best.count && left < best.left)) {
        best = { count: used.length, left };
      }
      return;
    }
    for (let bolt = 0; bolt < room.length; bolt++) {
      if (room[bolt] < pieces[index]) continue;
      room[bolt] -= pieces[index];
      place(index + 1);
      room[bolt] += pieces[index];
    }
  };
  place(0);
  return best;
}

describe("planBolts", () => {
  test("takes the fewest bolts and then leaves the least, as trying everything does", () => {
    const roll = dice(2);
    let answered = 0;
    for (let round = 0; round < 300; round++) {
      const cuts = Array.from({ length: 1 + roll(3) }, (_, i) => ({
        label: `cut ${i}`,
        length: 3 + roll(20),
        count: 1 + roll(2),
      }));
      const bolts = Array.from({ length: 1 + roll(3) }, (_, i) => ({
        label: `bolt ${i}`,
        length: 8 + roll(40),
        count: 1 + roll(2),
      }));
      const best = bestByTrial(cuts, bolts);
      if (!best) {
        expect(() => planBolts(cuts, bolts)).toThrow();
        continue;
      }
      const plan = planBolts(cuts, bolts);
      expect(faults(plan, cuts, bolts)).toEqual([]);
      expect(plan).toMatchObject({ boltCount: best.count, left: best.left, proved: true });
      answered++;
    }
    expect(answered).toBeGreaterThan(100);
  });

  test("plans a kit's worth of cuts from a shelf of bolts", () => {
    const roll = dice(8);
    for (let round = 0; round < 20; round++) {
      const cuts = Array.from({ length: 6 }, (_, i) => ({
        label: `cut ${i}`,
        length: 18 + roll(90),
        count: 4 + roll(12),
      }));
      const bolts = Array.from({ length: 4 }, (_, i) => ({ label: `bolt ${i}`, length: 300 + roll(300), count: 6 }));
      const plan = planBolts(cuts, bolts);
      expect(faults(plan, cuts, bolts)).toEqual([]);
      expect(plan.boltBound).toBeLessThanOrEqual(plan.boltCount);
      if (plan.boltBound === plan.boltCount) expect(plan.leftBound).toBeLessThanOrEqual(plan.left);
    }
  });

  test("says so where the tries end before a way is found that there is", () => {
    // Two bolts of 21 hold 6 + 5 + 5 + 5 each; the longest first, 6 + 6 go into one of them.
    const cuts = [
      { label: "long", length: 6, count: 2 },
      { label: "short", length: 5, count: 6 },
    ];
    const bolts = [{ label: "bolt", length: 21, count: 2 }];
    expect(planBolts(cuts, bolts)).toMatchObject({ boltCount: 2, left: 0, proved: true });
    expect(() => planBolts(cuts, bolts, 1)).toThrow("no way was found to cut all of the list from these bolts");
  });
});
