/** The check values of every family, under the family's file name. */
import type { Case } from "../cases";
import { backing } from "./backing";
import { batting } from "./batting";
import { binding } from "./binding";
import { blocks } from "./blocks";
import { quilts } from "./quilts";
import { borders } from "./borders";
import { bundles } from "./bundles";
import { checks } from "./checks";
import { costing } from "./costing";
import { length } from "./length";
import { plans } from "./plans";
import { panels } from "./panels";
import { patches } from "./patches";
import { sewn } from "./sewn";
import { shapes } from "./shapes";
import { settings } from "./settings";
import { strips } from "./strips";
import { thread } from "./thread";
import { tubes } from "./tubes";
import { yardage } from "./yardage";

export const cases: Record<string, Case[]> = {
  length,
  patches,
  shapes,
  sewn,
  strips,
  plans,
  panels,
  blocks,
  quilts,
  bundles,
  tubes,
  yardage,
  settings,
  borders,
  backing,
  batting,
  binding,
  costing,
  thread,
  checks,
};
