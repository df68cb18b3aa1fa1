import { InputError } from "../input-error.ts";
import { say } from "../quantity/phrase.ts";
import { type PatternTable, patternTable } from "./best-pattern.ts";
import { type Column, coverProgram } from "./cover-program.ts";
import { atMost, type CutTree, countPieces, largestRest, signature, tidy } from "./cut-tree.ts";
import { blockRules, fitRules, type GreedyRules, greedyFill, splitRules } from "./greedy-fill.ts";
import { checkJob, costOf, insideTrim, type Lie, liesOf, mostSingle, type SheetJob, ticks } from "./model.ts";
import { seededRandom } from "./random.ts";
import { longestUsableCut } from "./shear-reach.ts";
import { areaBound, plateBound } from "./sheet-bounds.ts";
import { cheapestForSmall, type PlateOffer } from "./small-demand.ts";
import { settingsNeeded, tooSmallToHold } from "./tree-handling.ts";

/** Sheets that are cut alike. */
export interface Layout {
  /** Number of the sheet in the job. */
  readonly sheet: number;
  readonly times: number;
  /** Inside the trim, in ticks. */
  readonly tree: CutTree;
}

export interface SheetPlan {
  readonly layouts: readonly Layout[];
  /** Sheets in all. */
  readonly sheets: number;
  /** Cost of the sheets: their number when there is one size, else the sum of their costs. */
  readonly cost: number;
  /** No plan costs less than this. */
  readonly bound: number;
  /** The cost is the bound: no plan is better. */
  readonly proved: boolean;
}

/** How far the work is. */
export interface SheetProgress {
  /** Best plan so far, if any. */
  readonly plan?: SheetPlan;
  readonly bound: number;
  readonly doing: "laying out" | "trying all" | "pricing" | "rounding" | "repacking";
}

export interface SheetEffort {
  /** Work after which to be content with the best so far, in sums compared; about 3e8 a second. */
  readonly work?: number;
  /** For the random part; the same seed gives the same plan. */
  readonly seed?: number;
}

/** Work that is enough for a class set, and does not keep anybody waiting. */
export const usualWork = 2e8;
/** Work spent on a handier order of cuts when no plan needs fewer sheets. */
const handyWork = 2e7;
/** Work of trying every share-out of a small demand. */
const smallWork = 4e6;
/** Work of one pricing run. */
const pricingWork = 2e7;

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

interface Cut {
  readonly plate: number;
  readonly tree: CutTree;
}

/**
 * A complete set of cut sheets with what it is judged by: cost first, then plates that the shear cannot hold for their last
 * cut, then settings of the stop, then the largest part left over in one piece.
 */
interface Candidate {
  readonly cuts: readonly Cut[];
  readonly cost: number;
  readonly faults: number;
  readonly settings: number;
  readonly rest: number;
}

function better(a: Candidate, b: Candidate): boolean {
  if (Math.abs(a.cost - b.cost) > 1e-9) return a.cost < b.cost;
  if (a.faults !== b.faults) return a.faults < b.faults;
  if (a.settings !== b.settings) return a.settings < b.settings;
  return a.rest > b.rest;
}

/** Orders in which to lay the pieces: what is hard to place comes first. */
function orders(lies: readonly Lie[], pieces: number): number[][] {
  const first = Array.from({ length: pieces }, (_, piece) => lies.find((lie) => lie.piece === piece) as Lie);
  const by = (measure: (lie: Lie) => number) =>
    first.map((_, piece) => piece).sort((a, b) => measure(first[b] as Lie) - measure(first[a] as Lie));
  const all = [
    by(({ width, length }) => width * length),
    by(({ width, length }) => Math.max(width, length)),
    by(({ width }) => width),
    by(({ length }) => length),
    by(({ width, length }) => width + length),
    by(({ width, length }) => Math.min(width, length)),
  ];
  const seen = new Set<string>();
  return all.filter((order) => {
    const key = order.join();
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** Step to which a sum of costs can only come: 1 for numbers of sheets; undefined when costs are of any kind. */
function costStep(plates: readonly PlateOffer[]): number | undefined {
  if (!plates.every(({ cost }) => Number.isInteger(cost))) return undefined;
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  return plates.reduce((common, { cost }) => divisor(common, cost), 0);
}

/**
 * The fewest sheets, or the cheapest where there are several sizes, that give all the pieces by cuts from edge to edge.
 * Works step by step and yields the best plan so far with its bound, so that it can be shown and stopped at any time.
 *
 * First many quick layouts; then, for small demands, every share-out; then patterns priced by a linear program, which gives a
 * bound that no plan can undercut, and rounded into plans; then groups of sheets are taken apart and packed anew.
 *
 * @throws InputError for a job that cannot be worked with, and when the sheets there are do not hold the pieces
 * @remarks Source: pattern generation, Gilmore and Gomory 1961, 1965; the bound from prices that are not yet the best, Farley
 * 1990, A note on bounding a class of linear programming problems; all from memory.
 */
export function* fewestSheets(job: SheetJob, effort: SheetEffort = {}): Generator<SheetProgress, SheetPlan> {
  checkJob(job, "fewest-sheets");
  const counts = job.pieces.map(({ count = 0 }) => count);
  const lies = job.pieces.flatMap(liesOf);
  const longestCut = longestUsableCut(job);
  const shortestHold = job.shear ? ticks(job.shear.shortestHold) : 0;
  const available = job.sheets.flatMap((sheet, index) => (sheet.count === 0 ? [] : [index]));
  const single = available.length === 1;
  const plates: PlateOffer[] = available.map((index) => {
    const sheet = job.sheets[index] as SheetJob["sheets"][number];
    return { ...insideTrim(sheet, job.trim), cost: single ? 1 : costOf(sheet), count: sheet.count ?? Infinity };
  });
  const step = costStep(plates);
  const raise = (bound: number) => (step ? step * Math.ceil(bound / step - 1e-6) : bound);
  const mostWork = effort.work ?? usualWork;
  const random = seededRandom(effort.seed ?? 1);

  let work = 0;
  let bound = raise(areaBound(lies, counts, plates));
  if (single) bound = Math.max(bound, raise(plateBound(lies, counts, plates[0] as PlateOffer)));
  let best: Candidate | undefined;

  const costOfCuts = (cuts: readonly Cut[]) => sum(cuts.map(({ plate }) => (plates[plate] as PlateOffer).cost));
  const offer = (cuts: readonly Cut[]) => {
    const cost = costOfCuts(cuts);
    if (best && cost > best.cost + 1e-9) return;
    const tidied = cuts.map((cut) => ({ ...cut, tree: tidy(cut.tree) }));
    const trees = tidied.map(({ tree }) => tree);
    const now: Candidate = {
      cuts: tidied,
      cost,
      faults: shortestHold > 0 ? sum(trees.map((tree) => tooSmallToHold(tree, shortestHold))) : 0,
      settings: settingsNeeded(trees),
      rest: Math.max(0, ...trees.map(largestRest)),
    };
    if (!best || better(now, best)) best = now;
  };
  const done = () => best !== undefined && best.cost <= bound * (1 + 1e-9);
  const progress = (doing: SheetProgress["doing"]): SheetProgress =>
    best ? { plan: planOf(best), bound, doing } : { bound, doing };

  function planOf({ cuts, cost }: Candidate): SheetPlan {
    const alike = new Map<string, Layout>();
    for (const { plate, tree } of cuts) {
      const sheet = available[plate] as number;
      const key = `${sheet}:${signature(tree)}`;
      alike.set(key, { sheet, tree, times: (alike.get(key)?.times ?? 0) + 1 });
    }
    const used = ({ tree }: Layout) => sum(countPieces(tree, counts.length).map((n, piece) => n * areaOf(piece)));
    const layouts = [...alike.values()].sort((a, b) => a.sheet - b.sheet || used(b) - used(a));
    return { layouts, sheets: cuts.length, cost, bound, proved: cost <= bound * (1 + 1e-9) };
  }
  const areaOf = (piece: number) => {
    const lie = lies.find((each) => each.piece === piece) as Lie;
    return lie.width * lie.length;
  };

  // One by one, thousands of pieces make a tree too deep to walk, and a plan that nobody wants to cut.
  const blocks = sum(counts) > mostSingle ? blockRules.filter((rule) => rule !== "single") : blockRules;
  // Orders in which a new sheet is chosen: cheapest area first, smallest first, largest first.
  const plateOrders = single
    ? [[0]]
    : [
        (plate: PlateOffer) => plate.cost / (plate.width * plate.length),
        (plate: PlateOffer) => plate.width * plate.length,
        (plate: PlateOffer) => -plate.width * plate.length,
      ].map((measure) =>
        plates.map((_, index) => index).sort((a, b) => measure(plates[a] as PlateOffer) - measure(plates[b] as PlateOffer)),
      );
  /** Lays out some of the pieces; undefined when not all find a place. */
  const lay = (wanted: readonly number[], rules: GreedyRules, order: readonly number[], stock: readonly PlateOffer[]) => {
    const result = greedyFill(
      lies,
      wanted,
      order.map((plate) => stock[plate] as PlateOffer),
      rules,
      longestCut,
    );
    work += result.work;
    if (result.left.some((left) => left > 0)) return undefined;
    return result.sheets.map(({ plate, tree }): Cut => ({ plate: order[plate] as number, tree }));
  };

  // ---- quick layouts ----
  for (const order of orders(lies, counts.length)) {
    for (const block of blocks)
      for (const fit of fitRules)
        for (const split of splitRules)
          for (const stockOrder of plateOrders) {
            if (best !== undefined && work > mostWork / 3) continue;
            const cuts = lay(counts, { order, block, fit, split }, stockOrder, plates);
            if (cuts) offer(cuts);
          }
    yield progress("laying out");
    // What follows could only make a plan handier that is the best already.
    if (done() && best?.faults === 0 && work > handyWork) break;
  }
  if (done()) return planOf(best as Candidate);

  // ---- every share-out of a small demand ----
  const small = cheapestForSmall(lies, counts, plates, longestCut, smallWork);
  if (small === "none" && longestCut === Infinity) throw noPlace(job);
  if (small && small !== "none") {
    offer(small.layouts);
    bound = Math.max(bound, small.cost);
    yield progress("trying all");
    return planOf(best as Candidate);
  }

  // ---- patterns and prices ----
  const tables: PatternTable[] = plates.map(({ width, length }) =>
    patternTable({ width, length, lies, counts, longestCut, mostWork: pricingWork }),
  );
  const treeOfColumn = new Map<Column, CutTree>();
  const columnOf = (plate: number, tree: CutTree): Column => {
    const column = { cost: (plates[plate] as PlateOffer).cost, gives: countPieces(tree, counts.length), plate };
    treeOfColumn.set(column, tree);
    return column;
  };
  const dear = 10 * Math.max(...plates.map(({ cost }) => cost));
  const limits = plates.map(({ count }) => count);
  const seen = new Set<string>();
  const pool: Column[] = [];
  const keep = (column: Column): Column[] => {
    const key = `${column.plate}:${column.gives.join()}`;
    if (seen.has(key)) return [];
    seen.add(key);
    pool.push(column);
    return [column];
  };
  const start = (best?.cuts ?? []).flatMap(({ plate, tree }) => keep(columnOf(plate, tree)));
  const program = coverProgram(counts, limits, dear);
  let state = program.solve(start);
  work += state.work;
  for (let round = 0; round < 2000 && work < 0.6 * mostWork; round += 1) {
    const { prices, rents } = state;
    const found = tables.map((table) => table.best(prices));
    const highest = tables.map((table, plate) => (table.coarse ? table.bound(prices) : (found[plate]?.value ?? 0)));
    work += sum(tables.map((table) => table.work));
    // Prices scaled down until no pattern is worth more than its sheet are prices that every plan has to pay.
    const scale = Math.max(
      1e-12,
      ...highest.map((value, plate) => (limits[plate] === Infinity ? value / (plates[plate] as PlateOffer).cost : 0)),
    );
    const down = limits.includes(Infinity) ? Math.max(1, scale) : 1;
    const paid = sum(counts.map((count, piece) => count * (prices[piece] as number))) / down;
    const saved = sum(
      highest.map((value, plate) => {
        const limit = limits[plate] as number;
        return limit === Infinity ? 0 : limit * Math.max(0, value / down - (plates[plate] as PlateOffer).cost);
      }),
    );
    bound = Math.max(bound, raise(paid - saved));
    yield progress("pricing");
    if (done()) return planOf(best as Candidate);
    const fresh: Column[] = [];
    found.forEach(({ value, tree }, plate) => {
      const cost = (plates[plate] as PlateOffer).cost + (rents[plate] as number);
      if (value <= cost * (1 + 1e-7)) return;
      fresh.push(...keep(columnOf(plate, tree)));
      fresh.push(...keep(columnOf(plate, atMost(tree, counts))));
    });
    if (fresh.length === 0) break;
    state = program.solve(fresh);
    work += state.work;
    // The mix can hardly fall further, and its bound is already the next whole step.
    if (step && raise(state.cost) <= bound) break;
  }

  // ---- rounding ----
  yield* round();
  function* round(): Generator<SheetProgress> {
    const left = [...counts];
    const stock = plates.map((plate) => ({ ...plate }));
    const fixed: Cut[] = [];
    let mix = program.mix();
    const quick = orders(lies, counts.length);
    while (sum(left) > 0 && work < 0.8 * mostWork) {
      const useful = mix
        .map(({ column, times }) => {
          const tree = atMost(treeOfColumn.get(column) as CutTree, left);
          const gives = countPieces(tree, counts.length);
          const area = sum(gives.map((count, piece) => count * areaOf(piece)));
          const plate = stock[column.plate] as PlateOffer;
          const whole = Math.min(
            Math.floor(times + 1e-3),
            plate.count,
            ...gives.map((count, piece) => (count > 0 ? Math.floor((left[piece] as number) / count) : Infinity)),
          );
          return { plate: column.plate, tree, gives, times, whole, fill: area / (plate.width * plate.length) };
        })
        .filter(({ plate, fill }) => fill > 0 && (stock[plate] as PlateOffer).count > 0);
      const sure = useful.filter(({ whole }) => whole > 0).sort((a, b) => b.whole - a.whole)[0];
      const likely = useful.sort((a, b) => b.fill * Math.min(1, b.times) - a.fill * Math.min(1, a.times))[0];
      const chosen = sure ?? likely;
      if (!chosen) break;
      const times = sure ? sure.whole : 1;
      for (let n = 0; n < times; n += 1) fixed.push({ plate: chosen.plate, tree: chosen.tree });
      chosen.gives.forEach((count, piece) => {
        left[piece] = Math.max(0, (left[piece] as number) - times * count);
      });
      const offered = stock[chosen.plate] as { -readonly [K in keyof PlateOffer]: PlateOffer[K] };
      offered.count -= times;
      if (sum(left) === 0) {
        offer(fixed);
        break;
      }
      for (const order of quick)
        for (const block of blocks) {
          const rest = lay(left, { order, block, fit: "area", split: "long-first" }, plateOrders[0] as number[], stock);
          if (rest) offer([...fixed, ...rest]);
        }
      const exact = cheapestForSmall(lies, left, stock, longestCut, smallWork / 20);
      if (exact && exact !== "none") {
        offer([...fixed, ...exact.layouts]);
        break;
      }
      yield progress("rounding");
      if (done()) return;
      const residual = coverProgram(
        left,
        stock.map(({ count }) => count),
        dear,
      );
      const cut = new Map<string, Column>();
      for (const column of pool) {
        const gives = column.gives.map((count, piece) => Math.min(count, left[piece] as number));
        if (sum(gives) === 0) continue;
        const capped = { ...column, gives };
        treeOfColumn.set(capped, treeOfColumn.get(column) as CutTree);
        cut.set(`${column.plate}:${gives.join()}`, capped);
      }
      let now = residual.solve([...cut.values()]);
      work += now.work;
      for (let turn = 0; turn < 12 && work < mostWork; turn += 1) {
        const fresh = tables.flatMap((table, plate) => {
          const { value, tree } = table.best(now.prices);
          work += table.work;
          const cost = (plates[plate] as PlateOffer).cost + (now.rents[plate] as number);
          return value > cost * (1 + 1e-6) ? [columnOf(plate, atMost(tree, left))] : [];
        });
        if (fresh.length === 0) break;
        now = residual.solve(fresh);
        work += now.work;
      }
      mix = residual.mix();
    }
  }
  if (done()) return planOf(best as Candidate);

  // ---- packing groups of sheets anew ----
  const fillOf = ({ plate, tree }: Cut) => {
    const { width, length } = plates[plate] as PlateOffer;
    return sum(countPieces(tree, counts.length).map((count, piece) => count * areaOf(piece))) / (width * length);
  };
  /** Full sheets beside empty ones are nearer to one sheet less than all sheets equally full. */
  const concentration = (cuts: readonly Cut[]) => sum(cuts.map((cut) => fillOf(cut) ** 2));
  let current = best?.cuts ?? [];
  for (let tries = 0; current.length > 1 && work < mostWork; tries += 1) {
    const group = 2 + Math.floor(random() * Math.min(3, current.length - 1));
    const ranked = current.map((cut, at) => ({ at, rank: fillOf(cut) * random() })).sort((a, b) => a.rank - b.rank);
    const taken = new Set(ranked.slice(0, group).map(({ at }) => at));
    const out = current.filter((_, at) => taken.has(at));
    const kept = current.filter((_, at) => !taken.has(at));
    const wanted = counts.map(() => 0);
    for (const { tree } of out)
      countPieces(tree, counts.length).forEach((count, piece) => {
        wanted[piece] = (wanted[piece] as number) + count;
      });
    const stock = plates.map((plate, index) => ({
      ...plate,
      count: plate.count - kept.filter((cut) => cut.plate === index).length,
    }));
    const pick = <T>(from: readonly T[]) => from[Math.floor(random() * from.length)] as T;
    const base = orders(lies, counts.length);
    let found: readonly Cut[] | undefined;
    for (let attempt = 0; attempt < 12; attempt += 1) {
      const order = pick(base)
        .map((piece, at) => ({ piece, at: at + (random() - 0.5) * random() * counts.length }))
        .sort((a, b) => a.at - b.at)
        .map(({ piece }) => piece);
      const rules = { order, block: pick(blocks), fit: pick(fitRules), split: pick(splitRules) };
      const cuts = lay(wanted, rules, pick(plateOrders), stock);
      if (!cuts) continue;
      const cost = costOfCuts(cuts);
      const before = found ?? out;
      const costBefore = costOfCuts(before);
      if (cost < costBefore - 1e-9 || (cost < costBefore + 1e-9 && concentration(cuts) > concentration(before) + 1e-9))
        found = cuts;
    }
    if (found) {
      current = [...kept, ...found];
      offer(current);
      if (done()) break;
    }
    if (tries % 8 === 0) yield progress("repacking");
  }
  if (!best) throw noPlace(job);
  return planOf(best);
}

function noPlace(job: SheetJob): InputError {
  const limited = job.sheets.findIndex(({ count }) => count !== undefined);
  return new InputError(
    limited < 0 ? "pieces" : `sheets.${limited}.count`,
    job.sheets[Math.max(0, limited)]?.count,
    say`No way was found to get all the pieces out of the sheets there are. Add sheets, or take off pieces.`,
  );
}
