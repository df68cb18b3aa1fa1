import type { FormulaInput, FormulaSymbol } from "../formula.ts";

/** The letters of joining, each with its unit and range; formulas and forms read the same row. */

const length = { quantity: "length", fineness: "setting" } as const;

export const sheet = {
  ...length,
  label: "Thickness",
  symbol: "t1",
  tex: "t_1",
  min: 0.4,
  max: 3,
} as const satisfies FormulaInput;

export const otherSheet = {
  ...length,
  label: "Thickness of the other sheet",
  symbol: "t2",
  tex: "t_2",
  min: 0.4,
  max: 3,
} as const satisfies FormulaInput;

export const governing = {
  ...length,
  label: "Governing thickness",
  symbol: "t",
  tex: "t",
  min: 0.25,
  max: 6.35,
} as const satisfies FormulaInput;

export const weldDiameter = { ...length, label: "Weld diameter", symbol: "d", tex: "d" } as const satisfies FormulaSymbol;

export const tensile = {
  label: "Tensile strength of the sheet",
  symbol: "Rm",
  tex: "R_m",
  quantity: "stress",
  min: 10,
  max: 3000,
} as const satisfies FormulaInput;

export const load = {
  label: "Load along the sheets",
  symbol: "F",
  tex: "F",
  quantity: "force",
  min: 0,
  max: 1_000_000,
  aboveMin: true,
} as const satisfies FormulaInput;

export const safetyFactor = {
  label: "Safety factor",
  symbol: "S",
  tex: "S",
  quantity: "ratio",
  min: 1,
  max: 20,
} as const satisfies FormulaInput;

export const strength = {
  label: "Strength of one",
  symbol: "P",
  tex: "P",
  quantity: "force",
} as const satisfies FormulaSymbol;
