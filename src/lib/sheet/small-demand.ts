import type { CutTree } from "./cut-tree.ts";
import { inCorner, tidy } from "./cut-tree.ts";
import type { Lie } from "./model.ts";

/** A plate on offer, in ticks. */
export interface PlateOffer {
  readonly width: number;
  readonly length: number;
  readonly cost: number;
  /** How many there are; Infinity: as many as needed. */
  readonly count: number;
}

/** A rectangle into which a set of pieces can be cut, and how. */
interface Block {
  readonly width: number;
  readonly length: number;
  readonly lie?: Lie;
  readonly across?: "width" | "length";
  readonly first?: Block;
  readonly second?: Block;
}

/** Adds a block unless another is no larger both ways; drops those that it makes needless. */
function addBlock(front: Block[], block: Block): void {
  for (const each of front) if (each.width <= block.width && each.length <= block.length) return;
  let kept = 0;
  for (const each of front)
    if (each.width < block.width || each.length < block.length) {
      front[kept] = each;
      kept += 1;
    }
  front.length = kept;
  front.push(block);
}

function treeOfBlock(block: Block, longestCut: number): CutTree {
  const { lie, first, second, across, width, length } = block;
  if (lie) return { kind: "piece", piece: lie.piece, turned: lie.turned, width, length };
  if (!first || !second || !across) throw new Error("a block is a piece or made of two blocks");
  const parts = [first, second].map((part) => {
    const inner = treeOfBlock(part, longestCut);
    return across === "width" ? inCorner(inner, part.width, length, longestCut) : inCorner(inner, width, part.length, longestCut);
  });
  return { kind: "split", across, width, length, parts };
}

/** Every set of pieces that can be wanted, each with the smallest rectangles that hold it. */
interface Sets {
  readonly states: number;
  readonly fronts: readonly (readonly Block[])[];
  readonly digits: (state: number) => number[];
  /** Calls back for each part of a set, as its state. */
  parts(state: number, each: (part: number) => void): void;
}

/** Work of trying every part of every set: the product over all pieces of (n + 1)(n + 2) / 2. */
const pairs = (counts: readonly number[]) => counts.reduce((product, count) => (product * (count + 1) * (count + 2)) / 2, 1);

function setsOf(
  lies: readonly Lie[],
  counts: readonly number[],
  plates: readonly { readonly width: number; readonly length: number }[],
  longestCut: number,
  mostWork: number,
): Sets | undefined {
  let work = pairs(counts);
  if (work > mostWork) return undefined;
  const weights: number[] = [];
  let states = 1;
  for (const count of counts) {
    weights.push(states);
    states *= count + 1;
  }
  const digits = (state: number) => counts.map((count, index) => Math.floor(state / (weights[index] as number)) % (count + 1));
  const parts = (state: number, each: (part: number) => void): void => {
    const whole = digits(state);
    const now = new Array<number>(counts.length).fill(0);
    let part = 0;
    for (;;) {
      each(part);
      let at = 0;
      while (at < now.length && now[at] === whole[at]) {
        part -= (now[at] as number) * (weights[at] as number);
        now[at] = 0;
        at += 1;
      }
      if (at === now.length) return;
      now[at] = (now[at] as number) + 1;
      part += weights[at] as number;
    }
  };
  const fits = (width: number, length: number) => plates.some((plate) => width <= plate.width && length <= plate.length);
  const areaOfOne = counts.map((_, piece) => {
    const lie = lies.find((each) => each.piece === piece);
    return lie ? lie.width * lie.length : 0;
  });
  const largestArea = Math.max(...plates.map(({ width, length }) => width * length));
  const fronts: Block[][] = Array.from({ length: states }, () => []);

  for (let state = 1; state < states; state += 1) {
    const set = digits(state);
    const area = set.reduce((sum, count, piece) => sum + count * (areaOfOne[piece] as number), 0);
    if (area > largestArea) continue;
    const front = fronts[state] as Block[];
    const pieces = set.reduce((sum, count) => sum + count, 0);
    if (pieces === 1) {
      const piece = set.indexOf(1);
      for (const lie of lies)
        if (lie.piece === piece && fits(lie.width, lie.length)) addBlock(front, { width: lie.width, length: lie.length, lie });
      continue;
    }
    parts(state, (part) => {
      if (part === 0 || 2 * part > state) return;
      const one = fronts[part] as Block[];
      const two = fronts[state - part] as Block[];
      work += one.length * two.length;
      for (const first of one)
        for (const second of two) {
          const [width, length] = [first.width + second.width, Math.max(first.length, second.length)];
          if (length <= longestCut && fits(width, length)) addBlock(front, { width, length, across: "width", first, second });
          const [w, l] = [Math.max(first.width, second.width), first.length + second.length];
          if (w <= longestCut && fits(w, l)) addBlock(front, { width: w, length: l, across: "length", first, second });
        }
    });
    if (work > mostWork) return undefined;
  }
  return { states, fronts, digits, parts };
}

export interface SmallPlan {
  readonly cost: number;
  readonly layouts: readonly { readonly plate: number; readonly tree: CutTree }[];
}

/**
 * The cheapest plates for a small set of pieces, by trying every way.
 * For every part of the set it keeps the smallest rectangles that hold it, made of two smaller parts side by side; then it
 * shares the whole set out over plates. All in ticks.
 *
 * @returns the plan, which no other beats; `"none"` when the plates do not suffice; undefined when it is not a small set after all
 * @throws Error only for a fault of its own
 */
export function cheapestForSmall(
  lies: readonly Lie[],
  counts: readonly number[],
  plates: readonly PlateOffer[],
  longestCut: number,
  mostWork: number,
): SmallPlan | "none" | undefined {
  const limited = plates.flatMap((plate, index) =>
    plate.count === Infinity ? [] : new Array<number>(Math.min(plate.count, 40)).fill(index),
  );
  const free = plates.flatMap((plate, index) => (plate.count === Infinity ? [index] : []));
  const sharing = pairs(counts) * (1 + limited.length);
  if (limited.length >= 40 || sharing > mostWork) return undefined;
  const sets = setsOf(lies, counts, plates, longestCut, mostWork);
  if (!sets) return undefined;
  const { states, fronts, parts } = sets;
  const held = (state: number, plate: PlateOffer) =>
    (fronts[state] as readonly Block[]).find((block) => block.width <= plate.width && block.length <= plate.length);

  interface Use {
    readonly plate: number;
    readonly part: number;
  }
  // Limited plates one after the other, each used once or not; then as many free ones as it takes.
  const stages: { readonly cost: Float64Array; readonly use: (Use | undefined)[] }[] = [];
  const empty = new Float64Array(states).fill(Infinity);
  empty[0] = 0;
  let before = empty;
  const stage = (plate: number, from: (cost: Float64Array) => Float64Array): void => {
    const offer = plates[plate] as PlateOffer;
    const cost = Float64Array.from(before);
    const use = new Array<Use | undefined>(states).fill(undefined);
    const source = from(cost);
    const fits = Array.from({ length: states }, (_, state) => state > 0 && held(state, offer) !== undefined);
    for (let state = 1; state < states; state += 1)
      parts(state, (part) => {
        if (!fits[part]) return;
        const sum = (source[state - part] as number) + offer.cost;
        if (sum < (cost[state] as number) - 1e-12) {
          cost[state] = sum;
          use[state] = { plate, part };
        }
      });
    stages.push({ cost, use });
    before = cost;
  };
  for (const plate of limited) {
    const earlier = before;
    stage(plate, () => earlier);
  }
  // A free plate may follow another of its own kind: it reads the costs it is just writing.
  for (const plate of free) stage(plate, (cost) => cost);

  const all = states - 1;
  const cost = before[all] as number;
  if (cost === Infinity) return "none";
  const layouts: { plate: number; tree: CutTree }[] = [];
  let state = all;
  for (let at = stages.length - 1; at >= 0; at -= 1) {
    const { use } = stages[at] as (typeof stages)[number];
    const again = at >= limited.length;
    for (let used = use[state]; used; used = again ? use[state] : undefined) {
      const plate = plates[used.plate] as PlateOffer;
      const block = held(used.part, plate);
      if (!block) throw new Error("a set that was counted as fitting must fit");
      layouts.push({
        plate: used.plate,
        tree: tidy(inCorner(treeOfBlock(block, longestCut), plate.width, plate.length, longestCut)),
      });
      state -= used.part;
    }
  }
  return { cost, layouts };
}

/**
 * The most valuable set of pieces out of one plate when there are only so many of each, by trying every set. In ticks.
 *
 * @returns undefined when it is not a small set
 */
export function bestForSmall(
  lies: readonly Lie[],
  counts: readonly number[],
  values: readonly number[],
  plate: { readonly width: number; readonly length: number },
  longestCut: number,
  mostWork: number,
): { readonly value: number; readonly tree: CutTree } | undefined {
  const sets = setsOf(lies, counts, [plate], longestCut, mostWork);
  if (!sets) return undefined;
  let best = { value: 0, block: undefined as Block | undefined };
  for (let state = 1; state < sets.states; state += 1) {
    const [block] = sets.fronts[state] as readonly Block[];
    if (!block) continue;
    const value = sets.digits(state).reduce((sum, count, piece) => sum + count * (values[piece] ?? 0), 0);
    if (value > best.value) best = { value, block };
  }
  const { block } = best;
  if (!block) return { value: 0, tree: { kind: "rest", ...plate } };
  return {
    value: best.value,
    tree: tidy(inCorner(treeOfBlock(block, longestCut), plate.width, plate.length, longestCut)),
  };
}
