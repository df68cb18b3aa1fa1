import type { Formula } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRanges } from "../inputs.ts";
import { say } from "../quantity/phrase.ts";
import { allowance, bendAngle, deductionSymbol, insideRadius, type LegEnd, setbackSymbol, thickness } from "./symbols.ts";

const inputs = { angle: bendAngle, radius: insideRadius, thickness };

export const apexSetbackFormula: Formula = {
  id: "setback-apex",
  name: "Setback to the outside apex",
  result: "setback",
  expression: String.raw`\tan\frac{\v{angle}}{2}\,\left(\v{radius} + \v{thickness}\right)`,
  symbols: { ...inputs, setback: setbackSymbol },
};

export const tangentSetbackFormula: Formula = {
  id: "setback-tangent",
  name: "Setback to the outermost point of the bend",
  result: "setback",
  expression: String.raw`\v{radius} + \v{thickness}`,
  symbols: { radius: insideRadius, thickness, setback: setbackSymbol },
};

/** Where the published chart ends: the apex runs away to infinity, and at 179° it is already 115 times R + T from the bend. */
const largestApexAngle = 179;

/**
 * Length of an outside leg that lies beyond its tangent line.
 *
 * @param bend.angle - A [deg], turned through; above 0 to 180
 * @param bend.radius - R [mm], inside; 0 to 1000
 * @param bend.thickness - T [mm]; 0.1 to 13
 * @param bend.legTo - `apex`: legs run to where the outside faces meet, up to 179°; `tangent`: to the outermost point, from 90°
 * @returns SB [mm]
 * @throws InputError for a value outside its range, or a leg end that this angle does not have
 * @remarks Source: FAA AC 43.13-1B Table 4-7 and FAA-H-8083-31 ch. 4, SB = K (R + T), K = tan(A/2); DIN 6935 measures
 *   legs of bends beyond 90° to the outermost point, so R + T.
 * @example setback({ angle: 90, radius: 1.2, thickness: 1.2, legTo: "apex" }); // 2.4
 */
export function setback(bend: { angle: number; radius: number; thickness: number; legTo: LegEnd }): number {
  checkRanges(inputs, bend);
  const { angle, radius, thickness: sheet, legTo } = bend;
  if (legTo === "tangent") {
    if (angle < 90)
      throw new InputError(
        "legTo",
        legTo,
        say`A leg can be measured to the outermost point of the bend only from 90° on; the angle is ${String(angle)}°. Choose the apex.`,
      );
    return radius + sheet;
  }
  if (angle > largestApexAngle)
    throw new InputError(
      "legTo",
      legTo,
      say`A leg can be measured to the apex only up to ${largestApexAngle}°, because the outside faces hardly meet beyond it; the angle is ${String(angle)}°. Choose the outermost point.`,
    );
  return Math.tan((angle * Math.PI) / 360) * (radius + sheet);
}

export const bendDeductionFormula: Formula = {
  id: "bend-deduction",
  name: "Bend deduction",
  result: "deduction",
  expression: String.raw`2\cdot\v{setback} - \v{allowance}`,
  symbols: { setback: setbackSymbol, allowance, deduction: deductionSymbol },
};

/**
 * What the sum of two outside legs is too long by: twice the setback less the allowance.
 *
 * @param bend.setback - SB [mm]
 * @param bend.allowance - BA [mm]
 * @returns BD [mm]; negative for a bend whose arc is longer than its two setbacks
 * @remarks Source: geometry; FAA-H-8083-31 ch. 4 calls it X = 2 K (R + T) − BA.
 */
export function bendDeduction(bend: { setback: number; allowance: number }): number {
  return 2 * bend.setback - bend.allowance;
}

export const allowanceFromDeductionFormula: Formula = {
  id: "allowance-from-deduction",
  name: "Bend allowance from a measured deduction",
  result: "allowance",
  expression: String.raw`2\cdot\v{setback} - \v{deduction}`,
  symbols: { setback: setbackSymbol, allowance, deduction: deductionSymbol },
};
