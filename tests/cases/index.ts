/** The check values of every family, under the family's file name. */
import type { Case } from "../cases";
import { backing } from "./backing";
import { borders } from "./borders";
import { length } from "./length";
import { patches } from "./patches";
import { strips } from "./strips";

export const cases: Record<string, Case[]> = { length, patches, strips, borders, backing };
