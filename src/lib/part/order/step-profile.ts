import { type Choice, Forming } from "./check.ts";
import { boxCorners } from "./crossing.ts";
import type { Polygon, Segments } from "./distance.ts";
import type { FormingBrake, FormingJob } from "./job.ts";
import { legAt, mirrored, placed } from "./pose.ts";
import { turnedTool } from "./region.ts";
import { sideShape } from "./shape.ts";
import { degrees, radians } from "./sweep.ts";
import { leafPose, toolsOf } from "./tools.ts";

/** x towards the operator from the hinge line, z up from the bed [mm]. */
export type SectionPoint = readonly [x: number, z: number];
export type SectionOutline = readonly SectionPoint[];

export interface StepPose {
  /** Of the leaf [deg]. */
  readonly angle: number;
  /** Outline of the part in section, with its thickness. */
  readonly sheet: SectionOutline;
  /** Sides that stand across the section, as they are seen behind it. */
  readonly behind: readonly SectionOutline[];
  readonly leaf: SectionOutline;
}

/** A bend as a drawing shows it: the tools, and the part before and at the end of the swing. */
export interface StepProfile {
  readonly bed: SectionOutline;
  readonly fingers: SectionOutline;
  readonly beam: SectionOutline;
  readonly start: StepPose;
  readonly end: StepPose;
}

/** Step of arcs in drawings [rad]. */
const fine = radians(10);

const corners = (polygon: Polygon): SectionOutline =>
  Array.from({ length: polygon.length / 2 }, (_, at) => [polygon[2 * at] as number, polygon[2 * at + 1] as number] as const);

/** Points along the middle of the sheet, from the tangent line outwards. */
function pathOf(segments: Segments): SectionPoint[] {
  const points: SectionPoint[] = [];
  for (let at = 0; at < segments.length; at += 4) {
    if (at === 0) points.push([segments[0] as number, segments[1] as number]);
    points.push([segments[at + 2] as number, segments[at + 3] as number]);
  }
  return points;
}

const samePlace = 1e-9;

/** The middle line given its thickness: half to the left and half to the right of the way it goes. */
function thickened(path: readonly SectionPoint[], half: number): SectionOutline {
  const line = path.filter(([x, z], at) => {
    const before = path[at - 1];
    return !before || Math.hypot(x - before[0], z - before[1]) > samePlace;
  });
  const direction = (at: number): SectionPoint => {
    const from = line[Math.max(0, Math.min(at, line.length - 2))] as SectionPoint;
    const to = line[Math.max(1, Math.min(at + 1, line.length - 1))] as SectionPoint;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  };
  const sideways = line.map((_, at): SectionPoint => {
    const [ax, az] = direction(at - 1);
    const [bx, bz] = direction(at);
    // Where two pieces of the line meet, the faces meet on the line that halves the angle.
    const widening = 1 + ax * bx + az * bz;
    return [(-(az + bz) * half) / widening, ((ax + bx) * half) / widening];
  });
  const face = (sign: 1 | -1) =>
    line.map(([x, z], at): SectionPoint => {
      const [dx, dz] = sideways[at] as SectionPoint;
      return [x + sign * dx, z + sign * dz];
    });
  return [...face(1), ...face(-1).reverse()];
}

/**
 * The section of one step, for a small drawing.
 *
 * @param step - a step of the order: what is made before it and how the piece lies
 */
export function stepProfile(
  job: FormingJob,
  brake: FormingBrake,
  step: { readonly made: number; readonly choice: Choice },
): StepProfile {
  const forming = new Forming(job, brake);
  const { made, choice } = step;
  const { op, outward } = choice;
  const { chain, hinge, swing, tools } = forming.setup(op);
  const whole = toolsOf(brake, job.thickness, tools.radius, 0);
  const operation = forming.operations[op] as Forming["operations"][number];
  const { movingBits, clampedBits, moving, clamped, faceUp } = forming.sides(choice, made);
  const half = job.thickness / 2;
  const finely = (from: number, direction: 1 | -1, bits: number) =>
    sideShape(chain, from, bits, job.thickness, { direction, faceUp, arcStep: fine }).segments;
  const index = operation.hinge;
  const onLeaf = finely(outward === 1 ? index + 1 : index, outward, movingBits);
  const underFingers = finely(outward === 1 ? index : index + 1, outward === 1 ? -1 : 1, clampedBits);
  const boxes = forming.boxes(operation.chain, made);

  const poseAt = (turned: number): StepPose => {
    const leg = legAt(whole, hinge, turned);
    const arc: SectionPoint[] = [];
    const steps = Math.ceil(turned / fine);
    const middle = whole.radius + half;
    for (let at = 1; at <= steps; at += 1) {
      const angle = (turned * at) / steps;
      arc.push([whole.centre[0] + middle * Math.sin(angle), whole.centre[1] - middle * Math.cos(angle)]);
    }
    const path = [...pathOf(mirrored(underFingers, whole.centre[0])).reverse(), ...arc, ...pathOf(placed(onLeaf, leg, half))];
    const behind = boxes.flatMap((box) => {
      const still = boxCorners(chain, clamped, box, { direction: outward === 1 ? -1 : 1, faceUp });
      if (still) return [corners(mirrored(still, whole.centre[0]))];
      const swung = boxCorners(chain, moving, box, { direction: outward, faceUp });
      return swung ? [corners(placed(swung, leg, half))] : [];
    });
    return {
      angle: degrees(turned),
      sheet: thickened(path, half),
      behind,
      leaf: corners(turnedTool(whole.leaf, leafPose(whole, turned)).polygon),
    };
  };
  return {
    bed: corners(whole.bed.polygon),
    fingers: corners(whole.fingers.polygon),
    beam: corners(whole.beam.polygon),
    start: poseAt(0),
    end: poseAt(radians(swing)),
  };
}
