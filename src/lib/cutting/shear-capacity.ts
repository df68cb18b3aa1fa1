import type { Formula, FormulaSymbol } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { shearStrength, sheet } from "./symbols.ts";

const ratedThickness = { ...sheet, label: "Thickness on the plate", symbol: "T₁", tex: "T_1" } as const;
const ratedStrength = {
  ...shearStrength,
  label: "Shear strength of the metal on the plate",
  symbol: "τ₁",
  tex: String.raw`\tau_1`,
} as const;
const inputs = { ratedThickness, ratedStrength, shearStrength };
const capacitySymbol = {
  label: "Thickness for the same force",
  symbol: "T₂",
  tex: "T_2",
  quantity: "length",
  fineness: "setting",
} as const satisfies FormulaSymbol;

/** What a plate says, and the metal to carry it over to. */
export interface CapacityInput {
  /** T₁ [mm] */
  readonly ratedThickness: number;
  /** τ₁ [N/mm²] */
  readonly ratedStrength: number;
  /** τ [N/mm²] */
  readonly shearStrength: number;
}

export const rakedCapacityFormula: Formula = {
  id: "shear-capacity-raked",
  name: "Thickness that a raked shear takes in another metal",
  result: "capacity",
  expression: String.raw`\v{ratedThickness}\cdot\sqrt{\frac{\v{ratedStrength}}{\v{shearStrength}}}`,
  symbols: { ...inputs, capacity: capacitySymbol },
};

/**
 * Thickness in another metal that loads a raked blade like the job on its plate.
 *
 * @param plate.ratedThickness - T₁ [mm]; 0.1 to 13
 * @param plate.ratedStrength - τ₁ [N/mm²]; 5 to 2500
 * @param plate.shearStrength - τ [N/mm²] of the other metal; 5 to 2500
 * @returns T₂ [mm] = T₁ √(τ₁/τ), because the force goes with τ T²
 * @throws InputError for a value outside its range
 * @remarks By the force alone. More than T₁ still needs the manual: blade gap, hold-downs and stroke are made for T₁. Source: equilibrium.
 * @example rakedCapacity({ ratedThickness: 1.52, ratedStrength: 300, shearStrength: 450 }); // 1.241
 */
export function rakedCapacity(plate: CapacityInput): number {
  checkRanges(inputs, plate);
  return plate.ratedThickness * Math.sqrt(plate.ratedStrength / plate.shearStrength);
}

export const parallelCapacityFormula: Formula = {
  id: "shear-capacity-parallel",
  name: "Thickness that parallel blades take in another metal",
  result: "capacity",
  expression: String.raw`\v{ratedThickness}\cdot\frac{\v{ratedStrength}}{\v{shearStrength}}`,
  symbols: { ...inputs, capacity: capacitySymbol },
};

/**
 * Thickness in another metal that loads parallel blades like the job on their plate, over the same length.
 *
 * @param plate - as for `rakedCapacity`
 * @returns T₂ [mm] = T₁ τ₁/τ
 * @throws InputError for a value outside its range
 * @remarks Source: equilibrium.
 * @example parallelCapacity({ ratedThickness: 1.52, ratedStrength: 300, shearStrength: 450 }); // 1.0133
 */
export function parallelCapacity(plate: CapacityInput): number {
  checkRanges(inputs, plate);
  return (plate.ratedThickness * plate.ratedStrength) / plate.shearStrength;
}

/**
 * Thickness in another metal for blades whose slope is not known: the lower of the two rules, which holds for either.
 *
 * @param plate - as for `rakedCapacity`
 * @returns T₂ [mm]
 * @throws InputError for a value outside its range
 * @remarks Source: equilibrium.
 * @example surestCapacity({ ratedThickness: 1.52, ratedStrength: 300, shearStrength: 450 }); // 1.0133
 */
export function surestCapacity(plate: CapacityInput): number {
  return Math.min(rakedCapacity(plate), parallelCapacity(plate));
}
