import type { Formula } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRanges, exactly } from "../inputs.ts";
import { atLeast, say } from "../quantity/phrase.ts";
import { allowance, bendAngle, insideRadius, thickness } from "./symbols.ts";

const inputs = { angle: bendAngle, radius: insideRadius, thickness };

const correctionFactor = { label: "Correction factor", symbol: "k", tex: "k", quantity: "ratio" } as const;

/** r/s above which the neutral line is at mid-thickness. */
const largestRatio = 5;
/** r/s where the factor, and with it the shift of the neutral line, would reach zero: 0.65 + 0.5 log₁₀(r/s) = 0. */
export const smallestDinRatio = 10 ** (-0.65 / 0.5);
/** r/s from which the stepped table of the standard starts; the formula is used below it only by extension. */
export const dinTableStart = 0.65;
/** Opening angle above which the standard sets the compensation to nothing. */
const nearlyFlat = 165;

export const dinFactorFormula: Formula = {
  id: "din-factor",
  name: "Correction factor, DIN 6935",
  result: "factor",
  expression: String.raw`0.65 + \tfrac{1}{2}\,\log_{10}\frac{\v{radius}}{\v{thickness}}`,
  symbols: { radius: insideRadius, thickness, factor: correctionFactor },
};

/**
 * Correction factor for the place of the neutral line.
 *
 * @param bend.radius - r [mm], inside; above 0.0501 times the thickness
 * @param bend.thickness - s [mm]; 0.1 to 13
 * @returns k [1], twice the K-factor; 1 for r/s > 5
 * @throws InputError when r/s is so small that the formula gives no neutral line
 * @remarks Source: DIN 6935 as quoted in a trade tables book (read): k = 0.65 + 0.5 log₁₀(r/s), k = 1 for r/s > 5. Its stepped table starts
 *   at r/s = 0.65.
 * @example dinFactor({ radius: 6, thickness: 5 }); // 0.6896
 */
export function dinFactor(bend: { readonly radius: number; readonly thickness: number }): number {
  checkRanges({ radius: insideRadius, thickness }, bend);
  const ratio = bend.radius / bend.thickness;
  if (ratio > largestRatio) return 1;
  if (ratio <= smallestDinRatio)
    throw new InputError(
      "radius",
      bend.radius,
      say`By DIN 6935 the inside radius must be above ${atLeast(smallestDinRatio * bend.thickness)} for this thickness, or the formula has no neutral line; it is ${exactly(bend.radius, "length")}. Choose another method.`,
    );
  return 0.65 + 0.5 * Math.log10(ratio);
}

const steps = [
  { upTo: 1, factor: 0.6 },
  { upTo: 1.5, factor: 0.7 },
  { upTo: 2.4, factor: 0.8 },
  { upTo: 3.8, factor: 0.9 },
] as const;

/**
 * The same factor rounded as the standard's table rounds it.
 *
 * @param ratio - r/s [1], from 0.65
 * @returns k [1]
 * @throws InputError below the table's start
 * @remarks Source: rounded k table of DIN 6935 in a public note (read): 0.65–1: 0.6; –1.5: 0.7; –2.4: 0.8; –3.8: 0.9; above: 1.
 */
export function steppedDinFactor(ratio: number): number {
  if (!(ratio >= dinTableStart))
    throw new InputError("ratio", ratio, say`The table of DIN 6935 starts at r/s = ${dinTableStart}; it is ${String(ratio)}.`);
  return steps.find(({ upTo }) => ratio <= upTo)?.factor ?? 1;
}

export const dinAllowanceFormula: Formula = {
  id: "din-allowance",
  name: "Bend allowance, DIN 6935",
  result: "allowance",
  expression: String.raw`\frac{\pi}{180^\circ}\,\v{angle}\left(\v{radius} + \frac{\v{factor}}{2}\cdot\v{thickness}\right)`,
  symbols: { ...inputs, factor: correctionFactor, allowance },
};

/**
 * Whether the standard sets the compensation of a bend to nothing: its opening angle is above 165°.
 * @param angle - A [deg], turned through
 */
export function dinIgnoresBend(angle: number): boolean {
  return 180 - angle > nearlyFlat;
}

/**
 * Compensation v of DIN 6935, here positive for what is taken off the sum of the legs.
 *
 * @param bend.angle - A [deg], turned through (the standard's opening angle is 180 − A); above 0 to 180
 * @param bend.radius - r [mm], inside
 * @param bend.thickness - s [mm]; 0.1 to 13
 * @param bend.factor - k [1]; `dinFactor` when left out
 * @returns v [mm]: 2 (r+s) − π (180−β)/180 (r + k s/2) for β up to 90°, 2 (r+s) tan((180−β)/2) − the same arc up to 165°, 0 above
 * @throws InputError for a value outside its range
 * @remarks Legs run to the outermost point of the bend for β up to 90°, to the apex above. The standard itself adds a v that is usually negative.
 *   Source: DIN 6935 as quoted in a trade tables book (read).
 */
export function dinDeduction(bend: {
  readonly angle: number;
  readonly radius: number;
  readonly thickness: number;
  readonly factor?: number;
}): number {
  checkRanges(inputs, bend);
  const { angle, radius, thickness: sheet, factor = dinFactor(bend) } = bend;
  if (dinIgnoresBend(angle)) return 0;
  const arc = (Math.PI / 180) * angle * (radius + (factor * sheet) / 2);
  const reach = angle >= 90 ? 1 : Math.tan((angle * Math.PI) / 360);
  return 2 * (radius + sheet) * reach - arc;
}
