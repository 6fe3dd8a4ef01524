/** What the search makes of plans that are offered to it. */
import { type Column, columnOf, Model } from "../../src/math/cutplan/model";
import { Search } from "../../src/math/cutplan/search";
import { Work } from "../../src/math/cutplan/work";

const kinds = [
  { width: 20, height: 10, count: 7, mayTurn: false },
  { width: 30, height: 8, count: 3, mayTurn: false },
];
const model = new Model(100, kinds, true);
const [low, high] = [8, 10].map((height) => model.heights.indexOf(height));
const column = (level: number, squares: number, strips: number): Column => columnOf(level, [squares, strips]);
const searchWith = (...offered: [Column, number][][]): Search => {
  const search = new Search(model, new Work(1e6), 1);
  for (const layers of offered) search.offer(layers.map(([strip, times]) => ({ column: strip, times })));
  return search;
};
const told = ({ best }: Search) =>
  best.layers.map(({ column: { level, kinds: held, counts }, times }) => {
    return `${times}×${model.heights[level]}(${held.map((kind, i) => `${counts[i]} of ${kind}`).join(", ")})`;
  });

test("what is cut too often is left out, and strips become as low as their patches", () => {
  const search = searchWith([
    [column(high, 5, 0), 3],
    [column(high, 0, 3), 2],
  ]);
  expect(told(search)).toEqual(["1×10(5 of 0)", "1×10(2 of 0)", "1×8(3 of 1)"]);
  expect(search.best).toMatchObject({ length: 28, strips: 3, trims: 0 });
});

test("patches that are left uncut, and a plan that was never offered, are faults of the search itself", () => {
  expect(() => searchWith([[column(high, 5, 0), 3]])).toThrow("the plan leaves patches uncut");
  expect(() => searchWith([[column(low, 0, 3), 1]])).toThrow("the plan leaves patches uncut");
  expect(() => searchWith().best).toThrow("no plan yet");
});

describe("the better plan is kept, in whatever order they are offered", () => {
  const plans: Record<string, [Column, number][]> = {
    short: [
      [column(high, 5, 0), 1],
      [column(high, 2, 1), 1],
      [column(low, 0, 2), 1],
    ],
    fewStrips: [
      [column(high, 5, 0), 1],
      [column(high, 2, 2), 1],
      [column(low, 0, 1), 1],
    ],
    fewTrims: [
      [column(high, 5, 0), 1],
      [column(high, 2, 0), 1],
      [column(low, 0, 3), 1],
    ],
    fewKinds: [
      [column(high, 2, 0), 3],
      [column(high, 1, 0), 1],
      [column(low, 0, 3), 1],
    ],
    manyKinds: [
      [column(high, 1, 0), 1],
      [column(high, 2, 0), 1],
      [column(high, 4, 0), 1],
      [column(low, 0, 1), 2],
      [column(low, 0, 1), 1],
    ],
  };
  test.each([
    ["fewTrims", "short", "the same length and strips, fewer trims"],
    ["fewTrims", "fewStrips", "the same length and strips, fewer trims"],
    ["short", "fewStrips", "one trim less"],
    ["fewTrims", "fewKinds", "shorter"],
    ["fewTrims", "manyKinds", "shorter"],
    ["fewKinds", "manyKinds", "shorter"],
  ])("%s before %s: %s", (better, worse) => {
    const best = told(searchWith(plans[better]));
    expect(told(searchWith(plans[better], plans[worse]))).toEqual(best);
    expect(told(searchWith(plans[worse], plans[better]))).toEqual(best);
  });

  test("of the same length, the one with fewer strips, though more is trimmed", () => {
    const five = new Model(
      100,
      kinds.map((kind) => ({ ...kind, count: 5 })),
      true,
    );
    const plansOfFive = [
      [{ column: column(high, 1, 1), times: 5 }],
      [
        { column: column(high, 5, 0), times: 1 },
        { column: column(low, 0, 1), times: 5 },
      ],
    ];
    for (const order of [plansOfFive, plansOfFive.toReversed()]) {
      const search = new Search(five, new Work(1e6), 1);
      for (const layers of order) search.offer(layers);
      expect(search.best).toMatchObject({ length: 50, strips: 5, trims: 5 });
    }
  });

  test("of two that are alike in all, the first", () => {
    const [first, second]: [Column, number][][] = [
      [
        [column(high, 4, 0), 1],
        [column(high, 3, 0), 1],
        [column(low, 0, 3), 1],
      ],
      [
        [column(high, 5, 0), 1],
        [column(high, 2, 0), 1],
        [column(low, 0, 3), 1],
      ],
    ];
    expect(told(searchWith(first, second))).toEqual(told(searchWith(first)));
    expect(told(searchWith(second, first))).toEqual(told(searchWith(second)));
  });

  test("of as many trims, the one with fewer kinds of strip", () => {
    const [alike, apart]: [Column, number][][] = [
      [
        [column(high, 3, 0), 2],
        [column(high, 1, 0), 1],
        [column(low, 0, 3), 1],
      ],
      [
        [column(high, 4, 0), 1],
        [column(high, 2, 0), 1],
        [column(high, 1, 0), 1],
        [column(low, 0, 3), 1],
      ],
    ];
    expect(told(searchWith(alike, apart))).toEqual(told(searchWith(alike)));
    expect(told(searchWith(apart, alike))).toEqual(told(searchWith(alike)));
  });
});
