import { type LegEnd, usualLegEnd } from "../../bending/symbols.ts";
import { amount, say } from "../../quantity/phrase.ts";
import { once, type Rule, type SlipContext, type SlipValue } from "./rule.ts";

const degrees = (value: number) => amount(Number(value.toPrecision(6)), "angle");

/** The corner left inside taken for the angle turned through. */
export const includedAngle: Rule = function* ({ sheet, asked, right, numbers, again }) {
  for (const { path, typed } of numbers) {
    // An input of its own, or that of one bend of a list.
    if (!/(^|\.)angle$/.test(path)) continue;
    const inside = 180 - typed.value;
    yield* once(
      again({ [path]: `${inside}deg` }),
      () =>
        say`That is the answer for a bend turned through ${degrees(inside)}. ${degrees(inside)} is the corner left inside; the metal is turned through ${degrees(typed.value)} from flat, and that is the angle to work with.`,
    );
  }
  if (/(^|\.)swingAngle$/.test(asked) && sheet.outputs[asked])
    yield {
      value: 180 - right,
      phrase: say`That is the corner left inside at the end of the swing. Asked is how far the leaf turns from flat: 180° less that.`,
    };
};

const toRadians = Math.PI / 180;

/** Both ways of mixing up degrees and radians in the formulas of a bend: in the tangent, and in the arc. */
function* bendInRadians({ outputs, values, asked }: SlipContext): Generator<SlipValue> {
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

/** Degrees and radians mixed up. */
export const radians: Rule = function* (context) {
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
