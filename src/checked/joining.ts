import { annealing, canAnneal, slowCooling } from "../lib/furnace/annealing.ts";
import { dooleyColours, heatColour, heatColours } from "../lib/furnace/heat-colours.ts";
import { InputError } from "../lib/input-error.ts";
import { governingThickness, thicknessRatio } from "../lib/joining/governing-thickness.ts";
import {
  diameterFactors,
  euroBearingFactor,
  euroRivetBearing,
  fullStrengthRivets,
  rivetFactors,
  rivetLayout,
  rivetRows,
  rivetShear,
  rivetSizes,
} from "../lib/joining/rivets.ts";
import { groovedMiddleLine, pittsburghLock } from "../lib/joining/seams.ts";
import { type SpotConditions, spotConditions, zincConditions } from "../lib/joining/spot-conditions.ts";
import { jointSpacing } from "../lib/joining/spot-spacing.ts";
import { euroSpot, formulaSpotShear, nominalSpotShear, partialFactor } from "../lib/joining/spot-strength.ts";
import { aluminiumSpot, scheduledSpot, type TradeSchedule, tradeSchedules } from "../lib/joining/trade-schedules.ts";
import { buttonFactors, weldButton } from "../lib/joining/weld-button.ts";
import { weldHeat } from "../lib/joining/weld-heat.ts";
import { powerAtDuty } from "../lib/joining/welder-duty.ts";
import { parseQuantity } from "../lib/quantity/parse.ts";
import { toBase } from "../lib/quantity/units.ts";
import { countFor } from "../lib/worksheets/parts/count-for.ts";
import type { Given } from "./subject.ts";

type Values = Readonly<Record<string, number | string | null | undefined>>;

function found<T>(what: string, value: T | undefined): T {
  if (value === undefined) throw new Error(`there is no ${what}`);
  return value;
}

const middle = ({ currentMin, currentMax, timeMin, timeMax }: SpotConditions) => ({
  current: (currentMin + currentMax) / 2,
  time: (timeMin + timeMax) / 2,
});

const perInch = toBase(1, "length", "in");

/** Functions and tables of joining and of the furnace, by name; outputs in base units. */
export const joiningSubjects: Readonly<Record<string, (given: Given) => Values>> = {
  weldButton: (given) => {
    const governing = given.number("thickness");
    return {
      target: weldButton({ governing, factor: buttonFactors.target }),
      least: weldButton({ governing, factor: buttonFactors.least }),
    };
  },
  sheetPair: (given) => {
    const pair = { thickness: given.number("thickness"), otherThickness: given.number("otherThickness") };
    try {
      return { allowed: "yes", governing: governingThickness(pair), ratio: thicknessRatio(pair) };
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return { allowed: "no", field: error.field };
    }
  },
  readTime: (given) => ({ time: parseQuantity(given.word("text"), "time").value }),
  readTemperature: (given) => ({ temperature: parseQuantity(given.word("text"), "temperature").value }),
  weldHeat: (given) => ({
    heat: weldHeat({
      current: given.number("current"),
      resistance: given.number("resistance"),
      time: given.number("time"),
    }),
  }),
  nominalSpotShear: (given) => ({ strength: nominalSpotShear(given.number("thickness")) }),
  formulaSpotShear: (given) => ({ strength: formulaSpotShear(given.number("thickness")) }),
  euroSpot: (given) => {
    const { weld, tearing, strength } = euroSpot({
      thickness: given.number("thickness"),
      otherThickness: given.number("otherThickness"),
      tensile: given.number("tensileStrength"),
    });
    return { weld: weld / partialFactor, tearing: tearing / partialFactor, strength: strength / partialFactor };
  },
  jointSpacing: (given) => ({ ...jointSpacing(given.number("thickness")) }),
  tradeSchedule: (given) => {
    const schedule = found(
      "such schedule",
      (Object.keys(tradeSchedules) as TradeSchedule[]).find((id) => id === given.word("schedule")),
    );
    const spot = scheduledSpot(schedule, { governing: given.number("thickness"), tensile: given.number("tensileStrength") });
    return { ...spot };
  },
  aluminiumSpot: (given) => ({ ...aluminiumSpot(given.number("thickness")) }),
  aluminiumOverSteel: (given) => {
    const thickness = given.number("thickness");
    const steel = middle(spotConditions({ governing: thickness, regime: "medium-force" }));
    const aluminium = aluminiumSpot(thickness);
    return { current: aluminium.current / steel.current, time: aluminium.time / steel.time };
  },
  // One value for both ends, to see what zinc does to it.
  zinc: (given) => {
    const [force, current, time] = [given.number("force"), given.number("current"), given.number("time")];
    const ends = { forceMin: force, forceMax: force, currentMin: current, currentMax: current, timeMin: time, timeMax: time };
    return { ...zincConditions({ tipFace: 5, ...ends }) };
  },
  powerAtDuty: (given) => ({ power: powerAtDuty({ power: given.number("power"), duty: given.number("duty") }) }),

  rivetDiameterLimits: (given) => ({
    least: diameterFactors.least * given.number("thickness"),
    largest: diameterFactors.target * given.number("thickness"),
  }),
  rivetLayout: (given) => {
    const diameter = given.number("diameter");
    const { usualPitch, usualWidestPitch, leastHeadWidth, leastHeadHeight } = rivetFactors;
    return {
      ...rivetLayout(diameter),
      usualPitch: usualPitch * diameter,
      usualWidestPitch: usualWidestPitch * diameter,
      leastHeadWidth: leastHeadWidth * diameter,
      leastHeadHeight: leastHeadHeight * diameter,
    };
  },
  rivetRows: (given) => ({ rows: rivetRows({ pitch: given.number("pitch"), diameter: given.number("diameter") }) }),
  rivetHole: (given) => {
    const { hole, olderHole, diameter } = found(
      "such rivet",
      rivetSizes.find(({ inches }) => inches === given.word("size")),
    );
    return { hole, olderHole, clearance: hole - diameter };
  },
  rivetShear: (given) => ({
    strength: rivetShear({ stress: given.number("stress"), diameter: given.number("diameter") }),
  }),
  euroRivetBearing: (given) => {
    const sheet = {
      thinner: given.number("thickness"),
      thicker: given.number("thickness"),
      diameter: given.number("diameter"),
      tensile: given.number("tensileStrength"),
    };
    return { alpha: euroBearingFactor(sheet), strength: euroRivetBearing(sheet) / partialFactor };
  },
  // The table holds for any strength: only the share of it that the rivet has in shear counts.
  fullStrengthRivets: (given) => {
    const tensile = 400;
    const perMillimetre = fullStrengthRivets({
      tensile,
      stress: given.number("shearShare") * tensile,
      diameter: given.number("hole"),
      thinner: given.number("thickness"),
    });
    return { perInch: perMillimetre * perInch };
  },
  wholeRivets: (given) => ({
    count: countFor({ load: given.number("exact"), safetyFactor: given.number("share"), strength: 1 }),
  }),

  groovedMiddleLine: (given) => ({
    allowance: groovedMiddleLine({ width: given.number("width"), thickness: given.number("thickness") }),
  }),
  pittsburghLock: (given) => ({ ...pittsburghLock(given.number("width")) }),

  slowCooling: (given) => ({
    time: slowCooling({ from: given.number("from"), to: given.number("to"), rate: given.number("rate") }),
  }),
  annealingRange: (given) => {
    const how = found(
      "such metal",
      Object.entries(annealing).find(([id]) => id === given.word("material")),
    )[1];
    if (!canAnneal(how)) return {};
    const { low, high } = found("such range", how.ranges[given.number("range") - 1]);
    return { low, high };
  },
  heatColour: (given) => ({ colour: heatColour(given.number("temperature")) }),
  heatColourBand: (given) => {
    const { from, to } = found(
      "such colour",
      heatColours.find(({ colour }) => colour === given.word("colour")),
    );
    return { from, to };
  },
  dooleyColour: (given) => {
    const { fahrenheit } = found(
      "such colour",
      dooleyColours.find(({ colour }) => colour === given.word("colour")),
    );
    return { temperature: toBase(fahrenheit, "temperature", "°F") };
  },
};
