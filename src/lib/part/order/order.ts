import type { Phrase } from "../../quantity/phrase.ts";
import { say } from "../../quantity/phrase.ts";
import type { Block } from "./block.ts";
import { type Choice, type Fit, Forming } from "./check.ts";
import { deadEnd } from "./dead-end.ts";
import { settleFingers } from "./finger-changes.ts";
import type { Fingers } from "./fingers.ts";
import type { FormingBrake, FormingJob } from "./job.ts";
import { type Remedy, remediesFor } from "./remedies.ts";
import { type OrderCost, search, turnsBetween } from "./search.ts";
import { blockPhrase, foldName } from "./words.ts";

export type PieceSide = "north" | "south" | "east" | "west";

/** One bend of the order. */
export interface OrderStep {
  readonly bend: string;
  /** Face of the blank that is up: `front` is the face that is up when the blank is laid out. */
  readonly faceUp: "front" | "back";
  /** End of the piece that points to the operator and lies on the leaf. */
  readonly onLeaf: PieceSide;
  /** Whether the piece was turned over since the step before. */
  readonly turnedOver: boolean;
  readonly turned: "no" | "end for end" | "quarter";
  readonly fingers: Fingers;
  /** Whether fingers are changed since the step before. */
  readonly changeFingers: boolean;
  readonly goesIn: Fit["goesIn"];
  readonly comesOut: Fit["comesOut"];
  readonly why: Phrase;
  /** Which bends are made before it, one bit each, and how it lies: for drawing the step. */
  readonly made: number;
  readonly choice: Choice;
}

/** A bend that no order can make. */
export interface Trapped {
  readonly bend: string;
  readonly by: Block["by"];
  readonly when: Block["when"];
  /** Angle of the leaf [deg] at which it is met. */
  readonly angle: number;
  /** Panel that meets it. */
  readonly panel: string;
  /** Bends that can be made before; the explanation starts from there. */
  readonly made: readonly string[];
  readonly why: Phrase;
  /** Changes that free it, each tried by searching again. */
  readonly remedies: readonly Remedy[];
}

export type BendOrder =
  | {
      readonly steps: readonly OrderStep[];
      readonly cost: OrderCost;
      /** Tabs to bend by hand before the first step. */
      readonly tabsByHand: readonly string[];
      readonly proved: true;
    }
  | { readonly trapped: Trapped; readonly proved: true }
  | { readonly stopped: true };

const ends: Readonly<Record<"x" | "y", Readonly<Record<1 | -1, PieceSide>>>> = {
  y: { 1: "north", [-1]: "south" },
  x: { 1: "east", [-1]: "west" },
};

/** Why a bend comes where it does: what would stop it after all the others, or only that it is handy. */
function whyNow(forming: Forming, { op }: Choice, made: number): Phrase {
  const others = forming.full & ~(1 << op);
  if (made === 0 && others === 0) return say`The only bend.`;
  if (made === others) return say`Nothing that is bent already is in its way.`;
  const last = ([1, -1] as const).map((outward) => forming.check({ op, outward }, others).block);
  const block = last.every((each) => each !== undefined)
    ? last.toSorted((a, b) => (b?.angle ?? 0) - (a?.angle ?? 0))[0]
    : undefined;
  if (block) return say`Not left to the end: with all the others made, ${blockPhrase(block)}.`;
  return say`It could come later; here the piece is turned least and the fingers are changed least.`;
}

/**
 * The order of bends on a hand brake with removable fingers.
 *
 * @param job - what has to be bent; up to 16 folds
 * @param options.shouldStop - asked now and then; the search ends when it says so
 * @param options.remedies - false to leave out what would free a trapped bend, which takes further searches
 * @returns the cheapest order; or which bend is trapped, by what and at which angle; `proved`: all orders have been looked at or ruled out
 * @throws RangeError for more folds than that
 * @remarks The profile of the part is swung with the leaf in small steps against bed, leaf, fingers, beam and itself. The cost counts,
 *   in this order: times turned over, times turned end for end or by a quarter, changes of fingers, bends in which the larger share of
 *   the sheet swings, inner bends made before outer ones. Derived; common practice for what is counted.
 */
export function bendOrder(
  job: FormingJob,
  brake: FormingBrake,
  options: { readonly shouldStop?: () => boolean; readonly remedies?: boolean } = {},
): BendOrder {
  const forming = new Forming(job, brake);
  const found = search(forming, options.shouldStop);
  if (found.kind === "stopped") return { stopped: true };
  if (found.kind === "order") {
    const { moves, cost } = found;
    const fingers = settleFingers(moves.map(({ fit }) => fit));
    const steps = moves.map(({ choice, made, fit }, index): OrderStep => {
      const { id, chain, faceUp } = forming.operations[choice.op] as Forming["operations"][number];
      const before = moves[index - 1];
      const turns = before ? turnsBetween(forming.operations, before.choice, choice) : { over: false, turned: "no" as const };
      return {
        bend: id,
        faceUp: faceUp ? "front" : "back",
        onLeaf: ends[job.chains[chain]?.axis ?? "y"][choice.outward],
        turnedOver: turns.over,
        turned: turns.turned,
        fingers: fingers[index]?.fingers ?? fit.fingers,
        changeFingers: fingers[index]?.changed ?? false,
        goesIn: fit.goesIn,
        comesOut: fit.comesOut,
        why: whyNow(forming, choice, made),
        made,
        choice,
      };
    });
    const tabsByHand = job.chains.flatMap(({ tabs = [] }) => tabs.map((tab) => tab.id));
    return { steps, cost, tabsByHand, proved: true };
  }
  const { made, choice, block } = deadEnd(forming);
  const { id } = forming.operations[choice.op] as Forming["operations"][number];
  const remedies = options.remedies === false ? [] : remediesFor(job, brake, { bend: id, block }, options.shouldStop);
  return {
    trapped: {
      bend: id,
      by: block.by,
      when: block.when,
      angle: block.angle,
      panel: block.panel,
      made: made.map((op) => forming.operations[op]?.id ?? ""),
      why: say`${foldName(id)} cannot be made: ${blockPhrase(block)}.`,
      remedies,
    },
    proved: true,
  };
}
