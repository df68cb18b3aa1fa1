import { setback } from "../bending/setback.ts";
import type { Catalogue, Punch } from "../catalogue.ts";
import type { InputError } from "../input-error.ts";
import { InputError as InputProblem } from "../input-error.ts";
import { type Raw, readInputs } from "../inputs.ts";
import type { Phrase } from "../quantity/phrase.ts";
import { swingFor } from "./bend-checks.ts";
import { type Blank, blankSize } from "./blank.ts";
import type { Check } from "./check.ts";
import { checkPart } from "./checks.ts";
import { type CutList, cutList } from "./cut-list.ts";
import { bendsOf, type FlatBend, type FlatCorner, type FlatLayout, type FlatTab, flatten, type Span } from "./flatten.ts";
import { type PartValues, partInputs } from "./form.ts";
import { type JointSettings, jointSettings } from "./joint-settings.ts";
import { type HoleShape, type Part, partFrom } from "./model.ts";
import type { BendOrder } from "./order/order.ts";
import { bendSpan } from "./outline.ts";
import { type HoleTool, type PunchStep, punchList, stepOfHole } from "./punch-list.ts";
import { planRolled, type RolledPlan } from "./rolled/plan.ts";
import { type ScribeLine, scribeList } from "./scribe.ts";
import { stepsFor } from "./steps.ts";
import { bendDataRemarks, type FinishedSize, finishedSizes } from "./uncertainty.ts";

export interface PlannedHole {
  /** Middle from the west and the south edge of the blank [mm] */
  readonly x: number;
  readonly y: number;
  readonly shape: HoleShape;
  /** Of a round hole; others have a width and a height as they lie before they are turned [mm, deg] */
  readonly diameter?: number;
  readonly width?: number;
  readonly height?: number;
  readonly turn?: number;
  readonly panel: string;
  /** What makes it in this shop; undefined punch: it is drilled, sawn or filed. */
  readonly by: HoleTool["by"];
  readonly punch?: Punch;
}

export interface PlannedBend {
  readonly id: string;
  readonly side: string;
  /** Edge its lines are measured from. */
  readonly from: "south" | "west";
  /** Extent along the bend, from the other datum edge [mm] */
  readonly span: Span;
  /** Middle of the bend zone from the datum edge [mm] */
  readonly line: number;
  /** Where the bend zone starts and ends [mm] */
  readonly tangents: readonly [number, number];
  readonly sightLine: number;
  /** Wanted, turned through [deg] */
  readonly angle: number;
  readonly way: "up" | "down";
  readonly radius: number;
  /** How far the leaf goes so that the angle is left after springback [deg]; null when the sheet would spring back flat */
  readonly swing: number | null;
  readonly allowance: number;
  readonly deduction: number;
}

export interface PracticePieces {
  readonly pieces: number;
  /** Flat strip for each [mm]: across the bend, along it */
  readonly size: { readonly length: number; readonly width: number };
  readonly angle: number;
  readonly radius: number;
  readonly for: readonly string[];
}

/** Everything a student takes to the bench for one part. */
export interface Plan {
  readonly part: Part;
  readonly layout: FlatLayout;
  readonly blank: Blank;
  readonly outline: readonly (readonly [number, number])[];
  readonly bends: readonly PlannedBend[];
  readonly scribe: readonly ScribeLine[];
  readonly holes: readonly PlannedHole[];
  readonly corners: readonly FlatCorner[];
  readonly tabs: readonly FlatTab[];
  /** What is sheared from stock, and the settings of the stop in order. */
  readonly cuts: CutList;
  /** What is taken out of the flat blank, in order. */
  readonly punching: readonly PunchStep[];
  /** How its tabs are joined; none without tabs. */
  readonly joints?: JointSettings;
  /** Its bends in an order this shop's brake can make, or why there is none; left out where it was not searched for. */
  readonly order?: BendOrder;
  /** Name of the shop it was held against. */
  readonly shop: string;
  readonly checks: readonly Check[];
  readonly practice: readonly PracticePieces[];
  readonly sizes: readonly FinishedSize[];
  readonly remarks: readonly { readonly level: "note" | "caution"; readonly phrase: Phrase }[];
  readonly steps: readonly Phrase[];
  /** Ids of the standing cautions for this work. */
  readonly cautions: readonly string[];
}

/** Ids of every standing caution a plan may name, in the order they are read. */
export const planCautions = [
  "defer-to-manual",
  "sharp-edges",
  "pinch-points",
  "counterweight-and-handle",
  "stored-energy",
  "within-rating",
  "eyes",
  "zinc-fume",
  "lifting",
] as const;

/** Those that only the brake gives rise to. */
const ofBending: ReadonlySet<string> = new Set(["pinch-points", "counterweight-and-handle", "stored-energy", "within-rating"]);

/** Pieces enough that Student's t no longer dwarfs the spread: at five it is 2.9, at two 14. */
const practicePieces = 5;
/** Legs long enough for caliper jaws and for any usual brake, and strip wide enough to bend as wide sheet does [mm]. */
const practiceLeg = 50;
const practiceWidth = 50;

function practiceFor(layout: FlatLayout): PracticePieces[] {
  const { part } = layout;
  const groups = new Map<string, PracticePieces>();
  for (const { id, angle, radius } of [...bendsOf(layout), ...layout.tabs.map((tab) => ({ ...tab, angle: 90 }))]) {
    const key = `${angle} ${radius}`;
    const group = groups.get(key);
    groups.set(key, {
      pieces: practicePieces,
      size: { length: 2 * practiceLeg, width: Math.max(practiceWidth, 8 * part.thickness) },
      angle,
      radius,
      for: [...(group?.for ?? []), id],
    });
  }
  return [...groups.values()];
}

const swingOf = (part: Part, angle: number, radius: number) =>
  swingFor(part.material, { angle, radius, thickness: part.thickness })?.swingAngle ?? null;

function plannedBend(part: Part, bend: FlatBend, span: Span): PlannedBend {
  return {
    id: bend.id,
    side: bend.side,
    from: bend.side === "north" || bend.side === "south" ? "south" : "west",
    span,
    line: bend.line,
    tangents: [bend.from, bend.to],
    sightLine: bend.sightLine,
    angle: bend.angle,
    way: bend.way,
    radius: bend.radius,
    swing: swingOf(part, bend.angle, bend.radius),
    allowance: bend.allowance,
    deduction: bend.deduction,
  };
}

function plannedTab(part: Part, tab: FlatTab): PlannedBend {
  const upright = 90;
  return {
    id: tab.id,
    side: tab.on.split(".")[0] ?? "",
    from: tab.axis === "y" ? "south" : "west",
    span: tab.span,
    line: tab.line,
    tangents: [Math.min(...tab.tangents), Math.max(...tab.tangents)],
    sightLine: tab.sightLine,
    angle: upright,
    way: tab.way,
    radius: tab.radius,
    swing: swingOf(part, upright, tab.radius),
    allowance: tab.allowance,
    deduction: 2 * setback({ angle: upright, radius: tab.radius, thickness: part.thickness, legTo: "apex" }) - tab.allowance,
  };
}

function madeBy(steps: readonly PunchStep[], number: number): Pick<PlannedHole, "by" | "punch"> {
  const tool = stepOfHole(steps, number)?.tool;
  if (!tool) throw new Error(`hole ${number} is in no step of the punch list`);
  return tool.by === "punch" ? { by: "punch", punch: tool.punch } : { by: tool.by };
}

/** The plan of a part that has been read. @throws InputError naming the form field that cannot be used */
export function planPart(values: PartValues, catalogue: Catalogue): Plan {
  const part = partFrom(values, catalogue);
  const layout = flatten(part);
  const blank = blankSize(layout);
  const scribe = scribeList(layout);
  const practice = practiceFor(layout);
  const punching = punchList(layout, catalogue);
  const joints = jointSettings(layout, catalogue);
  const bent = bendsOf(layout).length > 0 || layout.chains.some(({ edgeLines }) => edgeLines.length > 0);
  return {
    part,
    layout,
    blank,
    outline: layout.outline.map(({ x, y }) => [x, y] as const),
    bends: [
      ...bendsOf(layout).map((bend) => plannedBend(part, bend, layout.spans[bendSpan(bend.id)] as Span)),
      ...layout.tabs.map((tab) => plannedTab(part, tab)),
    ],
    scribe,
    holes: layout.holes.map(
      (hole): PlannedHole => ({
        x: hole.flatX,
        y: hole.flatY,
        ...(hole.shape === "round" ? { diameter: hole.width } : { width: hole.width, height: hole.height, turn: hole.flatTurn }),
        shape: hole.shape,
        panel: hole.panel,
        ...madeBy(punching, hole.number),
      }),
    ),
    corners: layout.corners,
    tabs: layout.tabs,
    cuts: cutList(layout, blank, practice, catalogue),
    punching,
    ...(joints && { joints }),
    shop: catalogue.shop.name,
    checks: checkPart(layout, catalogue),
    practice,
    sizes: finishedSizes(layout, catalogue),
    remarks: bendDataRemarks(layout),
    steps: stepsFor({ layout, scribe, blank, practice }),
    cautions: planCautions.filter((id) => (bent || !ofBending.has(id)) && (part.material.coated || id !== "zinc-fume")),
  };
}

export interface PlanResult {
  /** Of a folded part. */
  readonly plan?: Plan;
  /** Of a rolled tube or cone. */
  readonly rolled?: RolledPlan;
  readonly problems: readonly InputError[];
}

/** Reads a form and plans the part: a plan, or one problem for each field that cannot be used. */
export function planFrom(raw: Raw, catalogue: Catalogue): PlanResult {
  const { values, problems } = readInputs(partInputs, raw, catalogue);
  if (!values) return { problems };
  try {
    if (values.kind !== "folded") return { rolled: planRolled(values, catalogue), problems: [] };
    return { plan: planPart(values, catalogue), problems: [] };
  } catch (error) {
    if (error instanceof InputProblem) return { problems: [error] };
    throw error;
  }
}
