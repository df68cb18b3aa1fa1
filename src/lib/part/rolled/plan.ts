import { elasticLimitRadius } from "../../bending/springback.ts";
import type { Catalogue } from "../../catalogue.ts";
import { amount, mm, type Phrase, say } from "../../quantity/phrase.ts";
import { materialWith } from "../../stock/material.ts";
import { type Blank, blankSize } from "../blank.ts";
import type { Check } from "../check.ts";
import { type CutList, cutList } from "../cut-list.ts";
import type { PartValues } from "../form.ts";
import { type JointSettings, settingsFor } from "../joint-settings.ts";
import { holesOf } from "../model.ts";
import { type PunchStep, punchList } from "../punch-list.ts";
import { checkRolled } from "./checks.ts";
import { unrollCone } from "./cone.ts";
import { onOneSurface, type RolledEnd, type RolledPart, type RolledSheet } from "./model.ts";
import { type RolledLine, rolledScribe } from "./scribe.ts";
import { noSeam, seamOf } from "./seam.ts";
import { machineOf, type RollSetting, type RollSettings, rollSettings, stripOf } from "./setting.ts";
import { type RolledSize, rolledSizes } from "./sizes.ts";
import { rolledSteps } from "./steps.ts";
import { unrollTube } from "./tube.ts";

/** A strip to roll and measure before the part. */
export interface TrialStrip {
  readonly end: RolledEnd["name"];
  /** [mm] */
  readonly length: number;
  readonly width: number;
  /** Of the rear roll to try it at [mm] */
  readonly rise: number;
  /** Inside radius it should come out with [mm]; undefined where the part has no such radius. */
  readonly radius?: number;
}

/** Everything a student takes to the bench for one rolled part. */
export interface RolledPlan {
  /** Name of the shop whose machines and stock it was made for. */
  readonly shop: string;
  readonly part: RolledPart;
  readonly sheet: RolledSheet;
  readonly blank: Blank;
  readonly scribe: readonly RolledLine[];
  readonly rolling: RollSettings;
  /** What is sheared from stock, and the settings of the stop in order: of a cone the rectangle its sector is cut from. */
  readonly cuts: CutList;
  /** Holes, made while the blank is flat. */
  readonly punching: readonly PunchStep[];
  /** How a lap is joined. */
  readonly joints?: JointSettings;
  readonly checks: readonly Check[];
  readonly practice: readonly TrialStrip[];
  readonly sizes: readonly RolledSize[];
  readonly remarks: readonly { readonly level: "note" | "caution"; readonly phrase: Phrase }[];
  readonly steps: readonly Phrase[];
  /** Ids of the standing cautions for this work. */
  readonly cautions: readonly string[];
}

/** Ids of every standing caution the plan of a rolled part may name, in the order they are read. */
export const rolledCautions = [
  "defer-to-manual",
  "sharp-edges",
  "rolls-draw-in",
  "gloves-at-rolls",
  "roll-release",
  "flying-sheet",
  "within-rating",
  "pinch-points",
  "weld-sparks",
  "electrode-pinch",
  "rivet-work",
  "eyes",
  "zinc-fume",
  "lifting",
] as const;

/** Size of a trial strip: its width, and its length in distances from pinch to rear roll; common practice, /rolling/trial-pieces/. */
const trial = { width: 60, spacings: 6 } as const;
/** A second setting near the first [rises]. */
const nearby = 0.92;

function partOf(values: PartValues, catalogue: Catalogue): RolledPart {
  const holes = holesOf(values);
  onOneSurface(holes);
  const common = {
    name: values.name,
    material: materialWith(catalogue, values.material, {}),
    thickness: values.thickness,
    holes,
    marking: values.marking,
    quantity: values.quantity,
  };
  if (values.kind === "cone")
    return {
      kind: "cone",
      ...common,
      largeDiameter: values.largeDiameter,
      smallDiameter: values.smallDiameter,
      height: values.height,
    };
  if (values.arc < 360) noSeam(values);
  return {
    kind: "tube",
    ...common,
    diameter: values.diameter,
    measured: values.measured,
    length: values.length,
    arc: values.arc,
  };
}

/** Three strips: two at the setting of the tightest curve, which show the scatter, and one at another. */
function trialsFor({ settings }: RollSettings, catalogue: Catalogue): TrialStrip[] {
  const [first, last = first] = settings;
  if (!first || !last) return [];
  const size = { length: trial.spacings * machineOf(catalogue).rollSpacing, width: trial.width };
  const wanted = ({ end, rise, radius }: RollSetting): TrialStrip => ({ end, ...size, rise, radius });
  return [wanted(last), wanted(last), first === last ? { end: last.end, ...size, rise: nearby * last.rise } : wanted(first)];
}

function remarksFor(sheet: RolledSheet, rolling: RollSettings): RolledPlan["remarks"] {
  const { part, seam } = sheet;
  const remarks: { level: "note" | "caution"; phrase: Phrase }[] = [];
  for (const { end, radius, because } of rolling.refused)
    remarks.push({
      level: "caution",
      phrase: say`No setting of the rolls ${end === "whole length" ? "" : `at the ${end} `}for an inside radius of ${mm(radius)}. ${because}`,
    });
  if (rolling.settings.length > 0)
    remarks.push({
      level: "caution",
      phrase: say`The setting of the rolls is calculated, not measured. Two sheets of one grade differ in yield strength, and the radius goes with it: roll trial strips first, and finish by the template.`,
    });
  const strip = stripOf(part);
  const { high } = part.material.yield;
  const loosest = Math.max(0, ...rolling.settings.map(({ loadedRadius }) => loadedRadius));
  if (high !== undefined && loosest >= elasticLimitRadius({ ...strip, yield: high }))
    remarks.push({
      level: "caution",
      phrase: say`The strongest sheet of this grade, ${amount(high, "stress")}, would come back flat from this setting.`,
    });
  if (part.kind === "cone") {
    remarks.push({
      level: "note",
      phrase: say`Diameters and height are entered at mid-thickness; the finished sizes are what a caliper reads outside.`,
    });
    if (rolling.settings.length > 1)
      remarks.push({
        level: "note",
        phrase: say`The screws are not set alike: the rises are those at the ends of the sheet.`,
      });
  }
  if (seam.kind === "grooved")
    remarks.push({
      level: "note",
      phrase: say`The allowance of the grooved seam, ${mm(seam.allowance)}, is a rule that leaves the thickness out; by the middle of the sheet it would be ${mm(seam.allowance - 2 * seam.doubt)}. The ± of the diameter holds both. Make a trial seam.`,
    });
  if (seam.kind === "standing")
    remarks.push({
      level: "caution",
      phrase: say`The rule of the standing seam is read out of two seams of copper roofs. Fold a trial seam before you trust it.`,
    });
  return remarks;
}

function cautionsFor({ part, seam, holes }: RolledSheet): readonly string[] {
  const applies: Partial<Record<(typeof rolledCautions)[number], boolean>> = {
    "roll-release": part.kind === "cone" || part.arc === 360,
    "pinch-points": seam.kind === "grooved" || seam.kind === "standing",
    "weld-sparks": seam.joint === "spots",
    "electrode-pinch": seam.joint === "spots",
    "rivet-work": seam.joint === "rivets",
    "zinc-fume": part.material.coated === true && seam.joint === "spots",
    eyes: holes.length > 0 || seam.joint !== undefined,
  };
  return rolledCautions.filter((id) => applies[id] ?? true);
}

/**
 * The plan of a rolled part that has been read.
 * @throws InputError naming the form field that cannot be used
 */
export function planRolled(values: PartValues, catalogue: Catalogue): RolledPlan {
  const part = partOf(values, catalogue);
  const seam = seamOf(values);
  const sheet = part.kind === "tube" ? unrollTube(part, seam) : unrollCone(part, seam, values);
  const blank = blankSize(sheet);
  const scribe = rolledScribe(sheet);
  const rolling = rollSettings(sheet, catalogue);
  const practice = trialsFor(rolling, catalogue);
  const count = sheet.joints.length;
  const joints =
    seam.joint && count > 0
      ? settingsFor(seam.joint, part, { count, tabs: [{ id: "edge A", onto: "edge B", count }] }, catalogue)
      : undefined;
  const strips = practice.map(({ length, width }) => ({ pieces: 1, size: { length, width } }));
  return {
    shop: catalogue.shop.name,
    // Round a tube along the rolling direction, so that the folds of its seam run across it.
    cuts: cutList(sheet, part.kind === "tube" ? { ...blank, along: "x" } : blank, strips, catalogue),
    punching: punchList(sheet, catalogue),
    ...(joints && { joints }),
    part,
    sheet,
    blank,
    scribe,
    rolling,
    checks: checkRolled(sheet, rolling, catalogue),
    practice,
    sizes: rolledSizes(sheet, rolling, catalogue),
    remarks: remarksFor(sheet, rolling),
    steps: rolledSteps(sheet, blank, scribe, rolling, practice),
    cautions: cautionsFor(sheet),
  };
}
