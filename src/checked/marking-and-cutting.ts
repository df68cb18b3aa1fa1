import { bladeGap } from "../lib/cutting/blade-gap.ts";
import { notchSide } from "../lib/cutting/corner-notch.ts";
import { snipsThickness } from "../lib/cutting/cut-choice.ts";
import { guardDistance, pressOpening } from "../lib/cutting/guard-opening.ts";
import { changedSpeed, speedChanges } from "../lib/cutting/saw-speed.ts";
import { sawTeeth, widestBand } from "../lib/cutting/saw-teeth.ts";
import { parallelCapacity, rakedCapacity } from "../lib/cutting/shear-capacity.ts";
import { engagedLength, rakedForce, rakedForceBreaking, rakedForceByWork } from "../lib/cutting/shear-force.ts";
import { chainError, datumPairError } from "../lib/marking/line-error.ts";
import { parseQuantity } from "../lib/quantity/parse.ts";
import type { Given } from "./subject.ts";

const rakedCut = (given: Given) => ({
  thickness: given.number("thickness"),
  shearStrength: given.number("shearStrength"),
  rake: given.number("rake"),
});

function speedChange(given: Given): keyof typeof speedChanges {
  const name = given.word("change");
  if (Object.hasOwn(speedChanges, name)) return name as keyof typeof speedChanges;
  throw new Error(`“${name}” is none of ${Object.keys(speedChanges).join(", ")}`);
}

/** What of marking and cutting can be checked apart from its calculators. Numbers out are in base units. */
export const markingAndCutting: Readonly<Record<string, (given: Given) => Readonly<Record<string, number | undefined>>>> = {
  chainError: (given) => ({ ...chainError({ perLine: given.number("perLine"), count: given.number("count") }) }),
  datumPairError: (given) => ({ ...datumPairError({ perLine: given.number("perLine") }) }),
  engagedLength: (given) => ({
    length: engagedLength({ thickness: given.number("thickness"), rake: given.number("rake") }),
  }),
  rakedShear: (given) => {
    const cut = { ...rakedCut(given), penetration: given.number("penetration") };
    return { triangle: rakedForce(cut), breaking: rakedForceBreaking(cut), byWork: rakedForceByWork(cut) };
  },
  shearCapacity: (given) => {
    const plate = {
      ratedThickness: given.number("ratedThickness"),
      ratedStrength: given.number("ratedStrength"),
      shearStrength: given.number("shearStrength"),
    };
    return { raked: rakedCapacity(plate), parallel: parallelCapacity(plate) };
  },
  bladeGap: (given) => ({
    low: bladeGap(given.number("thickness"), "low"),
    high: bladeGap(given.number("thickness"), "high"),
  }),
  sawTeeth: (given) => ({
    teeth: sawTeeth({
      thickness: given.number("thickness"),
      teethPerInch: given.number("teethPerInch"),
      angle: given.number("angle"),
    }),
  }),
  readSpeed: (given) => ({ speed: parseQuantity(given.word("text"), "speed").value }),
  changedSpeed: (given) => ({ speed: changedSpeed(given.number("speed"), speedChange(given)) }),
  widestBand: (given) => ({ width: widestBand(given.number("radius")) }),
  snipsThickness: (given) => ({ thickness: snipsThickness(given.number("strength"), given.number("steel")) }),
  notchSide: (given) => ({
    side: notchSide({ side: given.number("side"), deduction: given.number("deduction"), gap: given.number("gap") }),
  }),
  guardDistance: (given) => ({
    slot: guardDistance(given.number("opening"), "slot"),
    square: guardDistance(given.number("opening"), "square"),
    round: guardDistance(given.number("opening"), "round"),
  }),
  pressOpening: (given) => ({ opening: pressOpening(given.number("distance")) }),
};
