import type { Catalogue, MaterialId } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import type { LengthView } from "../quantity/format.ts";
import { unitOfView } from "../quantity/format.ts";
import { type GaugeReader, ParseError, parseQuantity, type Typed } from "../quantity/parse.ts";
import { type Phrase, say } from "../quantity/phrase.ts";
import { toBase } from "../quantity/units.ts";
import { gaugeReader } from "../stock/gauge.ts";
import type { QuantityOutput } from "../worksheet.ts";
import type { OwnQuestion } from "./own-question.ts";
import { viewOf } from "./own-question.ts";
import { type SlipId, slipValues } from "./slips.ts";
import { allowed, isWithin } from "./tolerance.ts";

/** What is said about an answer that a student entered. */
export type Verdict =
  /** `within`: not to the last figure the handbook shows, but within the tolerance. */
  | { readonly kind: "right"; readonly within?: true }
  | { readonly kind: "slip"; readonly slip: SlipId; readonly phrase: Phrase }
  | { readonly kind: "wrong" }
  /** It could not be read; that is no attempt. */
  | { readonly kind: "unreadable"; readonly problem: InputError };

function gaugesOf({ sheet, raw }: OwnQuestion, catalogue: Catalogue): GaugeReader | undefined {
  for (const [key, input] of Object.entries(sheet.inputs))
    if (input.kind === "material") return gaugeReader(catalogue, (raw[key] as MaterialId | undefined) ?? input.default);
  return undefined;
}

/** Thousands set apart by spaces, as the handbook prints them; in an inch fraction a space parts the whole inches. */
const closedUp = (typed: string) => (typed.includes("/") ? typed : typed.replace(/(?<=\d)\s(?=\d{3}(?!\d))/g, ""));

function readAnswer(typed: string, output: QuantityOutput, view: LengthView, gauge: GaugeReader | undefined): Typed {
  // A share is shown as a percentage, so a bare number is one.
  if (output.asPercent) {
    const percent = parseQuantity(typed, "percent");
    return { ...percent, value: percent.value / 100 };
  }
  return parseQuantity(typed, output.quantity, { unit: unitOfView(output.quantity, view), ...(gauge ? { gauge } : {}) });
}

/** Rounding is judged in the figures the answer was given in: a fraction by the fractions of a rule. */
function viewEntered({ digits, unit }: Typed, output: QuantityOutput, view: LengthView): LengthView {
  if (output.quantity !== "length" || (unit !== "in" && unit !== "ft")) return "mm";
  // Whole inches are a fraction for whoever works in fractions.
  const fraction = digits.includes("/") || (view === "fraction" && !digits.includes("."));
  return fraction ? "fraction" : "inch";
}

/**
 * Checks one answer.
 *
 * @param place - which of the outputs asked for, from 0
 * @param typed - as entered, in any unit that can be read; a bare number is in the question's units, or else in `view`
 * @param view - the units the student reads lengths in
 * @throws Error when the question does not ask for so many answers; nothing that was typed throws
 */
export function checkAnswer(
  own: OwnQuestion,
  place: number,
  typed: string,
  catalogue: Catalogue,
  view: LengthView = "mm",
): Verdict {
  const asked = own.asked[place];
  if (!asked) throw new Error(`Question ${own.number} does not ask for ${place + 1} answers`);
  const { key, output, right, tolerance } = asked;
  const shown = viewOf(own.question, view);
  let given: Typed;
  try {
    given = readAnswer(closedUp(typed), output, shown, gaugesOf(own, catalogue));
  } catch (error) {
    if (!(error instanceof ParseError)) throw error;
    return { kind: "unreadable", problem: new InputError(key, typed, say`${output.label}: ${error.message}`) };
  }
  const figures = viewEntered(given, output, shown);
  const most = (value: number) => allowed(tolerance, value, output, figures);
  if (isWithin(given.value, right, most(right))) {
    const toTheFigure = isWithin(given.value, right, allowed({ kind: "rounding" }, right, output, figures));
    return toTheFigure ? { kind: "right" } : { kind: "right", within: true };
  }

  // A gauge number stands for millimetres.
  const unit = given.unit === "ga" ? "mm" : given.unit;
  const question = { sheet: own.sheet, raw: own.raw, outputs: own.answer.outputs, asked: key, catalogue };
  let found: { slip: SlipId; phrase: Phrase; off: number } | undefined;
  for (const { slip, value, phrase } of slipValues(question, unit)) {
    // The rules come in the order of what they tell; within one the nearest value counts.
    if (found && found.slip !== slip) break;
    if (!Number.isFinite(value) || isWithin(value, right, most(right))) continue;
    const off = Math.abs(given.value - value);
    if (isWithin(given.value, value, most(value)) && (!found || off < found.off)) found = { slip, phrase, off };
  }
  return found ? { kind: "slip", slip: found.slip, phrase: found.phrase } : { kind: "wrong" };
}

/** The right answer [unit that a bare number is read in]. */
export function plainAnswer(output: QuantityOutput, right: number, view: LengthView): number {
  if (output.asPercent) return right * 100;
  return output.quantity === "length" ? right / toBase(1, "length", unitOfView("length", view)) : right;
}
