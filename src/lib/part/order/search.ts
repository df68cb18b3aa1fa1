import type { Choice, Fit, Forming, Operation } from "./check.ts";
import { FingersInPlace } from "./finger-changes.ts";

/**
 * What an order costs, compared from the first figure to the last: times turned over, times turned otherwise, changes of fingers,
 * bends in which the larger share of the sheet swings, and inner bends made before outer ones of the same side.
 */
export interface OrderCost {
  readonly turnedOver: number;
  readonly turned: number;
  readonly fingerChanges: number;
  readonly largerSwings: number;
  readonly innerFirst: number;
}

const weights: OrderCost = { turnedOver: 1e9, turned: 1e7, fingerChanges: 1e5, largerSwings: 1000, innerFirst: 1 };

/** One number that puts costs in order: with up to 16 folds no figure but the first reaches the unit of the next. */
export const costNumber = (cost: OrderCost) =>
  (Object.keys(weights) as (keyof OrderCost)[]).reduce((sum, key) => sum + weights[key] * cost[key], 0);

function costOf(sum: number): OrderCost {
  const part = (unit: number, next: number) => Math.floor((sum % next) / unit);
  return {
    turnedOver: Math.floor(sum / weights.turnedOver),
    turned: part(weights.turned, weights.turnedOver),
    fingerChanges: part(weights.fingerChanges, weights.turned),
    largerSwings: part(weights.largerSwings, weights.fingerChanges),
    innerFirst: part(1, weights.largerSwings),
  };
}

export interface Move {
  readonly choice: Choice;
  /** Bends made before it. */
  readonly made: number;
  readonly fit: Fit;
}

export type Search =
  | { readonly kind: "order"; readonly moves: readonly Move[]; readonly cost: OrderCost }
  | { readonly kind: "trapped" }
  | { readonly kind: "stopped" };

/** How a piece is turned from one bend to the next. */
export function turnsBetween(
  operations: readonly Operation[],
  earlier: Choice,
  later: Choice,
): { readonly over: boolean; readonly turned: "no" | "end for end" | "quarter" } {
  const [a, b] = [operations[earlier.op], operations[later.op]] as [Operation, Operation];
  const over = a.faceUp !== b.faceUp;
  if (a.chain !== b.chain) return { over, turned: "quarter" };
  // A piece that is turned over may come to lie with either end in front, so end for end costs nothing then.
  return { over, turned: !over && earlier.outward !== later.outward ? "end for end" : "no" };
}

/** Times fingers are taken out and put back because a piece does not pass them. */
export const takenOut = ({ goesIn, comesOut }: Fit) => (goesIn === "with fingers" || comesOut === "with fingers" ? 1 : 0);

/** Outer folds of the same side that are still flat when this one is made. */
export function innerFirst(forming: Forming, op: number, made: number): number {
  const { chain, hinge } = forming.operations[op] as Operation;
  const base = forming.chains[chain]?.baseIndex ?? 0;
  let count = 0;
  forming.operations.forEach((other, bit) => {
    if (other.chain !== chain || (made & (1 << bit)) !== 0) return;
    if (hinge >= base ? other.hinge > hinge : other.hinge < hinge) count += 1;
  });
  return count;
}

/** A heap by cost, then by the number of bends left, then by age: the same job always gives the same order. */
class Frontier {
  private readonly keys: number[] = [];
  private readonly ties: number[] = [];
  private readonly nodes: number[] = [];
  private age = 0;

  get size(): number {
    return this.keys.length;
  }

  private before(a: number, b: number): boolean {
    const [ka, kb] = [this.keys[a] as number, this.keys[b] as number];
    return ka < kb || (ka === kb && (this.ties[a] as number) < (this.ties[b] as number));
  }

  private swap(a: number, b: number): void {
    for (const list of [this.keys, this.ties, this.nodes]) [list[a], list[b]] = [list[b] as number, list[a] as number];
  }

  push(key: number, left: number, node: number): void {
    this.keys.push(key);
    this.age += 1;
    this.ties.push(left * 1e9 + this.age);
    this.nodes.push(node);
    for (let at = this.keys.length - 1; at > 0; ) {
      const up = (at - 1) >> 1;
      if (!this.before(at, up)) break;
      this.swap(at, up);
      at = up;
    }
  }

  pop(): { key: number; node: number } {
    const top = { key: this.keys[0] as number, node: this.nodes[0] as number };
    const last = this.keys.length - 1;
    this.swap(0, last);
    this.keys.pop();
    this.ties.pop();
    this.nodes.pop();
    for (let at = 0; ; ) {
      let least = at;
      for (const child of [2 * at + 1, 2 * at + 2]) if (child < last && this.before(child, least)) least = child;
      if (least === at) return top;
      this.swap(at, least);
      at = least;
    }
  }
}

const bitsOf = (mask: number) => {
  let count = 0;
  for (let rest = mask; rest; rest &= rest - 1) count += 1;
  return count;
};

/** How often the search asks whether it should stop. */
const askEvery = 64;

/**
 * The cheapest order, searched from the finished piece backwards: late bends have most in their way, so dead ends show first.
 * Best first with a bound that never overestimates, so the first order found is the cheapest.
 */
export function search(forming: Forming, shouldStop?: () => boolean): Search {
  const { operations, full } = forming;
  const count = operations.length;
  if (count === 0) return { kind: "order", moves: [], cost: costOf(0) };
  const upBits = operations.reduce((bits, { faceUp }, op) => (faceUp ? bits | (1 << op) : bits), 0);
  const firstChain = operations.reduce((bits, { chain }, op) => (chain === 0 ? bits | (1 << op) : bits), 0);

  /** Turns that the bends of `mask` still need, whatever their order, when `op` is made after them. */
  const leastCost = (mask: number, op: number) => {
    const { faceUp, chain } = operations[op] as Operation;
    const over = faceUp ? mask & ~upBits : mask & upBits;
    const quarter = chain === 0 ? mask & ~firstChain : mask & firstChain;
    return (over ? weights.turnedOver : 0) + (quarter ? weights.turned : 0);
  };

  // A bend that has just been made and the bends made before it; a node adds which fingers are in place.
  const width = 2 * count;
  const stepOf = (made: number, { op, outward }: Choice) => made * width + 2 * op + (outward === 1 ? 0 : 1);
  const choiceOf = (step: number): Choice => {
    const rest = step % width;
    return { op: rest >> 1, outward: rest % 2 === 0 ? 1 : -1 };
  };
  const madeOf = (step: number) => Math.floor(step / width);
  const inPlace = new FingersInPlace();
  const nodeOf = (step: number, fingers: number) => fingers * steps + step;
  const steps = (full + 1) * width;
  const best = new Map<number, number>();
  const next = new Map<number, number>();
  const fits = new Map<number, Fit | null>();
  const fitOf = (step: number) => {
    let fit = fits.get(step);
    if (fit === undefined) {
      fit = forming.check(choiceOf(step), madeOf(step)).fit ?? null;
      fits.set(step, fit);
    }
    return fit;
  };
  /** What a bend costs by itself. */
  const own = (step: number, fit: Fit) => {
    const choice = choiceOf(step);
    return (
      takenOut(fit) * weights.fingerChanges +
      (forming.swingsLarger(choice) ? weights.largerSwings : 0) +
      innerFirst(forming, choice.op, madeOf(step)) * weights.innerFirst
    );
  };

  const frontier = new Frontier();
  const offer = (step: number, fingers: number, cost: number, after: number | undefined) => {
    const node = nodeOf(step, fingers);
    const known = best.get(node);
    if (known !== undefined && known <= cost) return;
    best.set(node, cost);
    if (after !== undefined) next.set(node, after);
    const made = madeOf(step);
    frontier.push(cost + leastCost(made, choiceOf(step).op), bitsOf(made), node);
  };
  const eachLast = (mask: number, visit: (step: number, choice: Choice, fit: Fit) => void) => {
    for (let op = 0; op < count; op += 1)
      if (mask & (1 << op))
        for (const outward of [1, -1] as const) {
          const choice = { op, outward };
          const step = stepOf(mask & ~(1 << op), choice);
          const fit = fitOf(step);
          if (fit) visit(step, choice, fit);
        }
  };

  eachLast(full, (step, _, fit) => {
    offer(step, inPlace.last(fit), own(step, fit), undefined);
  });
  const closed = new Set<number>();
  while (frontier.size > 0) {
    const { node } = frontier.pop();
    if (closed.has(node)) continue;
    closed.add(node);
    if (shouldStop && closed.size % askEvery === 0 && shouldStop()) return { kind: "stopped" };
    const cost = best.get(node) as number;
    const step = node % steps;
    const made = madeOf(step);
    if (made === 0) {
      const moves: Move[] = [];
      for (let at: number | undefined = node; at !== undefined; at = next.get(at))
        moves.push({ choice: choiceOf(at % steps), made: madeOf(at % steps), fit: fitOf(at % steps) as Fit });
      return { kind: "order", moves, cost: costOf(cost) };
    }
    const choice = choiceOf(step);
    eachLast(made, (earlier, earlierChoice, fit) => {
      const { over, turned } = turnsBetween(operations, earlierChoice, choice);
      const { state, changed } = inPlace.before(Math.floor(node / steps), fit);
      const turning = (over ? weights.turnedOver : 0) + (turned === "no" ? 0 : weights.turned);
      offer(earlier, state, cost + own(earlier, fit) + turning + (changed ? weights.fingerChanges : 0), node);
    });
  }
  return { kind: "trapped" };
}
