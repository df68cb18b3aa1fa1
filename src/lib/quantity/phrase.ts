import { type Fineness, formatQuantity, type LengthView } from "./format.ts";
import type { Quantity } from "./units.ts";

/** A value inside a sentence; it is put into words in the units the reader has chosen. */
export interface Amount {
  readonly value: number;
  readonly quantity: Quantity;
  readonly fineness?: Fineness;
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

/** The sentence as text, lengths in the view asked for. */
export function phraseText(phrase: Phrase, view: LengthView = "mm"): string {
  return phrase
    .map((part) => (typeof part === "string" ? part : formatQuantity(part.value, part.quantity, view, part.fineness)))
    .join("");
}
