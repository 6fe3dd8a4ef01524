/** Costing: what a kit costs, what to ask for it, and how many come off a bolt. */
import { above, atMost, covers, fits, type Formula, plain, plus, times } from "./formula";
import type { Reader } from "./reader";
import { twin, type Twins } from "./template";

export const costing: Twins = {
  /** Every amount needs a price; a row without an amount does not count. */
  KITCOST: twin("amounts prices extras units", "amount", (read) => {
    const [amounts, prices] = [read.range("amounts"), read.range("prices")];
    read.require(`ROWS(${amounts})=ROWS(${prices})`);
    read.require(`COLUMNS(${amounts})=COLUMNS(${prices})`);
    read.require(`SUMPRODUCT((${amounts}<>"")*1)=COUNT(${amounts})`);
    read.require(`MIN(${amounts})>=0`);
    read.require(`MAX(${amounts})<=1000`);
    // Text is above every number, so that a price in words counts as one that is too high.
    const priceless = `(${prices}="")+(${prices}<0)+(${prices}>10000000)`;
    read.require(`SUMPRODUCT((${amounts}<>"")*(${amounts}<>0)*(${priceless}))=0`);
    return plus(`SUMPRODUCT(${amounts},${prices})`, read.sum("extras"));
  }),

  PRICEFORMARGIN: twin("cost margin units", "amount", (read) => {
    const [cost, margin] = [read.plainNumber("cost"), read.rate("margin")];
    read.require(above(margin, 1));
    return plain`${cost}/(1-${margin})`;
  }),

  PRICEFORMARKUP: twin("cost markup units", "amount", (read) => {
    const [cost, markup] = [read.plainNumber("cost"), read.rate("markup", 5)];
    return plain`${cost}*(1+${markup})`;
  }),

  KITSPERBOLT: twin("bolt each generosity units", "count", (read) => kitsPerBolt(read)),

  BOLTSNEEDED: twin("kits each bolt generosity units", "count", (read) => {
    const kits = read.countOrEmpty("kits");
    const perBolt = kitsPerBolt(read);
    read.require(atMost(1, perBolt));
    return covers(perBolt, kits);
  }),
};

function kitsPerBolt(read: Reader): Formula {
  const [bolt, each] = [read.fabric("bolt"), read.fabric("each")];
  read.require(above(0, bolt));
  read.require(above(0, each));
  const unit = read.fabricLength;
  return fits(plus(times(each, unit), read.lengthOrZero("generosity", 0)), times(bolt, unit));
}
