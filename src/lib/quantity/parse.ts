import { asTyped, type Phrase, phraseText, say } from "./phrase.ts";
import { kindOf, type Quantity, toBase } from "./units.ts";

/** A quantity as someone typed it: what it is worth, and the digits and unit they used. */
export interface Typed {
  /** In the base unit of its kind. */
  readonly value: number;
  /** The number as typed, tidied: decimal point, fraction as `2-1/16`. */
  readonly digits: string;
  /** Unit key of `quantityKinds`, `ga` for a gauge number. */
  readonly unit: string;
  /** `digits` and `unit` together: the form kept in addresses and files; reads back to the same value. */
  readonly text: string;
}

/** Thickness [mm] of a gauge number in the gauge system of the material in hand, or a sentence saying why not. */
export type GaugeReader = (gauge: string) => number | Phrase;

export interface ParseContext {
  /** Unit key a bare number is taken in; the base unit when left out. */
  readonly unit?: string;
  readonly gauge?: GaugeReader;
}

/** Why a text is not the quantity asked for. The sentence is complete and names what was typed. */
export class ParseError extends Error {
  override name = "ParseError";
  readonly phrase: Phrase;

  constructor(phrase: Phrase) {
    super(phraseText(phrase));
    this.phrase = phrase;
  }
}

const maxTyped = 200;
const decimal = String.raw`(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d{1,3})?`;
const numberPattern = new RegExp(
  String.raw`^([+-]?)\s*(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)(?![\d/.,])|^([+-]?)\s*(${decimal})`,
);
const feetAndInches = /^([+-]?)\s*(\d+)\s*(?:'|′|’|ft)\s*-?\s*(.+?)\s*(?:"|″|”|''|in)$/;
const gaugePattern = /^(?:#\s*(\d{1,2}|\d\/0)|(\d{1,2}|\d\/0)\s*(?:ga|gauge))$/i;

const vulgar: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

function tidy(text: string): string {
  return (
    text
      .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${vulgar[sign]}`)
      .replace(/[−–]/g, "-")
      .replace(/⁄/g, "/")
      // Groups of three, as this handbook shows large numbers.
      .replace(/(?<=\d)[\u2009\u202f](?=\d{3}(?!\d))/g, "")
      .replace(/[\u00a0\u2009\u202f\s]+/g, " ")
      .trim()
  );
}

function unitKey(quantity: Quantity, typed: string): string | undefined {
  const { units } = kindOf(quantity);
  for (const [key, unit] of Object.entries(units)) if (typed === key || unit.also?.includes(typed)) return key;
  const lower = typed.toLowerCase();
  const found = Object.entries(units).filter(
    ([key, unit]) => key.toLowerCase() === lower || unit.also?.some((also) => also.toLowerCase() === lower),
  );
  return found.length === 1 ? found[0]?.[0] : undefined;
}

interface PlainNumber {
  readonly value: number;
  readonly digits: string;
  readonly rest: string;
}

function readNumber(text: string): PlainNumber | undefined {
  const match = numberPattern.exec(text);
  if (!match) return undefined;
  const rest = text.slice(match[0].length).trim();
  const [, fractionSign, whole, numerator, denominator, decimalSign, digits] = match;
  if (numerator !== undefined && denominator !== undefined) {
    const sign = fractionSign === "-" ? -1 : 1;
    const magnitude = Number(whole ?? 0) + Number(numerator) / Number(denominator);
    const shown = `${whole === undefined ? "" : `${Number(whole)}-`}${Number(numerator)}/${Number(denominator)}`;
    return { value: sign * magnitude, digits: (sign < 0 ? "-" : "") + shown, rest };
  }
  if (digits === undefined) return undefined;
  const point = digits.replace(",", ".");
  const sign = decimalSign === "-" ? -1 : 1;
  return { value: sign * Number(point), digits: (sign < 0 ? "-" : "") + point, rest };
}

/**
 * Reads a quantity as people type it: `1.2`, `1,2 mm`, `0.048in`, `3/64"`, `2 1/16 in`, `1' 6-1/2"`, `18 ga`,
 * `45 ksi`, `12 kN`, `90°`. A comma is a decimal comma; thin spaces may stand between groups of three. A bare number is in `context.unit`.
 *
 * @param text - what was typed
 * @param quantity - kind of quantity expected
 * @returns value in the base unit and the typed form in a spelling that reads back to the same value
 * @throws ParseError with a sentence that names the text and shows what would be accepted
 * @remarks Gauge numbers need `context.gauge`, because a number means another thickness in each gauge system.
 * @example parseQuantity("2 1/16 in", "length").value; // 52.3875
 */
export function parseQuantity(text: string, quantity: Quantity, context: ParseContext = {}): Typed {
  const kind = kindOf(quantity);
  const shown = text.length > 40 ? `${text.slice(0, 40)}…` : text;
  const aValue = `${/^[aeiou]/.test(kind.name) ? "an" : "a"} ${kind.name}`;
  const refuse = (why = say`is not ${aValue}`) => new ParseError(say`“${asTyped(shown)}” ${why}. Write it like ${kind.example}.`);
  if (text.length > maxTyped) throw refuse();
  const clean = tidy(text);
  if (clean === "") throw new ParseError(say`Nothing is entered. Write ${aValue} like ${kind.example}.`);

  if (quantity === "length") {
    const gauge = gaugePattern.exec(clean);
    if (gauge) {
      const number = (gauge[1] ?? gauge[2] ?? "").replace(/^0(?=\d$)/, "");
      if (!context.gauge) throw refuse(say`is a gauge number, which has no meaning here without a metal`);
      const thickness = context.gauge(number);
      if (typeof thickness !== "number") throw new ParseError(thickness);
      return { value: thickness, digits: number, unit: "ga", text: `${number}ga` };
    }
    const feet = feetAndInches.exec(clean);
    if (feet) {
      const inches = readNumber(feet[3] ?? "");
      if (inches?.rest !== "" || inches.value < 0) throw refuse();
      const sign = feet[1] === "-" ? -1 : 1;
      const digits = `${sign < 0 ? "-" : ""}${Number(feet[2])}ft${inches.digits}`;
      const value = sign * (toBase(Number(feet[2]), "length", "ft") + toBase(inches.value, "length", "in"));
      return { value, digits, unit: "in", text: `${digits}in` };
    }
  }

  const number = readNumber(clean);
  if (!number) throw refuse();
  const unit = number.rest === "" ? (context.unit ?? kind.base) : unitKey(quantity, number.rest);
  if (unit === undefined) {
    if (/^[.,\d/-]/.test(number.rest)) throw refuse(say`is not one number`);
    throw refuse(say`has the unit “${asTyped(number.rest.slice(0, 20))}”, which is not a unit of ${kind.name} here`);
  }
  const value = toBase(number.value, quantity, unit);
  if (!Number.isFinite(value)) throw refuse(say`is not a number that can be worked with`);
  return { value, digits: number.digits, unit, text: number.digits + (unit === "" ? "" : unit) };
}
