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

/** A text that somebody typed: shown as it is in every language. */
export interface AsTyped {
  readonly asTyped: string;
}

/** A sentence with the words that never change apart from what is put between them: one part more than values. */
export interface Said {
  readonly parts: readonly string[];
  readonly values: readonly (string | number | Amount | AsTyped | Phrase)[];
}

/** Sentences whose amounts are still values and whose words can still be said in another language. */
export type Phrase = readonly (string | Amount | AsTyped | Said)[];

/** Tag for such sentences: say`At least ${mm(6)} from the bend.` */
export function say(parts: TemplateStringsArray, ...values: Said["values"]): Phrase {
  return [{ parts, values }];
}

/** A text that somebody typed, inside a sentence. */
export function asTyped(text: string): AsTyped {
  return { asTyped: text };
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

/** An amount as it stands in a sentence, lengths in the view asked for. */
export function amountText({ value, quantity, fineness, keeps, exact }: Amount, view: LengthView): string {
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

/** How the pieces of a sentence are put into a language. */
export interface Wording {
  /** Words of the library, such as a label or a choice; or a number or name that stands in a sentence. */
  words(text: string): string;
  amount(amount: Amount): string;
  /** A whole sentence from its parts and the texts of its values. */
  said(parts: readonly string[], values: readonly string[]): string;
}

/** The sentence as text, in any wording. */
export function phraseIn(phrase: Phrase, wording: Wording): string {
  const text = (value: Said["values"][number]): string => {
    if (typeof value === "string" || typeof value === "number") return wording.words(String(value));
    if ("asTyped" in value) return value.asTyped;
    return "value" in value ? wording.amount(value) : phraseIn(value as Phrase, wording);
  };
  return phrase
    .map((piece) =>
      typeof piece !== "string" && "parts" in piece ? wording.said(piece.parts, piece.values.map(text)) : text(piece),
    )
    .join("");
}

const asWritten = {
  words: (text: string) => text,
  said: (parts: readonly string[], values: readonly string[]) =>
    parts.map((part, index) => part + (values[index] ?? "")).join(""),
};

/** The sentence as it is written here, in English, lengths in the view asked for. */
export function phraseText(phrase: Phrase, view: LengthView = "mm"): string {
  return phraseIn(phrase, { ...asWritten, amount: (value) => amountText(value, view) });
}

/** What tells a sentence from all others: its words, with `{}` for each value. */
export function phraseKey(parts: readonly string[]): string {
  return parts.join("{}");
}

/** The words of a sentence without its amounts: the same for two sentences that say the same of other values. */
export function phraseWords(phrase: Phrase): string {
  return phraseIn(phrase, { ...asWritten, amount: () => "" });
}

/** Phrases one after the other: `a, b and c`. */
export function listed(phrases: readonly Phrase[]): Phrase {
  return phrases.flatMap((each, index) => (index === 0 ? each : [index === phrases.length - 1 ? " and " : ", ", ...each]));
}
