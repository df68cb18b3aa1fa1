import { type Obstacle, obstacle } from "./distance.ts";
import type { FormingBrake } from "./job.ts";

/**
 * The tools in section, in the plane across the bend: x towards the operator from the hinge line of the leaf, z up from the bed.
 * The nose stands one thickness behind the hinge line, so the outside of a bend through 90° comes to lie on the leaf.
 */
export interface Tools {
  readonly bed: Obstacle;
  readonly fingers: Obstacle;
  readonly beam: Obstacle;
  /** In its own frame: x along its face from the hinge line outwards. */
  readonly leaf: Obstacle;
  /** Middle of the bend [mm]. */
  readonly centre: readonly [number, number];
  readonly radius: number;
  readonly thickness: number;
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const noseSteps = 4;

const box = (x0: number, z0: number, x1: number, z1: number) =>
  [
    [x0, z0],
    [x1, z0],
    [x1, z1],
    [x0, z1],
  ] as const;

/**
 * The tools as the part must clear them.
 *
 * @param relief - how far the faces that are meant to touch the sheet are drawn back [mm], so that the clearance is asked for only
 *   elsewhere; 0 for drawings
 */
export function toolsOf(brake: FormingBrake, thickness: number, radius: number, relief: number): Tools {
  const foot = thickness + relief;
  const centre = [-(thickness + radius), thickness + radius] as const;
  const lean = radians(brake.fingerLean);
  const top = thickness + brake.fingerHeight;
  const nose: [number, number][] = [];
  for (let step = 0; step <= noseSteps; step += 1) {
    const at = -Math.PI / 2 + ((lean + Math.PI / 2) * step) / noseSteps;
    nose.push([centre[0] + radius * Math.cos(at), Math.max(foot, centre[1] + radius * Math.sin(at))]);
  }
  const [lastX, lastZ] = nose.at(-1) as [number, number];
  const heel = -thickness - brake.fingerDepth;
  const back = -thickness - brake.fingerTop;
  const front = Math.max(back, lastX - Math.max(0, top - lastZ) * Math.tan(lean));
  const beamFront = -thickness - brake.beamSetback;
  return {
    bed: obstacle([
      [-brake.bedDepth, -brake.bedHeight],
      [0, -Math.max(brake.bedNose, relief)],
      [0, -relief],
      [-brake.bedDepth, -relief],
    ]),
    fingers: obstacle([[heel, foot], ...nose, [front, top], [back, top]]),
    beam: obstacle(box(beamFront - brake.beamDepth, top, beamFront, top + brake.beamHeight)),
    leaf: obstacle(box(0, -brake.leafThickness, brake.leafWidth, -relief)),
    centre,
    radius,
    thickness,
  };
}

/** Where the straight beyond the bend begins, and which way it goes, when the bend is turned through `turned` [rad]. */
export interface LegPose {
  readonly x: number;
  readonly z: number;
  readonly cos: number;
  readonly sin: number;
}

/**
 * Where the straight beyond the bend is.
 * @param turned - how far the bend has come [rad]
 * @param flatRest - how much of the bend's zone is still straight [mm]
 */
export function legPose({ centre, radius, thickness }: Tools, turned: number, flatRest: number): LegPose {
  const cos = Math.cos(turned);
  const sin = Math.sin(turned);
  const middle = radius + thickness / 2;
  return { x: centre[0] + middle * sin + flatRest * cos, z: centre[1] - middle * cos + flatRest * sin, cos, sin };
}

/** Where the leaf is: it lies against the leg all the way, turned about the hinge line. */
export function leafPose({ centre, radius, thickness }: Tools, turned: number): LegPose {
  const cos = Math.cos(turned);
  const sin = Math.sin(turned);
  const outer = radius + thickness;
  const x = centre[0] + outer * sin;
  const z = centre[1] - outer * cos;
  const along = -(x * cos + z * sin);
  return { x: x + along * cos, z: z + along * sin, cos, sin };
}
