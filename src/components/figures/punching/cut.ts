import { at, type Spot, spot } from "../pen.tsx";

/**
 * Section through a punched hole, on its centre line. Lengths are those of the paper; clearance, rollover and burr are drawn
 * larger than they are, or they would not be seen.
 */
export interface Cut {
  /** where the centre line meets the upper face of the sheet */
  readonly top: Spot;
  readonly thickness: number;
  /** half the width of the punch */
  readonly half: number;
  /** gap between punch and die on each side */
  readonly clearance: number;
  /** how far the sheet is drawn to each side of the centre line */
  readonly reach: number;
  /** share of the thickness that the edge is drawn in before it is cut */
  readonly rollover: number;
  /** share of the thickness that the punch cuts before the rest breaks */
  readonly penetration: number;
  /** share of the thickness by which the burr stands out */
  readonly burr: number;
}

export const rectangle = (a: Spot, b: Spot) => `M${at(a)}H${b.x.toFixed(1)}V${b.y.toFixed(1)}H${a.x.toFixed(1)}Z`;

/** A punch whose face stands at a depth below the upper face of the sheet; negative while it is above. */
export function punchPath({ top, half }: Cut, depth: number, height: number): string {
  return rectangle(spot(top.x - half, top.y + depth - height), spot(top.x + half, top.y + depth));
}

/** The two sides of the die below the sheet, their openings widening downwards. */
export function diePaths({ top, thickness, half, clearance, reach }: Cut, depth: number): string[] {
  const face = top.y + thickness;
  return [-1, 1].map((side) => {
    const edge = top.x + side * (half + clearance);
    const out = top.x + side * reach;
    const relief = edge + side * depth * 0.06;
    return `M${at(spot(edge, face))}L${at(spot(out, face))}L${at(spot(out, face + depth))}L${at(spot(relief, face + depth))}Z`;
  });
}

/** The sheet while the punch is inside it and nothing has broken yet. */
export function pressedPath(cut: Cut, depth: number): string {
  const { top, thickness, half, clearance, reach } = cut;
  const round = Math.min(cut.rollover * thickness, depth);
  const under = top.y + depth;
  const below = top.y + thickness;
  const die = half + clearance;
  return [
    `M${at(spot(top.x - reach, top.y))}L${at(spot(top.x - half - round * 1.6, top.y))}`,
    `Q${at(spot(top.x - half, top.y))} ${at(spot(top.x - half, top.y + round))}L${at(spot(top.x - half, under))}`,
    `L${at(spot(top.x + half, under))}L${at(spot(top.x + half, top.y + round))}`,
    `Q${at(spot(top.x + half, top.y))} ${at(spot(top.x + half + round * 1.6, top.y))}L${at(spot(top.x + reach, top.y))}`,
    `L${at(spot(top.x + reach, below))}L${at(spot(top.x + die, below))}L${at(spot(top.x + die, below + depth - round))}`,
    `Q${at(spot(top.x + die, below + depth))} ${at(spot(top.x + die - round * 1.6, below + depth))}`,
    `L${at(spot(top.x - die + round * 1.6, below + depth))}`,
    `Q${at(spot(top.x - die, below + depth))} ${at(spot(top.x - die, below + depth - round))}`,
    `L${at(spot(top.x - die, below))}L${at(spot(top.x - reach, below))}Z`,
  ].join("");
}

/** The sheet on one side of the finished hole: drawn in above, cut bright, then broken out to the die, with its burr. */
export function edgePath(cut: Cut, side: -1 | 1): string {
  const { top, thickness, half, clearance, reach } = cut;
  const round = cut.rollover * thickness;
  const x = (out: number) => top.x + side * out;
  const below = top.y + thickness;
  const die = half + clearance;
  return [
    `M${at(spot(x(reach), top.y))}L${at(spot(x(half + round * 1.6), top.y))}`,
    `Q${at(spot(x(half), top.y))} ${at(spot(x(half), top.y + round))}`,
    `L${at(spot(x(half), top.y + (cut.rollover + cut.penetration) * thickness))}`,
    `L${at(spot(x(die), below + cut.burr * thickness))}L${at(spot(x(die + cut.burr * thickness * 0.7), below))}`,
    `L${at(spot(x(reach), below))}Z`,
  ].join("");
}

/** The slug, its upper face at a depth below that of the sheet: the edge of the hole upside down. */
export function slugPath(cut: Cut, depth: number): string {
  const { top, thickness, half, clearance } = cut;
  const round = cut.rollover * thickness;
  const die = half + clearance;
  const upper = top.y + depth;
  const lower = upper + thickness;
  const bright = lower - (cut.rollover + cut.penetration) * thickness;
  const spike = upper - cut.burr * thickness;
  const right = [
    `L${at(spot(top.x + half - cut.burr * thickness * 0.7, upper))}L${at(spot(top.x + half, spike))}L${at(spot(top.x + die, bright))}`,
    `L${at(spot(top.x + die, lower - round))}Q${at(spot(top.x + die, lower))} ${at(spot(top.x + die - round * 1.6, lower))}`,
  ];
  const left = [
    `L${at(spot(top.x - die + round * 1.6, lower))}Q${at(spot(top.x - die, lower))} ${at(spot(top.x - die, lower - round))}`,
    `L${at(spot(top.x - die, bright))}L${at(spot(top.x - half, spike))}L${at(spot(top.x - half + cut.burr * thickness * 0.7, upper))}Z`,
  ];
  return `M${at(spot(top.x, upper))}${right.join("")}${left.join("")}`;
}
