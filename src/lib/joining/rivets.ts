import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { checkRange, checkRanges } from "../inputs.ts";
import { toBase } from "../quantity/units.ts";
import { rivetDistances } from "../stock/rivet-spacing.ts";
import { strength, tensile } from "./symbols.ts";

const length = { quantity: "length", fineness: "setting" } as const;

export const rivetSheet = {
  ...length,
  label: "Thickness",
  symbol: "t",
  tex: "t",
  min: 0.2,
  max: 4,
} as const satisfies FormulaInput;

export const rivetDiameter = {
  ...length,
  label: "Rivet diameter",
  symbol: "D",
  tex: "D",
  min: 1,
  max: 10,
} as const satisfies FormulaInput;

export const rivetStress = {
  label: "Shear strength of the rivet",
  symbol: "τ",
  tex: String.raw`\tau`,
  quantity: "stress",
  min: 20,
  max: 1000,
} as const satisfies FormulaInput;

const symbol = (label: string, letter: string): FormulaSymbol => ({ ...length, label, symbol: letter, tex: letter });
export const thinnerSymbol = symbol("Thinner sheet", "t");
const gripInput = { ...symbol("Grip", "G"), min: 0.1, max: 50 } as const;

/** A size rivets are sold in. */
export interface RivetSize {
  /** `1/8 in` */
  readonly inches: string;
  /** `3.2 mm`, as metric lists round it */
  readonly metric: string;
  /** D [mm], exact */
  readonly diameter: number;
  /** drill by the handbook [mm]; FAA-H-8083-31 (memory) */
  readonly hole: number;
  /** drill by the older manual [mm]; 1940s repair manual (read) */
  readonly olderHole: number;
}

const size = (inches: string, metric: string, fraction: number, hole: number, olderHole: number): RivetSize => ({
  inches,
  metric,
  diameter: toBase(fraction, "length", "in"),
  hole: toBase(hole, "length", "in"),
  olderHole: toBase(olderHole, "length", "in"),
});

/** Smaller ones do not count as load-bearing: NAVEDTRA 14018 (read). */
export const rivetSizes = [
  size("3/32 in", "2.4 mm", 3 / 32, 0.098, 0.096),
  size("1/8 in", "3.2 mm", 1 / 8, 0.1285, 0.1285),
  size("5/32 in", "4.0 mm", 5 / 32, 0.159, 0.157),
  size("3/16 in", "4.8 mm", 3 / 16, 0.191, 0.189),
  size("1/4 in", "6.4 mm", 1 / 4, 0.257, 0.25),
] as const;

/** Thicknesses of the thicker sheet that the rivet is wide. */
export const diameterFactors = { least: 1, target: 3 } as const;

export const rivetTargetFormula: Formula = {
  id: "rivet-diameter",
  name: "Rivet diameter to look for, then the next size up",
  result: "target",
  expression: String.raw`${diameterFactors.target}\cdot\v{thicker}`,
  symbols: { thicker: symbol("Thicker sheet", "t"), target: symbol("Diameter to look for", "D") },
};

/**
 * The rivet size for a pair of sheets.
 *
 * @param thicker - [mm], the thicker sheet; 0.2 to 4
 * @returns the first size that is not below 3 t; the largest size where there is none
 * @throws InputError for a thickness outside its range
 * @remarks Source: AC 43.13-1B, par. 4-58 (read): 0.032 in gives 0.096 in, so 1/8 in and not 3/32.
 * @example rivetSizeFor(0.8128).diameter; // 3.175
 */
export function rivetSizeFor(thicker: number): RivetSize {
  checkRange("thickness", rivetSheet, thicker);
  const wanted = diameterFactors.target * thicker;
  return rivetSizes.find(({ diameter }) => diameter >= wanted - 1e-9) ?? rivetSizes[rivetSizes.length - 1] ?? rivetSizes[0];
}

export const rivetGripFormula: Formula = {
  id: "rivet-grip",
  name: "Grip",
  result: "grip",
  expression: String.raw`\v{thicknessA} + \v{thicknessB}`,
  symbols: { thicknessA: symbol("One sheet", "tA"), thicknessB: symbol("The other sheet", "tB"), grip: gripInput },
};

/** Rivet diameters that stick out of a solid rivet before it is driven. */
const driven = 1.5;

export const rivetLengthFormula: Formula = {
  id: "rivet-length",
  name: "Length of a solid rivet",
  result: "length",
  expression: String.raw`\v{grip} + ${driven}\cdot\v{diameter}`,
  symbols: { grip: gripInput, diameter: rivetDiameter, length: symbol("Length", "L") },
};

/**
 * Length of a solid rivet before it is driven, under its head.
 *
 * @param rivet.grip - G [mm], both sheets together; 0.1 to 50
 * @param rivet.diameter - D [mm]; 1 to 10
 * @returns L [mm] = G + 1.5 D
 * @throws InputError for a value outside its range
 * @remarks Not for blind rivets, which go by the grip range on their box. Two army manuals print 1/2 for 1 1/2.
 *   Source: NAVEDTRA 14018; FAA-H-8083-31 (both read).
 * @example rivetLength({ grip: 2, diameter: 3.2 }); // 6.8
 */
export function rivetLength(rivet: { readonly grip: number; readonly diameter: number }): number {
  checkRanges({ grip: gripInput, diameter: rivetDiameter }, rivet);
  return rivet.grip + driven * rivet.diameter;
}

/** Sizes and distances in rivet diameters. Sources at `rivetLayout`. */
export const rivetFactors = {
  headWidth: 1.5,
  headHeight: 0.5,
  leastHeadWidth: 1.3,
  leastHeadHeight: 0.3,
  edge: rivetDistances.edge,
  usualEdge: 2.5,
  pitch: rivetDistances.spacing,
  usualPitch: 4,
  usualWidestPitch: 8,
  widestPitch: 10,
  rows: 2.5,
  /** of the pitch */
  rowsOfPitch: 0.75,
} as const;

export const rivetPitchFormula: Formula = {
  id: "rivet-pitch",
  name: "Least pitch",
  result: "pitch",
  expression: String.raw`${rivetFactors.pitch}\cdot\v{diameter}`,
  symbols: { diameter: rivetDiameter, pitch: symbol("Least pitch", "p") },
};

export const rivetEdgeFormula: Formula = {
  id: "rivet-edge",
  name: "Least edge distance",
  result: "edge",
  expression: String.raw`${rivetFactors.edge}\cdot\v{diameter}`,
  symbols: { diameter: rivetDiameter, edge: symbol("Least edge distance", "e") },
};

/** Where rivets go, all in mm. */
export interface RivetLayout {
  readonly edge: number;
  readonly pitch: number;
  /** of one row */
  readonly lap: number;
  readonly headWidth: number;
  readonly headHeight: number;
}

/**
 * Least distances of rivets, and the head that driving leaves.
 *
 * @param diameter - D [mm]; 1 to 10
 * @returns edge 2 D, pitch 3 D, lap of one row 4 D, driven head 1.5 D by 0.5 D [mm]
 * @throws InputError for a diameter outside its range
 * @remarks Sources: TM 10-5410-229-13&P and Cox 1999 (edge, pitch), NAVEDTRA 14018 (pitch), 1940s repair manual (driven head): all read.
 * @example rivetLayout(3.175).pitch; // 9.525
 */
export function rivetLayout(diameter: number): RivetLayout {
  checkRange("diameter", rivetDiameter, diameter);
  const { edge, pitch, headWidth, headHeight } = rivetFactors;
  return {
    edge: edge * diameter,
    pitch: pitch * diameter,
    lap: 2 * edge * diameter,
    headWidth: headWidth * diameter,
    headHeight: headHeight * diameter,
  };
}

/**
 * Distance of two rows of rivets set zigzag.
 *
 * @param rows.pitch - p [mm] in a row; 1 to 100
 * @param rows.diameter - D [mm]; 1 to 10
 * @returns [mm] = 0.75 p, at least 2.5 D
 * @throws InputError for a value outside its range
 * @remarks Source: Cox 1999; TM 10-5410-229-13&P (both read). A sister manual prints 1/2 for the 2 1/2.
 * @example rivetRows({ pitch: 12.7, diameter: 3.175 }); // 9.525
 */
export function rivetRows(rows: { readonly pitch: number; readonly diameter: number }): number {
  checkRanges({ pitch: { ...symbol("Pitch", "p"), min: 1, max: 100 }, diameter: rivetDiameter }, rows);
  return Math.max(rivetFactors.rowsOfPitch * rows.pitch, rivetFactors.rows * rows.diameter);
}

/** What is cut through: the shank, or a driven rivet that fills its wider hole. */
const cutDiameter = { ...rivetDiameter, label: "Diameter cut through", max: 12 } as const satisfies FormulaInput;

export const rivetShearFormula: Formula = {
  id: "rivet-shear",
  name: "One rivet cut through",
  result: "strength",
  expression: String.raw`\v{stress}\cdot\frac{\pi}{4}\,\v{diameter}^2`,
  symbols: { stress: rivetStress, diameter: cutDiameter, strength },
};

/**
 * Load that cuts one rivet, in single shear.
 *
 * @param rivet.stress - τ [N/mm²]; 20 to 1000
 * @param rivet.diameter - D [mm], of the shank, or of the hole for a driven rivet that fills it; 1 to 12
 * @returns P [N] = τ π D²/4
 * @throws InputError for a value outside its range
 * @remarks Tables differ in both: 27 ksi on the shank (EA-AC 65-15A, memory), 30 ksi on the hole (MIL-HDBK-5; area read, value memory).
 *   Name the area with the stress.
 * @example rivetShear({ stress: 186.158, diameter: 3.175 }); // 1474 (331 lbf)
 */
export function rivetShear(rivet: { readonly stress: number; readonly diameter: number }): number {
  checkRanges({ stress: rivetStress, diameter: cutDiameter }, rivet);
  return (rivet.stress * Math.PI * rivet.diameter ** 2) / 4;
}

/** Bearing stress over the tensile strength of the sheet. Source: AC 43.13-1B, Table 4-10 note b (read). */
export const bearingFactor = 1.6;

export const rivetBearingFormula: Formula = {
  id: "rivet-bearing",
  name: "The hole of one rivet stretched, by the aircraft table",
  result: "strength",
  expression: String.raw`${bearingFactor}\cdot\v{tensile}\cdot\v{diameter}\cdot\v{thinner}`,
  symbols: { tensile, diameter: rivetDiameter, thinner: thinnerSymbol, strength },
};

interface Bearing {
  /** Rm [N/mm²] of the sheet */
  readonly tensile: number;
  /** D [mm] */
  readonly diameter: number;
  /** t [mm], the thinner sheet */
  readonly thinner: number;
}

const bearingInputs = { tensile, diameter: rivetDiameter, thinner: rivetSheet };

/**
 * Load at which one rivet stretches its hole, by the rule behind an aircraft table.
 *
 * @param joint - Rm [N/mm²], 10 to 3000; D [mm], 1 to 10; t [mm] of the thinner sheet, 0.2 to 4
 * @returns P [N] = 1.6 Rm D t
 * @throws InputError for a value outside its range
 * @remarks Test data are needed where t/D is below 0.18 (MIL-HDBK-5H p. 8-9, read). Source: AC 43.13-1B, Table 4-10 (read).
 */
export function rivetBearing(joint: Bearing): number {
  checkRanges(bearingInputs, joint);
  return bearingFactor * joint.tensile * joint.diameter * joint.thinner;
}

/** Below this t/D the bearing of a rivet is not known without tests. */
export const leastSheetOverDiameter = 0.18;

export const euroBearingFormula: Formula = {
  id: "rivet-bearing-en",
  name: "The same for a blind rivet by the European rule, before its partial factor",
  result: "strength",
  expression: String.raw`\v{alpha}\cdot\v{tensile}\cdot\v{diameter}\cdot\v{thinner}`,
  symbols: {
    alpha: { label: "Factor of the rule", symbol: "α", tex: String.raw`\alpha`, quantity: "ratio" },
    tensile,
    diameter: rivetDiameter,
    thinner: thinnerSymbol,
    strength,
  },
};

/** Sheets that are 2.5 times as thick hold the rivet upright. */
const upright = 2.5;
const largestAlpha = 2.1;

/**
 * Factor α of the European rule for the bearing of blind rivets.
 *
 * @param joint.thinner - t [mm]; 0.2 to 4
 * @param joint.thicker - t₁ [mm]; 0.2 to 4
 * @param joint.diameter - D [mm]; 1 to 10
 * @returns α [1]: 3.2 √(t/D), at most 2.1, for sheets alike; 2.1 from t₁ = 2.5 t; on the line between
 * @throws InputError for a value outside its range
 * @remarks Source: EN 1993-1-3:2006, Table 8.1 (memory); its range is D from 2.6 to 6.4 mm in steel.
 */
export function euroBearingFactor(joint: {
  readonly thinner: number;
  readonly thicker: number;
  readonly diameter: number;
}): number {
  checkRanges({ thinner: rivetSheet, thicker: rivetSheet, diameter: rivetDiameter }, joint);
  const alike = Math.min(3.2 * Math.sqrt(joint.thinner / joint.diameter), largestAlpha);
  const share = Math.min((joint.thicker / joint.thinner - 1) / (upright - 1), 1);
  return alike + share * (largestAlpha - alike);
}

/**
 * Load at which one rivet stretches its hole, by the European rule and before its partial factor γM2 = 1.25.
 *
 * @param joint - as for `rivetBearing`, with t₁ [mm] of the thicker sheet; 0.2 to 4
 * @returns P [N] = α Rm D t
 * @throws InputError for a value outside its range
 * @remarks Source: as `euroBearingFactor`.
 */
export function euroRivetBearing(joint: Bearing & { readonly thicker: number }): number {
  checkRanges(bearingInputs, joint);
  return euroBearingFactor(joint) * joint.tensile * joint.diameter * joint.thinner;
}

/**
 * Rivets that carry as much as the sheet itself, for each millimetre of joint.
 *
 * @param joint - sheet and rivet; `stress` τ [N/mm²] on the area of `diameter`
 * @returns [1/mm] = Rm t over the lower of shear and bearing of one rivet
 * @throws InputError for a value outside its range
 * @remarks With D the hole and τ half of Rm this gives AC 43.13-1B, Table 4-10, whose note b has lost that percentage.
 */
export function fullStrengthRivets(joint: Bearing & { readonly stress: number }): number {
  return (joint.tensile * joint.thinner) / Math.min(rivetShear(joint), rivetBearing(joint));
}
