import type { Welder } from "../../catalogue.ts";
import type { SpotConditions } from "../../joining/spot-conditions.ts";
import { plateDuty, powerAtDuty } from "../../joining/welder-duty.ts";
import { amount, mm, type Phrase, say } from "../../quantity/phrase.ts";
import type { Remark } from "../../worksheet.ts";

/** How far two presses of the same finger lie apart, either way [s]. Common practice; try it with a stopwatch. */
export const pressScatter = 0.1;
/** A brisk but unhurried row of spots [s from spot to spot]. */
const spotEvery = 3;

const seconds = (value: number) => amount(value, "time");
const newtons = (value: number) => amount(value, "force");
const kiloamperes = (value: number) => amount(value, "current");

interface Spot {
  readonly conditions: SpotConditions;
  /** There is another regime, with a longer time. */
  readonly longerRegime: boolean;
  /** mm */
  readonly thickness: number;
  readonly otherThickness: number;
}

/** What to do about the weld time where nothing but a finger ends it. */
function fingerSwitch(welder: Welder, { conditions: { timeMin, timeMax }, longerRegime }: Spot): Remark[] {
  const allowed = timeMax > timeMin ? say`${seconds(timeMin)} to ${seconds(timeMax)}` : say`${seconds(timeMin)}`;
  const longest = timeMin > 2 * pressScatter ? [] : say` So short a time cannot be held by hand at all.`;
  return [
    {
      level: "caution",
      phrase: say`${welder.name} welds for as long as you press, and a finger is out by about ${seconds(pressScatter)} either way, where this sheet allows ${allowed}.${longest} Ask for a timer.`,
      source: "common-practice",
    },
    {
      level: "note",
      phrase: say`Until then: ${longerRegime ? "take the regime with the longer time, and " : ""}if welds spit, turn the current down a step and press longer: schedules for smaller machines do the same and give a somewhat weaker weld. Weld a row of coupons from a short press to a long one, peel them, and keep the shortest press that pulls a whole button. Record the hum with a phone: it lasts as long as the current, and the recording shows how long. Peel one more coupon every ten spots.`,
      source: "metalforming-2014",
    },
  ];
}

/** The settings of a weld beside what this shop's welder can do. */
export function welderRemarks(welder: Welder, spot: Spot): Remark[] {
  const { conditions, thickness, otherThickness } = spot;
  const remarks: Remark[] = [];
  const caution = (phrase: Phrase, field?: string) => remarks.push({ level: "caution", phrase, ...(field ? { field } : {}) });
  const { name, thinnest, thickest } = welder;

  for (const [field, each] of [
    ["thickness", thickness],
    ["otherThickness", otherThickness],
  ] as const)
    if (each < thinnest || each > thickest)
      caution(say`${name} is for sheets from ${mm(thinnest)} to ${mm(thickest)} each; this one is ${mm(each)}.`, field);

  if (welder.largestForce < conditions.forceMin)
    caution(
      say`${name} presses with up to ${newtons(welder.largestForce)}; these settings begin at ${newtons(conditions.forceMin)}. Too little force lets the weld spit and leaves it hollow.`,
    );
  else if (welder.largestForce < conditions.forceMax)
    remarks.push({
      level: "note",
      phrase: say`${name} presses with up to ${newtons(welder.largestForce)}: the upper part of this range is out of its reach.`,
    });
  if (welder.largestCurrent < conditions.currentMin)
    caution(
      say`${name} gives up to ${kiloamperes(welder.largestCurrent)}; these settings begin at ${kiloamperes(conditions.currentMin)}. A longer time makes up for a little of that at most: peel test coupons decide whether it welds this sheet at all.`,
    );
  else if (welder.largestCurrent < conditions.currentMax)
    remarks.push({
      level: "note",
      phrase: say`${name} gives up to ${kiloamperes(welder.largestCurrent)}: the upper part of this range is out of its reach.`,
    });

  if (Math.abs(welder.tipFace - conditions.tipFace) > 0.5)
    remarks.push({
      level: "note",
      phrase: say`The tips of ${name} are dressed to ${mm(welder.tipFace)}; this sheet asks for ${mm(conditions.tipFace)}. ${
        welder.tipFace > conditions.tipFace
          ? "A larger face spreads the current: it takes more of it, and marks less."
          : "A smaller face crowds the current: it spits and dents sooner."
      }`,
    });
  if (welder.time === "finger-switch") remarks.push(...fingerSwitch(welder, spot));

  const duty = conditions.timeMax / spotEvery;
  remarks.push({
    level: "note",
    phrase: say`${name} reaches ${mm(welder.throat)} in from an edge. Its ${amount(welder.power, "power")} hold with the current on ${100 * plateDuty} % of the time; a spot every ${spotEvery} s is ${(100 * duty).toFixed(0)} %, at which heat alone would allow ${amount(powerAtDuty({ power: welder.power, duty }), "power")}.`,
    source: "metalforming-2014",
  });
  return remarks;
}
