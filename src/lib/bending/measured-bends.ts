import type { MaterialId, MeasuredBend } from "../catalogue.ts";
import { amount, asTyped, mm, type Phrase, say } from "../quantity/phrase.ts";
import type { BendSize } from "./methods.ts";
import { setback } from "./setback.ts";
import type { LegEnd } from "./symbols.ts";

/** Share of the thickness, or of the radius, by which a measured bend may differ from the bend wanted. Common practice. */
export const fitShare = 0.05;
/** Radii this near are one nose [mm]. */
const sameRadius = 0.05;
/** Angles this near take up the same, as far as a caliper tells [degrees]. */
const sameAngle = 1;

/** A bend to find measurements for. */
export interface WantedBend {
  readonly material: MaterialId;
  /** T [mm] */
  readonly thickness: number;
  /** R [mm], inside */
  readonly radius: number;
  /** A [deg], turned through; left out where the measurement is carried over to other angles anyway */
  readonly angle?: number;
  /** A [deg] of the bends that matter most, where others may be carried over: of two sets that fit, the nearer one is used */
  readonly nearAngle?: number;
}

/** A bend measured in this metal, and what about it differs from the one wanted. */
export interface BendFit {
  readonly bend: MeasuredBend;
  /** One sentence for each thing that does not fit; none when it can be used. */
  readonly misfits: readonly Phrase[];
}

function misfits(bend: MeasuredBend, wanted: WantedBend): Phrase[] {
  const found: Phrase[] = [];
  if (Math.abs(bend.thickness - wanted.thickness) > fitShare * wanted.thickness)
    found.push(say`other thickness, ${mm(bend.thickness)}`);
  if (Math.abs(bend.radius - wanted.radius) > Math.max(fitShare * wanted.radius, sameRadius))
    found.push(say`other radius, ${mm(bend.radius)}`);
  if (wanted.angle !== undefined && Math.abs(bend.angle - wanted.angle) > sameAngle)
    found.push(say`other angle, ${amount(bend.angle, "angle")}`);
  return found;
}

/** How far sheet and nose are from those wanted; differences below a hundredth count as none. */
function distance(bend: MeasuredBend, wanted: WantedBend): number {
  const off = Math.abs(bend.thickness / wanted.thickness - 1) + Math.abs(bend.radius - wanted.radius) / wanted.thickness;
  return Math.floor(100 * off);
}

/**
 * Every bend measured in a metal, the best for this bend first: those that fit before those that do not, then the nearer sheet
 * and nose, then those kept on the reader's own device, then the newer.
 */
export function measuredBends(bends: readonly MeasuredBend[], wanted: WantedBend): BendFit[] {
  const rank = ({ bend, misfits: found }: BendFit) => [
    found.length,
    distance(bend, wanted),
    wanted.nearAngle !== undefined && Math.abs(bend.angle - wanted.nearAngle) > sameAngle ? 1 : 0,
    bend.onDevice ? 0 : 1,
    -Number(bend.date.replaceAll("-", "")),
  ];
  return bends
    .filter(({ material }) => material === wanted.material)
    .map((bend) => ({ bend, misfits: misfits(bend, wanted) }))
    .sort((one, other) => {
      const [own, others] = [rank(one), rank(other)];
      for (const [place, each] of own.entries()) if (each !== others[place]) return each - (others[place] ?? 0);
      return 0;
    });
}

/** The measured bend to use, if one fits. */
export function measuredBend(bends: readonly MeasuredBend[], wanted: WantedBend): MeasuredBend | undefined {
  const [best] = measuredBends(bends, wanted);
  return best?.misfits.length === 0 ? best.bend : undefined;
}

/** Where and when a bend was measured: `measured 2026-09-14, lot 4711, 6 pieces`. */
export function measuredWhen({ date, lot, pieces, onDevice }: MeasuredBend): Phrase {
  return say`${onDevice ? "kept on this device" : "in the shop’s file"}, ${asTyped(date)}${lot ? say`, lot ${asTyped(lot)}` : ""}, ${pieces} ${pieces === 1 ? "piece" : "pieces"}`;
}

/**
 * A bend deduction for legs measured to another end: the bend itself takes up the same.
 *
 * @param deduction - BD [mm] for legs measured to `from`
 * @param bend - the bend that was measured
 * @returns BD [mm] for legs measured to `to`
 * @throws InputError where a leg has no such end
 */
export function deductionFor(deduction: number, bend: BendSize, from: LegEnd, to: LegEnd): number {
  if (from === to) return deduction;
  return deduction + 2 * (setback({ ...bend, legTo: to }) - setback({ ...bend, legTo: from }));
}
