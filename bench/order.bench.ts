import { loadCatalogue } from "../src/catalogue/load.ts";
import type { FormingJob } from "../src/lib/part/order/job.ts";
import { bendOrder } from "../src/lib/part/order/order.ts";
import { box, oneChain } from "../tests/part/order-jobs.ts";
import { randomFrom, randomJob } from "../tests/part/order-random.ts";

const { brake } = loadCatalogue().shop;

/** Jobs in turn, so that a time is the mean over many different parts and the slowest hundredth shows the hard ones. */
function inTurn(make: (seed: number) => FormingJob) {
  const jobs = Array.from({ length: 100 }, (_, seed) => make(seed));
  let at = 0;
  return () => bendOrder(jobs[at++ % jobs.length] as FormingJob, brake, { remedies: false });
}

/** Gentle bends, so that most parts can be made and the whole order has to be found. */
const gentle = (sides: 2 | 4, ways: 1 | 2) => (seed: number) => {
  const random = randomFrom(seed);
  const legs = (count: number) =>
    Array.from({ length: count }, () => ({
      flat: 15 + 30 * random(),
      way: ways === 2 && random() < 0.5 ? ("down" as const) : ("up" as const),
      angle: 10 + 35 * random(),
    }));
  if (sides === 2) return oneChain(100 + 200 * random(), legs(6), legs(6));
  const size = () => 150 + 300 * random();
  return box(size(), size(), { north: legs(3), south: legs(3), east: legs(3), west: legs(3) });
};

const wall = [{ flat: 40, edge: { kind: "closed" as const, width: 6, way: "up" as const } }];
const tray = box(200, 150, { north: wall, south: wall, east: wall, west: wall });

export const hemmedTray = () => bendOrder(tray, brake);
export const random12BendsOn2Sides = inTurn((seed) => randomJob(seed, 12, 2));
export const random12BendsOn4Sides = inTurn((seed) => randomJob(seed, 12, 4));
export const gentle12BendsOn2Sides = inTurn(gentle(2, 2));
export const gentle12BendsOn4Sides = inTurn(gentle(4, 2));
export const upwards12BendsOn2Sides = inTurn(gentle(2, 1));
export const upwards12BendsOn4Sides = inTurn(gentle(4, 1));
