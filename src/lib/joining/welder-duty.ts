import type { FormulaInput } from "../formula.ts";
import { checkRanges } from "../inputs.ts";

/** Share of the time with current on at which a welder's plate gives its power. */
export const plateDuty = 0.5;

const inputs = {
  power: { label: "Power on the plate", symbol: "S", tex: "S", quantity: "power", min: 0.1, max: 1000 },
  duty: { label: "Share of the time with current on", symbol: "D", tex: "D", quantity: "ratio", min: 0, max: 1, aboveMin: true },
} as const satisfies Record<string, FormulaInput>;

/**
 * Power at which a welder's transformer gets no hotter than on its plate, when the current is on for another share of the time.
 *
 * @param welder.power - S [kVA] on the plate, which holds at a duty of 50 %; 0.1 to 1000
 * @param welder.duty - D [1], current on over time in all; above 0 to 1
 * @returns [kVA] = S √(0.5/D)
 * @throws InputError for a value outside its range
 * @remarks Heat goes with the square of the current. 50 %: MetalForming, July 2014, p. 23 (read); the root: heating theory.
 * @example powerAtDuty({ power: 30, duty: 0.08 }); // 75
 */
export function powerAtDuty(welder: { readonly power: number; readonly duty: number }): number {
  checkRanges(inputs, welder);
  return welder.power * Math.sqrt(plateDuty / welder.duty);
}
