import { InputError } from "../input-error.ts";
import { rivetDistances } from "../stock/rivet-spacing.ts";
import { rivetSizeFor } from "./rivets.ts";
import { jointSpacing } from "./spot-spacing.ts";

export type JointKind = "spots" | "rivets";

/** Rivets further apart than this let the sheets gape between them [diameters]; common practice. */
const widestRivets = 8;

/** Joints in one row. */
export interface JointRow {
  /** Distances of the joints from the start of the row [mm]. */
  readonly places: readonly number[];
  /** Diameter of the rivets [mm], where they are rivets. */
  readonly rivet?: number;
}

function spacingOf(joint: JointKind, thickness: number) {
  try {
    if (joint === "spots") return { spacing: jointSpacing(thickness) };
    const rivet = rivetSizeFor(thickness).diameter;
    return {
      rivet,
      spacing: { pitch: rivetDistances.spacing * rivet, edge: rivetDistances.edge * rivet, widestPitch: widestRivets * rivet },
    };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError("thickness", thickness, error.phrase);
  }
}

/**
 * Joints spread evenly along an overlap: as few as keep it closed, none nearer to its ends or to the next than the rules allow.
 *
 * @param row.joint - spot welds or rivets
 * @param row.thickness - t [mm] of each of the two sheets
 * @param row.length - of the overlap [mm]
 * @returns their places; a single one in the middle where there is no room for two
 * @throws InputError at the thickness where no rule covers it
 * @remarks Sources: those of `jointSpacing` and `rivetDistances`; the widest pitch of rivets is common practice.
 */
export function jointRow(row: { readonly joint: JointKind; readonly thickness: number; readonly length: number }): JointRow {
  const { rivet, spacing } = spacingOf(row.joint, row.thickness);
  const size = rivet === undefined ? {} : { rivet };
  const room = row.length - 2 * spacing.edge;
  if (room < spacing.pitch) return { places: [row.length / 2], ...size };
  const spaces = Math.max(1, Math.min(Math.floor(room / spacing.pitch), Math.ceil(room / spacing.widestPitch)));
  return {
    places: Array.from({ length: spaces + 1 }, (_, index) => spacing.edge + (room * index) / spaces),
    ...size,
  };
}

/** A single joint lets the sheets turn on it; common practice. */
export const leastJoints = 2;
