import type { FormulaInput } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRange, checkRanges, exactly } from "../inputs.ts";
import { atLeast, say } from "../quantity/phrase.ts";

const size = { quantity: "length", fineness: "setting" } as const;

export const boxWidth = {
  ...size,
  label: "Inside width of the box",
  symbol: "B",
  tex: "B",
  min: 5,
  max: 6000,
} as const satisfies FormulaInput;

export const fingerWidth = {
  ...size,
  label: "Finger",
  symbol: "w",
  tex: "w",
  min: 5,
  max: 2000,
} as const satisfies FormulaInput;

export const fingerGap = {
  ...size,
  label: "Clearance wanted",
  symbol: "g",
  tex: "g",
  min: 0,
  max: 100,
} as const satisfies FormulaInput;

/**
 * Most fingers in one list. The search tries every set: it stays exact and quick up to here, because it joins the sets of two
 * halves of the list.
 */
export const mostFingers = 30;

/** Sums nearer than this are the same length [mm]: binary arithmetic, not metal. */
const sameLength = 1e-6;

/** A set of fingers of one half of the list: its width [mm] and which fingers, one bit each. */
interface Part {
  readonly width: number;
  readonly count: number;
  readonly bits: number;
}

/** Every width that some of the fingers make, narrow to wide, each with the fewest fingers that make it. */
function widths(fingers: readonly number[]): Part[] {
  const best = new Map<number, Part>([[0, { width: 0, count: 0, bits: 0 }]]);
  fingers.forEach((finger, index) => {
    for (const part of [...best.values()]) {
      const width = part.width + finger;
      const key = Math.round(width / sameLength);
      const known = best.get(key);
      if (!known || part.count + 1 < known.count) best.set(key, { width, count: part.count + 1, bits: part.bits | (1 << index) });
    }
  });
  return [...best.values()].sort((a, b) => a.width - b.width);
}

const picked = (fingers: readonly number[], { bits }: Part) => fingers.filter((_, index) => bits & (1 << index));

export interface FingerSet {
  /** [mm], wide to narrow */
  readonly chosen: readonly number[];
  /** [mm] */
  readonly total: number;
  /** [mm], left between the box and the fingers, both ends together */
  readonly clearance: number;
}

/**
 * The fingers that fill the inside of a box best: the widest set that still leaves a clearance, by trying every set.
 *
 * @param box.boxWidth - B [mm], inside, between the legs already bent up; 5 to 6000
 * @param box.fingers - width of every finger there is [mm], one entry a finger; 5 to 2000 each, 1 to 30 of them
 * @param box.gap - g [mm], least clearance, both ends together; 0 to 100
 * @returns the widest set with total at most B − g; among equally wide sets one with the fewest fingers
 * @throws InputError for a value outside its range, and when not even the narrowest finger fits
 * @remarks Exact: no other set of these fingers leaves less. Source: none needed; sums of lengths.
 * @example fingerSet({ boxWidth: 200, fingers: [100, 75, 50, 25, 20], gap: 1 }); // 100 + 75 + 20 = 195, clearance 5
 */
export function fingerSet(box: {
  readonly boxWidth: number;
  readonly fingers: readonly number[];
  readonly gap: number;
}): FingerSet {
  const { fingers, gap } = box;
  checkRanges({ boxWidth, gap: fingerGap }, { boxWidth: box.boxWidth, gap });
  if (fingers.length < 1 || fingers.length > mostFingers)
    throw new InputError(
      "fingers",
      fingers.length,
      say`The list must have 1 to ${mostFingers} fingers; it has ${fingers.length}.`,
    );
  fingers.forEach((finger, index) => {
    checkRange(`fingers.${index}.finger`, fingerWidth, finger);
  });
  const room = box.boxWidth - gap;
  const narrowest = Math.min(...fingers);
  if (narrowest > room + sameLength)
    throw new InputError(
      "boxWidth",
      box.boxWidth,
      say`Inside width of the box must be at least ${atLeast(narrowest + gap)}, the narrowest finger and its clearance; it is ${exactly(box.boxWidth, "length")}.`,
    );

  const sorted = [...fingers].sort((a, b) => b - a);
  // Alternate fingers, so that equal ones fall into both halves and each half has few different widths.
  const halves = [0, 1].map((side) => sorted.filter((_, index) => index % 2 === side)) as [number[], number[]];
  const [left, right] = [widths(halves[0]), widths(halves[1])];

  let best: { readonly width: number; readonly count: number; readonly left: Part; readonly right: Part } | undefined;
  let at = right.length - 1;
  for (const one of left) {
    // As the left part grows, the widest right part that still fits can only shrink.
    while (at >= 0 && one.width + (right[at]?.width ?? 0) > room + sameLength) at -= 1;
    const other = right[at];
    if (!other) break;
    const width = one.width + other.width;
    const count = one.count + other.count;
    const wider = !best || width > best.width + sameLength;
    const fewer = best && Math.abs(width - best.width) <= sameLength && count < best.count;
    if (wider || fewer) best = { width, count, left: one, right: other };
  }
  if (!best) throw new Error("a finger fits, so some set must");
  const chosen = [...picked(halves[0], best.left), ...picked(halves[1], best.right)].sort((a, b) => b - a);
  const total = chosen.reduce((sum, finger) => sum + finger, 0);
  return { chosen, total, clearance: Math.max(0, box.boxWidth - total) };
}
