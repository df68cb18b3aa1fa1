import { hardnessGroups } from "../../bending/handbook-allowances.ts";
import { bendMethods } from "../../bending/methods.ts";
import { say } from "../../quantity/phrase.ts";
import { once, type Rule, type SlipContext, type SlipValue } from "./rule.ts";

/** Bend deductions in the direction in which a plan's blank is asked for, of a part measured outside. */
function deductionsAlong({ asked, outputs, values }: SlipContext): number[] {
  const sides = { blankDepth: /^(north|south)\.\d+\.deduction$/, blankWidth: /^(west|east)\.\d+\.deduction$/ }[asked];
  if (!sides || values.measured !== "outside") return [];
  return Object.entries(outputs).flatMap(([key, value]) => (sides.test(key) && typeof value === "number" ? [value] : []));
}

/** The same for the blank of a plan. */
function* planDeductions(context: SlipContext): Generator<SlipValue> {
  const { right } = context;
  const deductions = deductionsAlong(context);
  if (deductions.length === 0) return;
  const sum = deductions.reduce((total, each) => total + each, 0);
  yield {
    value: right + 2 * sum,
    phrase: say`That has the bend deductions added. Outside sizes overlap at the corner: the deductions are taken off.`,
  };
  yield {
    value: right + sum,
    phrase: say`That is what it would be without bend deductions. Take them off: outside sizes overlap at each bend.`,
  };
  if (deductions.length > 1)
    for (const one of new Set(deductions))
      yield {
        value: right + sum - one,
        phrase: say`One bend deduction is taken off there, but ${deductions.length} bends lie in this direction. Each takes its own.`,
      };
}

/** The bend deduction added, forgotten, or taken once for all bends. */
export const deductionSign: Rule = function* (context) {
  yield* planDeductions(context);
  const { asked, right, outputs, values } = context;
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

/** Neutral lines that people carry in their heads. */
const rememberedFactors = [0.33, 0.45, 0.5];

/** The answer of another published method, or with another K-factor. */
export const otherMethod: Rule = function* ({ sheet, values, again }) {
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
