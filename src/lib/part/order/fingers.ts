import { fingerSet } from "../../bending/finger-set.ts";
import { InputError } from "../../input-error.ts";
import type { Limits } from "./crossing.ts";
import type { FormingBrake } from "./job.ts";
import { closeTo } from "./sweep.ts";

/** Fingers for a bend. */
export interface Fingers {
  /**
   * `row`: the whole row may stay. `set`: the set that another bend needs stays, and will do. `beside`: a formed side rises beside them.
   * `between`: they stand between two formed sides.
   */
  readonly place: "row" | "set" | "beside" | "between";
  /** Wide to narrow [mm]: the set in place; for `row` the least that covers the bend. */
  readonly chosen: readonly number[];
  readonly total: number;
  /** Inside width between the sides [mm]; only for `between`. */
  readonly room?: number;
  /** Left free, both ends together [mm]; only for `between`. */
  readonly clearance?: number;
}

const sum = (widths: readonly number[]) => widths.reduce((total, width) => total + width, 0);
/** The widest box that a set of fingers is worked out for [mm]. */
const widestBox = 6000;
const narrowestBox = 5;
const largestGap = 100;

/** The fewest millimetres of fingers that cover a bend: the widest set that may be left out of the row is left out. */
function covering({ fingers, bareEnd, rating }: FormingBrake, length: number): Fingers | undefined {
  const wide = [...fingers].sort((a, b) => b - a);
  const all = sum(wide);
  if (length > rating.length + closeTo || length > all + 2 * bareEnd + closeTo) return undefined;
  const spare = Math.min(widestBox, all - length);
  let chosen = wide;
  if (spare >= Math.max(narrowestBox, Math.min(...fingers))) {
    const dropped = [...fingerSet({ boxWidth: spare, fingers, gap: 0 }).chosen];
    chosen = wide.filter((finger) => {
      const at = dropped.indexOf(finger);
      if (at >= 0) dropped.splice(at, 1);
      return at < 0;
    });
  }
  return { place: "row", chosen, total: sum(chosen) };
}

function between({ fingers, clearance }: FormingBrake, room: number): Fingers | undefined {
  if (room < narrowestBox || room > widestBox) return undefined;
  try {
    return { place: "between", room, ...fingerSet({ boxWidth: room, fingers, gap: Math.min(largestGap, 2 * clearance) }) };
  } catch (error) {
    // Not even the narrowest finger fits.
    if (error instanceof InputError && error.field === "boxWidth") return undefined;
    throw error;
  }
}

/** Shortest row of fingers that will do for a bend [mm]. */
export const leastCover = ({ bareEnd }: FormingBrake, length: number) => length - 2 * bareEnd - closeTo;

/**
 * Fingers for a bend of some length between the lines that limit them; undefined when none do.
 * Where fingers that cover the whole bend fit between two sides, they are taken; otherwise the widest set that fits, and what it leaves
 * bare at both ends together must not be more than the brake can.
 */
export function fingersFor(brake: FormingBrake, length: number, { left, right }: Limits): Fingers | undefined {
  const room = right - left;
  const whole = covering(brake, length);
  if (!Number.isFinite(room))
    return whole && (Number.isFinite(left) || Number.isFinite(right) ? { ...whole, place: "beside" } : whole);
  const clearance = room - (whole?.total ?? Number.POSITIVE_INFINITY);
  if (whole && clearance >= 2 * brake.clearance - closeTo) return { ...whole, place: "between", room, clearance };
  const set = between(brake, room);
  return set && set.total >= leastCover(brake, length) ? set : undefined;
}
