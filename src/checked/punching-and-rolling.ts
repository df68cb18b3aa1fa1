import { elasticLimitRadius } from "../lib/bending/springback.ts";
import { clearanceByRoot, dieClearance, dieDiameter } from "../lib/punching/die-clearance.ts";
import { punchForceFromTensile, punchStress, smallestPunch } from "../lib/punching/punch-force.ts";
import { shearedForceByRatio, shearedForceByWork } from "../lib/punching/sheared-punch.ts";
import { coneBlank } from "../lib/rolling/cone-blank.ts";
import { radiusLeft, wideSheet } from "../lib/rolling/loaded-radius.ts";
import { flatEnd, radiusAtRise, rearRollRise, tightestLoadedRadius } from "../lib/rolling/three-roll.ts";
import { rivetDistances } from "../lib/stock/rivet-spacing.ts";
import type { Given } from "./subject.ts";

const numbers = <Key extends string>(given: Given, ...keys: readonly Key[]) =>
  Object.fromEntries(keys.map((key) => [key, given.number(key)])) as Record<Key, number>;

const sheetOf = (given: Given) => numbers(given, "thickness", "yield", "elasticModulus");
const rollsOf = (given: Given) => numbers(given, "thickness", "rearRoll", "rollSpacing");

/** What of punching and rolling can be checked apart from its calculators. Numbers out are in base units. */
export const punchingAndRolling: Readonly<Record<string, (given: Given) => Readonly<Record<string, number | undefined>>>> = {
  forceFromTensile: (given) => ({
    force: punchForceFromTensile(numbers(given, "perimeter", "thickness", "tensileStrength"), "kalpakjian"),
  }),
  punchStress: (given) => ({ stress: punchStress(numbers(given, "diameter", "thickness", "shearStrength")) }),
  smallestPunch: (given) => ({
    diameter: smallestPunch(numbers(given, "thickness", "shearStrength"), given.number("limit")),
  }),
  shearedPunch: (given) => {
    const punch = numbers(given, "force", "penetration", "thickness", "shearHeight");
    return { byWork: shearedForceByWork(punch), byRatio: shearedForceByRatio(punch) };
  },
  dieClearance: (given) => ({ clearance: dieClearance(numbers(given, "factor", "thickness")) }),
  clearanceByRoot: (given) => {
    const fit = numbers(given, "thickness", "shearStrength");
    return { ordinary: clearanceByRoot(fit, "ordinary"), accurate: clearanceByRoot(fit, "accurate") };
  },
  // A blank has the size of the die, so its punch is smaller by what a hole's die is larger.
  blankingPunch: (given) => {
    const { blank, factor, thickness } = numbers(given, "blank", "factor", "thickness");
    return { punch: 2 * blank - dieDiameter({ diameter: blank, clearance: dieClearance({ factor, thickness }) }) };
  },
  rivetDistances: (given) => ({
    edge: rivetDistances.edge * given.number("diameter"),
    spacing: rivetDistances.spacing * given.number("diameter"),
  }),
  rearRollRise: (given) => ({ rise: rearRollRise({ ...rollsOf(given), loadedRadius: given.number("loadedRadius") }) }),
  radiusAtRise: (given) => ({ radius: radiusAtRise({ ...rollsOf(given), rise: given.number("rise") }) }),
  flatEnd: (given) => ({ length: flatEnd({ ...rollsOf(given), loadedRadius: given.number("loadedRadius") }) }),
  tightestRadius: (given) => ({
    radius: tightestLoadedRadius({ ...rollsOf(given), frontRoll: given.number("frontRoll") }),
  }),
  rolledRadius: (given) => {
    const sheet = sheetOf(given);
    const loaded = given.number("loadedRadius");
    return { radius: radiusLeft(sheet, loaded), wide: radiusLeft(wideSheet(sheet), loaded) };
  },
  flatFrom: (given) => ({ radius: elasticLimitRadius(sheetOf(given)) }),
  coneArea: (given) => ({ area: coneBlank(numbers(given, "largeDiameter", "smallDiameter", "height")).area }),
};
