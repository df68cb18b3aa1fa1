import type { Formula, FormulaSymbol } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { bladeForce, cutLength, penetration, rake, shearStrength, sheet } from "./symbols.ts";

const parallel = { length: cutLength, thickness: sheet, shearStrength };

export const parallelForceFormula: Formula = {
  id: "shear-force-parallel",
  name: "Force with parallel blades",
  result: "force",
  expression: String.raw`\v{length}\cdot\v{thickness}\cdot\v{shearStrength}`,
  symbols: { ...parallel, force: bladeForce },
};

/**
 * Force of blades that meet the sheet along the whole cut at once.
 *
 * @param cut.length - L [mm]; 1 to 10 000
 * @param cut.thickness - T [mm]; 0.1 to 13
 * @param cut.shearStrength - τ [N/mm²]; 5 to 2500
 * @returns F [N] = L T τ
 * @throws InputError for a value outside its range
 * @remarks The largest force, when the whole section is still there. No blade at any rake needs more. Source: definition of shear strength.
 * @example parallelForce({ length: 1250, thickness: 1.5, shearStrength: 280 }); // 525000
 */
export function parallelForce(cut: {
  readonly length: number;
  readonly thickness: number;
  readonly shearStrength: number;
}): number {
  checkRanges(parallel, cut);
  return cut.length * cut.thickness * cut.shearStrength;
}

/** A sheet under a raked blade. */
export interface RakedCut {
  /** T [mm] */
  readonly thickness: number;
  /** τ [N/mm²] */
  readonly shearStrength: number;
  /** φ [deg] */
  readonly rake: number;
}

/** The same, with p: the share of the thickness that is cut before the rest breaks. */
export interface BreakingCut extends RakedCut {
  readonly penetration: number;
}

const raked = { thickness: sheet, shearStrength, rake };
const breaking = { ...raked, penetration };
const slope = (cut: RakedCut) => Math.tan((cut.rake * Math.PI) / 180);

export const engagedLengthFormula: Formula = {
  id: "shear-engaged-length",
  name: "Length under the raked blade at any moment",
  result: "engaged",
  expression: String.raw`\frac{\v{thickness}}{\tan\v{rake}}`,
  symbols: {
    thickness: sheet,
    rake,
    engaged: {
      label: "Length under the blade",
      symbol: "l",
      tex: "l",
      quantity: "length",
    } as const satisfies FormulaSymbol,
  },
};

/**
 * Length of sheet that a raked blade is cutting at any moment, from where it touches to where it is through.
 *
 * @param cut.thickness - T [mm]; 0.1 to 13
 * @param cut.rake - φ [deg]; 0.1 to 10
 * @returns l [mm] = T/tan φ
 * @throws InputError for a value outside its range
 * @remarks Source: geometry.
 * @example engagedLength({ thickness: 1.5, rake: 1.5 }); // 57.28
 */
export function engagedLength(cut: { readonly thickness: number; readonly rake: number }): number {
  checkRanges({ thickness: sheet, rake }, cut);
  return cut.thickness / Math.tan((cut.rake * Math.PI) / 180);
}

export const rakedForceFormula: Formula = {
  id: "shear-force-raked",
  name: "Force with a raked blade, whole triangle resisting",
  result: "force",
  expression: String.raw`\frac{\v{shearStrength}\cdot\v{thickness}^2}{2\,\tan\v{rake}}`,
  symbols: { ...raked, force: bladeForce },
};

/**
 * Force of a raked blade when everything not yet cut resists: a triangle T high and T/tan φ long.
 *
 * @param cut - T [mm]; 0.1 to 13. τ [N/mm²]; 5 to 2500. φ [deg]; 0.1 to 10
 * @returns F [N] = τ T²/(2 tan φ)
 * @throws InputError for a value outside its range
 * @remarks For a cut longer than the stretch under the blade; then its length does not matter. Leaves out that the sheet breaks through
 *   before it is cut through, so it is high for metals that break early. Source: equilibrium.
 * @example rakedForce({ thickness: 1.5, shearStrength: 280, rake: 1.5 }); // 12029
 */
export function rakedForce(cut: RakedCut): number {
  checkRanges(raked, cut);
  return (cut.shearStrength * cut.thickness ** 2) / (2 * slope(cut));
}

/**
 * Force of a raked blade when the sheet breaks through at a share p of its thickness: the triangle less its broken end.
 *
 * @param cut - as for `rakedForce`, and p [1]; 0.01 to 1
 * @returns F [N] = τ T² p (2 − p)/(2 tan φ); the whole triangle at p = 1
 * @throws InputError for a value outside its range
 * @remarks The lowest of the three forms, whatever p is. Source: equilibrium.
 * @example rakedForceBreaking({ thickness: 1.5, shearStrength: 280, rake: 1.5, penetration: 0.4 }); // 7699
 */
export function rakedForceBreaking(cut: BreakingCut): number {
  checkRanges(breaking, cut);
  return rakedForce(cut) * cut.penetration * (2 - cut.penetration);
}

/**
 * Force of a raked blade from the work that parallel blades do: the same work, spread along the cut.
 *
 * @param cut - as for `rakedForceBreaking`
 * @returns F [N] = w/tan φ with w = τ p T², the work a unit of length when the force stays full down to p
 * @throws InputError for a value outside its range
 * @remarks Above the triangle for p over ½. Source: that angled forces follow from parallel ones is the finding of Gustafsson and others
 *   2016 (abstract read), good up to about 2°; the flat force curve is our own choice.
 * @example rakedForceByWork({ thickness: 1.5, shearStrength: 280, rake: 1.5, penetration: 0.4 }); // 9623
 */
export function rakedForceByWork(cut: BreakingCut): number {
  checkRanges(breaking, cut);
  return (cut.shearStrength * cut.penetration * cut.thickness ** 2) / slope(cut);
}
