import type { FormulaInput, FormulaSymbol } from "../formula.ts";

/** The letters of bending, each with its unit and house range; formulas and forms read the same row. */

export const bendAngle = {
  label: "Angle turned through",
  symbol: "A",
  tex: "A",
  quantity: "angle",
  min: 0,
  max: 180,
  aboveMin: true,
} as const satisfies FormulaInput;

export const insideRadius = {
  label: "Inside radius",
  symbol: "R",
  tex: "R",
  quantity: "length",
  fineness: "setting",
  min: 0,
  max: 1000,
} as const satisfies FormulaInput;

export const thickness = {
  label: "Thickness",
  symbol: "T",
  tex: "T",
  quantity: "length",
  fineness: "setting",
  min: 0.1,
  max: 13,
} as const satisfies FormulaInput;

export const kFactor = {
  label: "K-factor",
  symbol: "K",
  tex: "K",
  quantity: "ratio",
  min: 0,
  max: 1,
} as const satisfies FormulaInput;

export const allowance = {
  label: "Bend allowance",
  symbol: "BA",
  tex: String.raw`\mathrm{BA}`,
  quantity: "length",
  fineness: "setting",
} as const satisfies FormulaSymbol;

export const setbackSymbol = {
  label: "Setback",
  symbol: "SB",
  tex: String.raw`\mathrm{SB}`,
  quantity: "length",
  fineness: "setting",
} as const satisfies FormulaSymbol;

export const deductionSymbol = {
  label: "Bend deduction",
  symbol: "BD",
  tex: String.raw`\mathrm{BD}`,
  quantity: "length",
  fineness: "setting",
} as const satisfies FormulaSymbol;

/** Where an outside leg is measured to. */
export const legEnds = {
  apex: "the outside apex, where the two outside faces would meet",
  tangent: "the outermost point of the bend",
} as const;
export type LegEnd = keyof typeof legEnds;

/** As a drawing shows it: to the apex up to 90°, to the outermost point of the bend above that. */
export function usualLegEnd(angle: number): LegEnd {
  return angle <= 90 ? "apex" : "tangent";
}

/** The folded edges of the handbook; ids are part of addresses and part files. */
export const foldedEdgeKinds = {
  closed: "closed: folded back and pressed flat",
  open: "open: folded back with a gap",
  teardrop: "teardrop: rolled until the edge touches the sheet",
  double: "double: folded back flat twice, raw edge inside",
} as const;
export type FoldedEdgeKind = keyof typeof foldedEdgeKinds;
