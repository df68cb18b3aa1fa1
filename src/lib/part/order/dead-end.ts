import type { Block } from "./block.ts";
import type { Choice, Forming } from "./check.ts";
import { innerFirst } from "./search.ts";

/** A state in which none of the bends left can be made, and the one that comes closest. */
export interface DeadEnd {
  /** Operations made so far, in order. */
  readonly made: readonly number[];
  readonly choice: Choice;
  readonly block: Block;
}

/** Most states looked at for the explanation. The verdict does not rest on it. */
const mostStates = 60;

/** How far a blocked bend gets; farther is the better explanation. */
const progress = { held: 0, clamped: 1, press: 2, in: 3, swing: 4, out: 5 } as const;
const isFarther = (a: Block, b: Block) => a.angle > b.angle || (a.angle === b.angle && progress[a.when] > progress[b.when]);

/**
 * Goes forwards from the flat sheet, depth first and outer bends first, until it is stuck with as many bends made as it finds.
 * @throws Error when the job can be finished
 */
export function deadEnd(forming: Forming): DeadEnd {
  const { operations, full } = forming;
  const seen = new Set<number>([0]);
  let furthest: DeadEnd | undefined;
  const go = (mask: number, made: readonly number[]): void => {
    let stuck: { choice: Choice; block: Block } | undefined;
    const open: number[] = [];
    operations.forEach((_, op) => {
      if (mask & (1 << op)) return;
      for (const outward of [1, -1] as const) {
        const choice = { op, outward };
        const { block } = forming.check(choice, mask);
        if (!block) {
          open.push(op);
          return;
        }
        if (!stuck || isFarther(block, stuck.block)) stuck = { choice, block };
      }
    });
    if (open.length === 0 && mask !== full && stuck && (!furthest || made.length > furthest.made.length))
      furthest = { made, ...(stuck as { choice: Choice; block: Block }) };
    for (const op of open.sort((a, b) => innerFirst(forming, a, mask) - innerFirst(forming, b, mask))) {
      const then = mask | (1 << op);
      if (seen.has(then) || (furthest && seen.size >= mostStates)) continue;
      seen.add(then);
      go(then, [...made, op]);
    }
  };
  go(0, []);
  if (!furthest) throw new Error("a job that can be finished has no dead end");
  return furthest;
}
