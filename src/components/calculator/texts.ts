import type { Catalogue, MaterialId } from "../../lib/catalogue.ts";
import type { Inputs, QuantityInput, Raw } from "../../lib/inputs.ts";
import {
  decimalsOf,
  type Fineness,
  fieldText,
  formatNumber,
  formatQuantity,
  type LengthView,
  showQuantity,
  unitOfView,
} from "../../lib/quantity/format.ts";
import { type ParseContext, ParseError, parseQuantity, type Typed } from "../../lib/quantity/parse.ts";
import { fromBase, kindOf, type Quantity, unitOf } from "../../lib/quantity/units.ts";
import { gaugeReader } from "../../lib/stock/gauge.ts";
import type { Output } from "../../lib/worksheet.ts";
import { calculator } from "../../texts/en/calculator.ts";
import { english } from "../../texts/english.ts";
import type { Language } from "../../texts/language.ts";

/** Words and digits of a calculator: what a field keeps and shows, ranges, answers. Pure, so that tests can read it. */

/** The gauge system in which gauge numbers are read just now. */
export function contextOf(inputs: Inputs, raw: Raw, catalogue: Catalogue): ParseContext {
  for (const [key, input] of Object.entries(inputs)) {
    if (input.kind !== "material") continue;
    const typed = raw[key] ?? input.default;
    if (typeof typed === "string" && Object.hasOwn(catalogue.materials, typed))
      return { gauge: gaugeReader(catalogue, typed as MaterialId) };
  }
  return {};
}

function read(text: string, quantity: Quantity, view: LengthView, context: ParseContext, language: Language): Typed | undefined {
  try {
    return parseQuantity(language.typed(text), quantity, { ...context, unit: unitOfView(quantity, view) });
  } catch (error) {
    if (error instanceof ParseError) return undefined;
    throw error;
  }
}

/**
 * What is kept of a text typed into a field: with its unit, so that it stays what it is when the view changes.
 * A text that cannot be read is kept as it is.
 */
export function storedText(
  typed: string,
  quantity: Quantity,
  view: LengthView,
  context: ParseContext,
  language = english,
): string {
  return read(typed, quantity, view, context, language)?.text ?? typed;
}

export interface FieldLook {
  /** In the field. */
  readonly text: string;
  /** Behind the field: the unit a bare number is in. */
  readonly unit: string;
  /** Below the field, when what it shows is not quite, or not plainly, what is kept. */
  readonly note: string;
}

/**
 * What a field looks like.
 * @param draft - what is being typed into it just now; otherwise the stored text is shown in the units of the view
 */
export function fieldLook(
  stored: string,
  draft: string | undefined,
  quantity: Quantity,
  view: LengthView,
  context: ParseContext,
  language = english,
): FieldLook {
  const own = unitOfView(quantity, view);
  const kept = read(stored, quantity, view, context, language);
  // What cannot be read stands there as it was typed.
  const shown = fieldText(stored, quantity, view, context);
  const text = draft ?? (kept ? language.digits(shown) : shown);
  const typed = read(text, quantity, view, context, language);
  const unit = carriesUnit(text) ? "" : language.say(unitOf(quantity, own).text);
  if (!typed) return { text, unit, note: "" };
  if (unit === "")
    return {
      text,
      unit,
      note: typed.unit === own ? "" : `= ${language.digits(formatQuantity(typed.value, quantity, view, "setting"))}`,
    };
  const exact = !kept || Math.abs(kept.value - typed.value) < 1e-9;
  return { text, unit, note: exact ? "" : language.texts(calculator).keptAs(language.digits(spaced(stored, quantity))) };
}

function carriesUnit(text: string): boolean {
  return /[a-zµ"'″′”°%#]/i.test(text.replace(/\de[+-]?\d/i, ""));
}

/** `1.2mm` as one writes it: `1.2 mm`. */
function spaced(stored: string, quantity: Quantity): string {
  for (const [key, unit] of Object.entries(kindOf(quantity).units))
    if (key !== "" && stored.endsWith(key) && /[\d.]$/.test(stored.slice(0, -key.length)))
      return `${stored.slice(0, -key.length)}${unit.text === "°" ? "" : " "}${unit.text}`;
  return stored;
}

function trimmed(value: number, decimals: number): string {
  const text = formatNumber(value, decimals);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/** The allowed range of a field, in the units of the view. */
export function rangeText(input: QuantityInput, view: LengthView, language = english): string {
  const { quantity, min, max, aboveMin } = input;
  const inches = quantity === "length" && view !== "mm";
  const number = (value: number) => language.digits(trimmed(inches ? fromBase(value, "length", "in") : value, 3));
  const unit = unitOf(quantity, unitOfView(quantity, view)).text;
  const end = unit === "" || unit === "°" ? unit : ` ${unit}`;
  const { range, rangeAbove } = language.texts(calculator);
  return (aboveMin ? rangeAbove : range)(number(min), number(max) + end);
}

/** A ±: a fraction would hide it, so inches are decimal here. */
export function plusMinusText(
  value: number,
  quantity: Quantity,
  view: LengthView,
  fineness?: Fineness,
  language = english,
): string {
  return language.digits(formatQuantity(value, quantity, view === "fraction" ? "inch" : view, fineness));
}

export interface OutputLook {
  readonly number: string;
  readonly unit: string;
  /** How far a fraction is from the answer. */
  readonly off?: string;
}

/** One value of an answer, ready to be read. Lists are shown as tables and have no such text. */
export function outputLook(output: Output, value: unknown, view: LengthView, language = english): OutputLook {
  const { number, unit, ...off } = englishLook(output, value, view, language);
  return { number: typeof value === "number" ? language.digits(number) : number, unit: language.say(unit), ...off };
}

function englishLook(output: Output, value: unknown, view: LengthView, language: Language): OutputLook {
  if (value === null || value === undefined) return { number: language.texts(calculator).notKnown, unit: "" };
  if (output.kind === "choice") return { number: language.say(output.choices[String(value)] ?? String(value)), unit: "" };
  if (output.kind !== "quantity" || typeof value !== "number") return { number: language.say(String(value)), unit: "" };
  if (output.asPercent) return { number: formatNumber(100 * value, 0), unit: "%" };
  if (output.decimals !== undefined && output.quantity !== "length") {
    const { base, units } = kindOf(output.quantity);
    return { number: formatNumber(value, output.decimals), unit: units[base]?.text ?? "" };
  }
  const { number, unit, error } = showQuantity(value, output.quantity, view, output.fineness);
  return error && !/^[+−]0\.00 /.test(error) ? { number, unit, off: language.digits(error) } : { number, unit };
}

/** Two ends of a range as one: `0.18–0.24 s`, or `900 N – 1.1 kN`; once only where both look the same. */
export function rangeLook(from: OutputLook, to: OutputLook): OutputLook {
  if (from.number === to.number && from.unit === to.unit) return from;
  const number = from.unit === to.unit ? `${from.number}–${to.number}` : `${from.number} ${from.unit} – ${to.number}`;
  return { number, unit: to.unit };
}

/** As one text: `82.83 mm`. */
export function outputText(output: Output, value: unknown, view: LengthView, language = english): string {
  return lookText(outputLook(output, value, view, language));
}

export function lookText({ number, unit, off }: OutputLook): string {
  const whole = unit === "" || unit === "°" ? number + unit : `${number} ${unit}`;
  return off ? `${whole} (${off.replace(" ", "\u00a0")})` : whole;
}

/** A number in the working: always in base units, since a formula may mix lengths with forces. */
export function workedNumber(value: number | string, quantity: Quantity, fineness: Fineness = "size", decimals?: number): string {
  if (typeof value === "string") return value;
  if (quantity === "angle" || quantity === "ratio" || quantity === "count") return trimmed(value, decimals ?? 3);
  return formatNumber(value, decimals ?? decimalsOf(quantity, "mm", fineness));
}
