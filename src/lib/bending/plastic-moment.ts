import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { propertyInputs } from "../stock/material.ts";
import { thickness } from "./symbols.ts";

export const bendWidth = {
  label: "Length along the bend",
  symbol: "w",
  tex: "w",
  quantity: "length",
  fineness: "size",
  min: 1,
  max: 10_000,
} as const satisfies FormulaInput;

const moment = { label: "Moment", symbol: "M", tex: "M", quantity: "moment", decimals: 1 } as const satisfies FormulaSymbol;

const inputs = { yield: { ...propertyInputs.yield, tex: "Y" }, width: bendWidth, thickness };

/** A strip to be bent: Y [N/mm²], w and T [mm]. */
export interface BentStrip {
  readonly yield: number;
  readonly width: number;
  readonly thickness: number;
}

/** Shape of the formulas: newton millimetres over this are newton metres. */
const millimetres = 1000;

export const fullPlasticMomentFormula: Formula = {
  id: "full-plastic-moment",
  name: "Bending moment with the whole thickness yielding",
  result: "fullPlastic",
  expression: String.raw`\frac{\v{yield}\cdot\v{width}\cdot\v{thickness}^2}{4}\cdot\frac{1\,\mathrm{m}}{1000\,\mathrm{mm}}`,
  symbols: { ...inputs, fullPlastic: { ...moment, symbol: "Mp", tex: "M_p" } },
};

/**
 * Moment that bends a narrow strip with its whole thickness yielding.
 *
 * @param bend.yield - Y [N/mm²]; 5 to 2500
 * @param bend.width - w [mm], length along the bend; 1 to 10 000
 * @param bend.thickness - T [mm]; 0.1 to 13
 * @returns Mp [N·m] = Y w T²/4
 * @throws InputError for a value outside its range
 * @remarks Elastic, perfectly plastic metal. Source: mechanics of materials, any textbook (from memory).
 * @example fullPlasticMoment({ yield: 250, width: 1000, thickness: 2 }); // 250
 */
export function fullPlasticMoment(bend: BentStrip): number {
  checkRanges(inputs, bend);
  return (bend.yield * bend.width * bend.thickness ** 2) / 4 / millimetres;
}

/**
 * Moment at which the outer fibres of a strip begin to yield: two thirds of the full plastic one.
 *
 * @param bend - as for `fullPlasticMoment`
 * @returns My [N·m] = Y w T²/6
 * @throws InputError for a value outside its range
 * @remarks Source: mechanics of materials, any textbook (from memory).
 */
export function firstYieldMoment(bend: BentStrip): number {
  return fullPlasticMoment(bend) * (2 / 3);
}

export const planeStrainMomentFormula: Formula = {
  id: "plane-strain-moment",
  name: "The same for a sheet much wider than thick",
  result: "moment",
  expression: String.raw`\frac{2}{\sqrt{3}}\cdot\v{fullPlastic}`,
  symbols: { fullPlastic: { ...moment, symbol: "Mp", tex: "M_p" }, moment },
};

/**
 * Moment that bends a sheet much wider than thick: it cannot narrow along the bend, which makes it 15 % stiffer to yield.
 *
 * @param bend - as for `fullPlasticMoment`
 * @returns M [N·m] = (2/√3) Y w T²/4
 * @throws InputError for a value outside its range
 * @remarks Von Mises yielding in plane strain. Work hardening, friction and the stretch of the outer face add to it.
 *   Source: plasticity textbooks (from memory).
 */
export function planeStrainMoment(bend: BentStrip): number {
  return (2 / Math.sqrt(3)) * fullPlasticMoment(bend);
}

const carried = {
  ratedThickness: { ...thickness, label: "Thickness on the plate", symbol: "T₁", tex: "T_1" },
  ratedYield: { ...propertyInputs.yield, label: "Yield strength of the metal on the plate", symbol: "Y₁", tex: "Y_1" },
  yield: { ...propertyInputs.yield, tex: "Y" },
} as const;

export const momentCapacityFormula: Formula = {
  id: "moment-capacity",
  name: "Thickness that takes the same moment in another metal",
  result: "capacity",
  expression: String.raw`\v{ratedThickness}\cdot\sqrt{\frac{\v{ratedYield}}{\v{yield}}}`,
  symbols: {
    ...carried,
    capacity: { label: "Thickness for the same moment", symbol: "T₂", tex: "T_2", quantity: "length", fineness: "setting" },
  },
};

/**
 * Thickness in another metal that loads a brake, or rolls, like the job on their plate, over the same length.
 *
 * @param plate.ratedThickness - T₁ [mm]; 0.1 to 13
 * @param plate.ratedYield - Y₁ [N/mm²]; 5 to 2500
 * @param plate.yield - Y [N/mm²] of the other metal; 5 to 2500
 * @returns T₂ [mm] = T₁ √(Y₁/Y), because the moment goes with Y T²
 * @throws InputError for a value outside its range
 * @remarks By the moment alone. More than T₁ still needs the manual: clamp, fingers and leaf are made for T₁. Source: equilibrium.
 * @example momentCapacity({ ratedThickness: 1.6, ratedYield: 200, yield: 288 }); // 1.333
 */
export function momentCapacity(plate: {
  readonly ratedThickness: number;
  readonly ratedYield: number;
  readonly yield: number;
}): number {
  checkRanges(carried, plate);
  return plate.ratedThickness * Math.sqrt(plate.ratedYield / plate.yield);
}
