import { InputError } from "../input-error.ts";
import { say } from "../quantity/phrase.ts";
import { patternTable } from "./best-pattern.ts";
import { atMost, type CutTree, countPieces, tidy } from "./cut-tree.ts";
import { blockRules, fitRules, greedyFill, splitRules } from "./greedy-fill.ts";
import { checkJob, insideTrim, liesOf, mostPieces, mostSingle, type SheetJob, ticks, worthOf } from "./model.ts";
import { seededRandom } from "./random.ts";
import { longestUsableCut } from "./shear-reach.ts";
import { bestForSmall } from "./small-demand.ts";
import { tooSmallToHold } from "./tree-handling.ts";

export interface FillPlan {
  /** Number of the sheet in the job. */
  readonly sheet: number;
  /** Inside the trim, in ticks. */
  readonly tree: CutTree;
  /** What the pieces are worth together. */
  readonly value: number;
  /** No plan is worth more. */
  readonly bound: number;
  readonly proved: boolean;
}

export interface FillProgress {
  readonly plan?: FillPlan;
  readonly doing: "comparing cuts" | "laying out" | "weighing";
}

export interface FillEffort {
  /** Work after which to be content with the best so far, in sums compared; about 3e8 a second. */
  readonly work?: number;
  readonly seed?: number;
}

const usualWork = 3e8;
/** Share of the work that goes into trying every set of a small choice. */
const smallShare = 1 / 50;

/**
 * The most valuable pieces that cuts from edge to edge can make of one sheet: any number of those without a count, at most so
 * many of those with one. Of several sheets the one with the most value for its area inside the trim is filled.
 *
 * Exact where the pieces are free in number, and where the choice is small; otherwise the best of many tries, with a bound from
 * prices on the pieces that there are too few of. Yields the best so far.
 *
 * @throws InputError for a job that cannot be worked with
 */
export function* fillOneSheet(job: SheetJob, effort: FillEffort = {}): Generator<FillProgress, FillPlan> {
  checkJob(job, "fill-one-sheet");
  checkNumber(job);
  let best: FillPlan | undefined;
  const share = ({ sheet, value }: FillPlan) => {
    const { width, length } = insideTrim(job.sheets[sheet] as SheetJob["sheets"][number], job.trim);
    return value / (width * length);
  };
  for (const [index, sheet] of job.sheets.entries()) {
    const { width, length } = insideTrim(sheet, job.trim);
    if (sheet.count === 0 || width === 0 || length === 0) continue;
    const plan = yield* fillSheet(job, index, effort);
    if (!best || share(plan) > share(best)) best = plan;
  }
  if (!best) throw new Error("a piece fits a sheet, so there is one to fill");
  return best;
}

/** Without a count a piece must not be so small that thousands of it fill a sheet. @throws InputError naming that piece */
function checkNumber({ sheets, trim, pieces }: SheetJob): void {
  const areas = sheets.map((sheet) => insideTrim(sheet, trim)).map(({ width, length }) => width * length);
  pieces.forEach(({ name, width, length, count }, index) => {
    if (count === undefined && Math.max(...areas) > mostPieces * ticks(width) * ticks(length))
      throw new InputError(
        `pieces.${index}.count`,
        undefined,
        say`More than ${mostPieces} of ${name === "" ? `piece ${index + 1}` : `“${name}”`} could come out of one sheet. Enter how many there may be.`,
      );
  });
}

function* fillSheet(job: SheetJob, sheet: number, effort: FillEffort): Generator<FillProgress, FillPlan> {
  const plate = insideTrim(job.sheets[sheet] as SheetJob["sheets"][number], job.trim);
  const lies = job.pieces.flatMap(liesOf).filter((lie) => lie.width <= plate.width && lie.length <= plate.length);
  const worth = job.pieces.map(worthOf);
  const area = plate.width * plate.length;
  const counts = job.pieces.map(({ count }, piece) => {
    const lie = lies.find((each) => each.piece === piece);
    return lie ? Math.min(count ?? Infinity, Math.floor(area / (lie.width * lie.length))) : 0;
  });
  const longestCut = longestUsableCut(job);
  const shortestHold = job.shear ? ticks(job.shear.shortestHold) : 0;
  const mostWork = effort.work ?? usualWork;
  const random = seededRandom(effort.seed ?? 1);
  const valueOfTree = (tree: CutTree) =>
    countPieces(tree, worth.length).reduce((sum, count, piece) => sum + count * (worth[piece] as number), 0);

  let best: { readonly tree: CutTree; readonly value: number; readonly faults: number } | undefined;
  let bound = Infinity;
  let work = 0;
  const offer = (loose: CutTree) => {
    const value = valueOfTree(loose);
    if (best && value < best.value * (1 - 1e-12)) return;
    const tree = tidy(loose);
    const faults = shortestHold > 0 ? tooSmallToHold(tree, shortestHold) : 0;
    if (!best || value > best.value * (1 + 1e-12) || faults < best.faults) best = { tree, value, faults };
  };
  const plan = (): FillPlan => {
    if (!best) throw new Error("nothing was laid out yet");
    const { tree, value } = best;
    return { sheet, tree, value, bound: Math.max(bound, value), proved: value >= bound * (1 - 1e-12) };
  };

  const setting = { ...plate, lies, counts, longestCut, mostWork: mostWork / 2 };
  const exact = patternTable(setting);
  // A table that is rounded anyway need not be large: it is run again and again.
  const table = exact.coarse ? patternTable({ ...setting, mostWork: mostWork / 40 }) : exact;
  yield { doing: "comparing cuts" };
  const { tree } = table.best(worth);
  const densest = lies.reduce((most, lie) => Math.max(most, (worth[lie.piece] as number) / (lie.width * lie.length)), 0);
  // Nor can a plan be worth more than all the pieces there are.
  const everything = counts.reduce((sum, count, piece) => sum + count * (worth[piece] as number), 0);
  bound = Math.min(table.bound(worth), densest * area, everything);
  work += table.work;
  offer(atMost(tree, counts));
  const free = countPieces(tree, worth.length).every((count, piece) => count <= (counts[piece] as number));
  if (free && !table.coarse) {
    if (best && best.faults > 0) {
      // The same worth may be had by cuts that leave enough to hold.
      const held = patternTable({ ...setting, shortestHold });
      yield { plan: plan(), doing: "comparing cuts" };
      const another = held.best(worth).tree;
      if (countPieces(another, worth.length).every((count, piece) => count <= (counts[piece] as number))) offer(another);
    }
    return plan();
  }

  yield { plan: plan(), doing: "laying out" };

  /** Fills what is left over with pieces of which there are still some. */
  const refill = (first: CutTree, order: readonly number[], rules: Parameters<typeof greedyFill>[3]): CutTree => {
    const left = countPieces(first, worth.length).map((count, piece) => (counts[piece] as number) - count);
    const visit = (node: CutTree): CutTree => {
      if (node.kind === "split") return { ...node, parts: node.parts.map(visit) };
      if (node.kind === "piece") return node;
      const offers = [{ width: node.width, length: node.length, cost: 1, count: 1 }];
      const fits = lies.filter((lie) => lie.width <= node.width && lie.length <= node.length);
      if (fits.every(({ piece }) => left[piece] === 0)) return node;
      const filled = greedyFill(fits, left, offers, { ...rules, order }, longestCut);
      work += filled.work;
      const [only] = filled.sheets;
      if (!only) return node;
      filled.left.forEach((count, piece) => {
        left[piece] = count;
      });
      return only.tree;
    };
    return visit(first);
  };
  const all = counts.reduce((sum, count) => sum + count, 0);
  const blocks = all > mostSingle ? blockRules.filter((rule) => rule !== "single") : blockRules;
  const pieces = worth.map((_, piece) => piece);
  const density = pieces.map((piece) => {
    const { width, length } = job.pieces[piece] as SheetJob["pieces"][number];
    return (worth[piece] as number) / (width * length);
  });
  const byDensity = [...pieces].sort((a, b) => (density[b] as number) - (density[a] as number));
  const bySize = [...pieces].sort((a, b) => (worth[b] as number) - (worth[a] as number));
  const whole: CutTree = { kind: "rest", ...plate };
  for (const order of [byDensity, bySize])
    for (const block of blocks)
      for (const fit of fitRules)
        for (const split of splitRules) {
          if (plan().proved && best?.faults === 0) continue;
          offer(refill(whole, order, { order, block, fit, split }));
        }
  yield { plan: plan(), doing: "laying out" };
  if (plan().proved) return plan();

  const small = bestForSmall(lies, counts, worth, plate, longestCut, smallShare * mostWork);
  if (small) {
    offer(small.tree);
    bound = Math.min(bound, small.value);
    return plan();
  }

  // Prices on the pieces of which too many are taken: worth less the price bounds every plan, and points to other plans.
  const prices = worth.map(() => 0);
  for (let round = 0; round < 60 && work < mostWork && plan().value < bound * (1 - 1e-9); round += 1) {
    const priced = worth.map((value, piece) => Math.max(0, value - (prices[piece] as number)));
    const found = table.best(priced);
    const over = countPieces(found.tree, worth.length).map((count, piece) => count - (counts[piece] as number));
    const paid = prices.reduce((sum, price, piece) => sum + price * (counts[piece] as number), 0);
    bound = Math.min(bound, table.bound(priced) + paid);
    // Building, sorting and thinning out a tree costs about a thousand sums a piece.
    work += table.work + 1000 * over.reduce((sum, each, piece) => sum + each + (counts[piece] as number), 0);
    const first = atMost(found.tree, counts);
    for (const order of [byDensity, bySize])
      offer(refill(first, order, { order, block: "line", fit: "area", split: "long-first" }));
    const square = over.reduce((sum, each, piece) => sum + (each > 0 || (prices[piece] as number) > 0 ? each * each : 0), 0);
    if (square === 0) break;
    const step = ((bound - plan().value) / square) * (round < 20 ? 1 : 0.5);
    over.forEach((each, piece) => {
      prices[piece] = Math.min(worth[piece] as number, Math.max(0, (prices[piece] as number) + step * each));
    });
    yield { plan: plan(), doing: "weighing" };
  }

  const pick = <T>(from: readonly T[]) => from[Math.floor(random() * from.length)] as T;
  for (let tries = 0; tries < 400 && work < mostWork && plan().value < bound * (1 - 1e-9); tries += 1) {
    const order = pick([byDensity, bySize])
      .map((piece, at) => ({ piece, at: at + (random() - 0.5) * random() * pieces.length }))
      .sort((a, b) => a.at - b.at)
      .map(({ piece }) => piece);
    offer(refill(whole, order, { order, block: pick(blocks), fit: pick(fitRules), split: pick(splitRules) }));
    if (tries % 20 === 0) yield { plan: plan(), doing: "laying out" };
  }
  return plan();
}
