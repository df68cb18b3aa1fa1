import { InputError } from "../input-error.ts";
import { ParseError, parseQuantity } from "../quantity/parse.ts";
import { say } from "../quantity/phrase.ts";
import type { Quantity } from "../quantity/units.ts";
import { limits, type RangeVariation } from "./definition.ts";

/** A fraction of whole numbers, so that steps of 0.1 stay tenths on every device. */
interface Rational {
  readonly top: number;
  readonly bottom: number;
}

/** Values one can draw from, counted from 0. */
export interface Steps {
  readonly count: number;
  /** The value as a person types it. */
  text(index: number): string;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));
const commonMultiple = (a: number, b: number) => (a / commonDivisor(a, b)) * b;

function rational(digits: string): (Rational & { readonly fraction: boolean }) | undefined {
  const fraction = /^(-?)(?:(\d+)-)?(\d+)\/(\d+)$/.exec(digits);
  if (fraction) {
    const [, sign, whole = "0", top, bottom] = fraction;
    const parts = Number(whole) * Number(bottom) + Number(top);
    return { top: sign === "-" ? -parts : parts, bottom: Number(bottom), fraction: true };
  }
  const decimal = /^(-?)(\d*)\.?(\d*)$/.exec(digits);
  if (!decimal) return undefined;
  const [, sign, whole = "", part = ""] = decimal;
  const parts = Number(whole + part);
  return { top: sign === "-" ? -parts : parts, bottom: 10 ** part.length, fraction: false };
}

function decimalText(top: number, decimals: number): string {
  const digits = String(Math.abs(top)).padStart(decimals + 1, "0");
  const whole = digits.slice(0, digits.length - decimals);
  const part = digits.slice(digits.length - decimals).replace(/0+$/, "");
  return `${top < 0 ? "-" : ""}${whole}${part === "" ? "" : `.${part}`}`;
}

function fractionText(top: number, bottom: number): string {
  const size = Math.abs(top);
  const whole = Math.floor(size / bottom);
  const rest = size - whole * bottom;
  const shared = commonDivisor(rest, bottom);
  const fraction = rest === 0 ? "" : `${rest / shared}/${bottom / shared}`;
  const joined = fraction === "" ? String(whole) : whole === 0 ? fraction : `${whole}-${fraction}`;
  return (top < 0 ? "-" : "") + joined;
}

/**
 * The values of a range, as exact texts in the unit that was typed.
 *
 * @param field - of the variation, for messages: `questions.0.varied.thickness`
 * @throws InputError naming `field.from`, `field.to` or `field.step`
 * @example rangeSteps("f", "Thickness", { from: "1mm", to: "2mm", step: "0.25mm" }, "length").text(1); // "1.25mm"
 */
export function rangeSteps(field: string, label: string, range: RangeVariation, quantity: Quantity): Steps {
  const read = (end: keyof RangeVariation) => {
    const typed = range[end];
    const at = `${field}.${end}`;
    try {
      const { digits, unit } = parseQuantity(typed, quantity);
      const value = unit === "ga" ? undefined : rational(digits);
      if (unit === "ga")
        throw new InputError(at, typed, say`${label}: gauge numbers have no even steps. Name them one by one as choices.`);
      if (!value || value.bottom > 1e6)
        throw new InputError(
          at,
          typed,
          say`${label}: a range needs plain numbers with up to six decimals, such as 1.25 mm or 3/64 in; it is “${typed}”.`,
        );
      return { ...value, unit, typed, at };
    } catch (error) {
      if (error instanceof ParseError) throw new InputError(at, typed, say`${label}: ${error.phrase}`);
      throw error;
    }
  };
  const ends = [read("from"), read("to"), read("step")] as const;
  const [from, to, step] = ends;
  for (const end of [to, step])
    if (end.unit !== from.unit)
      throw new InputError(
        end.at,
        end.typed,
        say`${label}: both ends of a range and its step must have the same unit; one is “${from.typed}”, another “${end.typed}”.`,
      );

  const bottom = ends.reduce((shared, end) => commonMultiple(shared, end.bottom), 1);
  const [first, last, wide] = ends.map((end) => end.top * (bottom / end.bottom)) as [number, number, number];
  if (![first, last, wide, bottom].every(Number.isSafeInteger))
    throw new InputError(from.at, from.typed, say`${label}: the range has more digits than can be stepped through.`);
  if (wide <= 0) throw new InputError(step.at, step.typed, say`${label}: the step must be above 0; it is “${step.typed}”.`);
  if (last < first + wide)
    throw new InputError(
      to.at,
      to.typed,
      say`${label}: the upper end must be at least one step above the lower; the range goes from “${from.typed}” to “${to.typed}” in steps of “${step.typed}”.`,
    );
  const count = Math.floor((last - first) / wide) + 1;
  if (count > limits.steps)
    throw new InputError(
      step.at,
      step.typed,
      say`${label}: a range may have up to ${limits.steps} values; this one has ${count}. Take a larger step.`,
    );

  const fractions = ends.some((end) => end.fraction);
  // Without fractions every bottom is a power of ten.
  const decimals = Math.round(Math.log10(bottom));
  return {
    count,
    text: (index) => {
      const top = first + index * wide;
      return (fractions ? fractionText(top, bottom) : decimalText(top, decimals)) + from.unit;
    },
  };
}
