import { mm, say } from "../../quantity/phrase.ts";
import { fromBase, kindOf, toBase, unitOf } from "../../quantity/units.ts";
import { gaugeThickness } from "../../stock/gauge.ts";
import { millimetres, once, type Rule } from "./rule.ts";

/** A gauge number looked up in the table of another metal. */
export const otherGaugeSystem: Rule = function* ({ numbers, catalogue, material, again }) {
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

/** An input taken in the wrong unit of length. */
export const inputUnit: Rule = function* ({ numbers, again }) {
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

/** The right answer with the wrong unit. */
export const answerUnit: Rule = function* ({ output, right, unit }) {
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

/** The right number of another answer. */
export const otherAnswer: Rule = function* ({ sheet, outputs, output, asked }) {
  for (const [key, other] of Object.entries(sheet.outputs)) {
    const value = outputs[key];
    if (key === asked || other.kind !== "quantity" || other.quantity !== output.quantity || typeof value !== "number") continue;
    yield { value, phrase: say`That is another answer: ${other.label.toLowerCase()}. Asked is ${output.label.toLowerCase()}.` };
  }
};
