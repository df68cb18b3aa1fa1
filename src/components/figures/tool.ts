import { arcPath, at, away, type Spot, spot } from "./pen.tsx";

/**
 * The front of a brake in section, about the hinge line of the leaf at the top edge of the bed.
 * Lengths in mm; `scale` takes them to the paper.
 */
export interface BrakeFront {
  readonly hinge: Spot;
  readonly scale: number;
  readonly noseRadius: number;
  /** Level gap between the front of the nose and the hinge line. */
  readonly setback: number;
  readonly thickness: number;
  /** How far finger, bed and leaf are drawn from the hinge line. */
  readonly reach: number;
  /** Height of the finger that is drawn. */
  readonly height: number;
  /** How high the foot of the finger is above the bed; the thickness of the sheet when it is clamped. */
  readonly lift?: number;
}

/** Slope of a finger's front from level [deg]: it has to lean back further than the leaf can swing. */
const frontSlope = 43;

/** A finger: flat foot, rounded nose, front leaning back; open at the back, where it goes on. */
export function fingerPath(front: BrakeFront): string {
  const { hinge, scale, noseRadius, setback, thickness, reach, height } = front;
  const foot = hinge.y - scale * (front.lift ?? thickness);
  const centre = spot(hinge.x - scale * (setback + noseRadius), foot - scale * noseRadius);
  const leave = away(centre, 90 - frontSlope, scale * noseRadius);
  const up = scale * height - (foot - leave.y);
  const back = hinge.x - scale * reach;
  const top = spot(Math.max(back, leave.x - up / Math.tan((frontSlope * Math.PI) / 180)), foot - scale * height);
  const turn = top.x > back ? top : spot(back, leave.y - (leave.x - back) * Math.tan((frontSlope * Math.PI) / 180));
  const nose = arcPath(centre, scale * noseRadius, -90, 90 - frontSlope, "L");
  return `M${at(spot(back, foot))}${nose}L${at(turn)}L${at(spot(back, turn.y))}`;
}

export function bedPath({ hinge, scale, reach }: BrakeFront, depth: number): string {
  const down = hinge.y + scale * depth;
  const back = hinge.x - scale * reach;
  return `M${at(spot(back, hinge.y))}L${at(hinge)}L${at(spot(hinge.x - scale * depth * 0.45, down))}L${at(spot(back, down))}`;
}

/** The leaf turned up by an angle [deg]; its face is level with the bed at 0. */
export function leafPath({ hinge, scale, reach }: BrakeFront, depth: number, angle: number): string {
  const end = away(hinge, angle, scale * reach);
  const below = away(end, angle - 90, scale * depth);
  const heel = away(away(hinge, angle, scale * depth * 0.45), angle - 90, scale * depth);
  return `M${at(hinge)}L${at(end)}L${at(below)}L${at(heel)}Z`;
}
