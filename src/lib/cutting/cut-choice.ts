import { InputError } from "../input-error.ts";
import { checkRange } from "../inputs.ts";
import { say } from "../quantity/phrase.ts";
import { toBase } from "../quantity/units.ts";
import { sawTeeth, teethInCut, tightestCurve } from "./saw-teeth.ts";
import { rakedCapacity } from "./shear-capacity.ts";
import { cutLength, shearStrength, sheet } from "./symbols.ts";

/** Ways to cut sheet in a small shop; ids are part of addresses. */
export const cutMethods = {
  shear: "shear",
  notcher: "corner cutter",
  snips: "hand snips",
  "band-saw": "band saw",
} as const;
export type CutMethod = keyof typeof cutMethods;

/** Thickest sheet for hand snips, mild steel or aluminium [mm]: 1/16 in. Source: US Army OD0017, FAA text (both read). */
export const snipsLimit = toBase(1 / 16, "length", "in");

/** Longest cut with snips before it wanders [mm]; common practice. */
export const longSnipsCut = 300;

/** Tightest curve that snips follow without a struggle [mm]; common practice. */
export const tightSnipsCurve = 25;

/** A cut to be made. Lengths in mm. */
export interface Cut {
  readonly thickness: number;
  /** N/mm² */
  readonly shearStrength: number;
  readonly length: number;
  /** 0 for a straight cut */
  readonly curveRadius: number;
  /** It runs from edge to edge. */
  readonly through: boolean;
}

/** What there is to cut with. Lengths in mm, strengths in N/mm². */
export interface CutTools {
  readonly shear: { readonly thickness: number; readonly strength: number; readonly length: number };
  readonly notcher: { readonly thickness: number; readonly strength: number; readonly side: number };
  /** Strength of the mild steel that the limit of snips is taken to mean. */
  readonly snips: { readonly strength: number };
  readonly bandSaw: { readonly throat: number; readonly finestTeeth: number; readonly narrowestBand: number };
}

/** Why a way of cutting does not suit, or only with care. */
export const cutReasons = {
  "straight-only": "cuts straight lines only",
  "edge-to-edge": "cuts right across, from edge to edge",
  "corners-only": "takes a corner or a notch out of an edge, and does not cut across a sheet",
  "too-long": "the cut is longer than it takes",
  "too-thick": "the sheet is thicker than it takes in this metal",
  "above-plate": "by force alone it would do, but the sheet is thicker than its plate says: ask what the manual allows",
  wanders: "a cut this long wanders and tires the hand",
  "tight-snips": "a curve this tight wants curved snips and short bites; a punch leaves a cleaner edge",
  "too-tight": "the curve is too tight for its narrowest band",
  tilt: "fewer than two teeth are in the cut: lay the sheet slanting to the blade",
  "back-up":
    "fewer than two teeth are in the cut and a curve cannot be laid slanting: clamp the sheet on a scrap board and saw both",
  throat: "the cut is longer than its throat: the piece on the frame side must be narrower than that",
  fits: "suits this cut",
} as const;
export type CutReason = keyof typeof cutReasons;

/** One thing to know about one way of cutting: the size here and the limit, where it is a length. */
export interface CutFinding {
  readonly method: CutMethod;
  readonly fits: "yes" | "with-care" | "no";
  readonly reason: CutReason;
  readonly value?: number;
  readonly limit?: number;
}

export interface CutChoice {
  /** Undefined when none of them does it. */
  readonly method: CutMethod | undefined;
  /** At least one for every way of cutting. */
  readonly findings: readonly CutFinding[];
}

type Found = Omit<CutFinding, "method">;
const no = (reason: CutReason, value?: number, limit?: number): Found => ({ fits: "no", reason, ...sizes(value, limit) });
const care = (reason: CutReason, value?: number, limit?: number): Found => ({
  fits: "with-care",
  reason,
  ...sizes(value, limit),
});
function sizes(value?: number, limit?: number) {
  return value === undefined || limit === undefined ? {} : { value, limit };
}

/** Against a plate: carried over to this metal by the force of a raked blade. */
function byPlate(cut: Cut, plate: { readonly thickness: number; readonly strength: number }): Found[] {
  const takes = rakedCapacity({
    ratedThickness: plate.thickness,
    ratedStrength: plate.strength,
    shearStrength: cut.shearStrength,
  });
  if (cut.thickness > takes) return [no("too-thick", cut.thickness, takes)];
  return cut.thickness > plate.thickness ? [care("above-plate", cut.thickness, plate.thickness)] : [];
}

// A shape that a machine cannot cut at all is reason enough; its limits of size would only be noise then.
function onShear(cut: Cut, { shear }: CutTools): Found[] {
  if (cut.curveRadius > 0) return [no("straight-only")];
  if (!cut.through) return [no("edge-to-edge")];
  return [...(cut.length > shear.length ? [no("too-long", cut.length, shear.length)] : []), ...byPlate(cut, shear)];
}

function onNotcher(cut: Cut, { notcher }: CutTools): Found[] {
  if (cut.curveRadius > 0) return [no("straight-only")];
  if (cut.through) return [no("corners-only")];
  return [...(cut.length > notcher.side ? [no("too-long", cut.length, notcher.side)] : []), ...byPlate(cut, notcher)];
}

/**
 * Thickest sheet for hand snips in a metal.
 *
 * @param strength - τ [N/mm²] of the metal; 5 to 2500
 * @param steel - τ [N/mm²] of mild steel
 * @returns [mm]: 1/16 in, less in metals stronger than mild steel by the rule of a raked blade, never more
 * @throws InputError for a value outside its range
 * @remarks Source of the limit: US Army OD0017 and FAA text (read), for sheet and for aluminium. Carried over to strong metals: own.
 */
export function snipsThickness(strength: number, steel: number): number {
  checkRange("shearStrength", shearStrength, strength);
  return Math.min(snipsLimit, rakedCapacity({ ratedThickness: snipsLimit, ratedStrength: steel, shearStrength: strength }));
}

function withSnips(cut: Cut, { snips }: CutTools): Found[] {
  const takes = snipsThickness(cut.shearStrength, snips.strength);
  return [
    ...(cut.thickness > takes ? [no("too-thick", cut.thickness, takes)] : []),
    ...(cut.length > longSnipsCut ? [care("wanders", cut.length, longSnipsCut)] : []),
    ...(cut.curveRadius > 0 && cut.curveRadius < tightSnipsCurve ? [care("tight-snips", cut.curveRadius, tightSnipsCurve)] : []),
  ];
}

function onBandSaw(cut: Cut, { bandSaw }: CutTools): Found[] {
  const tightest = tightestCurve(bandSaw.narrowestBand);
  const curved = cut.curveRadius > 0;
  const teeth = sawTeeth({ thickness: cut.thickness, teethPerInch: bandSaw.finestTeeth, angle: 90 });
  return [
    ...(curved && cut.curveRadius < tightest ? [no("too-tight", cut.curveRadius, tightest)] : []),
    ...(teeth < teethInCut.least ? [care(curved ? "back-up" : "tilt")] : []),
    ...(cut.length > bandSaw.throat ? [care("throat", cut.length, bandSaw.throat)] : []),
  ];
}

/** From the one that makes the best edge in the least time; common practice. */
function preference(cut: Cut): readonly CutMethod[] {
  if (cut.curveRadius > 0) return ["snips", "band-saw", "notcher", "shear"];
  return cut.through ? ["shear", "snips", "band-saw", "notcher"] : ["notcher", "snips", "band-saw", "shear"];
}

/**
 * Which of the shop's tools suits a cut, and why the others do not.
 *
 * @param cut - thickness [mm]; 0.1 to 13. shearStrength [N/mm²]; 5 to 2500. length [mm]; 1 to 10 000. curveRadius [mm]; 0 or more
 * @param tools - limits of what the shop has
 * @returns the first in order of preference without a reservation, else the first with one, else none; and what was found about each
 * @throws InputError for a value outside its range
 * @remarks Limits: plates of the machines carried over by force (own), snips 1/16 in (read), two teeth in the cut (read), curves of a band
 *   8 widths (read, for wood saws). The order of preference is common practice.
 */
export function chooseCut(cut: Cut, tools: CutTools): CutChoice {
  checkRange("thickness", sheet, cut.thickness);
  checkRange("cutLength", cutLength, cut.length);
  if (!(cut.curveRadius >= 0 && Number.isFinite(cut.curveRadius)))
    throw new InputError(
      "curveRadius",
      cut.curveRadius,
      say`Radius of the curve must be 0 or more; it is ${String(cut.curveRadius)}.`,
    );
  const found: Readonly<Record<CutMethod, Found[]>> = {
    shear: onShear(cut, tools),
    notcher: onNotcher(cut, tools),
    snips: withSnips(cut, tools),
    "band-saw": onBandSaw(cut, tools),
  };
  const order = preference(cut);
  const without = (verdicts: readonly Found["fits"][]) =>
    order.find((method) => !found[method].some(({ fits }) => verdicts.includes(fits)));
  return {
    method: without(["no", "with-care"]) ?? without(["no"]),
    findings: order.flatMap((method): CutFinding[] =>
      found[method].length === 0 ? [{ method, fits: "yes", reason: "fits" }] : found[method].map((each) => ({ method, ...each })),
    ),
  };
}
