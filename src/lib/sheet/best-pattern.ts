import { cutPositions, type Step } from "./cut-positions.ts";
import { type CutTree, inCorner, tidy } from "./cut-tree.ts";
import type { Lie } from "./model.ts";

/** The plate and the pieces that one table is made for, in ticks. */
export interface PatternSetting {
  readonly width: number;
  readonly length: number;
  readonly lies: readonly Lie[];
  /** How often each piece can be wanted from this plate, by the number of the piece; left out: any number. */
  readonly counts?: readonly number[];
  /** Longest cut the shear can make. */
  readonly longestCut?: number;
  /** Least that must stay under the hold-downs. */
  readonly shortestHold?: number;
  /** Work the table may take: about the number of sums it compares. */
  readonly mostWork?: number;
}

export interface Pattern {
  readonly value: number;
  readonly tree: CutTree;
}

export interface PatternTable {
  /** Value of the best pattern, any number of each piece, when each piece is worth so much. */
  value(values: readonly number[]): number;
  /** The best pattern itself. */
  best(values: readonly number[]): Pattern;
  /** Sums compared in one run. */
  readonly work: number;
  /** Sizes had to be rounded up to keep the work down, so that a better pattern may be missed. */
  readonly coarse: boolean;
  /** An upper bound of the value of any pattern; the value itself unless the table is coarse. */
  bound(values: readonly number[]): number;
}

const mostPositions = 4000;

/** Index of the last position not beyond `value`. */
function floorIndex(positions: Float64Array, value: number): number {
  let low = 0;
  let high = positions.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((positions[middle] as number) <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

interface Grid {
  readonly widths: Float64Array;
  readonly lengths: Float64Array;
  readonly lies: readonly Lie[];
  readonly work: number;
}

/** The cut positions of a plate, or undefined when comparing them all would take too much work. */
function gridOf(setting: PatternSetting, lies: readonly Lie[], mostWork: number): Grid | undefined {
  const { width, length, counts } = setting;
  const usable = lies.filter((lie) => lie.width <= width && lie.length <= length);
  const times = (lie: Lie, size: number, room: number) => Math.min(counts?.[lie.piece] ?? Infinity, Math.floor(room / size));
  const steps = (of: "width" | "length", room: number): Step[] =>
    usable.map((lie) => ({ size: lie[of], times: times(lie, lie[of], room) }));
  const widths = cutPositions(steps("width", width), width, mostPositions);
  const lengths = cutPositions(steps("length", length), length, mostPositions);
  if (!widths || !lengths) return undefined;
  const work = (widths.length * lengths.length * (widths.length + lengths.length)) / 4;
  if (work > mostWork) return undefined;
  return { widths: Float64Array.from(widths), lengths: Float64Array.from(lengths), lies: usable, work };
}

// What the table holds for a plate: four times an index, and which kind it is of.
const asPiece = 0;
const widthCut = 1;
const lengthCut = 2;
const smaller = 3;
/** With `smaller`: the next smaller width, the next smaller length, or nothing at all. */
const [lessWidth, lessLength, nothing] = [0, 1, 2] as const;

interface Filled {
  readonly values: Float64Array;
  readonly choices: Int32Array;
}

function fill(grid: Grid, worth: readonly number[], longestCut: number, shortestHold: number): Filled {
  const { widths, lengths, lies } = grid;
  const [rows, columns] = [widths.length, lengths.length];
  const values = new Float64Array(rows * columns);
  const choices = new Int32Array(rows * columns).fill(4 * nothing + smaller);
  const byRow = new Map<number, { readonly column: number; readonly lie: number; readonly value: number }[]>();
  lies.forEach((lie, index) => {
    const value = worth[lie.piece] ?? 0;
    if (value <= 0) return;
    const row = floorIndex(widths, lie.width);
    const list = byRow.get(row) ?? [];
    list.push({ column: floorIndex(lengths, lie.length), lie: index, value });
    byRow.set(row, list);
  });
  // Below this a gain is binary arithmetic.
  const least = 1e-12 * Math.max(0, ...worth);
  const lastColumn = floorIndex(lengths, longestCut);

  for (let i = 1; i < rows; i += 1) {
    const row = i * columns;
    const width = widths[i] as number;
    if ((widths[i - 1] as number) >= shortestHold || width - (widths[i - 1] as number) >= shortestHold)
      for (let j = 1; j < columns; j += 1) {
        const value = values[row - columns + j] as number;
        if (value <= 0) continue;
        values[row + j] = value;
        choices[row + j] = 4 * lessWidth + smaller;
      }
    for (const { column, lie, value } of byRow.get(i) ?? [])
      if (value > (values[row + column] as number) + least) {
        values[row + column] = value;
        choices[row + column] = 4 * lie + asPiece;
      }
    let m = i - 1;
    for (let k = 1; k < i; k += 1) {
      const first = widths[k] as number;
      if (2 * first > width || width - first < shortestHold) break;
      while ((widths[m] as number) > width - first) m -= 1;
      const [a, b] = [k * columns, m * columns];
      const choice = 4 * k + widthCut;
      for (let j = 1; j <= lastColumn; j += 1) {
        const sum = (values[a + j] as number) + (values[b + j] as number);
        if (sum > (values[row + j] as number) + least) {
          values[row + j] = sum;
          choices[row + j] = choice;
        }
      }
    }
    for (let j = 1; j < columns; j += 1) {
      let best = values[row + j] as number;
      const length = lengths[j] as number;
      const before = lengths[j - 1] as number;
      const less = values[row + j - 1] as number;
      if (less > best + least && (before >= shortestHold || length - before >= shortestHold)) {
        best = less;
        choices[row + j] = 4 * lessLength + smaller;
      }
      if (width <= longestCut) {
        let n = j - 1;
        for (let k = 1; k < j; k += 1) {
          const first = lengths[k] as number;
          if (2 * first > length || length - first < shortestHold) break;
          while ((lengths[n] as number) > length - first) n -= 1;
          const sum = (values[row + k] as number) + (values[row + n] as number);
          if (sum > best + least) {
            best = sum;
            choices[row + j] = 4 * k + lengthCut;
          }
        }
      }
      values[row + j] = best;
    }
  }
  return { values, choices };
}

/** Reads the tree of cuts out of a filled table. `sizes` gives back the true size of a piece that was rounded. */
function treeOf(grid: Grid, { choices }: Filled, setting: PatternSetting, trueSize: (lie: Lie) => Lie, scale: number): CutTree {
  const { widths, lengths, lies } = grid;
  const columns = lengths.length;
  const longestCut = setting.longestCut ?? Infinity;
  const build = (i: number, j: number, width: number, length: number): CutTree => {
    let [row, column] = [i, j];
    let choice = choices[row * columns + column] as number;
    while (choice === 4 * lessWidth + smaller || choice === 4 * lessLength + smaller) {
      if (choice === 4 * lessWidth + smaller) row -= 1;
      else column -= 1;
      choice = choices[row * columns + column] as number;
    }
    const index = choice >> 2;
    const kind = choice & 3;
    if (kind === smaller) return { kind: "rest", width, length };
    const [usedWidth, usedLength] = [(widths[row] as number) * scale, (lengths[column] as number) * scale];
    const inner = ((): CutTree => {
      if (kind === asPiece) {
        const { piece, turned, width: w, length: l } = trueSize(lies[index] as Lie);
        return inCorner({ kind: "piece", piece, turned, width: w, length: l }, usedWidth, usedLength, longestCut);
      }
      if (kind === widthCut) {
        const first = (widths[index] as number) * scale;
        const second = floorIndex(widths, (widths[row] as number) - (widths[index] as number));
        const parts = [build(index, column, first, usedLength), build(second, column, usedWidth - first, usedLength)];
        return { kind: "split", across: "width", width: usedWidth, length: usedLength, parts };
      }
      const first = (lengths[index] as number) * scale;
      const second = floorIndex(lengths, (lengths[column] as number) - (lengths[index] as number));
      const parts = [build(row, index, usedWidth, first), build(row, second, usedWidth, usedLength - first)];
      return { kind: "split", across: "length", width: usedWidth, length: usedLength, parts };
    })();
    return inCorner(inner, width, length, longestCut);
  };
  return tidy(build(widths.length - 1, columns - 1, setting.width, setting.length));
}

/**
 * A table for the most valuable way to cut one plate edge to edge, any number of each piece.
 *
 * Exact: the best pattern of a plate is a piece, or the best patterns of the two plates that one cut makes of it, and cuts are
 * needed only where sizes of pieces add up. When there are too many such places for the work allowed, sizes are rounded to a
 * raster, up for the pattern that is given and down for the bound, and `coarse` says so.
 *
 * @remarks Source: Gilmore and Gomory 1966, The theory and computation of knapsack functions; Beasley 1985, Algorithms for
 * unconstrained two-dimensional guillotine cutting; both from memory. Checked against the optima that the University of São
 * Paulo publishes for the instances of Beasley 1985.
 */
export function patternTable(setting: PatternSetting): PatternTable {
  const mostWork = setting.mostWork ?? 3e8;
  const longestCut = setting.longestCut ?? Infinity;
  const shortestHold = setting.shortestHold ?? 0;
  const valueAt = (grid: Grid, filled: Filled) => filled.values[grid.widths.length * grid.lengths.length - 1] ?? 0;
  const exact = gridOf(setting, setting.lies, mostWork);
  if (exact) {
    const run = (worth: readonly number[]) => fill(exact, worth, longestCut, shortestHold);
    const value = (worth: readonly number[]) => valueAt(exact, run(worth));
    return {
      value,
      bound: value,
      best(worth) {
        const filled = run(worth);
        return { value: valueAt(exact, filled), tree: treeOf(exact, filled, setting, (lie) => lie, 1) };
      },
      work: exact.work,
      coarse: false,
    };
  }

  // A raster of n by n takes n³/2 sums at most.
  let unit = Math.ceil(Math.max(setting.width, setting.length) / Math.max(4, Math.floor(Math.cbrt(2 * mostWork))));
  const rounded = (round: (value: number) => number): Grid | undefined =>
    gridOf(
      {
        ...setting,
        width: Math.floor(setting.width / unit),
        length: Math.floor(setting.length / unit),
      },
      setting.lies.map((lie) => ({ ...lie, width: round(lie.width / unit), length: round(lie.length / unit) })),
      mostWork,
    );
  let inner = rounded(Math.ceil);
  let outer = rounded((value) => Math.max(1, Math.floor(value)));
  while (!inner || !outer) {
    unit = Math.ceil(1.3 * unit);
    inner = rounded(Math.ceil);
    outer = rounded((value) => Math.max(1, Math.floor(value)));
  }
  const [tight, loose] = [inner, outer];
  const trueSize = (lie: Lie): Lie => setting.lies.find((each) => each.piece === lie.piece && each.turned === lie.turned) ?? lie;
  const run = (worth: readonly number[]) => fill(tight, worth, longestCut / unit, shortestHold / unit);
  return {
    value: (worth) => valueAt(tight, run(worth)),
    // No limit of the shear here: rounding down a size must not make a cut possible or impossible.
    bound: (worth) => valueAt(loose, fill(loose, worth, Infinity, 0)),
    best(worth) {
      const filled = run(worth);
      return { value: valueAt(tight, filled), tree: treeOf(tight, filled, setting, trueSize, unit) };
    },
    work: tight.work + loose.work,
    coarse: true,
  };
}
