import { fillSlots } from "../../equations/fill.ts";
import type { FormulaSymbol } from "../../lib/formula.ts";
import { kindOf } from "../../lib/quantity/units.ts";
import type { Step } from "../../lib/worksheet.ts";
import { workedNumber } from "./texts.ts";

function unitBehind({ quantity }: FormulaSymbol): string {
  const { base, units } = kindOf(quantity);
  const text = units[base]?.text ?? "";
  return text === "" || text === "°" ? text : ` ${text}`;
}

/**
 * What the slots of a worked formula say: every number as used, the result with its unit.
 * A negative number is put in brackets, because a sign may stand before it.
 */
export function stepTexts({ formula, values }: Step): Record<string, string> {
  const texts: Record<string, string> = {};
  for (const [key, symbol] of Object.entries(formula.symbols)) {
    const value = values[key];
    if (value === undefined) continue;
    const text = workedNumber(value, symbol.quantity, symbol.fineness, symbol.decimals);
    const isResult = key === formula.result;
    texts[key] = isResult ? text + (typeof value === "number" ? unitBehind(symbol) : "") : /^−/.test(text) ? `(${text})` : text;
  }
  return texts;
}

/** Shows the steps of an answer in the list of all formulas of its calculator, and puts their numbers in. Browser only. */
export function fillWorking(working: Element, steps: readonly Step[]): void {
  const list = working.querySelector("[data-steps]");
  if (!list) return;
  const lines = [...list.children] as HTMLElement[];
  const free = new Set(lines);
  for (const line of lines) line.hidden = true;
  for (const step of steps) {
    const own = lines.filter((line) => line.dataset.formula === step.formula.id);
    // A formula used twice in one answer needs a second line.
    const line = own.find((each) => free.has(each)) ?? (own[0]?.cloneNode(true) as HTMLElement | undefined);
    const numbers = line?.querySelector("[data-numbers]");
    if (!line || !numbers)
      throw new Error(`The working has no line for the formula ${step.formula.id}: name it in the worksheet`);
    free.delete(line);
    fillSlots(numbers, stepTexts(step));
    line.hidden = false;
    list.append(line);
  }
}
