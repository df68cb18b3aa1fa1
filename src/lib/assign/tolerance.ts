import { InputError } from "../input-error.ts";
import { decimalsOf, formatNumber, formatQuantity, type LengthView, showQuantity } from "../quantity/format.ts";
import { ParseError, parseQuantity } from "../quantity/parse.ts";
import { say } from "../quantity/phrase.ts";
import { kindOf, toBase } from "../quantity/units.ts";
import type { QuantityOutput } from "../worksheet.ts";

/** How far an answer may be from the right one. `absolute` is in the base unit. */
export type Tolerance =
  | { readonly kind: "absolute"; readonly amount: number }
  | { readonly kind: "percent"; readonly percent: number }
  | { readonly kind: "rounding" };

const mostPercent = 50;

/**
 * Reads a tolerance: `0.5mm`, `2%`, `rounding`. A bare number is in the base unit of the output.
 * @throws InputError naming the field
 */
export function readTolerance(field: string, text: string, output: QuantityOutput): Tolerance {
  const typed = text.trim();
  const label = `Tolerance of ${output.label}`;
  if (typed === "rounding") return { kind: "rounding" };
  try {
    if (typed.endsWith("%")) {
      const { value: percent } = parseQuantity(typed, "percent");
      if (percent > 0 && percent <= mostPercent) return { kind: "percent", percent };
      throw new InputError(field, text, say`${label} must be above 0 and up to ${mostPercent} %; it is “${typed}”.`);
    }
    const { value, unit } = parseQuantity(typed, output.quantity);
    if (unit === "ga") throw new InputError(field, text, say`${label} cannot be a gauge number.`);
    // A difference: 10 °F of tolerance are 5.6 °C, not −12.2.
    const amount = value - toBase(0, output.quantity, unit);
    if (amount >= 0) return { kind: "absolute", amount };
    throw new InputError(field, text, say`${label} must not be negative; it is “${typed}”.`);
  } catch (error) {
    if (error instanceof ParseError)
      throw new InputError(field, text, say`${label}: ${error.phrase} Or write a percentage such as 2 %, or “rounding”.`);
    throw error;
  }
}

/** The smallest difference that the handbook shows in such an answer [base unit]; 0 for a number of pieces. */
export function shownStep(output: QuantityOutput, value: number, view: LengthView): number {
  const { quantity, decimals, fineness = "size" } = output;
  if (quantity === "count") return 0;
  if (output.asPercent) return 0.01;
  if (quantity === "length") {
    if (view === "fraction") return 25.4 / 64;
    return view === "inch" ? 0.0254 : 10 ** -decimalsOf(quantity, view, fineness);
  }
  if (decimals !== undefined) return 10 ** -decimals;
  const size = Math.abs(value);
  if (quantity === "force" && size >= 1000) return 100;
  if (quantity === "time" && size >= 60) return size >= 3600 ? 360 : 60;
  if (quantity === "mass" && size < 1) return 0.001;
  return 10 ** -kindOf(quantity).decimals;
}

/** How far an answer may be from `right` [base unit]. */
export function allowed(tolerance: Tolerance, right: number, output: QuantityOutput, view: LengthView): number {
  if (tolerance.kind === "absolute") return tolerance.amount;
  if (tolerance.kind === "percent") return (Math.abs(right) * tolerance.percent) / 100;
  return shownStep(output, right, view) / 2;
}

/** Whether two values are within a tolerance; what binary arithmetic adds at the edge does not count. */
export function isWithin(given: number, right: number, most: number): boolean {
  return Math.abs(given - right) <= most + 1e-9 * Math.max(Math.abs(right), most);
}

/** An answer as the handbook shows it. */
export function answerText(output: QuantityOutput, value: number, view: LengthView): string {
  if (output.asPercent) return `${formatNumber(100 * value, 0)} %`;
  if (output.decimals !== undefined && output.quantity !== "length") {
    const { base, units } = kindOf(output.quantity);
    const unit = units[base]?.text ?? "";
    const number = formatNumber(value, output.decimals);
    return unit === "" || unit === "°" ? number + unit : `${number} ${unit}`;
  }
  return formatQuantity(value, output.quantity, view, output.fineness);
}

/** A tolerance in words, for a sheet: `± 0.5 mm`. */
export function toleranceText(tolerance: Tolerance, right: number, output: QuantityOutput, view: LengthView): string {
  if (tolerance.kind === "percent") return `± ${tolerance.percent} %`;
  const most = allowed(tolerance, right, output, view);
  if (most === 0) return "exactly";
  if (output.asPercent) return `± ${Number((100 * most).toPrecision(3))} %`;
  if (output.quantity === "length") {
    const [number, unit] = view === "mm" ? [most, "mm"] : [most / 25.4, "in"];
    return `± ${Number(number.toPrecision(3))} ${unit}`;
  }
  // The unit an answer of this size is shown in, with as many digits as the tolerance needs.
  const { unit } = showQuantity(right, output.quantity, view, output.fineness);
  const factor = { kN: 1000, g: 0.001, min: 60, h: 3600 }[unit] ?? 1;
  return `± ${Number((most / factor).toPrecision(3))}${unit === "" || unit === "°" ? unit : ` ${unit}`}`;
}
