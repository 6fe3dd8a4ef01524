import { Layer, Model } from "./model";
import { Part, partsOf } from "./parts";
import { solve } from "./solve";
import { Cloth, CutList, CutPlan, Piece, Strip } from "./types";

/** Steps of work for one list: enough to settle most lists, and soon enough for a cell. */
const BUDGET = 40e6;

/** Plans that are kept, so that cells asking about the same list do not plan again. */
const KEPT_PLANS = 64;
const keptPlans = new Map<string, CutPlan>();

/**
 * The plan of least length, then fewest strips, then fewest trims, then fewest kinds of strip.
 *
 * Length and number of strips come with a bound that no plan can beat; where plan and bound meet, the plan is proved
 * least. Trims and kinds of strip are only compared among the plans that were found.
 *
 * @throws Problem "bad input" for rows that make no sense, "no answer" for a row that cannot be cut; both name the row
 */
export function planCuts(list: CutList, cloth: Cloth): CutPlan {
  const { parts, joins } = partsOf(list, cloth);
  const { width, trimming = true, buyingStep = 1, extraLength = 0, budget = BUDGET } = cloth;
  const key = JSON.stringify([parts, joins, width, trimming, buyingStep, extraLength, budget]);
  const kept = keptPlans.get(key);
  if (kept) return kept;

  const model = new Model(width, parts, trimming);
  const toBuy = (length: number) => Math.ceil((length + extraLength) / buyingStep) * buyingStep;
  const settledFrom = (length: number) => Math.min(length, toBuy(length) - buyingStep - extraLength + 1);
  const { plan, lengthBound, stripBound, work } = solve(model, { budget, settledFrom });
  const result: CutPlan = {
    strips: orderedStrips(model, plan.layers, parts),
    joins,
    length: plan.length,
    lengthBound,
    lengthProved: plan.length === lengthBound,
    stripCount: plan.strips,
    stripBound,
    stripsProved: plan.strips === stripBound,
    trims: plan.trims,
    toBuy: toBuy(plan.length),
    toBuyBound: toBuy(lengthBound),
    toBuyProved: toBuy(plan.length) === toBuy(lengthBound),
    patchArea: parts.reduce((area, part) => area + part.width * part.height * part.count, 0),
    work,
  };
  if (keptPlans.size >= KEPT_PLANS) keptPlans.delete(keptPlans.keys().next().value!);
  keptPlans.set(key, result);
  return result;
}

/** Strips in cutting order: highest first; of equal height, those that are cut most often. */
function orderedStrips(model: Model, layers: readonly Layer[], parts: readonly Part[]): Strip[] {
  return layers
    .map((layer) => stripOf(model, layer, parts))
    .sort((a, b) => b.height - a.height || b.times - a.times || b.used - a.used);
}

/** A strip in the words of the plan. */
export function stripOf(model: Model, { column, times }: Layer, parts: readonly Part[]): Strip {
  const height = model.heights[column.level];
  const pieces = column.kinds.map((kind, i): Piece => {
    const { row, label, width, height: partHeight, turned, part } = parts[kind];
    const lies = model.placementIn(column.level, kind);
    return {
      row,
      label,
      count: column.counts[i],
      across: lies.across,
      along: lies.along,
      turned: turned !== (lies.across !== width || lies.along !== partHeight),
      trimmed: lies.along < height,
      ...(part && { part }),
    };
  });
  pieces.sort((a, b) => b.across - a.across || b.along - a.along || a.row - b.row);
  const used = pieces.reduce((sum, piece) => sum + piece.across * piece.count, 0);
  return { height, times, pieces, used, left: model.clothWidth - used };
}
