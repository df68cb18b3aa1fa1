import type { Formula, FormulaInput } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { propertyInputs } from "./material.ts";

const side = { quantity: "length", fineness: "size", min: 1, max: 10_000 } as const;
/** Most that one person lifts when everything is ideal, by the NIOSH equation [kg]. Source: niosh-lifting (read). */
export const oneLifter = 23;

export const sheetWidth = { ...side, label: "Width", symbol: "W", tex: "W" } as const satisfies FormulaInput;
export const sheetLength = { ...side, label: "Length", symbol: "L", tex: "L" } as const satisfies FormulaInput;
export const sheetThickness = {
  label: "Thickness",
  symbol: "T",
  tex: "T",
  quantity: "length",
  fineness: "setting",
  min: 0.1,
  max: 13,
} as const satisfies FormulaInput;
const density = { ...propertyInputs.density, tex: String.raw`\rho` } as const satisfies FormulaInput;

const inputs = { width: sheetWidth, length: sheetLength, thickness: sheetThickness, density };
const area = { label: "Area", symbol: "A", tex: "A", quantity: "area" } as const;

/** kg/m³ times mm³. */
const cubicMillimetre = 1e-9;

export const sheetAreaFormula: Formula = {
  id: "sheet-area",
  name: "Area",
  result: "area",
  expression: String.raw`\v{width}\cdot\v{length}`,
  symbols: { width: sheetWidth, length: sheetLength, area },
};

export const sheetMassFormula: Formula = {
  id: "sheet-mass",
  name: "Mass",
  result: "mass",
  expression: String.raw`\v{area}\cdot\v{thickness}\cdot\v{density}\cdot 10^{-9}`,
  symbols: {
    area,
    thickness: sheetThickness,
    density,
    mass: { label: "Mass", symbol: "m", tex: "m", quantity: "mass" },
  },
};

/**
 * Mass of a rectangular sheet.
 *
 * @param sheet.width - W [mm]; 1 to 10 000
 * @param sheet.length - L [mm]; 1 to 10 000
 * @param sheet.thickness - T [mm]; 0.1 to 13
 * @param sheet.density - ρ [kg/m³]; 500 to 25 000
 * @returns m [kg] = W L T ρ
 * @throws InputError for a value outside its range
 * @remarks Source: definition of density.
 * @example sheetMass({ width: 1250, length: 2500, thickness: 1, density: 7850 }); // 24.53
 */
export function sheetMass(sheet: {
  readonly width: number;
  readonly length: number;
  readonly thickness: number;
  readonly density: number;
}): number {
  checkRanges(inputs, sheet);
  return sheet.width * sheet.length * sheet.thickness * sheet.density * cubicMillimetre;
}
