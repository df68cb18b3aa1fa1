import type { Formula } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRanges } from "../inputs.ts";
import { say } from "../quantity/phrase.ts";
import { allowance, bendAngle, insideRadius, thickness } from "./symbols.ts";

const inputs = { angle: bendAngle, radius: insideRadius, thickness };
type Bend = { readonly angle: number; readonly radius: number; readonly thickness: number };

/** The two prints of the same aircraft rule differ in how far they cut π/180. */
const radiusConstants = { faa: 0.01743, navy: 0.0173 } as const;
const thicknessConstant = 0.0078;

function perDegree(constant: string, id: string, name: string): Formula {
  return {
    id,
    name,
    result: "allowance",
    expression: String.raw`\left(${constant}\cdot\v{radius} + ${thicknessConstant}\cdot\v{thickness}\right)\v{angle}`,
    symbols: { ...inputs, allowance },
  };
}

export const faaAllowanceFormula = perDegree("0.01743", "faa-allowance", "Bend allowance, aircraft maintenance handbook");

/**
 * Bend allowance by the constants of the FAA airframe handbook: K fixed near 0.447.
 *
 * @param bend.angle - A [deg], turned through; above 0 to 180
 * @param bend.radius - R [mm], inside; 0 to 1000
 * @param bend.thickness - T [mm]; 0.1 to 13
 * @returns BA [mm]
 * @throws InputError for a value outside its range
 * @remarks Made for aluminium aircraft sheet. Source: FAA-H-8083-31 ch. 4, BA = (0.01743 R + 0.0078 T) N; the constants are from memory of
 *   the handbook and read in study notes that quote it.
 */
export function faaAllowance(bend: Bend): number {
  checkRanges(inputs, bend);
  return (radiusConstants.faa * bend.radius + thicknessConstant * bend.thickness) * bend.angle;
}

/**
 * Bend allowance by the constants of the US Navy aviation manual; less than `faaAllowance` by 0.00013 R for each degree.
 *
 * @param bend - as for `faaAllowance`
 * @returns BA [mm]
 * @throws InputError for a value outside its range
 * @remarks Source: NAVEDTRA 14315 ch. 13, p. 13-19, BA = (0.0173 R + 0.0078 T) N (read).
 */
export function navyAllowance(bend: Bend): number {
  checkRanges(inputs, bend);
  return (radiusConstants.navy * bend.radius + thicknessConstant * bend.thickness) * bend.angle;
}

/** Thickness factors of the soft / medium / hard rule, with the metals its source names. */
export const hardnessGroups = {
  soft: { factor: 0.55, metals: "soft brass, soft copper" },
  medium: { factor: 0.64, metals: "soft steel, aluminium, half-hard copper and brass" },
  hard: { factor: 0.71, metals: "cold-rolled and spring steel, bronze, hard copper" },
} as const;
export type Hardness = keyof typeof hardnessGroups;

export const groupAllowanceFormula: Formula = {
  id: "group-allowance",
  name: "Bend allowance by hardness group",
  result: "allowance",
  expression: String.raw`\left(\v{factor}\cdot\v{thickness} + 1.57\cdot\v{radius}\right)\frac{\v{angle}}{90^\circ}`,
  symbols: {
    ...inputs,
    factor: { label: "Hardness factor", symbol: "c", tex: "c", quantity: "ratio" },
    allowance,
  },
};

/**
 * Bend allowance of the soft / medium / hard rule: L = (c T + 1.57 R) A/90.
 *
 * @param bend.angle - A [deg], turned through; above 0 to 180
 * @param bend.radius - R [mm], inside; 0 to 1000
 * @param bend.thickness - T [mm]; 0.1 to 13
 * @param bend.hardness - group of the metal, see `hardnessGroups`
 * @returns BA [mm]
 * @throws InputError for a value outside its range or an unknown group
 * @remarks Meant for simple tools and bench work. Source: Machinery's Handbook, 31st ed., p. 1421 (read).
 */
export function groupAllowance(bend: Bend & { hardness: Hardness }): number {
  checkRanges(inputs, bend);
  if (!Object.hasOwn(hardnessGroups, bend.hardness))
    throw new InputError(
      "hardness",
      bend.hardness,
      say`Hardness must be one of ${Object.keys(hardnessGroups).join(", ")}; it is “${String(bend.hardness)}”.`,
    );
  return (hardnessGroups[bend.hardness].factor * bend.thickness + 1.57 * bend.radius) * (bend.angle / 90);
}

/**
 * K-factor that jumps from 0.33 to 0.50 at R = 2 T, as production textbooks give it.
 *
 * @returns K [1]: 0.33 for R < 2 T, 0.5 from there on
 * @throws InputError for a value outside its range
 * @remarks The jump is in the source. Source: Groover; Kalpakjian and Schmid (from memory).
 */
export function steppedKFactor(bend: { readonly radius: number; readonly thickness: number }): number {
  checkRanges({ radius: insideRadius, thickness }, bend);
  return bend.radius < 2 * bend.thickness ? 0.33 : 0.5;
}

/**
 * Deduction by a workshop rule of thumb for 90°: half the radius and one and a half thicknesses.
 *
 * @returns BD [mm] at 90°
 * @throws InputError for a value outside its range
 * @remarks Source: trade-school tables book, p. 206 (read in a copy): v = 0.5 r + 1.5 t.
 */
export function thumbDeduction(bend: { readonly radius: number; readonly thickness: number }): number {
  checkRanges({ radius: insideRadius, thickness }, bend);
  return 0.5 * bend.radius + 1.5 * bend.thickness;
}
