import { cpus } from "node:os";
import { setTimeout as wait } from "node:timers/promises";

/** Share of all processors that has to be idle for times to be worth taking. */
const idleEnough = 0.8;
const sampleMs = 500;
const patienceMs = 120_000;

let patience = patienceMs;

function totals(): { idle: number; all: number } {
  const times = cpus().map((cpu) => cpu.times);
  const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
  return { idle: sum(times.map(({ idle }) => idle)), all: sum(times.flatMap((time) => Object.values(time))) };
}

/**
 * Waits until nothing else keeps the machine busy, in all not longer than two minutes a run: a measurement beside another
 * program's work says nothing about the page.
 * @returns false when it was still busy
 */
export async function whenQuiet(): Promise<boolean> {
  for (;;) {
    const before = totals();
    await wait(sampleMs);
    const after = totals();
    if (after.idle - before.idle >= idleEnough * (after.all - before.all)) return true;
    if (patience <= 0) return false;
    patience -= sampleMs;
  }
}
