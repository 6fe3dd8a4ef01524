/** Kit costing: what a kit costs, what to ask for it, how many bolts to order, and whether a roll of strips pays. */
import type { PlanningWorkbook } from "../index";
import { bolts } from "./bolts";
import { card } from "./card";
import { U } from "./cells";
import { kit } from "./kit";
import { roll } from "./roll";

const description = "What a kit costs, what to ask for it, how many bolts to order, and whether a roll pays.";

export const kitCosting: PlanningWorkbook = {
  name: "kit-costing",
  title: "Kit costing",
  description,
  build: () => ({
    name: "kit-costing",
    title: "Kit costing",
    description,
    units: U,
    sheets: [kit(), bolts(), roll(), card()],
  }),
};
