/** Quilt planner: from a design drawn in cells to what is cut and what is bought. */
import type { PlanningWorkbook } from "../index";
import { U } from "./cells";
import { cutting, plans } from "./cutting";
import { design } from "./design";
import { blocks, layout } from "./drawn";
import { supplies } from "./supplies";

const description = "From blocks drawn in cells to cut sizes, strips, amounts and a supply list.";

export const quiltPlanner: PlanningWorkbook = {
  name: "quilt-planner",
  title: "Quilt planner",
  description,
  build: () => ({
    name: "quilt-planner",
    title: "Quilt planner",
    description,
    units: U,
    sheets: [design(), blocks(), layout(), cutting(), plans(), supplies()],
  }),
};
