import type { Formula, FormulaSymbol } from "../formula.ts";
import { studentQuantile } from "./student.ts";

/** Share of a normal distribution within ± 2 standard deviations: the level that k = 2 stands for. */
export const twoSigmaLevel = 0.9545;

const length = { quantity: "length", fineness: "setting" } as const;
const studentSymbol = { label: "Student's t for this count", symbol: "t", tex: "t", quantity: "ratio" } as const;
const countSymbol = { label: "Number of pieces", symbol: "n", tex: "n", quantity: "count" } as const;
export const spreadSymbol = { ...length, label: "Spread", symbol: "s", tex: "s", decimals: 3 } as const satisfies FormulaSymbol;
export const uncertaintySymbol = { ...length, label: "Uncertainty", symbol: "U", tex: "U", decimals: 3 } as const;

export const meanUncertaintyFormula: Formula = {
  id: "mean-uncertainty",
  name: "Uncertainty of the mean",
  result: "uncertainty",
  expression: String.raw`\v{student}\cdot\frac{\v{spread}}{\sqrt{\v{count}}}`,
  symbols: { student: studentSymbol, spread: spreadSymbol, count: countSymbol, uncertainty: uncertaintySymbol },
};

/**
 * Student's t for the mean of so many values, at the level that k = 2 stands for.
 *
 * @param count - n, a whole number from 2 to 1001
 * @returns t for n − 1 degrees of freedom: 13.97 for two values, falling towards 2
 * @throws RangeError outside this range
 * @remarks Source: JCGM 100:2008 (GUM), Table G.2, column p = 95.45 %.
 */
export function coverageFactor(count: number): number {
  return studentQuantile(twoSigmaLevel, count - 1);
}

/**
 * How far the mean of a few measurements may lie from the true value.
 *
 * @param sample.spread - s, sample standard deviation, in any unit; 0 or more
 * @param sample.count - n, a whole number from 2 to 1001
 * @returns U = t s/√n, in the unit of s, at 95.45 %
 * @throws RangeError outside these ranges
 * @remarks Holds the scatter of the values only; an error that all of them share, such as that of the caliper, is not in it.
 *   Source: JCGM 100:2008 (GUM), 4.2.3 and Annex G.
 * @example meanUncertainty({ spread: 0.05, count: 6 }); // 0.0541
 */
export function meanUncertainty(sample: { readonly spread: number; readonly count: number }): number {
  if (!(sample.spread >= 0)) throw new RangeError(`spread must be 0 or more; it is ${sample.spread}`);
  return (coverageFactor(sample.count) * sample.spread) / Math.sqrt(sample.count);
}

/**
 * How many values in all would halve the uncertainty of the mean, if the spread stays what it is.
 *
 * @param count - n so far, a whole number from 2 to 200
 * @returns the smallest m with t(m−1)/√m at most half of t(n−1)/√n; fewer than 4 n for few values, because t falls too
 * @throws RangeError outside this range
 * @remarks Source: as `meanUncertainty`.
 */
export function countToHalve(count: number): number {
  if (!Number.isInteger(count) || count < 2 || count > 200)
    throw new RangeError(`count must be a whole number from 2 to 200; it is ${count}`);
  const goal = meanUncertainty({ spread: 1, count }) / 2;
  let enough = count + 1;
  while (meanUncertainty({ spread: 1, count: enough }) > goal) enough += 1;
  return enough;
}
