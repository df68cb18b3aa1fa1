import { InputError } from "../../input-error.ts";
import { exactly } from "../../inputs.ts";
import { atLeast, atMost, say } from "../../quantity/phrase.ts";
import { middleDiameter, rolledBlank } from "../../rolling/rolled-blank.ts";
import { holeReach } from "../flatten.ts";
import type { Hole } from "../model.ts";
import type { RolledSheet, TubePart } from "./model.ts";
import { jointPlaces, type Seam } from "./seam.ts";

/**
 * A tube unrolled: a rectangle, round the tube from west to east, along its axis from south to north.
 *
 * @returns outline, holes, seam lines and joints on the blank
 * @throws InputError for an outside diameter that leaves no hole, a hole that is not on the surface
 * @remarks Length round the tube: `rolledBlank`, at mid-thickness.
 */
export function unrollTube(part: TubePart, seam: Seam): RolledSheet {
  const middle = middleDiameter(part);
  const around = rolledBlank({ middle, arc: part.arc, seam: 0 });
  const width = around + seam.allowance;
  const depth = part.length;
  const toSeam = new Map<number, number>();
  const holes = part.holes.map((hole) => {
    const reach = holeReach(hole);
    within(hole, "x", around, reach.x, "the seam");
    within(hole, "y", depth, reach.y, "the end");
    if (seam.kind !== "butt") toSeam.set(hole.number, Math.min(hole.x - seam.coversA, around - hole.x - seam.coversB) - reach.x);
    return { ...hole, flatX: seam.sideA + hole.x, flatY: hole.y, flatTurn: hole.turn };
  });
  const joints = jointPlaces(seam, part.thickness, depth).map((y) => ({
    a: { x: seam.width / 2, y },
    b: { x: width - seam.width / 2, y },
  }));
  const inside = middle - part.thickness;
  return {
    part,
    seam,
    width,
    depth,
    around,
    alongRolls: part.length,
    outline: [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: depth },
      { x: 0, y: depth },
    ],
    holes,
    chains: [],
    corners: [],
    joints,
    toSeam,
    ends: [{ name: "whole length", outside: middle + part.thickness, inside, radius: inside / 2 }],
  };
}

/**
 * Refuses a hole that reaches over an end of the surface.
 *
 * @param length - extent of the surface in that direction [mm]
 * @param half - how far the hole reaches from its middle [mm]
 * @throws InputError at its place, or at its size where it cannot fit anywhere
 */
export function within(hole: Hole, key: "x" | "y", length: number, half: number, from: string): void {
  const closeTo = 1e-9;
  const value = hole[key];
  if (value - half >= -closeTo && value + half <= length + closeTo) return;
  if (2 * half > length + closeTo) {
    const size = hole.field.startsWith("cutouts") ? (key === "x" ? "width" : "height") : "diameter";
    throw new InputError(
      `${hole.field}.${size}`,
      hole.width,
      say`Hole ${hole.number} must fit on the part, ${atMost(length)} ${key === "x" ? "round" : "along"}; it reaches over ${exactly(2 * half, "length")}.`,
    );
  }
  throw new InputError(
    `${hole.field}.${key}`,
    value,
    say`Hole ${hole.number} must lie on the part: its centre from ${atLeast(half)} to ${atMost(length - half)} from ${from}; it is ${exactly(value, "length")}.`,
  );
}
