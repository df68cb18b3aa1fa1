import type { QuantityInput } from "../inputs.ts";
import { ParseError, parseQuantity } from "../quantity/parse.ts";
import { toBase } from "../quantity/units.ts";
import type { RangeVariation } from "./definition.ts";

/** Steps to either side of the value. */
const reach = 5;

/** The round number (1, 2 or 5 with noughts) nearest below a tenth of the value, so that five steps down halve it at most. */
function roundStep(value: number): { readonly step: number; readonly decimals: number } {
  const tenth = value / 10;
  const power = Math.floor(Math.log10(tenth) + 1e-9);
  const lead = tenth / 10 ** power + 1e-9;
  const step = lead >= 5 ? 5 : lead >= 2 ? 2 : 1;
  return { step: step * 10 ** power, decimals: Math.max(0, -power) };
}

/**
 * A range to begin with when a value is to differ from student to student: five round steps to either side of the value that
 * stood there, as far as the input allows.
 *
 * @param text - the value, as a person types it
 * @returns undefined where there is no such range: a gauge number, an inch fraction, nought, a text that cannot be read
 * @remarks About 60 mm it goes from 35 mm to 85 mm in steps of 5 mm.
 */
export function rangeAbout(text: string, input: QuantityInput): RangeVariation | undefined {
  let typed: ReturnType<typeof parseQuantity>;
  try {
    typed = parseQuantity(text, input.quantity, { gauge: () => 1 });
  } catch (error) {
    if (error instanceof ParseError) return undefined;
    throw error;
  }
  const { unit, digits } = typed;
  const value = Number(digits);
  if (unit === "ga" || !(value > 0)) return undefined;
  const isCount = input.quantity === "count";
  const { step, decimals } = isCount ? { step: 1, decimals: 0 } : roundStep(value);
  const isAllowed = (each: number) => {
    const base = toBase(each, input.quantity, unit);
    return base <= input.max && (input.aboveMin ? base > input.min : base >= input.min);
  };
  const ends = [-1, 1].map((side) => {
    let end = value;
    for (let count = 1; count <= reach; count++) {
      // As it will be written: what binary arithmetic adds must not decide about a limit.
      const next = Number((value + side * count * step).toFixed(decimals + 2));
      if (!isAllowed(next) || next <= 0) break;
      end = next;
    }
    return end;
  });
  const [from = value, to = value] = ends;
  if (to <= from) return undefined;
  const written = (each: number) => `${Number(each.toFixed(decimals + 2))}${unit}`;
  return { from: written(from), to: written(to), step: written(step) };
}
