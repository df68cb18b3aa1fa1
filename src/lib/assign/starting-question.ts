import type { Catalogue, MaterialId } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import type { QuantityInput, Raw } from "../inputs.ts";
import { toBase } from "../quantity/units.ts";
import type { QuantityOutput, Worksheet } from "../worksheet.ts";
import { checkAssignment } from "./check-assignment.ts";
import type { AskedOutput, Question, Variation } from "./definition.ts";
import { variationSteps } from "./own-numbers.ts";
import { questionWith } from "./own-question.ts";
import { type Place, placesOf, rawOfFixed, textAt } from "./place.ts";
import { rangeAbout } from "./range-about.ts";
import { startingTolerance } from "./starting-tolerance.ts";

/** Thicknesses of the shop's stock in a metal, as choices; undefined where there are fewer than two. */
function stockChoices(material: string | undefined, { shop }: Catalogue): Variation | undefined {
  const thicknesses = shop.stock.filter((sheet) => sheet.material === material).map(({ thickness }) => thickness);
  const choices = [...new Set(thicknesses)].sort((one, other) => one - other).map((each) => `${Number(each.toFixed(4))}mm`);
  return choices.length >= 2 ? { choices } : undefined;
}

/** Sets of numbers that a beginning is tried with: the whole is checked again once it stands. */
const tries = 12;

type NumberPlace = Place & { readonly input: QuantityInput };

/** The numbers a calculator begins with, the largest lengths first: those are what drawings differ in. */
function numbersOf(sheet: Worksheet, raw: Raw): NumberPlace[] {
  const size = (place: NumberPlace) => {
    const value = Number.parseFloat(textAt(sheet.inputs, raw, place) ?? "");
    return place.input.quantity === "length" ? toBase(value, "length", "mm") : 0;
  };
  return placesOf(sheet.inputs, raw)
    .filter(
      (place): place is NumberPlace =>
        place.input.kind === "quantity" && !place.input.override && sheet.shownWhen?.[place.key]?.(raw) !== false,
    )
    .sort((one, other) => size(other) - size(one));
}

/** Whether a variation has an answer at both its ends, and not the same one. */
function tells(sheet: Worksheet, question: Question, path: string, variation: Variation, catalogue: Catalogue): boolean {
  const varied = { ...question, varied: { ...question.varied, [path]: variation } };
  try {
    const steps = variationSteps(sheet.inputs, path, variation);
    const rights = [0, steps.count - 1].map(
      (place) => questionWith(varied, 0, { [path]: steps.text(place) }, () => sheet, catalogue).asked[0]?.right,
    );
    return rights[0] !== rights[1];
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}

/**
 * A question to begin with: the main answer of a calculator with a tolerance, and up to two of its numbers that differ, one of
 * them the thickness of sheets that the shop has. It has an answer for every student.
 *
 * @param fixed - values to begin from, by key, in the place of the calculator's own
 * @returns undefined for a calculator that gives no number
 */
export function startingQuestion(sheet: Worksheet, catalogue: Catalogue, fixed: Question["fixed"] = {}): Question | undefined {
  const numeric = Object.entries(sheet.outputs).flatMap(([key, output]) =>
    output.kind === "quantity" ? [[key, output] as const] : [],
  );
  const asks = (key: string, output: QuantityOutput): AskedOutput => ({ output: key, tolerance: startingTolerance(output) });
  const [first] = [...numeric.filter(([key]) => key === sheet.main), ...numeric];
  if (!first) return undefined;
  const raw = rawOfFixed(sheet.inputs, fixed);
  let question: Question = { calculator: sheet.id, fixed, varied: {}, asked: [asks(...first)] };

  const take = (path: string, variation: Variation | undefined): boolean => {
    if (!variation || !tells(sheet, question, path, variation, catalogue)) return false;
    // An input is fixed or it varies.
    const others = Object.fromEntries(Object.entries(question.fixed).filter(([key]) => key !== path));
    const next = { ...question, fixed: others, varied: { ...question.varied, [path]: variation } };
    const assignment = { title: "Start", course: "Start", questions: [next] };
    if (checkAssignment(assignment, () => sheet, catalogue, tries).problems.length > 0) return false;
    question = next;
    return true;
  };
  const { thickness, material } = sheet.inputs;
  if (thickness?.kind === "quantity" && material?.kind === "material")
    take("thickness", stockChoices(fixed.material ?? (material.default satisfies MaterialId), catalogue));
  for (const place of numbersOf(sheet, raw)) {
    const text = textAt(sheet.inputs, raw, place);
    if (place.path === "thickness" || text === undefined) continue;
    if (take(place.path, rangeAbout(text, place.input))) break;
  }
  return question;
}
