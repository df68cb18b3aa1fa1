import type { MaterialId } from "../catalogue.ts";
import type { Formula, FormulaInput } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { holeDiameter, shearStrength, sheet } from "./symbols.ts";

/** Clearance per side over thickness, by group of metals, after Groover's table. */
const groups = {
  soft: { factor: 0.045, metals: "aluminium 1100 and 5052, all tempers" },
  middle: { factor: 0.06, metals: "aluminium 2024 and 6061 heat treated, brass, soft cold-rolled steel, soft stainless" },
  hard: { factor: 0.075, metals: "half-hard cold-rolled steel, half-hard and hard stainless" },
} as const;

interface ClearanceGroup {
  readonly factor: number;
  readonly metals: string;
  /** The table names this metal; otherwise it was put into the nearest group here. */
  readonly named: boolean;
}

const named = (group: keyof typeof groups): ClearanceGroup => ({ ...groups[group], named: true });
const nearest = (group: keyof typeof groups): ClearanceGroup => ({ ...groups[group], named: false });

export const clearanceGroups: Readonly<Record<MaterialId, ClearanceGroup>> = {
  "steel-cr": named("middle"),
  "steel-dc04": nearest("middle"),
  "steel-s235": nearest("middle"),
  "steel-galv": nearest("middle"),
  "stainless-304": named("middle"),
  "stainless-316": named("middle"),
  "stainless-430": named("middle"),
  "al-1100-o": named("soft"),
  "al-1100-h14": named("soft"),
  "al-3003-h14": nearest("soft"),
  "al-5052-h32": named("soft"),
  "al-6061-o": nearest("soft"),
  "al-6061-t4": named("middle"),
  "al-6061-t6": named("middle"),
  "al-2024-o": nearest("soft"),
  "al-2024-t3": named("middle"),
  "copper-soft": nearest("middle"),
  "copper-half-hard": nearest("middle"),
  "brass-half-hard": named("middle"),
  "titanium-2": nearest("hard"),
};

export const clearanceFactorSymbol = {
  label: "Clearance per side over thickness",
  symbol: "a",
  tex: "a",
  quantity: "ratio",
  min: 0,
  max: 0.3,
} as const satisfies FormulaInput;

export const clearanceSymbol = {
  label: "Clearance per side",
  symbol: "c",
  tex: "c",
  quantity: "length",
  fineness: "setting",
  decimals: 3,
  min: 0,
  max: 5,
} as const satisfies FormulaInput;

export const clearanceFormula: Formula = {
  id: "die-clearance",
  name: "Clearance between punch and die, on each side",
  result: "clearance",
  expression: String.raw`\v{factor}\cdot\v{thickness}`,
  symbols: { factor: clearanceFactorSymbol, thickness: sheet, clearance: clearanceSymbol },
};

/**
 * Clearance between punch and die on each side, from a table factor.
 *
 * @param fit.factor - a [1], of the thickness, per side; 0 to 0.3
 * @param fit.thickness - T [mm]; 0.1 to 13
 * @returns c [mm] = a T
 * @throws InputError for a value outside its range
 * @remarks Some texts print the clearance of both sides together; this is one side. Source: Groover's table, as posted with an
 *   end-of-chapter problem (read).
 * @example dieClearance({ factor: 0.06, thickness: 1.5 }); // 0.09
 */
export function dieClearance(fit: { readonly factor: number; readonly thickness: number }): number {
  checkRanges({ factor: clearanceFactorSymbol, thickness: sheet }, fit);
  return fit.factor * fit.thickness;
}

/** Constants of the root rule: for ordinary and for accurate work. */
const rootConstants = { ordinary: 0.01, accurate: 0.005 } as const;

/**
 * Clearance per side that grows with the root of the shear strength.
 *
 * @param fit.thickness - T [mm]; 0.1 to 13
 * @param fit.shearStrength - τ [N/mm²]; 5 to 2500
 * @param work - `ordinary`, or half of it for accurate work
 * @returns c [mm] = 0.01 T √(τ/10), or 0.005 T √(τ/10)
 * @throws InputError for a value outside its range
 * @remarks Source: press-tool note on cutting clearance (read); an examination question has nearly the same, 0.0064 T √τ on both sides.
 * @example clearanceByRoot({ thickness: 2, shearStrength: 350 }, "ordinary"); // 0.1183
 */
export function clearanceByRoot(
  fit: { readonly thickness: number; readonly shearStrength: number },
  work: keyof typeof rootConstants,
): number {
  checkRanges({ thickness: sheet, shearStrength }, fit);
  return rootConstants[work] * fit.thickness * Math.sqrt(fit.shearStrength / 10);
}

/** Clearances per side over thickness that other texts print for any metal. */
export const clearanceBands = [
  { name: "Rhode Island notes", low: 0.02, high: 0.1, source: "rhode-island-notes", seen: "read" },
  { name: "Illinois notes", low: 0.04, high: 0.08, source: "illinois-mechref", seen: "read" },
  { name: "Kalpakjian and Schmid, older editions", low: 0.02, high: 0.08, source: "kalpakjian-schmid", seen: "memory" },
] as const;

/** The widest of them: outside it a die is called tight or loose. */
export const usableClearance = { low: 0.02, high: 0.1, source: "rhode-island-notes" } as const;

export const dieDiameterFormula: Formula = {
  id: "die-diameter",
  name: "Opening of the die",
  result: "dieDiameter",
  expression: String.raw`\v{diameter} + 2\cdot\v{clearance}`,
  symbols: {
    diameter: holeDiameter,
    clearance: clearanceSymbol,
    dieDiameter: {
      label: "Die opening",
      symbol: "D",
      tex: "D",
      quantity: "length",
      fineness: "setting",
      decimals: 3,
    },
  },
};

/**
 * Die opening for a hole: the punch has the size of the hole, the clearance goes onto the die.
 *
 * @param hole.diameter - d [mm]; 0.3 to 200
 * @param hole.clearance - c [mm], per side; 0 to 5
 * @returns D [mm] = d + 2 c
 * @throws InputError for a value outside its range
 * @remarks For holes. For a blank that is to have a size, the die has that size and the punch is smaller by 2 c.
 *   Source: Illinois notes (read).
 * @example dieDiameter({ diameter: 10, clearance: 0.09 }); // 10.18
 */
export function dieDiameter(hole: { readonly diameter: number; readonly clearance: number }): number {
  checkRanges({ diameter: holeDiameter, clearance: clearanceSymbol }, hole);
  return hole.diameter + 2 * hole.clearance;
}
