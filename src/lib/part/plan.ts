import type { Catalogue } from "../catalogue.ts";
import type { InputError } from "../input-error.ts";
import { InputError as InputProblem } from "../input-error.ts";
import { type Raw, readInputs } from "../inputs.ts";
import { mm, type Phrase, say } from "../quantity/phrase.ts";
import { type Blank, blankSize } from "./blank.ts";
import { type Check, checkPart, swingFor } from "./checks.ts";
import { type FlatLayout, flatten } from "./flatten.ts";
import { type PartValues, partInputs } from "./form.ts";
import { type Part, partFrom } from "./model.ts";
import { type ScribeLine, scribeList } from "./scribe.ts";
import { bendDataRemarks, type FinishedSize, finishedSizes } from "./uncertainty.ts";

export interface PlannedBend {
  readonly id: string;
  readonly side: string;
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
  readonly holes: readonly { readonly x: number; readonly y: number; readonly diameter: number; readonly panel: string }[];
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
  for (const bend of layout.bends) {
    const key = `${bend.angle} ${bend.radius}`;
    const group = groups.get(key);
    groups.set(key, {
      pieces: practicePieces,
      size: { length: 2 * practiceLeg, width: Math.max(practiceWidth, 8 * part.thickness) },
      angle: bend.angle,
      radius: bend.radius,
      for: [...(group?.for ?? []), bend.id],
    });
  }
  return [...groups.values()];
}

function stepsFor(
  layout: FlatLayout,
  scribe: readonly ScribeLine[],
  blank: Blank,
  practice: readonly PracticePieces[],
): Phrase[] {
  const { part } = layout;
  const datum = part.axis === "y" ? "south" : "west";
  const steps: Phrase[] = [];
  for (const { pieces, size, angle, for: bends } of practice)
    steps.push(
      say`Cut ${pieces} practice strips ${mm(size.length)} × ${mm(size.width)} from the same sheet, bend each in the middle to ${{ value: angle, quantity: "angle" }}, measure both legs, and enter them (for ${bends.join(", ")}).`,
    );
  steps.push(
    say`Cut the blank to ${mm(blank.width)} west to east by ${mm(blank.depth)} south to north, corners square, and take the burr off every edge.`,
  );
  steps.push(say`Mark the ${datum} edge as the datum: every setting along the part is taken from it.`);
  if (scribe.length > 0) steps.push(say`Scribe the ${scribe.length} lines of the list in order, each once, lightly.`);
  if (layout.holes.length > 0)
    steps.push(
      say`Centre-punch where the lines of each hole cross, then punch or drill the ${layout.holes.length === 1 ? "hole" : `${layout.holes.length} holes`} while the blank is flat.`,
    );
  if (layout.edgeLines.length > 0)
    steps.push(say`Make the folded edges first: swing as far as the leaf goes, then press them down.`);
  if (layout.bends.length > 0)
    steps.push(
      ...(layout.bends.length > 1
        ? [
            say`Decide which bend comes first: a leg that already stands must not be where the leaf, the fingers or the bed have to be. The bending page goes through the usual shapes.`,
          ]
        : []),
      say`For each bend set the nose of the fingers to the sight line, clamp, swing past the angle, let go, measure, and go on until it is right.`,
    );
  steps.push(say`Measure every finished size and write it beside the one wanted.`);
  return steps;
}

/** The plan of a part that has been read. @throws InputError naming the form field that cannot be used */
export function planPart(values: PartValues, catalogue: Catalogue): Plan {
  const part = partFrom(values, catalogue);
  const layout = flatten(part);
  const blank = blankSize(layout);
  const scribe = scribeList(layout);
  const practice = practiceFor(layout);
  const bent = layout.bends.length > 0 || layout.edgeLines.length > 0;
  return {
    part,
    layout,
    blank,
    outline: [
      [0, 0],
      [blank.width, 0],
      [blank.width, blank.depth],
      [0, blank.depth],
    ],
    bends: layout.bends.map((bend) => ({
      id: bend.id,
      side: bend.side,
      line: bend.line,
      tangents: [bend.from, bend.to],
      sightLine: bend.sightLine,
      angle: bend.angle,
      way: bend.way,
      radius: bend.radius,
      swing: swingFor(part.material, { angle: bend.angle, radius: bend.radius, thickness: part.thickness })?.swingAngle ?? null,
      allowance: bend.allowance,
      deduction: bend.deduction,
    })),
    scribe,
    holes: layout.holes.map((hole) => ({ x: hole.flatX, y: hole.flatY, diameter: hole.diameter, panel: hole.panel })),
    checks: checkPart(layout, catalogue),
    practice,
    sizes: finishedSizes(layout, catalogue),
    remarks: bendDataRemarks(layout),
    steps: stepsFor(layout, scribe, blank, practice),
    cautions: planCautions.filter((id) => (bent || !ofBending.has(id)) && (part.material.coated || id !== "zinc-fume")),
  };
}

export interface PlanResult {
  readonly plan?: Plan;
  readonly problems: readonly InputError[];
}

/** Reads a form and plans the part: a plan, or one problem for each field that cannot be used. */
export function planFrom(raw: Raw, catalogue: Catalogue): PlanResult {
  const { values, problems } = readInputs(partInputs, raw, catalogue);
  if (!values) return { problems };
  try {
    return { plan: planPart(values, catalogue), problems: [] };
  } catch (error) {
    if (error instanceof InputProblem) return { problems: [error] };
    throw error;
  }
}
