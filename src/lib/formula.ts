import type { Range } from "./inputs.ts";
import type { Fineness } from "./quantity/format.ts";
import type { Quantity } from "./quantity/units.ts";

/** One letter of a formula. */
export interface FormulaSymbol {
  readonly label: string;
  /** As plain text, for tables and screen readers. */
  readonly symbol: string;
  readonly tex: string;
  readonly quantity: Quantity;
  readonly fineness?: Fineness;
  /** Decimals shown in worked lines, where the quantity's own are too few. */
  readonly decimals?: number;
}

/** An input of a formula: a symbol with the range in which the formula may be used. */
export type FormulaInput = FormulaSymbol & Range;

/**
 * A formula as data, kept in the file of the function that computes it.
 * `expression` is TeX in which `\v{key}` stands for a symbol; the page prints it once with the letters
 * and once with the numbers of the moment, from the same text.
 */
export interface Formula {
  readonly id: string;
  readonly name: string;
  readonly result: string;
  readonly expression: string;
  readonly symbols: Readonly<Record<string, FormulaSymbol>>;
}

const placeholder = /\\v\{(\w+)\}/g;

/** Keys of the symbols an expression uses, in order, each once. */
export function symbolKeys(formula: Formula): string[] {
  return [...new Set([...formula.expression.matchAll(placeholder)].map((match) => match[1] as string))];
}

/** @throws Error when the expression names a symbol that the formula does not define */
function symbolOf(formula: Formula, key: string): FormulaSymbol {
  const symbol = formula.symbols[key];
  if (!symbol)
    throw new Error(
      `Formula ${formula.id} uses “${key}”, which is not among its symbols: ${Object.keys(formula.symbols).join(", ")}`,
    );
  return symbol;
}

/** TeX with letters: `BA = \frac{\pi}{180}\, \theta\,( R + K\, T)`. */
export function letterTex(formula: Formula): string {
  // The space keeps a letter apart from a command before it: `\cdot g`, not `\cdotg`. TeX prints none for it.
  const expression = formula.expression.replace(placeholder, (_, key: string) => ` ${symbolOf(formula, key).tex}`);
  return `${symbolOf(formula, formula.result).tex} = ${expression}`;
}

/** TeX of the worked line: every symbol replaced by what `slot` gives for it, the result at the end. */
export function numberTex(formula: Formula, slot: (key: string) => string): string {
  const expression = formula.expression.replace(placeholder, (_, key: string) => {
    symbolOf(formula, key);
    return slot(key);
  });
  return `${symbolOf(formula, formula.result).tex} = ${expression} = ${slot(formula.result)}`;
}
