import type { Formula } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { holeDiameter, perimeterSymbol, punchForceSymbol, shearStrength, sheet, tensileStrength } from "./symbols.ts";

const inputs = { perimeter: perimeterSymbol, thickness: sheet, shearStrength };

export const punchForceFormula: Formula = {
  id: "punch-force",
  name: "Punching force",
  result: "force",
  expression: String.raw`\v{perimeter}\cdot\v{thickness}\cdot\v{shearStrength}`,
  symbols: { ...inputs, force: punchForceSymbol },
};

/**
 * Largest force of a flat punch: the whole edge shears at once.
 *
 * @param cut.perimeter - L [mm], length of edge cut at once; 0.5 to 1000
 * @param cut.thickness - T [mm]; 0.1 to 13
 * @param cut.shearStrength - τ [N/mm²], the largest shear stress, not the yield or the tensile strength; 5 to 2500
 * @returns F [N] = L T τ
 * @throws InputError for a value outside its range
 * @remarks Sharp punch and die with the right clearance. Source: press-tool notes and examination questions (read).
 * @example punchForce({ perimeter: 31.4159, thickness: 2, shearStrength: 400 }); // 25133
 */
export function punchForce(cut: {
  readonly perimeter: number;
  readonly thickness: number;
  readonly shearStrength: number;
}): number {
  checkRanges(inputs, cut);
  return cut.perimeter * cut.thickness * cut.shearStrength;
}

/** Shares of the tensile strength that published rules take for the shear strength. */
export const tensileShares = {
  kalpakjian: { share: 0.7, source: "rhode-island-notes" },
  pressTool: { share: 0.8, source: "press-tool-module" },
} as const;

/**
 * Punching force from the tensile strength, where no shear strength is known.
 *
 * @param cut.perimeter - L [mm]; 0.5 to 1000
 * @param cut.thickness - T [mm]; 0.1 to 13
 * @param cut.tensileStrength - Rm [N/mm²]; 10 to 3000
 * @param rule - 0.7 of it after Kalpakjian and Schmid; 0.8 in press-tool notes for steel
 * @returns F [N]
 * @throws InputError for a value outside its range
 * @remarks Sources: University of Rhode Island and University of Illinois notes, F = 0.7 T L Rm (read); press-tool lecture module,
 *   τ = 0.8 Rm (read).
 * @example punchForceFromTensile({ perimeter: 32, thickness: 2, tensileStrength: 500 }, "kalpakjian"); // 22400
 */
export function punchForceFromTensile(
  cut: { readonly perimeter: number; readonly thickness: number; readonly tensileStrength: number },
  rule: keyof typeof tensileShares,
): number {
  checkRanges({ perimeter: perimeterSymbol, thickness: sheet, tensileStrength }, cut);
  return tensileShares[rule].share * cut.perimeter * cut.thickness * cut.tensileStrength;
}

const roundHole = { thickness: sheet, shearStrength, diameter: holeDiameter };

export const punchStressFormula: Formula = {
  id: "punch-stress",
  name: "Stress in the punch",
  result: "stress",
  expression: String.raw`\frac{4\cdot\v{thickness}\cdot\v{shearStrength}}{\v{diameter}}`,
  symbols: {
    ...roundHole,
    stress: { label: "Stress in the punch", symbol: "σ", tex: String.raw`\sigma`, quantity: "stress" },
  },
};

/**
 * Pressure in a round punch at the largest force: force over its own cross-section.
 *
 * @param hole.diameter - d [mm]; 0.3 to 200
 * @param hole.thickness - T [mm]; 0.1 to 13
 * @param hole.shearStrength - τ [N/mm²]; 5 to 2500
 * @returns σ [N/mm²] = π d T τ/(π d²/4) = 4 T τ/d
 * @throws InputError for a value outside its range
 * @remarks Source: equilibrium.
 * @example punchStress({ diameter: 15, thickness: 2, shearStrength: 250 }); // 133.3
 */
export function punchStress(hole: {
  readonly diameter: number;
  readonly thickness: number;
  readonly shearStrength: number;
}): number {
  checkRanges(roundHole, hole);
  return (4 * hole.thickness * hole.shearStrength) / hole.diameter;
}

/** What a hardened punch takes in this house's sums [N/mm²]; of the order usual for tool steel, from memory. */
export const punchStressLimit = 1500;

/**
 * Smallest round hole before its punch is overloaded: `punchStress` turned round.
 *
 * @param hole.thickness - T [mm]; 0.1 to 13
 * @param hole.shearStrength - τ [N/mm²]; 5 to 2500
 * @param limit - stress the punch takes [N/mm²]
 * @returns d [mm] = 4 T τ/limit
 * @throws InputError for a value outside its range
 * @remarks A short, well guided punch; a long one buckles sooner. Source: equilibrium.
 * @example smallestPunch({ thickness: 1.5, shearStrength: 280 }); // 1.12
 */
export function smallestPunch(
  hole: { readonly thickness: number; readonly shearStrength: number },
  limit: number = punchStressLimit,
): number {
  checkRanges({ thickness: sheet, shearStrength }, hole);
  return (4 * hole.thickness * hole.shearStrength) / limit;
}
