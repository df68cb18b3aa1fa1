import type { Formula } from "../formula.ts";
import { checkRange, checkRanges } from "../inputs.ts";
import { fromBase, toBase } from "../quantity/units.ts";
import { interpolate } from "./lookup.ts";
import { governing, strength, tensile } from "./symbols.ts";
import { buttonFactors, weldButton } from "./weld-button.ts";

/** Inches and kips. Source: Merritt and Ricketts, Table 8.6, p. 8.33, after AISI (read). */
const nominalRows = [
  [0.01, 0.13],
  [0.02, 0.48],
  [0.03, 1],
  [0.04, 1.42],
  [0.05, 1.65],
  [0.06, 2.28],
  [0.07, 2.83],
  [0.08, 3.33],
  [0.09, 4],
  [0.1, 4.99],
  [0.11, 6.07],
  [0.125, 7.29],
  [0.19, 10.16],
  [0.25, 15],
] as const;

const kip = 1000;
const inchesOf = (thickness: number) => fromBase(thickness, "length", "in");
const fromKips = (kips: number) => toBase(kips * kip, "force", "lbf");

const tabulated = { ...governing, min: 0.254 };

/**
 * Nominal shear strength of one spot in low-carbon steel, by the table.
 *
 * @param thickness - t [mm], the thinner sheet; 0.254 to 6.35
 * @returns P [N], on the straight line between the rows; nominal, so a safety factor still applies
 * @throws InputError for a thickness outside its range
 * @remarks Source: Merritt and Ricketts, Table 8.6, p. 8.33, after AISI (read). Reading between the rows is common practice.
 * @example nominalSpotShear(1.016); // 6316
 */
export function nominalSpotShear(thickness: number): number {
  checkRange("governing", tabulated, thickness);
  return fromKips(
    interpolate(
      nominalRows,
      ([inches]) => inches,
      ([, kips]) => kips,
      inchesOf(thickness),
    ),
  );
}

const thickBranch = 0.14;
const covered = { ...governing, min: 0.254, max: toBase(0.18, "length", "in") };

/**
 * Nominal shear strength of one spot in low-carbon steel, by the formula of the specification.
 *
 * @param thickness - t [mm], the thinner sheet; 0.254 to 4.572
 * @returns P [N]: 144 t^1.47 kip below 0.14 in, 43.4 t + 1.93 kip from there, t in inches
 * @throws InputError for a thickness outside its range
 * @remarks From a quarter more to a fifth less than the table, whose edition differs. Source: AISI S100, E2.6 (memory).
 */
export function formulaSpotShear(thickness: number): number {
  checkRange("governing", covered, thickness);
  const inches = inchesOf(thickness);
  return fromKips(inches < thickBranch ? 144 * inches ** 1.47 : 43.4 * inches + 1.93);
}

/** Partial factor of the standard. */
export const partialFactor = 1.25;

export const spotBearingFormula: Formula = {
  id: "spot-tearing",
  name: "Tearing of the sheet round one spot (EN 1993-1-3, before its partial factor)",
  result: "strength",
  expression: String.raw`2.7\sqrt{\v{governing}}\cdot 5\sqrt{\v{governing}}\cdot\v{tensile}`,
  symbols: { governing, tensile, strength },
};

/** Resistance of one spot by EN 1993-1-3 [N], before the partial factor. */
export interface EuroSpot {
  /** Fv, shear of the weld itself */
  readonly weld: number;
  /** Ftb, tearing of the sheet round it */
  readonly tearing: number;
  /** the lower of the two */
  readonly strength: number;
}

/**
 * Resistance of one spot by the European design rule, before the partial factor γM2 = 1.25.
 *
 * @param spot.thickness - t [mm], the thinner sheet; 0.25 to 6.35
 * @param spot.otherThickness - t₁ [mm], the thicker sheet; 0.25 to 6.35
 * @param spot.tensile - fu [N/mm²] of the sheet; 10 to 3000
 * @throws InputError for a value outside its range
 * @remarks d = 5√t; Fv = π/4 d² fu; Ftb = 2.7 √t d fu, above 2.5 t also at most 0.7 d² fu and 3.1 t d fu. √t is empirical: mm and N.
 *   Source: EN 1993-1-3:2006, Table 8.4 (memory).
 * @example euroSpot({ thickness: 1, otherThickness: 1, tensile: 360 }).tearing / partialFactor; // 3888
 */
export function euroSpot(spot: {
  readonly thickness: number;
  readonly otherThickness: number;
  readonly tensile: number;
}): EuroSpot {
  checkRanges({ thickness: governing, otherThickness: governing, tensile }, spot);
  const { thickness, otherThickness, tensile: fu } = spot;
  const diameter = weldButton({ governing: thickness, factor: buttonFactors.target });
  const alike = 2.7 * Math.sqrt(thickness) * diameter * fu;
  const unlike = Math.min(alike, 0.7 * diameter ** 2 * fu, 3.1 * thickness * diameter * fu);
  const tearing = otherThickness <= 2.5 * thickness ? alike : unlike;
  const weld = (Math.PI / 4) * diameter ** 2 * fu;
  return { weld, tearing, strength: Math.min(weld, tearing) };
}
