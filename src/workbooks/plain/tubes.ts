/** Tubes: half-square units from two strips sewn together along both long edges. */
import { above, atMost, either, fits, type Formula, plain } from "./formula";
import { twin, type Twins } from "./template";

export const tubes: Twins = {
  /**
   * A unit stands h = trim ÷ √2 above its seam line and takes 2h along it. Units on the two seam lines alternate: the middle of
   * the next one comes at least 2h + 2 seams − strip width further on, and 2h further on its own line.
   */
  TUBEUNITS: twin("length trim stripWidth seam ears units", "count", (read) => {
    const [length, trim, strip] = [read.length("length"), read.length("trim"), read.length("stripWidth")];
    const seam = read.lengthOrZero("seam", "seam");
    const high = plain`${trim}/SQRT(2)`;
    read.require(above(plain`2*${seam}`, strip));
    read.require(above(plain`2*${seam}`, trim));
    read.require(atMost(high, plain`${strip}-${seam}`));
    const shift = plain`MAX(0,2*${high}+2*${seam}-${strip})`;
    const laid = (own: Formula) => {
      const room = plain`${length}-${own}`;
      const pair = plain`MAX(${own},2*${shift})`;
      const pairs = fits(pair, room);
      const last = either(atMost(shift, plain`${room}-${pairs}*${pair}`), 1, 0);
      return either(atMost(0, room), plain`1+2*${pairs}+${last}`, 0);
    };
    return read.choose("ears", "clipped", {
      clipped: () => laid(plain`2*${high}`),
      unclipped: () => laid(plain`2*(${high}+${seam})`),
    });
  }),
};
