import type { MaterialId } from "../catalogue.ts";
import { type Raw, readInputs } from "../inputs.ts";
import { type ParseContext, ParseError, parseQuantity } from "../quantity/parse.ts";
import { gaugeReader } from "../stock/gauge.ts";
import { runWorksheet, type Worksheet } from "../worksheet.ts";
import { placesOf, textAt, withTexts } from "./place.ts";
import { includedAngle, radians } from "./slips/angle-slips.ts";
import { deductionSign, otherMethod } from "./slips/bend-slips.ts";
import { otherEdge } from "./slips/edge-slips.ts";
import type { GivenNumber, Rule, SlipContext, SlipQuestion, SlipValue } from "./slips/rule.ts";
import { insideOutside, radiusDiameter } from "./slips/size-slips.ts";
import { answerUnit, inputUnit, otherAnswer, otherGaugeSystem } from "./slips/unit-slips.ts";

/**
 * The usual slips. Each rule works out what the answer would be with one slip in it; when that is what the student
 * entered, its sentence says so. The rules know calculators by the keys, kinds and labels of their inputs and outputs, so
 * that a new calculator with an angle, a radius or a gauge number gets them by itself.
 */

/** In order: a rule that explains more about where the number came from stands before one that explains less. */
export const slipIds = [
  "other-gauge-system",
  "deduction-sign",
  "other-edge",
  "included-angle",
  "inside-outside",
  "radius-diameter",
  "other-method",
  "input-unit",
  "answer-unit",
  "radians",
  "other-answer",
] as const;
export type SlipId = (typeof slipIds)[number];

const rules: Readonly<Record<SlipId, Rule>> = {
  "other-gauge-system": otherGaugeSystem,
  "deduction-sign": deductionSign,
  "other-edge": otherEdge,
  "included-angle": includedAngle,
  "inside-outside": insideOutside,
  "radius-diameter": radiusDiameter,
  "other-method": otherMethod,
  "input-unit": inputUnit,
  "answer-unit": answerUnit,
  radians,
  "other-answer": otherAnswer,
};

function givenNumbers(sheet: Worksheet, raw: Raw, context: ParseContext): GivenNumber[] {
  return placesOf(sheet.inputs, raw).flatMap((place) => {
    const { path, key, label, input } = place;
    const text = textAt(sheet.inputs, raw, place);
    if (input.kind !== "quantity" || input.override || text === undefined) return [];
    if (sheet.shownWhen?.[key]?.(raw) === false) return [];
    try {
      return [{ path, key, label, input, typed: parseQuantity(text, input.quantity, context) }];
    } catch (error) {
      if (error instanceof ParseError) return [];
      throw error;
    }
  });
}

/**
 * What the answer would be with each of the usual slips, the most telling first.
 *
 * @param unit - key of the unit in which the answer was entered
 * @returns nothing for an output that has no answer
 */
export function* slipValues(question: SlipQuestion, unit: string): Generator<SlipValue & { readonly slip: SlipId }> {
  const { sheet, raw, outputs, asked, catalogue } = question;
  const output = sheet.outputs[asked];
  const right = outputs[asked];
  if (output?.kind !== "quantity" || typeof right !== "number") return;
  const { values = {} } = readInputs(sheet.inputs, raw, catalogue);
  const metal = Object.entries(sheet.inputs).find(([, input]) => input.kind === "material")?.[0];
  const material = metal === undefined ? undefined : ((values as Record<string, unknown>)[metal] as MaterialId | undefined);
  const context: SlipContext = {
    ...question,
    output,
    right,
    unit,
    numbers: givenNumbers(sheet, raw, material ? { gauge: gaugeReader(catalogue, material) } : {}),
    values,
    material,
    again: (texts) => {
      const value = runWorksheet(sheet, withTexts(sheet.inputs, raw, texts), catalogue).answer?.outputs[asked];
      return typeof value === "number" ? value : undefined;
    },
  };
  for (const slip of slipIds) for (const found of rules[slip](context)) yield { slip, ...found };
}
