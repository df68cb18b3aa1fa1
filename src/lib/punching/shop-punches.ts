import type { Outline, PunchSet } from "../catalogue.ts";

/**
 * How much larger one outline is than another, side by side.
 *
 * @param inner - a punch [mm]
 * @param outer - the opening of a die [mm]
 * @returns difference of the diameters, or of each side [mm]; undefined for different shapes
 */
export function outlinePlay(inner: Outline, outer: Outline): readonly number[] | undefined {
  if (inner.shape === "round") return outer.shape === "round" ? [outer.diameter - inner.diameter] : undefined;
  if (inner.shape === "square") return outer.shape === "square" ? [outer.width - inner.width] : undefined;
  return outer.shape === "rectangle" ? [outer.width - inner.width, outer.height - inner.height] : undefined;
}

/** Sizes stamped on tools are rounded; two that differ by less are the same tool [mm]. */
const sameSize = 0.05;

/** The punch of a set that makes this hole, if there is one. */
export function punchFor(set: PunchSet, hole: Outline): PunchSet["punches"][number] | undefined {
  const exact = (plays: readonly number[] | undefined) => plays?.every((play) => Math.abs(play) <= sameSize) ?? false;
  // A rectangle may be turned.
  const turned: Outline = hole.shape === "rectangle" ? { shape: "rectangle", width: hole.height, height: hole.width } : hole;
  return set.punches.find((punch) => exact(outlinePlay(hole, punch)) || exact(outlinePlay(turned, punch)));
}

/** Diameters of the round punches of a set [mm], small to large. */
export function roundPunches(set: PunchSet): number[] {
  return set.punches.flatMap((punch) => (punch.shape === "round" ? [punch.diameter] : [])).sort((a, b) => a - b);
}

/** A round die with the clearance it leaves. */
export interface DieFit {
  readonly letter: string;
  /** [mm] */
  readonly opening: number;
  /** [mm], per side */
  readonly clearance: number;
}

/**
 * Round dies of a set that a punch can enter, from the tightest on.
 *
 * @param diameter - of the punch [mm]
 * @param largest - clearance per side [mm] up to which dies are listed
 */
export function diesFor(set: PunchSet, diameter: number, largest: number): DieFit[] {
  return set.dies
    .flatMap((die) =>
      die.shape === "round" ? [{ letter: die.letter, opening: die.diameter, clearance: (die.diameter - diameter) / 2 }] : [],
    )
    .filter(({ clearance }) => clearance > 0 && clearance <= largest)
    .sort((a, b) => a.clearance - b.clearance);
}
