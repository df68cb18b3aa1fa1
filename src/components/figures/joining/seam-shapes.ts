import { type Spot, spot } from "../pen.tsx";
import { type StripStep, stripPath } from "../section.ts";

/** Sections of seams, from real bends; lengths in units of the paper. */
export interface SeamShape {
  /** Lower face of the sheets, at the left end of the seam. */
  readonly foot: Spot;
  readonly thickness: number;
  /** Of the seam; of a standing one its height. */
  readonly width: number;
  /** Of sheet that is drawn beside the seam. */
  readonly beside: number;
}

/** A hair between layers, so that they can be told apart. */
const hair = 0.9;

const walk = (steps: readonly StripStep[], thickness: number, origin: Spot, turned = 0) =>
  stripPath(steps, thickness, { scale: 1, origin, turned }).d;

/** Level way and straight part of a joggle, two opposite bends, that lifts a sheet. */
function joggle(rise: number, thickness: number, radius: number, angle: number) {
  const slope = (angle * Math.PI) / 180;
  const curved = 2 * radius + thickness;
  const straight = Math.max((rise - curved * (1 - Math.cos(slope))) / Math.sin(slope), 0);
  return { straight, run: curved * Math.sin(slope) + straight * Math.cos(slope) };
}

/** Two hooks in each other. Set down, both sheets leave the seam on the level of its lower face. */
export function groovedSeam({ foot, thickness: t, width, beside }: SeamShape, setDown: boolean): readonly string[] {
  const inside = t / 2 + hair;
  const bend = inside + t;
  const flap = width - bend - t - 2 * hair;
  const hook: StripStep[] = [{ turn: 180, radius: inside }, { ahead: flap }];
  const left = walk([{ ahead: beside + width - bend }, ...hook], t, spot(foot.x - beside, foot.y));
  const level = 3 * (t + hair);
  const angle = 50;
  const { straight, run } = joggle(level, t, t / 2, angle);
  const lift: StripStep[] = setDown
    ? [{ ahead: beside - run }, { turn: -angle, radius: t / 2 }, { ahead: straight }, { turn: angle, radius: t / 2 }]
    : [{ ahead: beside }];
  const right = walk(
    [...lift, { ahead: width - bend }, ...hook],
    t,
    spot(foot.x + width + beside, foot.y - t - (setDown ? 0 : level)),
    180,
  );
  return [left, right];
}

/** A hook at the right end of a sheet, open towards its upper face; its outermost point is at the foot. */
export function hookPath({ foot, thickness: t, width, beside }: SeamShape): string {
  const inside = t / 2 + hair;
  const bend = inside + t;
  const steps: StripStep[] = [{ ahead: beside + width - bend }, { turn: 180, radius: inside }, { ahead: width - bend - t }];
  return walk(steps, t, spot(foot.x - beside - width, foot.y));
}

/**
 * A standing seam: 0, both edges upright; 1, the longer one folded over the other; 2, both folded down together.
 * @param fold - how far the edges are folded over
 */
export function standingSeam(
  { foot, thickness: t, width, beside }: SeamShape,
  fold: number,
  stage: 0 | 1 | 2,
): readonly string[] {
  const corner = t / 2;
  const up = (height: number) => height - corner - t;
  const tip = t / 2 + hair;
  // Seen from the left: a sheet that comes in level and turns up; the other one is its mirror image.
  const left = (end: readonly StripStep[]) =>
    walk([{ ahead: beside }, { turn: 90, radius: corner }, ...end], t, spot(foot.x - corner - t - beside - hair / 2, foot.y));
  const right = (end: readonly StripStep[]) =>
    // Walked along its upper face, heading left.
    walk(
      [{ ahead: beside }, { turn: -90, radius: corner }, ...end],
      t,
      spot(foot.x + corner + t + beside + hair / 2, foot.y - t),
      180,
    );
  if (stage === 0) return [left([{ ahead: up(width + 2 * fold) }]), right([{ ahead: up(width + fold) }])];
  if (stage === 1)
    return [
      left([{ ahead: up(width + fold) - tip }, { turn: -180, radius: tip }, { ahead: fold }]),
      right([{ ahead: up(width + fold) - t }]),
    ];
  const inner = t / 2;
  const middle = inner + t + hair;
  const outer = middle + t + hair;
  return [
    left([
      { ahead: up(width) - outer },
      { turn: -180, radius: outer },
      { ahead: fold },
      { turn: -180, radius: tip },
      { ahead: fold - tip },
    ]),
    right([{ ahead: up(width) - outer }, { turn: -180, radius: middle }, { ahead: fold - tip }]),
  ];
}
