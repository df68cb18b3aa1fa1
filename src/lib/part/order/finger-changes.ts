import type { Fit } from "./check.ts";
import type { Fingers } from "./fingers.ts";

/** Whether a set that is needed elsewhere will do for a bend where any fingers may stay. */
const willDo = (total: number, need: number) => total >= need;

/**
 * Fingers in place, followed backwards through an order. Where a bend takes any fingers, those of the bend after it stay if they are long
 * enough; if not, it is left open which they are, and the bend before may settle it. Each state has a number.
 */
export class FingersInPlace {
  private readonly open: number[] = [];
  private readonly totals: number[] = [];

  /** Any fingers of at least this total. */
  private anyOf(need: number): number {
    let at = this.open.indexOf(need);
    if (at < 0) at = this.open.push(need) - 1;
    return 2 * at + 1;
  }

  /** The state at the last bend of an order. */
  last({ set, need, fingers }: Fit): number {
    if (set === 0) return this.anyOf(need);
    this.totals[set] = fingers.total;
    return 2 * set;
  }

  /** The state at the bend before, and whether the fingers are changed between the two. */
  before(state: number, earlier: Fit): { readonly state: number; readonly changed: boolean } {
    const own = this.last(earlier);
    const isOpen = state % 2 === 1;
    const need = this.open[state >> 1] ?? 0;
    if (earlier.set > 0) {
      const stays = isOpen ? willDo(earlier.fingers.total, need) : state === own;
      return { state: own, changed: !stays };
    }
    if (isOpen) return { state: this.anyOf(Math.max(need, earlier.need)), changed: false };
    return willDo(this.totals[state >> 1] ?? 0, earlier.need) ? { state, changed: false } : { state: own, changed: true };
  }
}

/** Fingers of each bend of an order, and whether they are changed before it. */
export interface FingersAt {
  readonly fingers: Fingers;
  readonly changed: boolean;
}

/** Settles which fingers are in place at each bend, with the fewest changes. */
export function settleFingers(fits: readonly Fit[]): readonly FingersAt[] {
  const settled: FingersAt[] = [];
  let at = 0;
  let before: Fingers | undefined;
  while (at < fits.length) {
    const fit = fits[at] as Fit;
    if (fit.set > 0) {
      const changed = before !== undefined && before.chosen.join() !== fit.fingers.chosen.join();
      settled.push({ fingers: fit.fingers, changed });
      before = fit.fingers;
      at += 1;
      continue;
    }
    // Bends in a row that take any fingers: those from before stay as long as they will do, then those needed afterwards are put in.
    const end = fits.findIndex(({ set }, index) => index > at && set > 0);
    const stop = end < 0 ? fits.length : end;
    const after = fits[end]?.fingers;
    const own = fits.slice(at, stop).reduce((most, each) => (each.fingers.total > most.total ? each.fingers : most), fit.fingers);
    let inPlace = before;
    for (; at < stop; at += 1) {
      const { need } = fits[at] as Fit;
      const rest = fits.slice(at, stop);
      const stays: boolean = inPlace !== undefined && willDo(inPlace.total, need);
      const next: Fingers = stays
        ? (inPlace as Fingers)
        : after && rest.every((each) => willDo(after.total, each.need))
          ? after
          : own;
      settled.push({
        fingers: { place: next.place === "row" ? "row" : "set", chosen: next.chosen, total: next.total },
        changed: !stays && inPlace !== undefined,
      });
      inPlace = next;
    }
    before = inPlace;
  }
  return settled;
}
