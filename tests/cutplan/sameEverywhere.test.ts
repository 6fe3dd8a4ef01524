/**
 * A plan is the same on every machine: work is counted in steps, and chance is drawn from a seed. What one machine found, and
 * in how many steps, any other must find. These numbers change with any change of the search; then they are written anew.
 */
import { planCuts } from "../../src/math/cutplan";
import { instances, listOf } from "./data";

/** List, trimming, step to buy: length, its bound, strips, their bound, trims, kinds of strip, steps. */
const FOUND: [string, boolean, number, number[]][] = [
  ["HST star background, queen", true, 1, [1493, 1493, 59, 59, 31, 10, 6270764]],
  ["setting and corner triangles (squares) plus alternate blocks", true, 1, [1464, 1464, 19, 19, 18, 9, 4526126]],
  ["churn dash, sixteenths", true, 1, [788, 788, 14, 14, 15, 7, 4591352]],
  ["baby quilt, small mixed list", false, 1, [592, 592, 16, 16, 0, 11, 3927024]],
  ["hourglass + sawtooth border, stripe", true, 1, [923, 923, 33, 33, 23, 12, 3975320]],
  ["modern, few big panels", true, 1, [868, 868, 9, 9, 2, 6, 4564961]],
  ["sampler, 24 kinds", true, 1, [1181, 1172, 32, 26, 26, 30, 41507043]],
  ["sampler, 24 kinds", true, 36, [1186, 1171, 32, 26, 46, 29, 13750728]],
  ["sampler, 24 kinds", false, 1, [1297, 1297, 38, 33, 0, 29, 31478324]],
  ["sampler, 24 kinds, directional", true, 36, [1214, 1191, 32, 32, 55, 25, 9337023]],
  ["scrap background, 30 kinds, 1994 pieces", true, 36, [3602, 3580, 117, 113, 116, 47, 41517473]],
];

test.each(FOUND)("%s (trimming: %s, bought by %s)", (name, trimming, buyingStep, found) => {
  const { W, items, rot } = instances("quilts20.json").find((instance) => instance.name === name)!;
  const plan = planCuts(listOf(items, rot), { width: W, trimming, buyingStep });
  expect([
    plan.length,
    plan.lengthBound,
    plan.stripCount,
    plan.stripBound,
    plan.trims,
    plan.strips.length,
    plan.work,
  ]).toEqual(found);
});
