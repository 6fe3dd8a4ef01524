/**
 * Bolts with the lengths cut from them, to scale. Bolts that are cut alike are drawn once, with how many; lengths differ by
 * letter, hatch and color, and a list explains the letters.
 */
import { counted } from "../math/counted";
import type { UsedBolt } from "../math/cutplan";
import type { PlannedBolts } from "../math/panels";
import { type Show, showing } from "../math/show";
import type { System } from "../math/units";
import { Drawing } from "./drawing";
import { fittingText, type Kind, kindsOf } from "./kinds";

/** Length of the longest bolt, height of each, and from one to the next, pixels. */
const DRAWN_LENGTH = 430;
const DRAWN_HEIGHT = 30;
const PITCH = 60;

/** Shorter lengths are not drawn one by one, pixels. */
const NARROWEST = 3;

export function boltPlanPicture(title: string, planned: PlannedBolts, system: System = "in"): string {
  return new BoltsPicture(title, planned, showing(system)).svg();
}

/** Bolts that are cut alike. */
interface AlikeBolts {
  bolt: UsedBolt;
  times: number;
}

class BoltsPicture {
  private readonly drawing: Drawing;
  private readonly scale: number;
  private readonly kinds: ReadonlyMap<number, Kind>;
  private readonly bolts: readonly AlikeBolts[];

  constructor(
    title: string,
    private readonly planned: PlannedBolts,
    private readonly show: Show,
  ) {
    const { plan, mark, cuts } = planned;
    this.scale = DRAWN_LENGTH / (Math.max(...plan.bolts.map(({ length }) => length)) * mark);
    const rows = plan.bolts.flatMap((bolt) => bolt.cuts.map(({ row }) => row));
    this.kinds = kindsOf(rows, (row) => {
      const { label, length, count } = cuts[row];
      return `${label}: ${count} of ${show.fabric(length)}`;
    });
    this.bolts = alike(plan.bolts);
    const told = this.bolts.map(({ bolt, times }) => `${this.nameOf(bolt, times)}: ${this.cutWords(bolt).join(", ")}`);
    this.drawing = new Drawing(title, `${title}: ${told.join("; ")}`, this.scale);
  }

  svg(): string {
    const { drawing, planned, show, bolts } = this;
    const { plan } = planned;
    bolts.forEach(({ bolt, times }, index) => {
      this.drawBolt(bolt, times, drawing.pixels(index * PITCH));
    });
    for (const { key, fill, words } of this.kinds.values()) drawing.legend(fill, `${key}  ${words}`);
    const count = counted(plan.boltCount, "bolt");
    const proof = plan.proved ? "" : `; no plan takes fewer than ${plan.boltBound}`;
    drawing.note(`${count}, ${show.fabric(planned.left)} left over${proof}`);
    if (planned.generosity > 0) drawing.note(`each cut with ${show.length(planned.generosity)} to spare`);
    return drawing.svg();
  }

  private drawBolt(bolt: UsedBolt, times: number, top: number): void {
    const { drawing, planned, show } = this;
    const { mark } = planned;
    const [length, high] = [bolt.length * mark, drawing.pixels(DRAWN_HEIGHT)];
    drawing.text({ x: 0, y: top }, this.nameOf(bolt, times), { anchor: "start", bold: true }, { x: 0, y: -11 });
    drawing.rectangle(0, top, length, high, "paper", { part: "bolt" });
    let at = 0;
    const unnamed: string[] = [];
    for (const cut of bolt.cuts) {
      const { key } = this.kinds.get(cut.row)!;
      const long = cut.length * mark;
      const words = fittingText([key], long * this.scale, DRAWN_HEIGHT);
      if (!words) unnamed.push(`${cut.count} ${key}`);
      this.drawCuts(cut, at, top, high, words);
      at += cut.count * long;
    }
    const left = bolt.left * mark;
    const middle = top + high / 2;
    const words = `${show.fabric(left)} left`;
    if (left > 0 && drawing.hasRoom(words, left, { small: true })) {
      drawing.text({ x: length - left / 2, y: middle }, words, { small: true });
    } else if (left > 0) unnamed.push(words);
    if (unnamed.length === 0) return;
    drawing.text({ x: length, y: middle }, unnamed.join(", "), { anchor: "start", small: true }, { x: 8, y: 0 });
  }

  private drawCuts(
    cut: UsedBolt["cuts"][number],
    start: number,
    top: number,
    high: number,
    words: ReturnType<typeof fittingText>,
  ): void {
    const { drawing, planned, scale } = this;
    const long = cut.length * planned.mark;
    const { fill } = this.kinds.get(cut.row)!;
    if (long * scale < NARROWEST) {
      drawing.rectangle(start, top, long * cut.count, high, fill, { thin: true, part: "cuts" });
      return;
    }
    for (let copy = 0; copy < cut.count; copy += 1) {
      const left = start + copy * long;
      drawing.rectangle(left, top, long, high, fill, { thin: true, part: "cut" });
      if (words) drawing.text({ x: left + long / 2, y: top + high / 2 }, words.text, words.style);
    }
  }

  private nameOf({ label, bolt }: UsedBolt, times: number): string {
    return `${label}, ${this.show.fabric(this.planned.bolts[bolt].length)}${times > 1 ? `, × ${times}` : ""}`;
  }

  private cutWords(bolt: UsedBolt): string[] {
    const { show, planned } = this;
    const words = bolt.cuts.map(({ row, label, count }) => {
      return `${count} of ${label} ${show.fabric(planned.cuts[row].length + planned.generosity)}`;
    });
    return [...words, `${show.fabric(bolt.left * planned.mark)} left`];
  }
}

function alike(bolts: readonly UsedBolt[]): AlikeBolts[] {
  const found = new Map<string, AlikeBolts>();
  for (const bolt of bolts) {
    const key = JSON.stringify([bolt.bolt, bolt.length, bolt.cuts.map(({ row, count }) => [row, count])]);
    const known = found.get(key);
    if (known) known.times += 1;
    else found.set(key, { bolt, times: 1 });
  }
  return [...found.values()];
}
