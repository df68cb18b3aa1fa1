import type { Segments } from "./distance.ts";
import type { Hinge } from "./job.ts";
import { radians } from "./sweep.ts";
import { type LegPose, legPose, type Tools } from "./tools.ts";

/** Four numbers of one segment. */
export type Four = readonly [number, number, number, number];
export const segmentAt = (segments: Segments, index: number) => segments.subarray(4 * index, 4 * index + 4) as unknown as Four;

/** Where the leg is when the leaf has turned [rad]: the bend takes up its zone as it goes. */
export function legAt(tools: Tools, hinge: Hinge, turned: number): LegPose {
  return legPose(tools, turned, hinge.zone * Math.max(0, 1 - turned / radians(hinge.angle)));
}

/** The side on the leaf, moved from its own frame into the machine's. @param into - written to, if given */
export function placed(shape: Float64Array, pose: LegPose, half: number, into?: Float64Array): Float64Array {
  const moved = into ?? new Float64Array(shape.length);
  const { x, z, cos, sin } = pose;
  for (let at = 0; at < shape.length; at += 2) {
    const u = shape[at] as number;
    const h = (shape[at + 1] as number) - half;
    moved[at] = x + u * cos - h * sin;
    moved[at + 1] = z + u * sin + h * cos;
  }
  return moved;
}

/** The clamped side, which points backwards from the tangent line. */
export function mirrored(shape: Float64Array, tangent: number): Float64Array {
  const moved = new Float64Array(shape.length);
  for (let at = 0; at < shape.length; at += 2) {
    moved[at] = tangent - (shape[at] as number);
    moved[at + 1] = shape[at + 1] as number;
  }
  return moved;
}
