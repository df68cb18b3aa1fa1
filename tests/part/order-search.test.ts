import { describe, expect, test } from "vitest";
import { type Choice, type Fit, Forming } from "../../src/lib/part/order/check.ts";
import type { FormingJob } from "../../src/lib/part/order/job.ts";
import { bendOrder } from "../../src/lib/part/order/order.ts";
import type { OrderCost } from "../../src/lib/part/order/search.ts";
import { box, brake, oneChain } from "./order-jobs.ts";
import { randomJob } from "./order-random.ts";

/** Costs in the order in which they are compared. */
const figures = ({ turnedOver, turned, fingerChanges, largerSwings, innerFirst }: OrderCost) => [
  turnedOver,
  turned,
  fingerChanges,
  largerSwings,
  innerFirst,
];
const isLess = (a: readonly number[], b: readonly number[]) => {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at >= 0 && (a[at] as number) < (b[at] as number);
};

interface Made {
  readonly choice: Choice;
  readonly fit: Fit;
}

/** Fewest changes of fingers, by trying for every bend all sets that the order needs anywhere, and the whole row. */
function fingerChanges(order: readonly Made[]): number {
  const sets = order.flatMap(({ fit }) => (fit.set > 0 ? [fit.fingers] : []));
  const states = [undefined, ...new Map(sets.map((each) => [each.chosen.join(), each])).values()];
  const allowed = ({ fit }: Made, state: (typeof states)[number]) =>
    fit.set > 0 ? state?.chosen.join() === fit.fingers.chosen.join() : state === undefined || state.total >= fit.need;
  let costs = states.map(() => 0);
  order.forEach((step, index) => {
    costs = states.map((state, to) => {
      if (!allowed(step, state)) return Number.POSITIVE_INFINITY;
      return Math.min(...costs.map((cost, from) => cost + (index > 0 && from !== to ? 1 : 0)));
    });
  });
  return Math.min(...costs);
}

/** Cost of one complete order, counted from the words of the rule and not from the search. */
function count(forming: Forming, order: readonly Made[]): number[] {
  const op = (made: Made) => forming.operations[made.choice.op] as Forming["operations"][number];
  const cost = [0, 0, 0, 0, 0] as [number, number, number, number, number];
  order.forEach((step, index) => {
    const before = order[index - 1];
    if (before) {
      const over = op(before).faceUp !== op(step).faceUp;
      const quarter = op(before).chain !== op(step).chain;
      const ends = before.choice.outward !== step.choice.outward;
      if (over) cost[0] += 1;
      if (quarter || (!over && ends)) cost[1] += 1;
    }
    if (step.fit.goesIn === "with fingers" || step.fit.comesOut === "with fingers") cost[2] += 1;
    if (forming.swingsLarger(step.choice)) cost[3] += 1;
    const { chain, hinge } = op(step);
    const base = forming.chains[chain]?.baseIndex ?? 0;
    for (const later of order.slice(index + 1)) {
      const other = op(later);
      if (other.chain === chain && (hinge >= base ? other.hinge > hinge : other.hinge < hinge)) cost[4] += 1;
    }
  });
  cost[2] += fingerChanges(order);
  return cost;
}

/** Every order and every way to lay the piece. */
function bruteForce(job: FormingJob): number[] | undefined {
  const forming = new Forming(job, brake);
  let best: number[] | undefined;
  const go = (mask: number, order: readonly Made[]): void => {
    if (mask === forming.full) {
      const cost = count(forming, order);
      if (!best || isLess(cost, best)) best = cost;
      return;
    }
    forming.operations.forEach((_, op) => {
      if (mask & (1 << op)) return;
      for (const outward of [1, -1] as const) {
        const { fit } = forming.check({ op, outward }, mask);
        if (fit) go(mask | (1 << op), [...order, { choice: { op, outward }, fit }]);
      }
    });
  };
  go(0, []);
  return best;
}

describe("against all orders tried one by one", () => {
  test.each([
    { bends: 3, sides: 2 as const, from: 0, jobs: 120 },
    { bends: 4, sides: 2 as const, from: 1000, jobs: 100 },
    { bends: 5, sides: 2 as const, from: 2000, jobs: 40 },
    { bends: 3, sides: 4 as const, from: 3000, jobs: 80 },
    { bends: 4, sides: 4 as const, from: 4000, jobs: 60 },
    { bends: 5, sides: 4 as const, from: 5000, jobs: 25 },
  ])(
    "$jobs parts with $bends bends on $sides sides: the same can be made, never at a higher cost",
    ({ bends, sides, from, jobs }) => {
      let made = 0;
      for (let seed = from; seed < from + jobs; seed += 1) {
        const job = randomJob(seed, bends, sides);
        const best = bruteForce(job);
        const found = bendOrder(job, brake, { remedies: false });
        expect("steps" in found, `part ${seed}`).toBe(best !== undefined);
        if (!("steps" in found) || !best) continue;
        made += 1;
        expect(figures(found.cost), `part ${seed}`).toEqual(best);
      }
      // Both kinds must be among them, or nothing was compared.
      expect(made).toBeGreaterThan(jobs / 20);
      expect(made).toBeLessThan(jobs);
    },
  );
});

describe("an order that is given", () => {
  test("makes every bend once, each allowed where it stands", () => {
    for (let seed = 0; seed < 60; seed += 1) {
      const job = randomJob(seed, 6, seed % 2 ? 2 : 4);
      const found = bendOrder(job, brake, { remedies: false });
      if (!("steps" in found)) continue;
      const forming = new Forming(job, brake);
      let mask = 0;
      for (const { bend, made, choice } of found.steps) {
        expect(made).toBe(mask);
        expect(forming.operations[choice.op]?.id).toBe(bend);
        expect(forming.check(choice, mask).fit).toBeDefined();
        mask |= 1 << choice.op;
      }
      expect(mask).toBe(forming.full);
    }
  });

  test("is the same every time", () => {
    const job = randomJob(7, 5, 4);
    expect(bendOrder(job, brake)).toEqual(bendOrder(job, brake));
  });
});

test("a search that is told to stop says so", () => {
  const leg = { flat: 40, way: "up", angle: 30 } as const;
  const zig = [leg, { ...leg, way: "down" }, leg, { ...leg, way: "down" }, leg, { ...leg, way: "down" }] as const;
  expect(bendOrder(oneChain(200, zig, zig), brake, { shouldStop: () => true })).toEqual({ stopped: true });
});

test("a blank without bends has an empty order", () => {
  expect(bendOrder(oneChain(100, [], []), brake)).toMatchObject({ steps: [], proved: true });
});

test("more folds than bits are refused", () => {
  const legs = Array.from({ length: 9 }, () => ({ flat: 20, angle: 10 }));
  expect(() => bendOrder(oneChain(100, legs, legs), brake)).toThrow(/16 folds/);
});

test("a box is turned once, and keeps the fingers that fit between its first sides from the first bend on", () => {
  const wall = [{ flat: 40 }];
  const found = bendOrder(box(200, 150, { north: wall, south: wall, east: wall, west: wall }), brake);
  if (!("steps" in found)) throw new Error("the box can be made");
  expect(figures(found.cost).slice(0, 3)).toEqual([0, 1, 0]);
  expect(new Set(found.steps.map(({ fingers }) => fingers.chosen.join())).size).toBe(1);
  expect(found.steps.every(({ changeFingers }) => !changeFingers)).toBe(true);
});

test("the steps say as many changes of fingers as the cost counts", () => {
  let changes = 0;
  for (let seed = 0; seed < 250; seed += 1) {
    const found = bendOrder(randomJob(seed, 4, 4), brake, { remedies: false });
    if (!("steps" in found)) continue;
    const changed = found.steps.filter(({ changeFingers }) => changeFingers).length;
    const out = found.steps.filter(({ goesIn, comesOut }) => [goesIn, comesOut].includes("with fingers")).length;
    expect(changed + out, `part ${seed}`).toBe(found.cost.fingerChanges);
    changes += changed;
  }
  expect(changes).toBeGreaterThan(0);
});
