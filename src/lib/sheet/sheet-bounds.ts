import type { Lie } from "./model.ts";
import type { PlateOffer } from "./small-demand.ts";

/** A way of weighing sizes so that whatever fits side by side into the room weighs at most 1 together. */
type Weighing = (size: number, room: number) => number;

const itself: Weighing = (size, room) => size / room;

/** Large sizes count as the whole room, sizes below `least` as nothing. */
const cutOffAt =
  (least: number): Weighing =>
  (size, room) =>
    size > room - least ? 1 : size < least ? 0 : size / room;

/** Sizes over half count what they leave no room for; smaller ones count as the like of the least. */
const byLeast =
  (least: number): Weighing =>
  (size, room) => {
    const most = Math.floor(room / least);
    if (2 * size > room) return 1 - Math.floor((room - size) / least) / most;
    return size >= least ? 1 / most : 0;
  };

/** Sizes rounded down to k-ths of the room, unless they are exact (k + 1)-ths. */
const inParts =
  (k: number): Weighing =>
  (size, room) => {
    const parts = (k + 1) * size;
    return parts % room === 0 ? size / room : Math.floor(parts / room) / k;
  };

/** Sizes tried as the least of a weighing; more gain little. */
const mostLeasts = 25;

function weighings(sizes: readonly number[], room: number): Weighing[] {
  const leasts = [...new Set(sizes.flatMap((size) => [size, room - size]))]
    .filter((size) => size > 0 && 2 * size <= room)
    .sort((a, b) => b - a);
  const step = Math.max(1, Math.ceil(leasts.length / mostLeasts));
  const chosen = leasts.filter((_, index) => index % step === 0);
  return [itself, ...[1, 2, 3, 4].map(inParts), ...chosen.map(cutOffAt), ...chosen.map(byLeast)];
}

/**
 * How many plates of one size are needed at least, by areas and by weighed areas.
 *
 * @param plate - room inside the trim, in ticks
 * @returns a number of plates that no plan can undercut, not rounded up [1]
 * @remarks Pieces that may be turned count with the smaller of their two weights. Source: dual feasible functions, Fekete and
 * Schepers 2001, 2004; the bounds of Martello and Vigo 1998 are among them; from memory. Checked against plans in the tests.
 */
export function plateBound(
  lies: readonly Lie[],
  counts: readonly number[],
  plate: { readonly width: number; readonly length: number },
): number {
  const across = weighings(
    lies.map(({ width }) => width),
    plate.width,
  );
  const along = weighings(
    lies.map(({ length }) => length),
    plate.length,
  );
  const waysOf = counts.map((_, piece) => lies.filter((lie) => lie.piece === piece));
  const byWidth = across.map((weigh) => new Map(lies.map(({ width }) => [width, weigh(width, plate.width)])));
  const byLength = along.map((weigh) => new Map(lies.map(({ length }) => [length, weigh(length, plate.length)])));
  let most = 0;
  for (const w of byWidth)
    for (const l of byLength) {
      let sum = 0;
      counts.forEach((count, piece) => {
        let least = Infinity;
        for (const lie of waysOf[piece] as Lie[])
          least = Math.min(least, (w.get(lie.width) as number) * (l.get(lie.length) as number));
        if (least < Infinity) sum += count * least;
      });
      most = Math.max(most, sum);
    }
  return most;
}

/**
 * What the sheets cost at least, by area alone: every piece is charged at the sheet with the cheapest area.
 *
 * @returns the cost, in the same unit as that of the plates
 */
export function areaBound(lies: readonly Lie[], counts: readonly number[], plates: readonly PlateOffer[]): number {
  const cheapest = Math.min(...plates.map(({ width, length, cost }) => cost / (width * length)));
  return counts.reduce((sum, count, piece) => {
    const lie = lies.find((each) => each.piece === piece);
    return lie ? sum + count * lie.width * lie.length * cheapest : sum;
  }, 0);
}
