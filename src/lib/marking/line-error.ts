import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { checkRanges } from "../inputs.ts";

/** How far one line may be from where it should be, two standard deviations. */
export const perLine = {
  label: "Error of one line",
  symbol: "e",
  tex: "e",
  quantity: "length",
  fineness: "setting",
  min: 0,
  max: 10,
} as const satisfies FormulaInput;

export const lineCount = {
  label: "Number of lines",
  symbol: "n",
  tex: "n",
  quantity: "count",
  min: 1,
  max: 200,
} as const satisfies FormulaInput;

const error = { quantity: "length", fineness: "setting" } as const;
const worst = { ...error, label: "Error at worst", symbol: "w", tex: "w" } as const satisfies FormulaSymbol;
const likely = { ...error, label: "Likely error", symbol: "s", tex: "s" } as const satisfies FormulaSymbol;

/** An error if every single one falls the same way, and one that 95 of 100 stay within if each falls as it likes. */
export interface LineError {
  /** ± [mm] */
  readonly worst: number;
  /** ± [mm] */
  readonly likely: number;
}

export const chainWorstFormula: Formula = {
  id: "chain-error-worst",
  name: "Last line of a chain, at worst",
  result: "worst",
  expression: String.raw`\v{count}\cdot\v{perLine}`,
  symbols: { perLine, count: lineCount, worst },
};

export const chainLikelyFormula: Formula = {
  id: "chain-error-likely",
  name: "Last line of a chain, likely",
  result: "likely",
  expression: String.raw`\v{perLine}\cdot\sqrt{\v{count}}`,
  symbols: { perLine, count: lineCount, likely },
};

/**
 * Error of the last line when each is measured from the one before.
 *
 * @param lines.perLine - e [mm], ± of one line; 0 to 10
 * @param lines.count - n, steps from the edge to the last line; 1 to 200
 * @returns worst [mm] = n e; likely [mm] = e √n
 * @throws InputError for a value outside its range
 * @remarks `likely` holds for errors that fall either way by chance. An error that every step shares, such as a worn end of the rule,
 *   adds up as `worst` does. Source: addition of independent errors (JCGM 100, clause 5.1).
 * @example chainError({ perLine: 0.25, count: 8 }); // { worst: 2, likely: 0.7071 }
 */
export function chainError(lines: { readonly perLine: number; readonly count: number }): LineError {
  checkRanges({ perLine, count: lineCount }, lines);
  return { worst: lines.count * lines.perLine, likely: lines.perLine * Math.sqrt(lines.count) };
}

export const pairWorstFormula: Formula = {
  id: "line-pair-error-worst",
  name: "Between any two lines from one edge, at worst",
  result: "worst",
  expression: String.raw`2\cdot\v{perLine}`,
  symbols: { perLine, worst },
};

export const pairLikelyFormula: Formula = {
  id: "line-pair-error-likely",
  name: "Between any two lines from one edge, likely",
  result: "likely",
  expression: String.raw`\v{perLine}\cdot\sqrt{2}`,
  symbols: { perLine, likely },
};

/**
 * Error of the distance between two lines that were both measured from one edge, however many others there are.
 *
 * @param lines.perLine - e [mm], ± of one line; 0 to 10
 * @returns worst [mm] = 2 e; likely [mm] = e √2
 * @throws InputError for a value outside its range
 * @remarks A line to the edge itself has the error e of that one line. Source: as `chainError`.
 * @example datumPairError({ perLine: 0.25 }); // { worst: 0.5, likely: 0.3536 }
 */
export function datumPairError(lines: { readonly perLine: number }): LineError {
  checkRanges({ perLine }, lines);
  return { worst: 2 * lines.perLine, likely: lines.perLine * Math.SQRT2 };
}
