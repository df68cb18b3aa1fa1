import { thickness } from "../bending/symbols.ts";
import type { FormulaInput, FormulaSymbol } from "../formula.ts";
import { propertyInputs } from "../stock/material.ts";

/** The letters of cutting, each with its unit and house range; formulas and forms read the same row. */

export const sheet = thickness;
export const shearStrength = { ...propertyInputs.shearStrength, tex: String.raw`\tau` } as const satisfies FormulaInput;

export const cutLength = {
  label: "Length of the cut",
  symbol: "L",
  tex: "L",
  quantity: "length",
  fineness: "size",
  min: 1,
  max: 10_000,
} as const satisfies FormulaInput;

/** Of a raked blade; parallel blades have none. */
export const rake = {
  label: "Rake of the blade",
  symbol: "φ",
  tex: String.raw`\varphi`,
  quantity: "angle",
  min: 0.1,
  max: 10,
} as const satisfies FormulaInput;

export const penetration = {
  label: "Depth at which the sheet breaks through, over its thickness",
  symbol: "p",
  tex: "p",
  quantity: "ratio",
  min: 0.01,
  max: 1,
} as const satisfies FormulaInput;

export const bladeForce = {
  label: "Force on the blade",
  symbol: "F",
  tex: "F",
  quantity: "force",
} as const satisfies FormulaSymbol;
