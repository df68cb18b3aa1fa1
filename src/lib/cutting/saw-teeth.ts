import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { checkRanges } from "../inputs.ts";
import { sheet } from "./symbols.ts";

/** Bands are made from 6 to 32 teeth an inch. Source: Machinery Repairman (read). */
export const bandsMade = { coarsest: 6, finest: 32 } as const;

/** Teeth that must be in the cut at once, or the sheet hooks between two of them. */
export const teethInCut = {
  /** NAVEDTRA 14119 and US Army OD0017 (read). */
  least: 2,
  /** Most modern practice (from memory). */
  better: 3,
} as const;

/** The flattest that a sheet is usually laid to the blade [deg]; common practice. */
export const flattestFeed = 30;

export const teethPerInch = {
  label: "Teeth an inch",
  symbol: "z",
  tex: "z",
  quantity: "ratio",
  min: 1,
  max: 100,
} as const satisfies FormulaInput;

const angle = {
  label: "Angle between blade and sheet",
  symbol: "β",
  tex: String.raw`\beta`,
  quantity: "angle",
  min: 1,
  max: 90,
} as const satisfies FormulaInput;

const teethSymbol = { label: "Teeth in the cut", symbol: "n", tex: "n", quantity: "ratio" } as const satisfies FormulaSymbol;

export const sawTeethFormula: Formula = {
  id: "saw-teeth-in-cut",
  name: "Teeth in the cut at once",
  result: "teeth",
  expression: String.raw`\frac{\v{thickness}\cdot\v{teethPerInch}}{25.4\cdot\sin\v{angle}}`,
  symbols: { thickness: sheet, teethPerInch, angle, teeth: teethSymbol },
};

/**
 * Teeth of a saw band that stand in the sheet at once.
 *
 * @param cut.thickness - T [mm]; 0.1 to 13
 * @param cut.teethPerInch - z [1/in]; 1 to 100
 * @param cut.angle - β [deg] between the run of the blade and the face of the sheet; 90 is square on; 1 to 90
 * @returns n [1] = T z/(25.4 sin β)
 * @throws InputError for a value outside its range
 * @remarks Source: NAVEDTRA 14119 chapter 5, square on (read); the slanted cut is geometry.
 * @example sawTeeth({ thickness: 1.5, teethPerInch: 32, angle: 90 }); // 1.89
 */
export function sawTeeth(cut: { readonly thickness: number; readonly teethPerInch: number; readonly angle: number }): number {
  checkRanges({ thickness: sheet, teethPerInch, angle }, cut);
  return (cut.thickness * cut.teethPerInch) / (25.4 * Math.sin((cut.angle * Math.PI) / 180));
}

export const coarsestBandFormula: Formula = {
  id: "saw-coarsest-band",
  name: "Coarsest band that keeps enough teeth in the cut",
  result: "coarsest",
  expression: String.raw`\frac{25.4\cdot\v{teeth}\cdot\sin\v{angle}}{\v{thickness}}`,
  symbols: {
    thickness: sheet,
    teeth: teethSymbol,
    angle,
    coarsest: { ...teethPerInch, label: "Coarsest band, teeth an inch", symbol: "z min", tex: String.raw`z_{\min}` },
  },
};

/**
 * Coarsest band that keeps a number of teeth in the cut.
 *
 * @param cut.thickness - T [mm]; 0.1 to 13
 * @param cut.teeth - wanted in the cut at once; 2 by the rule
 * @param cut.angle - β [deg]; 1 to 90
 * @returns z [1/in] = 25.4 n sin β/T
 * @throws InputError for a value outside its range
 * @remarks `sawTeeth` turned round.
 * @example coarsestBand({ thickness: 3.629, teeth: 2, angle: 90 }); // 14
 */
export function coarsestBand(cut: { readonly thickness: number; readonly teeth: number; readonly angle: number }): number {
  checkRanges({ thickness: sheet, angle }, cut);
  return (25.4 * cut.teeth * Math.sin((cut.angle * Math.PI) / 180)) / cut.thickness;
}

/**
 * Steepest angle between blade and sheet at which a band has enough teeth in the cut.
 *
 * @param cut.thickness - T [mm]; 0.1 to 13
 * @param cut.teethPerInch - z [1/in]; 1 to 100
 * @param cut.teeth - wanted in the cut at once
 * @returns β [deg] = arcsin(T z/(25.4 n)); 90 where even a cut square on has enough
 * @throws InputError for a value outside its range
 * @remarks `sawTeeth` turned round.
 * @example steepestFeed({ thickness: 1.2, teethPerInch: 24, teeth: 2 }); // 34.5
 */
export function steepestFeed(cut: { readonly thickness: number; readonly teethPerInch: number; readonly teeth: number }): number {
  checkRanges({ thickness: sheet, teethPerInch }, cut);
  const sine = (cut.thickness * cut.teethPerInch) / (25.4 * cut.teeth);
  return sine >= 1 ? 90 : (Math.asin(sine) * 180) / Math.PI;
}

/** A band turns no curve tighter than this many of its widths; given for wood saws. Source: NAVEDTRA 14043 (read). */
const radiusPerWidth = 8;

/**
 * Widest band that follows a curve.
 *
 * @param radius - of the curve [mm]
 * @returns width [mm] = radius/8
 * @remarks Source: NAVEDTRA 14043, given for wood saws (read).
 * @example widestBand(101.6); // 12.7
 */
export function widestBand(radius: number): number {
  return radius / radiusPerWidth;
}

/** Tightest curve that a band follows [mm], from its width [mm]: `widestBand` turned round. */
export function tightestCurve(bandWidth: number): number {
  return radiusPerWidth * bandWidth;
}
