/** The planning workbooks: a real plan each, to be changed into one's own. */
import { blockDesigner } from "./blockDesigner";
import type { Book } from "./book";
import { classPlanner } from "./classPlanner";
import { kitCosting } from "./kitCosting";
import { patternChecker } from "./patternChecker";
import { quiltPlanner } from "./quiltPlanner";

export interface PlanningWorkbook {
  /** Of the file, without its ending. */
  name: string;
  title: string;
  description: string;
  build: () => Book;
}

export const workbooks: readonly PlanningWorkbook[] = [
  quiltPlanner,
  kitCosting,
  classPlanner,
  patternChecker,
  blockDesigner,
];
