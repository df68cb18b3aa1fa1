import { hardnessGroups } from "../bending/handbook-allowances.ts";
import { bendMethods } from "../bending/methods.ts";
import { type LegEnd, usualLegEnd } from "../bending/symbols.ts";
import type { Catalogue, MaterialId } from "../catalogue.ts";
import { type QuantityInput, type Raw, readInputs } from "../inputs.ts";
import { type ParseContext, ParseError, parseQuantity, type Typed } from "../quantity/parse.ts";
import { amount, mm, type Phrase, say } from "../quantity/phrase.ts";
import { fromBase, kindOf, toBase, unitOf } from "../quantity/units.ts";
import { gaugeReader, gaugeThickness } from "../stock/gauge.ts";
import { type QuantityOutput, runWorksheet, type Worksheet } from "../worksheet.ts";
import { placesOf, textAt, withTexts } from "./place.ts";

/**
 * The usual slips. Each rule works out what the answer would be with one slip in it; when that is what the student
 * entered, its sentence says so. The rules know calculators by the keys, kinds and labels of their inputs and outputs, so
 * that a new calculator with an angle, a radius or a gauge number gets them by itself.
 */

/** In order: a rule that explains more about where the number came from stands before one that explains less. */
export const slipIds = [
  "other-gauge-system",
  "deduction-sign",
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

/** What the answer would be with one slip in it. */
export interface SlipValue {
  readonly value: number;
  readonly phrase: Phrase;
}

/** A question as far as slips go. */
export interface SlipQuestion {
  readonly sheet: Worksheet;
  readonly raw: Raw;
  readonly outputs: Readonly<Record<string, unknown>>;
  /** Key of the output asked for. */
  readonly asked: string;
  readonly catalogue: Catalogue;
}

/** A number that the question gives. */
interface GivenNumber {
  readonly path: string;
  readonly key: string;
  readonly label: string;
  readonly input: QuantityInput;
  readonly typed: Typed;
}

interface Context extends SlipQuestion {
  readonly output: QuantityOutput;
  readonly right: number;
  /** The unit of the answer that was entered. */
  readonly unit: string;
  readonly numbers: readonly GivenNumber[];
  readonly values: Readonly<Record<string, unknown>>;
  readonly material: MaterialId | undefined;
  /** The answer asked for with other texts at some inputs; undefined where the calculator refuses them. */
  again(texts: Readonly<Record<string, string>>): number | undefined;
}

type Rule = (context: Context) => Iterable<SlipValue>;

const isRadius = (label: string) => /\bradius\b/i.test(label);
const isDiameter = (label: string) => /\bdiameter\b/i.test(label);
const hasFace = (label: string) => /\b(inside|outside|tool)\b/i.test(label);
const millimetres = (value: number) => `${value}mm`;
const degrees = (value: number) => amount(Number(value.toPrecision(6)), "angle");

function* once(value: number | undefined, phrase: () => Phrase): Generator<SlipValue> {
  if (value !== undefined) yield { value, phrase: phrase() };
}

const otherGaugeSystem: Rule = function* ({ numbers, catalogue, material, again }) {
  const own = material === undefined ? undefined : catalogue.materials[material];
  for (const { path, typed } of numbers) {
    if (typed.unit !== "ga") continue;
    for (const system of Object.values(catalogue.gaugeSystems)) {
      const thickness = gaugeThickness(system, typed.digits);
      if (thickness === undefined || Math.abs(thickness - typed.value) < 1e-9) continue;
      yield* once(
        again({ [path]: millimetres(thickness) }),
        () =>
          say`That is the answer with gauge ${typed.digits} of another metal: ${system.name} has ${mm(thickness)}. A gauge number means another thickness in each system; for ${own?.name ?? "this metal"} it is ${mm(typed.value)}.`,
      );
    }
  }
};

const deductionSign: Rule = function* ({ asked, right, outputs, values }) {
  const { deduction } = outputs;
  const { legs } = values;
  if (asked !== "blank" || typeof deduction !== "number" || !Array.isArray(legs) || legs.length < 2) return;
  const bends = legs.length - 1;
  const all = bends === 1 ? "the bend deduction" : "the bend deductions";
  yield {
    value: right + 2 * bends * deduction,
    phrase: say`That is the legs with ${all} added. Outside legs overlap at the corner: the deduction is taken off their sum.`,
  };
  yield {
    value: right + bends * deduction,
    phrase: say`That is the sum of the legs alone. Take off ${all}: outside legs overlap at the corner.`,
  };
  if (bends > 1)
    yield {
      value: right + (bends - 1) * deduction,
      phrase: say`One bend deduction is taken off there, but the strip has ${bends} bends. Each takes its own.`,
    };
};

const includedAngle: Rule = function* ({ sheet, asked, right, numbers, again }) {
  for (const { path, key, typed } of numbers) {
    if (key !== "angle") continue;
    const inside = 180 - typed.value;
    yield* once(
      again({ [path]: `${inside}deg` }),
      () =>
        say`That is the answer for a bend turned through ${degrees(inside)}. ${degrees(inside)} is the corner left inside; the metal is turned through ${degrees(typed.value)} from flat, and that is the angle to work with.`,
    );
  }
  if (asked === "swingAngle" && sheet.outputs.swingAngle)
    yield {
      value: 180 - right,
      phrase: say`That is the corner left inside at the end of the swing. Asked is how far the leaf turns from flat: 180° less that.`,
    };
};

const insideOutside: Rule = function* ({ sheet, output, right, numbers, values, asked, again }) {
  let facesChosen = false;
  for (const [key, input] of Object.entries(sheet.inputs)) {
    if (input.kind !== "choice" || Object.keys(input.choices).sort().join() !== "inside,outside") continue;
    facesChosen = true;
    const stated = String(values[key]);
    const other = stated === "inside" ? "outside" : "inside";
    yield* once(
      again({ [key]: other }),
      () => say`That is the answer for the ${other} size. Here the ${stated} size is given; the thickness lies between the two.`,
    );
  }
  const { thickness } = values;
  if (typeof thickness !== "number") return;

  const legs = numbers.filter(({ key }) => key === "legs");
  if (asked === "blank" && legs.length > 1)
    for (const side of [1, -1]) {
      const texts = legs.map(({ path, typed }, index): [string, string] => {
        const bends = index === 0 || index === legs.length - 1 ? 1 : 2;
        return [path, millimetres(typed.value + side * bends * thickness)];
      });
      yield* once(again(Object.fromEntries(texts)), () =>
        side > 0
          ? say`That is the answer with the legs taken for inside sizes, one thickness more at each bend. They are outside sizes here.`
          : say`That is the answer with the legs made shorter by one thickness at each bend. They are outside sizes, as they are given.`,
      );
    }

  for (const { path, label, typed } of numbers) {
    if (!(hasFace(label) || facesChosen) || !(isRadius(label) || isDiameter(label))) continue;
    const through = isRadius(label) ? thickness : 2 * thickness;
    const how = isRadius(label) ? "one thickness" : "two thicknesses";
    for (const side of [1, -1])
      yield* once(
        again({ [path]: millimetres(typed.value + side * through) }),
        () =>
          say`That is the answer with ${label.toLowerCase()} ${mm(typed.value + side * through)}, ${how} ${side > 0 ? "more" : "less"}: inside and outside are mixed up.`,
      );
  }
  if (output.quantity === "length" && hasFace(output.label) && (isRadius(output.label) || isDiameter(output.label))) {
    const through = isRadius(output.label) ? thickness : 2 * thickness;
    const how = isRadius(output.label) ? "one thickness" : "two thicknesses";
    for (const side of [1, -1])
      yield {
        value: right + side * through,
        phrase: say`That is ${how} ${side > 0 ? "more" : "less"} than asked: inside and outside are mixed up.`,
      };
  }
};

const radiusDiameter: Rule = function* ({ output, right, numbers, again }) {
  const diameters = numbers.filter(({ label }) => isDiameter(label));
  const halved = (which: readonly GivenNumber[]) =>
    again(Object.fromEntries(which.map(({ path, typed }) => [path, millimetres(typed.value / 2)])));
  if (diameters.length > 1)
    yield* once(
      halved(diameters),
      () => say`That is the answer with radii where diameters are given. A diameter is twice its radius.`,
    );
  for (const each of diameters)
    yield* once(
      halved([each]),
      () => say`That is the answer with ${each.label.toLowerCase()} halved: a radius was taken where a diameter is given.`,
    );
  for (const { path, label, typed } of numbers)
    if (isRadius(label) && !isDiameter(label))
      yield* once(
        again({ [path]: millimetres(2 * typed.value) }),
        () => say`That is the answer with ${label.toLowerCase()} doubled: a diameter was taken where a radius is given.`,
      );
  if (output.quantity !== "length") return;
  if (isRadius(output.label)) yield { value: 2 * right, phrase: say`That is the diameter. Asked is the radius, half of it.` };
  else if (isDiameter(output.label))
    yield { value: right / 2, phrase: say`That is the radius. Asked is the diameter, twice as much.` };
};

/** Neutral lines that people carry in their heads. */
const rememberedFactors = [0.33, 0.45, 0.5];

const otherMethod: Rule = function* ({ sheet, values, again }) {
  const { method, kFactor, hardness } = values;
  if (typeof method !== "string" || sheet.inputs.method?.kind !== "choice") return;
  const asked = bendMethods[method as keyof typeof bendMethods] ?? method;
  for (const [id, name] of Object.entries(bendMethods)) {
    if (id === method || id === "measured" || id === "soft-medium-hard") continue;
    if (id !== "neutral-line")
      yield* once(again({ method: id }), () => say`That is what another method gives: ${name}. The question asks for ${asked}.`);
  }
  for (const group of Object.keys(hardnessGroups))
    if (!(method === "soft-medium-hard" && hardness === group))
      yield* once(
        again({ method: "soft-medium-hard", hardness: group }),
        () =>
          say`That is what the ${group} group of the machinists’ rule gives. The question asks for ${method === "soft-medium-hard" ? `the ${String(hardness)} group` : asked}.`,
      );
  for (const factor of rememberedFactors)
    if (!(method === "neutral-line" && Math.abs(Number(kFactor) - factor) < 1e-9))
      yield* once(
        again({ method: "neutral-line", kFactor: String(factor) }),
        () =>
          say`That is the answer with a K-factor of ${factor}. The question asks for ${method === "neutral-line" ? `${Number(kFactor)}` : asked}.`,
      );
};

const inputUnit: Rule = function* ({ numbers, again }) {
  for (const { path, label, typed, input } of numbers) {
    if (input.quantity !== "length" || typed.unit === "ga") continue;
    const inches = typed.unit === "in" || typed.unit === "ft";
    const value = inches ? typed.value / 25.4 : typed.value * 25.4;
    yield* once(again({ [path]: millimetres(value) }), () =>
      inches
        ? say`That is the answer with the inches of ${label.toLowerCase()} taken for millimetres. 1 in = 25.4 mm.`
        : say`That is the answer with the millimetres of ${label.toLowerCase()} taken for inches. 1 in = 25.4 mm.`,
    );
  }
};

const answerUnit: Rule = function* ({ output, right, unit }) {
  if (output.asPercent) {
    yield {
      value: right / 100,
      phrase: say`That is the answer as a fraction of 1. Asked is a percentage: a hundred times as much.`,
    };
    yield { value: right * 100, phrase: say`That is a hundred times too much. Is it a percentage of a percentage?` };
    return;
  }
  const { units, name } = kindOf(output.quantity);
  const entered = unitOf(output.quantity, unit);
  for (const [key, { text, factor, offset = 0 }] of Object.entries(units)) {
    if (key === "rad" || entered === unitOf(output.quantity, key)) continue;
    if (factor === entered.factor && offset === (entered.offset ?? 0)) continue;
    const inchAgainstMetric = /^(in|ft)/.test(key) !== /^(in|ft)/.test(unit) && output.quantity === "length";
    yield {
      value: toBase(fromBase(right, output.quantity, key), output.quantity, unit),
      phrase: say`The number is right as a ${name} in ${text}, but it stands there in ${entered.text}.${inchAgainstMetric ? " 1 in = 25.4 mm." : ""}`,
    };
  }
  if (output.quantity === "length") {
    yield { value: right * 25.4, phrase: say`That is 25.4 times too much: inches were turned into millimetres once too often.` };
    yield {
      value: right / 25.4,
      phrase: say`That is 25.4 times too little: millimetres were turned into inches once too often.`,
    };
  }
};

const toRadians = Math.PI / 180;

/** Both ways of mixing up degrees and radians in the formulas of a bend: in the tangent, and in the arc. */
function* bendInRadians({ outputs, values, asked }: Context): Generator<SlipValue> {
  const { setback, allowance, deduction, blank } = outputs;
  const { angle, radius, thickness, legs } = values;
  const known = [setback, allowance, deduction, blank, angle, radius, thickness].every((each) => typeof each === "number");
  if (!known || !Array.isArray(legs)) return;
  const bend = { angle: Number(angle), height: Number(radius) + Number(thickness), bends: legs.length - 1 };
  const answerOf = (sb: number, ba: number): number | undefined => {
    const bd = 2 * sb - ba;
    const total = Number(blank) + bend.bends * Number(deduction);
    return { setback: sb, allowance: ba, deduction: bd, blank: total - bend.bends * bd }[asked];
  };
  yield* once(
    answerOf(Number(setback), Number(allowance) / toRadians),
    () => say`That is the answer with the arc taken from degrees as if they were radians. Multiply the degrees by π/180 first.`,
  );
  const legTo = (values.legTo as LegEnd | undefined) ?? usualLegEnd(bend.angle);
  if (legTo === "apex")
    yield* once(
      answerOf(bend.height * Math.tan(bend.angle / 2), Number(allowance)),
      () => say`That is the answer with the tangent worked out in radians. Set the pocket calculator to degrees.`,
    );
}

const radians: Rule = function* (context) {
  const { sheet, output, right, numbers, values, asked, again } = context;
  if (output.quantity === "angle") {
    yield { value: right * toRadians, phrase: say`The number is right in radians. Asked are degrees: multiply by 180/π.` };
    yield { value: right / toRadians, phrase: say`That has been multiplied by 180/π once too often.` };
  }
  yield* bendInRadians(context);
  const { diameter, count } = values;
  if (asked === "chord" && sheet.outputs.chord && typeof diameter === "number" && typeof count === "number")
    yield {
      value: Math.abs(diameter * Math.sin(180 / count)),
      phrase: say`That is the answer with the sine worked out in radians. Set the pocket calculator to degrees.`,
    };
  for (const { path, label, input, typed } of numbers)
    if (input.quantity === "angle")
      yield* once(
        again({ [path]: `${typed.value * toRadians}deg` }),
        () => say`That is the answer with ${label.toLowerCase()} in radians where degrees belong.`,
      );
};

const otherAnswer: Rule = function* ({ sheet, outputs, output, asked }) {
  for (const [key, other] of Object.entries(sheet.outputs)) {
    const value = outputs[key];
    if (key === asked || other.kind !== "quantity" || other.quantity !== output.quantity || typeof value !== "number") continue;
    yield { value, phrase: say`That is another answer: ${other.label.toLowerCase()}. Asked is ${output.label.toLowerCase()}.` };
  }
};

const rules: Readonly<Record<SlipId, Rule>> = {
  "other-gauge-system": otherGaugeSystem,
  "deduction-sign": deductionSign,
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
  const context: Context = {
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
