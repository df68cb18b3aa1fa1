import { type Fineness, formatQuantity, type LengthView } from "./format.ts";
import type { Quantity } from "./units.ts";

/** A value inside a sentence; it is put into words in the units the reader has chosen. */
export interface Amount {
  readonly value: number;
  readonly quantity: Quantity;
  readonly fineness?: Fineness;
  /** A limit in millimetres: shown rounded so that the number one reads keeps it. */
  readonly keeps?: "atLeast" | "atMost";
  /** Shown with as many digits as tell it from a rounded limit. */
  readonly exact?: true;
}

/** A sentence whose amounts are still values. */
export type Phrase = readonly (string | Amount)[];

/** Tag for such sentences: say`At least ${mm(6)} from the bend.` */
export function say(parts: TemplateStringsArray, ...values: (string | number | Amount | Phrase)[]): Phrase {
  const phrase: (string | Amount)[] = [];
  parts.forEach((part, index) => {
    if (part !== "") phrase.push(part);
    const value = values[index];
    if (value === undefined) return;
    if (Array.isArray(value)) phrase.push(...value);
    else if (typeof value === "number") phrase.push(String(value));
    else phrase.push(value as string | Amount);
  });
  return phrase;
}

/** A value of any kind in a sentence, in its base unit. */
export function amount(value: number, quantity: Quantity, fineness?: Fineness): Amount {
  return fineness ? { value, quantity, fineness } : { value, quantity };
}

/** A length [mm] in a sentence, to a hundredth. */
export function mm(value: number): Amount {
  return { value, quantity: "length", fineness: "setting" };
}

/** A least length [mm], to a hundredth upwards: typed as it is read, it is not below the limit. */
export function atLeast(value: number): Amount {
  return { ...mm(value), keeps: "atLeast" };
}

/** A largest length [mm], to a hundredth downwards: typed as it is read, it is not above the limit. */
export function atMost(value: number): Amount {
  return { ...mm(value), keeps: "atMost" };
}

/** The smallest difference that a length shows in each view [mm]. */
const steps: Readonly<Record<LengthView, number>> = { mm: 0.01, inch: 0.0254, fraction: 25.4 / 64 };

const onStep = (value: number, step: number) => Math.abs(Math.round(value / step) - value / step) < 1e-7;

function amountText({ value, quantity, fineness, keeps, exact }: Amount, view: LengthView): string {
  const step = steps[view];
  if (exact && quantity === "length" && !onStep(value, step)) return manyDigits(value, view);
  if (!keeps || onStep(value, step)) return formatQuantity(value, quantity, view, fineness);
  const whole = keeps === "atLeast" ? Math.ceil(value / step) : Math.floor(value / step);
  return formatQuantity(whole * step, quantity, view, fineness);
}

/** A length that no view rounds: in decimals, with six digits or as many more as it takes. */
function manyDigits(value: number, view: LengthView): string {
  const [number, unit, step] = view === "mm" ? [value, "mm", 0.01] : [value / 25.4, "in", 0.001];
  let digits = 6;
  while (digits < 15 && onStep(Number(number.toPrecision(digits)), step)) digits++;
  return `${Number(number.toPrecision(digits))} ${unit}`;
}

/** The sentence as text, lengths in the view asked for. */
export function phraseText(phrase: Phrase, view: LengthView = "mm"): string {
  return phrase.map((part) => (typeof part === "string" ? part : amountText(part, view))).join("");
}

/** Phrases one after the other: `a, b and c`. */
export function listed(phrases: readonly Phrase[]): Phrase {
  return phrases.flatMap((each, index) => (index === 0 ? each : [index === phrases.length - 1 ? " and " : ", ", ...each]));
}
