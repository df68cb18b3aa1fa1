import { at, type Spot, spot } from "../pen.tsx";

/** Outlines of rivets in section, head up; lengths in units of the paper. */
export interface RivetShape {
  /** Middle of the upper face of the sheets. */
  readonly top: Spot;
  readonly diameter: number;
  readonly grip: number;
}

/** Made head over the shank's diameter: width and height of a round head, as drawn; not a standard's. */
const made = { width: 2, height: 0.75 } as const;

function roundHead({ x, y }: Spot, diameter: number): string {
  const half = (made.width * diameter) / 2;
  const rise = made.height * diameter;
  // Radius of the arc over a chord of 2 × half that rises so far.
  const radius = (half ** 2 + rise ** 2) / (2 * rise);
  return `A${radius.toFixed(1)} ${radius.toFixed(1)} 0 0 0 ${at(spot(x - half, y))}`;
}

/** A solid rivet in its hole, not driven: the shank stands out by so much below. */
export function plainRivet({ top, diameter, grip }: RivetShape, out: number): string {
  const half = diameter / 2;
  const head = (made.width * diameter) / 2;
  const end = top.y + grip + out;
  return `M${at(spot(top.x - half, top.y))}L${at(spot(top.x - half, end))}L${at(spot(top.x + half, end))}L${at(spot(top.x + half, top.y))}L${at(spot(top.x + head, top.y))}${roundHead(top, diameter)}Z`;
}

/** A driven rivet: a barrel-shaped head of so wide and so high below, moved sideways by `lean`. */
export function drivenRivet({ top, diameter, grip }: RivetShape, width: number, height: number, lean = 0): string {
  const half = diameter / 2;
  const head = (made.width * diameter) / 2;
  const face = top.y + grip;
  const bulge = width * 0.12;
  const left = top.x - width / 2 + lean + bulge;
  const right = top.x + width / 2 + lean - bulge;
  return [
    `M${at(spot(top.x - half, top.y))}L${at(spot(top.x - half, face))}L${at(spot(Math.min(left, top.x - half), face))}`,
    `Q${at(spot(left - 2 * bulge, face + height / 2))} ${at(spot(left, face + height))}L${at(spot(right, face + height))}`,
    `Q${at(spot(right + 2 * bulge, face + height / 2))} ${at(spot(Math.max(right, top.x + half), face))}L${at(spot(top.x + half, face))}`,
    `L${at(spot(top.x + half, top.y))}L${at(spot(top.x + head, top.y))}${roundHead(top, diameter)}Z`,
  ].join("");
}
