import { bendAllowance, kFromAllowance } from "../lib/bending/bend-allowance.ts";
import { dinDeduction, dinFactor, steppedDinFactor } from "../lib/bending/din-6935.ts";
import { foldedEdge } from "../lib/bending/folded-edge.ts";
import {
  faaAllowance,
  groupAllowance,
  type Hardness,
  hardnessGroups,
  navyAllowance,
  steppedKFactor,
  thumbDeduction,
} from "../lib/bending/handbook-allowances.ts";
import { firstYieldMoment, fullPlasticMoment, planeStrainMoment } from "../lib/bending/plastic-moment.ts";
import { setback } from "../lib/bending/setback.ts";
import { ductilityRadius, outerStrain, radiusByAlloy, radiusByStrength } from "../lib/bending/smallest-radius.ts";
import {
  elasticLimitRadius,
  elasticShare,
  radiusAfterSpringback,
  springbackFactor,
  springbackRatio,
} from "../lib/bending/springback.ts";
import { foldedEdgeKinds, usualLegEnd } from "../lib/bending/symbols.ts";
import { type Catalogue, materialIds, toleranceClasses } from "../lib/catalogue.ts";
import type { Inputs, Raw, RawRow } from "../lib/inputs.ts";
import { nearestFraction } from "../lib/quantity/fraction.ts";
import { parseQuantity } from "../lib/quantity/parse.ts";
import { worksheetById } from "../lib/registry.ts";
import { meanUncertainty } from "../lib/stats/mean-uncertainty.ts";
import { outlierLimit } from "../lib/stats/outlier.ts";
import { studentQuantile } from "../lib/stats/student.ts";
import { gaugeThickness } from "../lib/stock/gauge.ts";
import { angularTolerance, linearTolerance } from "../lib/stock/general-tolerance.ts";
import { thicknessTolerance } from "../lib/stock/thickness-tolerance.ts";
import { runWorksheet, type Worksheet } from "../lib/worksheet.ts";
import { joiningSubjects } from "./joining.ts";
import { markingAndCutting } from "./marking-and-cutting.ts";
import { punchingAndRolling } from "./punching-and-rolling.ts";

/** The inputs of a check, in whichever form its subject takes them. */
export interface Given {
  /** In the base unit. */
  number(key: string): number;
  word(key: string): string;
  /** Every input as typed, lists as rows. */
  typed(): [string, string | readonly (string | RawRow)[]][];
}

type Found = number | string | null | undefined;
/** Outputs by name, numbers in base units; undefined for one that does not exist. */
type Answer = (output: string) => Found;
type Subject = (given: Given, catalogue: Catalogue) => Answer;

const outputs =
  (values: Readonly<Record<string, Found>>): Answer =>
  (output) =>
    values[output];

const bendOf = (given: Given) => ({
  angle: given.number("angle"),
  radius: given.number("radius"),
  thickness: given.number("thickness"),
});

/** One of a list of words. @throws Error for another */
function oneOf<Word extends string>(words: readonly Word[], given: string): Word {
  const found = words.find((word) => word === given);
  if (found === undefined) throw new Error(`“${given}” is none of ${words.join(", ")}`);
  return found;
}

function entry<T>(table: Readonly<Record<string, T>>, id: string): T {
  const found = table[id];
  if (found === undefined) throw new Error(`no “${id}”; there are ${Object.keys(table).join(", ")}`);
  return found;
}

/** Where a falling or rising function of one number crosses a value, by halving between two ends. */
function crossing(low: number, high: number, isBelow: (at: number) => boolean): number {
  let [below, above] = [low, high];
  for (let halving = 0; halving < 100; halving += 1) {
    const middle = (below + above) / 2;
    if (isBelow(middle)) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}

/** Library functions and tables by name. Calculators need no entry: their id is enough. */
const subjects: Readonly<Record<string, Subject>> = {
  ...Object.fromEntries(
    Object.entries({ ...markingAndCutting, ...punchingAndRolling }).map(([name, values]): [string, Subject] => [
      name,
      (given) => outputs(values(given)),
    ]),
  ),
  setback: (given) => outputs({ setback: setback({ ...bendOf(given), legTo: "apex" }) }),
  // The chart of the source lists tan(A/2): the setback of a bend whose R + T is 1.
  setbackChart: (given) => outputs({ k: setback({ angle: given.number("angle"), radius: 0, thickness: 1, legTo: "apex" }) }),
  bendAllowance: (given) => outputs({ allowance: bendAllowance({ ...bendOf(given), kFactor: given.number("kFactor") }) }),
  faaAllowance: (given) => outputs({ allowance: faaAllowance(bendOf(given)) }),
  aircraftChart: (given) => {
    const cell = { radius: given.number("radius"), thickness: given.number("thickness") };
    return outputs({ quarter: faaAllowance({ ...cell, angle: 90 }), degree: faaAllowance({ ...cell, angle: 1 }) });
  },
  kOfAircraftRule: () => {
    const bend = { angle: 90, radius: 0, thickness: 1 };
    return outputs({ kFactor: kFromAllowance({ ...bend, allowance: faaAllowance(bend) }) });
  },
  navyAllowance: (given) => outputs({ allowance: navyAllowance(bendOf(given)) }),
  groupAllowance: (given) => {
    const hardness = oneOf(Object.keys(hardnessGroups) as Hardness[], given.word("hardness"));
    return outputs({ allowance: groupAllowance({ ...bendOf(given), hardness }) });
  },
  steppedK: (given) => {
    const bend = bendOf(given);
    const kFactor = steppedKFactor(bend);
    return outputs({ kFactor, allowance: bendAllowance({ ...bend, kFactor }) });
  },
  thumbDeduction: (given) =>
    outputs({ deduction: thumbDeduction({ radius: given.number("radius"), thickness: given.number("thickness") }) }),
  // Blank of a strip whose legs are given to where the bend begins, by way of the calculator, which takes outside legs.
  tangentStrip: (given, catalogue) => {
    const bend = bendOf(given);
    const legTo = usualLegEnd(bend.angle);
    const reach = setback({ ...bend, legTo });
    const legs = ["legA", "legB"].map((key) => ({ leg: `${given.number(key) + reach}mm` }));
    const typed = Object.fromEntries(Object.entries(bend).map(([key, value]) => [key, `${value}`]));
    return answerOf("bend-length", { ...typed, legTo, legs, kFactor: `${given.number("kFactor")}` }, catalogue);
  },
  dinFactor: (given) => outputs({ factor: dinFactor({ radius: given.number("radius"), thickness: given.number("thickness") }) }),
  dinDeduction: (given) => outputs({ deduction: dinDeduction(bendOf(given)) }),
  dinDeductionWithFactor: (given) => outputs({ deduction: dinDeduction({ ...bendOf(given), factor: given.number("factor") }) }),
  steppedDinFactor: (given) => outputs({ factor: steppedDinFactor(given.number("ratio")) }),
  // With the factor 2 the neutral line is the outer face, and v turns its sign where the arc is two setbacks long.
  dinSignChange: () =>
    outputs({
      openingAngle: 180 - crossing(90, 164, (angle) => dinDeduction({ angle, radius: 10, thickness: 1, factor: 2 }) > 0),
    }),
  radiusByStrength: (given, { radiusByStrength: table }) => {
    const sheet = { thickness: given.number("thickness"), tensileStrength: given.number("tensileStrength") };
    return outputs({
      radius: radiusByStrength(table, sheet),
      severe: radiusByStrength(table, { ...sheet, severe: true }),
    });
  },
  radiusByAlloy: (given, { radiusByAlloy: table }) => {
    const thickness = given.number("thickness");
    return outputs({ ratio: radiusByAlloy(table, given.word("alloy"), thickness) / thickness });
  },
  radiusBand: (given, { materials }) => {
    const rule = materials[oneOf(materialIds, given.word("material"))].smallestRadius;
    return outputs(rule.by === "ratio-band" ? { low: rule.low, high: rule.high } : {});
  },
  ductilityRadius: (given) =>
    outputs({
      radius: ductilityRadius({ thickness: given.number("thickness"), areaReduction: given.number("areaReduction") }),
    }),
  // The least reduction of area that allows a radius: the rule turned round by halving.
  ductilityNeeded: (given) => {
    const ratio = given.number("ratio");
    const tooLittle = (areaReduction: number) => ductilityRadius({ thickness: 1, areaReduction }) > ratio;
    return outputs({ areaReduction: crossing(1, 99, tooLittle) });
  },
  outerStrain: (given) => outputs({ strain: outerStrain({ radius: given.number("ratio"), thickness: 1 }) }),
  springbackForward: (given) => {
    const sheet = {
      thickness: given.number("thickness"),
      yield: given.number("yield"),
      elasticModulus: given.number("elasticModulus"),
      toolRadius: given.number("toolRadius"),
    };
    const radius = radiusAfterSpringback(sheet);
    return outputs({ ratio: springbackRatio(sheet), radius, factor: springbackFactor({ ...sheet, radius }) });
  },
  springbackFactor: (given) =>
    outputs({
      factor: springbackFactor({
        toolRadius: given.number("toolRadius"),
        radius: given.number("radius"),
        thickness: given.number("thickness"),
      }),
    }),
  // At the limit itself there is no answer, so the ratio is taken a billionth below it.
  elasticLimit: () => {
    const sheet = { thickness: 1, yield: 200, elasticModulus: 200_000 };
    const toolRadius = elasticLimitRadius(sheet);
    return outputs({
      elasticShare: elasticShare({ ...sheet, toolRadius }),
      ratio: springbackRatio({ ...sheet, toolRadius: toolRadius * (1 - 1e-9) }),
    });
  },
  plasticMoment: (given) => {
    const strip = { yield: given.number("yield"), width: given.number("width"), thickness: given.number("thickness") };
    return outputs({
      firstYield: firstYieldMoment(strip),
      fullPlastic: fullPlasticMoment(strip),
      planeStrain: planeStrainMoment(strip),
    });
  },
  foldedEdge: (given) =>
    outputs({
      allowance: foldedEdge({
        kind: oneOf(Object.keys(foldedEdgeKinds) as (keyof typeof foldedEdgeKinds)[], given.word("kind")),
        thickness: given.number("thickness"),
        width: given.number("width"),
        gap: given.number("gap"),
      }).allowance,
    }),
  gaugeThickness: (given, { gaugeSystems }) =>
    outputs({ thickness: gaugeThickness(entry(gaugeSystems, given.word("system")), given.word("gauge")) }),
  readLength: (given) => {
    const { value } = parseQuantity(given.word("text"), "length");
    return outputs({ mm: value, fraction: nearestFraction(value).text });
  },
  materialStrength: (given, { materials }) => {
    const { shearStrength, tensileStrength } = materials[oneOf(materialIds, given.word("material"))];
    return outputs({ shearStrength: shearStrength.value, tensileStrength: tensileStrength.value });
  },
  thicknessTolerance: (given, { thicknessTolerances }) =>
    outputs({
      tolerance: thicknessTolerance(
        entry(thicknessTolerances, given.word("table")),
        given.number("thickness"),
        given.number("width"),
      ),
    }),
  linearTolerance: (given, { generalTolerances }) =>
    outputs({
      tolerance: linearTolerance(generalTolerances, oneOf(toleranceClasses, given.word("class")), given.number("size")),
    }),
  angularTolerance: (given, { generalTolerances }) =>
    outputs({
      tolerance: angularTolerance(generalTolerances, oneOf(toleranceClasses, given.word("class")), given.number("side")),
    }),
  studentQuantile: (given) => outputs({ t: studentQuantile(given.number("probability") / 100, given.number("freedom")) }),
  meanUncertainty: (given) =>
    outputs({ uncertainty: meanUncertainty({ spread: given.number("spread"), count: given.number("count") }) }),
  outlierLimit: (given) => outputs({ limit: outlierLimit(given.number("count")) }),
  ...Object.fromEntries(
    Object.entries(joiningSubjects).map(([name, valuesOf]): [string, Subject] => [name, (given) => outputs(valuesOf(given))]),
  ),
};

function rawOf(inputs: Inputs, typed: ReturnType<Given["typed"]>): Raw {
  return Object.fromEntries(
    typed.map(([key, value]) => {
      const input = inputs[key];
      if (typeof value === "string" || input?.kind !== "list") return [key, String(value)];
      const [column = ""] = Object.keys(input.columns);
      return [key, value.map((row) => (typeof row === "string" ? { [column]: row } : row))];
    }),
  );
}

/** One output of an answer; `turns.0.line` is a cell of a list. */
function outputAt(values: unknown, path: string): Found {
  let found = values;
  for (const key of path.split(".")) {
    if (typeof found !== "object" || found === null) return undefined;
    found = Reflect.get(found, key);
  }
  return typeof found === "number" || typeof found === "string" || found === null ? found : undefined;
}

function answerOf(id: string, raw: Raw, catalogue: Catalogue): Answer {
  const sheet = worksheetById(id);
  if (!sheet) throw new Error(`no calculator “${id}”`);
  const { answer, problems } = runWorksheet(sheet, raw, catalogue);
  if (!answer) throw new Error(problems.map(({ message }) => message).join(" "));
  return (output) => outputAt(answer.outputs, output);
}

const calculator =
  (sheet: Worksheet): Subject =>
  (given, catalogue) =>
    answerOf(sheet.id, rawOf(sheet.inputs, given.typed()), catalogue);

/** What a check checks. @throws Error for a name that is neither in the list above nor a calculator's id */
export function subjectOf(name: string): Subject {
  const sheet = worksheetById(name);
  const subject = sheet ? calculator(sheet) : subjects[name];
  if (!subject) throw new Error(`nothing to check is called “${name}”`);
  return subject;
}
