import type { RuleSetRule } from "webpack";

export const typescriptRule: RuleSetRule;
