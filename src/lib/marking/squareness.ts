import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRanges, exactly } from "../inputs.ts";
import { atLeast, atMost, say } from "../quantity/phrase.ts";

const side = { quantity: "length", fineness: "setting", min: 1, max: 10_000 } as const;
export const blankWidth = { ...side, label: "Width", symbol: "a", tex: "a" } as const satisfies FormulaInput;
export const blankHeight = { ...side, label: "Height", symbol: "b", tex: "b" } as const satisfies FormulaInput;
const diagonal = { ...side, max: 20_000 } as const;
export const diagonalA = {
  ...diagonal,
  label: "Diagonal A, lower left to upper right",
  symbol: "d₁",
  tex: "d_1",
} as const satisfies FormulaInput;
export const diagonalB = {
  ...diagonal,
  label: "Diagonal B, lower right to upper left",
  symbol: "d₂",
  tex: "d_2",
} as const satisfies FormulaInput;

const sizes = { width: blankWidth, height: blankHeight, diagonalA, diagonalB };
const errorAngle = {
  label: "Out of square",
  symbol: "δ",
  tex: String.raw`\delta`,
  quantity: "angle",
} as const satisfies FormulaSymbol;
const offsetSymbol = {
  label: "Shift of the upper edge",
  symbol: "v",
  tex: "v",
  quantity: "length",
  fineness: "setting",
} as const satisfies FormulaSymbol;

export interface MeasuredBlank {
  readonly width: number;
  readonly height: number;
  readonly diagonalA: number;
  readonly diagonalB: number;
}

export const angleErrorFormula: Formula = {
  id: "square-angle-error",
  name: "Out of square, from the diagonals",
  result: "angleError",
  expression: String.raw`\arcsin\frac{\v{diagonalA}^2 - \v{diagonalB}^2}{4\cdot\v{width}\cdot\v{height}}`,
  symbols: { ...sizes, angleError: { ...errorAngle, decimals: 3 } },
};

/**
 * How far the corners of a four-sided blank with parallel sides are from 90°.
 *
 * @param blank.width - a [mm]; 1 to 10 000
 * @param blank.height - b [mm]; 1 to 10 000
 * @param blank.diagonalA - d₁ [mm], lower left to upper right; between |a − b| and a + b
 * @param blank.diagonalB - d₂ [mm], lower right to upper left; the same
 * @returns δ [deg] = arcsin((d₁² − d₂²)/(4 a b)): positive when the upper edge leans to the right
 * @throws InputError for a value outside its range, or a diagonal that these sides cannot have
 * @remarks Source: geometry of the parallelogram, d² = a² + b² ± 2 a b sin δ. Opposite sides must be equally long; see `diagonalMisfit`.
 * @example angleError({ width: 600, height: 400, diagonalA: 721.61, diagonalB: 720.61 }); // 0.0861
 */
export function angleError(blank: MeasuredBlank): number {
  checkRanges(sizes, blank);
  const { width, height } = blank;
  const [least, most] = [Math.abs(width - height), width + height];
  for (const [field, range] of [
    ["diagonalA", diagonalA],
    ["diagonalB", diagonalB],
  ] as const)
    if (!(blank[field] > least && blank[field] < most))
      throw new InputError(
        field,
        blank[field],
        say`${range.label} must be between ${atLeast(least)} and ${atMost(most)} with these sides; it is ${exactly(blank[field], "length")}.`,
      );
  const sine = ((blank.diagonalA - blank.diagonalB) * (blank.diagonalA + blank.diagonalB)) / (4 * width * height);
  return (Math.asin(sine) * 180) / Math.PI;
}

export const offsetFormula: Formula = {
  id: "square-offset",
  name: "Shift of the upper edge",
  result: "offset",
  expression: String.raw`\v{height}\cdot\sin\v{angleError}`,
  symbols: { height: blankHeight, angleError: { ...errorAngle, decimals: 3 }, offset: offsetSymbol },
};

/**
 * How far the upper edge is shifted sideways by an error of the corners.
 *
 * @param height - b [mm]
 * @param error - δ [deg]
 * @returns v [mm] = b sin δ
 * @remarks Source: geometry.
 */
export function squareOffset(height: number, error: number): number {
  return height * Math.sin((error * Math.PI) / 180);
}

/**
 * How much longer the diagonals are, on average, than the sides allow: 0 for a true parallelogram measured without error.
 *
 * @param blank - as for `angleError`
 * @returns [mm] = √((d₁² + d₂²)/2) − √(a² + b²)
 * @remarks Source: law of the parallelogram, d₁² + d₂² = 2 (a² + b²).
 */
export function diagonalMisfit({ width, height, diagonalA: a, diagonalB: b }: MeasuredBlank): number {
  return Math.hypot(a, b) / Math.SQRT2 - Math.hypot(width, height);
}

/**
 * How far δ may be off because the diagonals were read only so well.
 *
 * @param blank.width - a [mm]
 * @param blank.height - b [mm]
 * @param reading - ± of one reading [mm]
 * @returns ± [deg] for a nearly square blank, both readings off by chance: √2 · reading · √(a² + b²)/(2 a b)
 * @remarks Source: derivative of the formula of `angleError`; independent errors added as squares (JCGM 100, clause 5.1).
 */
export function readingShare(blank: { readonly width: number; readonly height: number }, reading: number): number {
  const { width, height } = blank;
  return (((Math.SQRT2 * reading * Math.hypot(width, height)) / (2 * width * height)) * 180) / Math.PI;
}
