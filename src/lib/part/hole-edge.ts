import type { FlatHole, FlatPoint } from "./flatten.ts";

/** Sides a round edge is drawn with; a slot has half of them at each end. */
const sides = 24;

/**
 * Edge of a hole as it lies on the blank.
 *
 * @returns corners by millimetres from its middle, anticlockwise, turned as the hole is; a circle as 24 of them
 */
export function holeEdge({ shape, width, height, flatTurn }: FlatHole): readonly FlatPoint[] {
  const turn = (flatTurn * Math.PI) / 180;
  const local: FlatPoint[] = [];
  if (shape === "round" || shape === "slot") {
    const half = Math.min(width, height) / 2;
    const level = width >= height;
    const reach = Math.max(width, height) / 2 - half;
    // A circle has no straight part between its ends, so they share their corners.
    for (const end of [1, -1])
      for (let step = reach === 0 ? 1 : 0; step <= sides / 2; step += 1) {
        const angle = (end === 1 ? -0.5 : 0.5) * Math.PI + (step * 2 * Math.PI) / sides;
        const [along, across] = [end * reach + half * Math.cos(angle), half * Math.sin(angle)];
        local.push(level ? { x: along, y: across } : { x: -across, y: along });
      }
  } else {
    const [x, y] = [width / 2, height / 2];
    local.push({ x, y }, { x: -x, y }, { x: -x, y: -y }, { x, y: -y });
  }
  return local.map(({ x, y }) => ({
    x: x * Math.cos(turn) - y * Math.sin(turn),
    y: x * Math.sin(turn) + y * Math.cos(turn),
  }));
}
