import { Column, Layer, Model } from "./model";
import { partsOf } from "./parts";
import { Cloth, CutList } from "./types";

/** What a plan without planning takes. */
export interface PlainPlan {
  readonly length: number;
  readonly stripCount: number;
}

/**
 * First fit: patches as the list has them, highest first, each into the first strip that has room for it, or else into a
 * new strip of its own height.
 */
export function firstFitPlan(list: CutList, cloth: Cloth): PlainPlan {
  const model = new Model(cloth.width, partsOf(list, cloth).parts, cloth.trimming ?? true);
  return measure(model, firstFitLayers(model));
}

/** Each kind in strips of its own, turned or not, whichever is shorter. */
export function ownStripsPlan(list: CutList, cloth: Cloth): PlainPlan {
  const model = new Model(cloth.width, partsOf(list, cloth).parts, cloth.trimming ?? true);
  return measure(model, ownStripLayers(model));
}

function measure(model: Model, layers: readonly Layer[]): PlainPlan {
  let length = 0;
  let stripCount = 0;
  for (const { column, times } of layers) {
    length += model.heights[column.level] * times;
    stripCount += times;
  }
  return { length, stripCount };
}

export function firstFitLayers(model: Model): Layer[] {
  interface Open {
    readonly height: number;
    left: number;
    readonly counts: Map<number, number>;
  }
  const strips: Open[] = [];
  const order = model.kinds
    .map((kind, index) => ({ index, ...(kind.width <= model.clothWidth ? kind : turned(kind)) }))
    .sort((a, b) => b.height - a.height || b.width - a.width);
  for (const { index, width, height, count } of order) {
    for (let i = 0; i < count; i++) {
      let strip = strips.find((open) => open.left >= width && (model.trimming || open.height === height));
      if (!strip) strips.push((strip = { height, left: model.clothWidth, counts: new Map() }));
      strip.left -= width;
      strip.counts.set(index, (strip.counts.get(index) ?? 0) + 1);
    }
  }
  return strips.map(({ height, counts }) => {
    const kinds = [...counts.keys()].sort((a, b) => a - b);
    const column = { level: model.heights.indexOf(height), kinds, counts: kinds.map((kind) => counts.get(kind)!) };
    return { column, times: 1 };
  });
}

export function ownStripLayers(model: Model): Layer[] {
  return [...model.kinds.keys()].flatMap((kind) => {
    const ways = model.ownLevels[kind].map((level) => ownStrips(model, kind, level));
    return ways.reduce((best, way) => (measure(model, way).length < measure(model, best).length ? way : best));
  });
}

function ownStrips(model: Model, kind: number, level: number): Layer[] {
  const each = Math.floor(model.room / model.widthIn(level, kind));
  const whole = Math.floor(model.demand[kind] / each);
  const rest = model.demand[kind] - whole * each;
  const strip = (count: number): Column => ({ level, kinds: [kind], counts: [count] });
  const layers: Layer[] = [];
  if (whole > 0) layers.push({ column: strip(each), times: whole });
  if (rest > 0) layers.push({ column: strip(rest), times: 1 });
  return layers;
}

function turned<K extends { readonly width: number; readonly height: number }>(kind: K): K {
  return { ...kind, width: kind.height, height: kind.width };
}
