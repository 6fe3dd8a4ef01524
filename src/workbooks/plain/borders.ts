/** Borders: sizes, strips and pieced units. */
import { covers, plain } from "./formula";
import { twin, type Twins } from "./template";

export const borders: Twins = {
  BORDERUNITS: twin("side unit units", "someCount", (read) => covers(read.length("unit"), read.length("side"))),

  BORDERGAP: twin("side unit units", "amount", (read) => {
    const [side, unit] = [read.length("side"), read.length("unit")];
    return plain`MAX(0,${covers(unit, side)}*${unit}-${side})`;
  }),
};
