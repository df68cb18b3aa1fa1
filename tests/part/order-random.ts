import type { FormingJob } from "../../src/lib/part/order/job.ts";
import { box, type Leg, oneChain } from "./order-jobs.ts";

/** Numbers from 0 to 1 that are the same in every run. */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Deals out a number of bends on two or four sides, some of the chains ending in a folded edge. */
export function randomJob(seed: number, bends: number, sides: 2 | 4): FormingJob {
  const random = randomFrom(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const legs: Leg[][] = Array.from({ length: sides }, () => []);
  for (let bend = 0; bend < bends; bend += 1) {
    const side = legs[Math.floor(random() * sides)] as Leg[];
    side.push({
      flat: Math.round(between(8, 60)),
      way: random() < 0.7 ? "up" : "down",
      angle: random() < 0.6 ? 90 : Math.round(between(20, 120)),
    });
  }
  for (const side of legs) {
    const last = side.at(-1);
    if (last && last.flat > 20 && random() < 0.15)
      side[side.length - 1] = { ...last, edge: { kind: "closed", width: 8, way: random() < 0.5 ? "up" : "down" } };
  }
  const [north = [], south = [], east = [], west = []] = legs;
  if (sides === 2) return oneChain(Math.round(between(20, 250)), south, north, Math.round(between(50, 800)));
  return box(Math.round(between(60, 400)), Math.round(between(60, 400)), { north, south, east, west });
}
