import { insideRadius, thickness } from "../bending/symbols.ts";
import type { FormulaInput, FormulaSymbol } from "../formula.ts";

/** The letters of rolling, each with its unit and house range; formulas and forms read the same row. */

const setting = { quantity: "length", fineness: "setting" } as const;
const rollDiameter = { ...setting, min: 5, max: 500 } as const;

export const sheet = thickness;

export const frontRoll = {
  ...rollDiameter,
  label: "Front roll diameter",
  symbol: "D1",
  tex: "D_1",
} as const satisfies FormulaInput;

export const rearRoll = {
  ...rollDiameter,
  label: "Rear roll diameter",
  symbol: "D3",
  tex: "D_3",
} as const satisfies FormulaInput;

export const rollSpacing = {
  ...setting,
  label: "Pinch line to rear roll",
  symbol: "x",
  tex: "x",
  min: 5,
  max: 1000,
} as const satisfies FormulaInput;

export const screwPitch = {
  ...setting,
  label: "Screw pitch",
  symbol: "P",
  tex: "P",
  min: 0.2,
  max: 20,
} as const satisfies FormulaInput;

export const loadedRadius = {
  ...insideRadius,
  label: "Inside radius between the rolls",
  symbol: "Ri",
  tex: "R_i",
} as const satisfies FormulaInput;

export const finishedRadius = {
  ...insideRadius,
  label: "Inside radius after springback",
  symbol: "Rf",
  tex: "R_f",
} as const satisfies FormulaInput;

export const riseSymbol = {
  ...setting,
  label: "Rise of the rear roll from flat contact",
  symbol: "h",
  tex: "h",
  min: 0,
  max: 1500,
  aboveMin: true,
} as const satisfies FormulaInput;

export const turnsSymbol = {
  label: "Turns of each screw",
  symbol: "n",
  tex: "n",
  quantity: "ratio",
} as const satisfies FormulaSymbol;
