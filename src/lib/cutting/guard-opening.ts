import { checkRange } from "../inputs.ts";
import { toBase } from "../quantity/units.ts";

export const openingShapes = ["slot", "square", "round"] as const;
export type OpeningShape = (typeof openingShapes)[number];

/** Rows of ISO 13857 Table 4, age 14 and above: opening up to and including `upTo` [mm], distance by shape [mm]. */
const reach = [
  { upTo: 4, slot: 2, square: 2, round: 2 },
  { upTo: 6, slot: 10, square: 5, round: 5 },
  { upTo: 8, slot: 20, square: 15, round: 5 },
  { upTo: 10, slot: 80, square: 25, round: 20 },
  { upTo: 12, slot: 100, square: 80, round: 80 },
  { upTo: 20, slot: 120, square: 120, round: 120 },
  { upTo: 30, slot: 850, square: 120, round: 120 },
  { upTo: 40, slot: 850, square: 200, round: 120 },
  { upTo: 120, slot: 850, square: 850, round: 850 },
] as const;

const opening = { label: "Opening", quantity: "length", min: 0, aboveMin: true, max: 120 } as const;

/**
 * How far an opening in a guard must be from the danger, so that no hand or arm reaches it.
 *
 * @param height - of the opening [mm], smallest width of a slot, side of a square, diameter of a round hole; above 0 to 120
 * @param shape - of the opening
 * @returns [mm]
 * @throws InputError for a value outside its range
 * @remarks Age 14 and above. A slot of 20 to 30 mm that is no longer than 65 mm needs only 200 mm; that exception is left out here.
 *   Source: ISO 13857 Table 4, as summarised by a consultant (read).
 * @example guardDistance(8, "slot"); // 20
 */
export function guardDistance(height: number, shape: OpeningShape): number {
  checkRange("opening", opening, height);
  return (reach.find(({ upTo }) => height <= upTo) as (typeof reach)[number])[shape];
}

/** Rows of 29 CFR 1910.217 Table O-10, inches: up to this far from the danger, no opening larger than this. From memory. */
const pressOpenings = [
  { upTo: 1.5, opening: 1 / 4 },
  { upTo: 2.5, opening: 3 / 8 },
  { upTo: 3.5, opening: 1 / 2 },
  { upTo: 5.5, opening: 5 / 8 },
  { upTo: 6.5, opening: 3 / 4 },
  { upTo: 7.5, opening: 7 / 8 },
  { upTo: 12.5, opening: 1.25 },
  { upTo: 15.5, opening: 1.5 },
  { upTo: 17.5, opening: 1.875 },
  { upTo: 31.5, opening: 2.125 },
] as const;

/** Nearest that a guard opening may be to the danger, inches. */
const nearest = 0.5;

/**
 * Largest opening in a guard of a mechanical power press at a distance from the danger.
 *
 * @param distance - [mm]
 * @returns [mm], or undefined where the table has no row: nearer than 1/2 in or farther than 31 1/2 in
 * @remarks Written for presses; for a shear it is guidance. Not the same rule as ISO 13857. Source: 29 CFR 1910.217 Table O-10 (from memory).
 * @example pressOpening(25.4); // 6.35
 */
export function pressOpening(distance: number): number | undefined {
  const inches = distance / 25.4;
  if (!(inches >= nearest)) return undefined;
  const row = pressOpenings.find(({ upTo }) => inches <= upTo);
  return row && toBase(row.opening, "length", "in");
}
