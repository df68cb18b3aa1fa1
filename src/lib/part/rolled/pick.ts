import type { FlatPoint } from "../flatten.ts";
import type { OnPanel } from "../pick.ts";
import type { RolledSheet } from "./model.ts";

/**
 * A place of the blank as a place on the rolled surface: the way back of laying a hole out.
 *
 * @param sheet - the blank
 * @param point - place on it, from its west and south edges [mm]
 * @returns round the part from the seam, and along its axis from the large end [mm]; of a cone both at that place's own height
 */
export function toSurface({ part, seam, sector }: RolledSheet, point: FlatPoint): OnPanel {
  if (part.kind === "tube" || !sector) return { panel: "base", x: point.x - seam.sideA, y: point.y };
  const [across, down] = [point.x - sector.centre.x, sector.centre.y - point.y];
  const radius = Math.hypot(across, down);
  const fromSeam = Math.atan2(across, down) + (sector.angle * Math.PI) / 360;
  return { panel: "base", x: radius * fromSeam, y: ((sector.outerRadius - radius) * part.height) / sector.slant };
}
