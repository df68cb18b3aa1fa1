/** A way to cut one sheet: what it costs and how many of each piece it gives. */
export interface Column {
  readonly cost: number;
  readonly gives: readonly number[];
  /** Which sheet it is cut from. */
  readonly plate: number;
}

/** Reduced costs and pivots smaller than this are taken for nought. */
const tiny = 1e-9;
/** What is added to every amount; a mix is exact to about this, times the number of rows. */
export const nudge = 1e-6;

export interface CoverProgram {
  /** Adds columns and finds the cheapest mix of all columns known so far. */
  solve(fresh: readonly Column[]): {
    /** What one more of each piece would cost. */
    readonly prices: readonly number[];
    /** What one more of a sheet of which there are only so many would save, by plate; 0 for the others. */
    readonly rents: readonly number[];
    readonly cost: number;
    /** Products formed. */
    readonly work: number;
  };
  /** The mix: how much of each column, in the order they were added. */
  mix(): { readonly column: Column; readonly times: number }[];
}

/**
 * The linear program behind the cutting of many sheets: the cheapest mix of patterns that gives at least the pieces wanted,
 * fractions of a pattern allowed. The revised simplex method with a dense inverse: there are as many rows as different pieces.
 *
 * @param wanted - how many of each piece
 * @param limits - how many there are of each plate; Infinity: as many as needed
 * @param dear - a cost above that of any sheet, for pieces that no column gives yet
 * @remarks Source: Gilmore and Gomory 1961 and 1965; from memory.
 */
export function coverProgram(wanted: readonly number[], limits: readonly number[], dear: number): CoverProgram {
  const limited = limits.flatMap((limit, plate) => (limit === Infinity ? [] : [plate]));
  const rows = wanted.length + limited.length;
  const rowOfPlate = new Map(limited.map((plate, index) => [plate, wanted.length + index]));
  interface Entry {
    readonly cost: number;
    readonly at: Float64Array;
    readonly column?: Column;
  }
  const unit = (row: number, sign: number, cost: number): Entry => {
    const at = new Float64Array(rows);
    at[row] = sign;
    return { cost, at };
  };
  const entries: Entry[] = [];
  // Basis to begin with: every piece bought dear, every limited plate unused.
  const basis: Entry[] = Array.from({ length: rows }, (_, row) => unit(row, 1, row < wanted.length ? dear : 0));
  const spare: Entry[] = Array.from({ length: rows }, (_, row) => (row < wanted.length ? unit(row, -1, 0) : unit(row, 1, 0)));
  const inverse = Array.from({ length: rows }, (_, row) => {
    const line = new Float64Array(rows);
    line[row] = 1;
    return line;
  });
  // A little more of each, unlike for any two: without it steps of length nought can go round in circles. Prices stay exact.
  const amounts = Float64Array.from(
    [...wanted, ...limited.map((plate) => limits[plate] as number)].map(
      (amount, row) => amount + nudge * (1 + ((row * 0.618) % 1)),
    ),
  );

  const duals = (): Float64Array => {
    const result = new Float64Array(rows);
    for (let row = 0; row < rows; row += 1) {
      const { cost } = basis[row] as Entry;
      if (cost === 0) continue;
      const line = inverse[row] as Float64Array;
      for (let k = 0; k < rows; k += 1) result[k] = (result[k] as number) + cost * (line[k] as number);
    }
    return result;
  };
  const reduced = ({ cost, at }: Entry, y: Float64Array): number => {
    let sum = cost;
    for (let k = 0; k < rows; k += 1) if (at[k] !== 0) sum -= (y[k] as number) * (at[k] as number);
    return sum;
  };

  const enter = (entry: Entry): boolean => {
    const direction = new Float64Array(rows);
    for (let row = 0; row < rows; row += 1) {
      const line = inverse[row] as Float64Array;
      let sum = 0;
      for (let k = 0; k < rows; k += 1) sum += (line[k] as number) * (entry.at[k] as number);
      direction[row] = sum;
    }
    let leaving = -1;
    let step = Infinity;
    for (let row = 0; row < rows; row += 1) {
      const along = direction[row] as number;
      if (along <= tiny) continue;
      const ratio = (amounts[row] as number) / along;
      // Among equal ratios the largest pivot keeps the inverse healthy.
      if (ratio < step - 1e-12 || (ratio <= step + 1e-12 && along > (direction[leaving] ?? 0))) {
        leaving = row;
        step = ratio;
      }
    }
    if (leaving < 0) return false;
    const pivot = direction[leaving] as number;
    const line = inverse[leaving] as Float64Array;
    for (let k = 0; k < rows; k += 1) line[k] = (line[k] as number) / pivot;
    amounts[leaving] = step;
    for (let row = 0; row < rows; row += 1) {
      const along = direction[row] as number;
      if (row === leaving || along === 0) continue;
      const target = inverse[row] as Float64Array;
      for (let k = 0; k < rows; k += 1) target[k] = (target[k] as number) - along * (line[k] as number);
      amounts[row] = Math.max(0, (amounts[row] as number) - along * step);
    }
    basis[leaving] = entry;
    return true;
  };

  return {
    solve(fresh) {
      for (const column of fresh) {
        const at = new Float64Array(rows);
        column.gives.forEach((count, piece) => {
          at[piece] = count;
        });
        const row = rowOfPlate.get(column.plate);
        if (row !== undefined) at[row] = 1;
        entries.push({ cost: column.cost, at, column });
      }
      let y = duals();
      let work = 0;
      for (let turn = 0; turn < 20 * (rows + 10); turn += 1) {
        work += rows * (spare.length + entries.length + 3 * rows);
        let best: Entry | undefined;
        let least = -tiny * dear;
        for (const entry of [...spare, ...entries]) {
          const gain = reduced(entry, y);
          if (gain < least) {
            least = gain;
            best = entry;
          }
        }
        if (!best || !enter(best)) break;
        y = duals();
      }
      const prices = wanted.map((_, piece) => Math.max(0, y[piece] as number));
      const rents = limits.map((_, plate) => {
        const row = rowOfPlate.get(plate);
        return row === undefined ? 0 : Math.max(0, -(y[row] as number));
      });
      const cost = basis.reduce((sum, entry, row) => sum + entry.cost * (amounts[row] as number), 0);
      return { prices, rents, cost, work };
    },
    mix: () =>
      basis.flatMap(({ column }, row) => {
        const times = amounts[row] as number;
        return column && times > 1e-7 ? [{ column, times }] : [];
      }),
  };
}
