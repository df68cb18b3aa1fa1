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
import { materialIds } from "../lib/catalogue.ts";
import { outputsOf } from "./calculator.ts";
import { type Given, oneOf, type Subjects } from "./subject.ts";

const bendOf = (given: Given) => ({
  angle: given.number("angle"),
  radius: given.number("radius"),
  thickness: given.number("thickness"),
});

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

/** What of bending can be checked apart from its calculators. */
export const bending: Subjects = {
  setback: (given) => ({ setback: setback({ ...bendOf(given), legTo: "apex" }) }),
  // The chart of the source lists tan(A/2): the setback of a bend whose R + T is 1.
  setbackChart: (given) => ({ k: setback({ angle: given.number("angle"), radius: 0, thickness: 1, legTo: "apex" }) }),
  bendAllowance: (given) => ({ allowance: bendAllowance({ ...bendOf(given), kFactor: given.number("kFactor") }) }),
  faaAllowance: (given) => ({ allowance: faaAllowance(bendOf(given)) }),
  aircraftChart: (given) => {
    const cell = { radius: given.number("radius"), thickness: given.number("thickness") };
    return { quarter: faaAllowance({ ...cell, angle: 90 }), degree: faaAllowance({ ...cell, angle: 1 }) };
  },
  kOfAircraftRule: () => {
    const bend = { angle: 90, radius: 0, thickness: 1 };
    return { kFactor: kFromAllowance({ ...bend, allowance: faaAllowance(bend) }) };
  },
  navyAllowance: (given) => ({ allowance: navyAllowance(bendOf(given)) }),
  groupAllowance: (given) => {
    const hardness = oneOf(Object.keys(hardnessGroups) as Hardness[], given.word("hardness"));
    return { allowance: groupAllowance({ ...bendOf(given), hardness }) };
  },
  steppedK: (given) => {
    const bend = bendOf(given);
    const kFactor = steppedKFactor(bend);
    return { kFactor, allowance: bendAllowance({ ...bend, kFactor }) };
  },
  thumbDeduction: (given) => ({
    deduction: thumbDeduction({ radius: given.number("radius"), thickness: given.number("thickness") }),
  }),
  // Blank of a strip whose legs are given to where the bend begins, by way of the calculator, which takes outside legs.
  tangentStrip: (given, catalogue) => {
    const bend = bendOf(given);
    const legTo = usualLegEnd(bend.angle);
    const reach = setback({ ...bend, legTo });
    const legs = ["legA", "legB"].map((key) => ({ leg: `${given.number(key) + reach}mm` }));
    const typed = Object.fromEntries(Object.entries(bend).map(([key, value]) => [key, `${value}`]));
    return outputsOf("bend-length", { ...typed, legTo, legs, kFactor: `${given.number("kFactor")}` }, catalogue);
  },
  dinFactor: (given) => ({ factor: dinFactor({ radius: given.number("radius"), thickness: given.number("thickness") }) }),
  dinDeduction: (given) => ({ deduction: dinDeduction(bendOf(given)) }),
  dinDeductionWithFactor: (given) => ({ deduction: dinDeduction({ ...bendOf(given), factor: given.number("factor") }) }),
  steppedDinFactor: (given) => ({ factor: steppedDinFactor(given.number("ratio")) }),
  // With the factor 2 the neutral line is the outer face, and v turns its sign where the arc is two setbacks long.
  dinSignChange: () => ({
    openingAngle: 180 - crossing(90, 164, (angle) => dinDeduction({ angle, radius: 10, thickness: 1, factor: 2 }) > 0),
  }),
  radiusByStrength: (given, { radiusByStrength: table }) => {
    const sheet = { thickness: given.number("thickness"), tensileStrength: given.number("tensileStrength") };
    return {
      radius: radiusByStrength(table, sheet),
      severe: radiusByStrength(table, { ...sheet, severe: true }),
    };
  },
  radiusByAlloy: (given, { radiusByAlloy: table }) => {
    const thickness = given.number("thickness");
    return { ratio: radiusByAlloy(table, given.word("alloy"), thickness) / thickness };
  },
  radiusBand: (given, { materials }) => {
    const rule = materials[oneOf(materialIds, given.word("material"))].smallestRadius;
    return rule.by === "ratio-band" ? { low: rule.low, high: rule.high } : {};
  },
  ductilityRadius: (given) => ({
    radius: ductilityRadius({ thickness: given.number("thickness"), areaReduction: given.number("areaReduction") }),
  }),
  // The least reduction of area that allows a radius: the rule turned round by halving.
  ductilityNeeded: (given) => {
    const ratio = given.number("ratio");
    const tooLittle = (areaReduction: number) => ductilityRadius({ thickness: 1, areaReduction }) > ratio;
    return { areaReduction: crossing(1, 99, tooLittle) };
  },
  outerStrain: (given) => ({ strain: outerStrain({ radius: given.number("ratio"), thickness: 1 }) }),
  springbackForward: (given) => {
    const sheet = {
      thickness: given.number("thickness"),
      yield: given.number("yield"),
      elasticModulus: given.number("elasticModulus"),
      toolRadius: given.number("toolRadius"),
    };
    const radius = radiusAfterSpringback(sheet);
    return { ratio: springbackRatio(sheet), radius, factor: springbackFactor({ ...sheet, radius }) };
  },
  springbackFactor: (given) => ({
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
    return {
      elasticShare: elasticShare({ ...sheet, toolRadius }),
      ratio: springbackRatio({ ...sheet, toolRadius: toolRadius * (1 - 1e-9) }),
    };
  },
  plasticMoment: (given) => {
    const strip = { yield: given.number("yield"), width: given.number("width"), thickness: given.number("thickness") };
    return {
      firstYield: firstYieldMoment(strip),
      fullPlastic: fullPlasticMoment(strip),
      planeStrain: planeStrainMoment(strip),
    };
  },
  foldedEdge: (given) => ({
    allowance: foldedEdge({
      kind: oneOf(Object.keys(foldedEdgeKinds) as (keyof typeof foldedEdgeKinds)[], given.word("kind")),
      thickness: given.number("thickness"),
      width: given.number("width"),
      gap: given.number("gap"),
    }).allowance,
  }),
};
