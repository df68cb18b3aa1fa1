import { thickness } from "../bending/symbols.ts";
import type { FormulaInput } from "../formula.ts";
import { propertyInputs } from "../stock/material.ts";

/** The letters of punching, each with its unit and house range; formulas and forms read the same row. */

const size = { quantity: "length", fineness: "setting", min: 0.3, max: 200 } as const;

export const sheet = thickness;
export const holeDiameter = { ...size, label: "Hole diameter", symbol: "d", tex: "d" } as const satisfies FormulaInput;
export const holeWidth = { ...size, label: "Hole width", symbol: "a", tex: "a" } as const satisfies FormulaInput;
export const holeHeight = { ...size, label: "Hole height", symbol: "b", tex: "b" } as const satisfies FormulaInput;
export const shearStrength = { ...propertyInputs.shearStrength, tex: String.raw`\tau` } as const satisfies FormulaInput;
export const tensileStrength = { ...propertyInputs.tensileStrength, tex: "R_m" } as const satisfies FormulaInput;

export const perimeterSymbol = {
  label: "Length of the cut",
  symbol: "L",
  tex: "L",
  quantity: "length",
  fineness: "setting",
  min: 0.5,
  max: 1000,
} as const satisfies FormulaInput;

/** N, so wide that no hole of the house ranges falls outside. */
export const punchForceSymbol = {
  label: "Punching force",
  symbol: "F",
  tex: "F",
  quantity: "force",
  min: 0,
  max: 1e8,
} as const satisfies FormulaInput;

export const holeShapes = { round: "round", square: "square", rectangle: "rectangle" } as const;
export type HoleShape = keyof typeof holeShapes;
