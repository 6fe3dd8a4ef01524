/** Class planner: what the teacher settles, one page for each size of quilt, and the supply list that is sent out. */
import type { PlanningWorkbook } from "../index";
import { SIZES, U } from "./cells";
import { page } from "./page";
import { supplies } from "./supplies";
import { classSheet } from "./teacher";

const description = "A teacher's settings, a page for each size of quilt to fill in, and a supply list.";

export const classPlanner: PlanningWorkbook = {
  name: "class-planner",
  title: "Class planner",
  description,
  build: () => ({
    name: "class-planner",
    title: "Class planner",
    description,
    units: U,
    sheets: [classSheet(), ...SIZES.map(page), supplies()],
  }),
};
