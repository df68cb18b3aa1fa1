import type { Block, Blocker } from "./block.ts";
import { gapTo, segmentToSegment } from "./distance.ts";
import type { FormingBrake, Hinge, HingeChain } from "./job.ts";
import { legAt, mirrored, placed, segmentAt } from "./pose.ts";
import type { SideShape } from "./shape.ts";
import { closeTo, degrees, enough, radians, sweep } from "./sweep.ts";
import { leafPose, type Tools } from "./tools.ts";

/** One bend set up in the brake, as far as one section shows it. */
export interface Setup {
  readonly brake: FormingBrake;
  readonly thickness: number;
  readonly chain: HingeChain;
  readonly hinge: Hinge;
  /** Contact faces drawn back by the clearance. */
  readonly tools: Tools;
  /** The tools as they are. */
  readonly whole: Tools;
  /** How far the leaf goes [deg]. */
  readonly swing: number;
}

export const panelOf = (chain: HingeChain, shape: SideShape, segment: number) =>
  chain.panels[shape.panels[segment] as number]?.id ?? "";

/** Farthest that a point of a side moves for one radian of the leaf [mm]. */
export const speedOf = (reach: number, { hinge, tools, thickness }: Setup) => reach + hinge.zone + 2 * (tools.radius + thickness);

/** The clamped side against bed, fingers, beam, and the leaf that swings up in front of them. */
export function clampedSide(setup: Setup, clamped: SideShape): Block | null {
  const { brake, thickness, chain, tools, whole, swing } = setup;
  const keep = thickness / 2 + brake.clearance;
  const still = mirrored(clamped.segments, tools.centre[0]);
  const count = clamped.panels.length;
  for (let at = 1; at < count; at += 1) {
    const [ax, az, bx, bz] = segmentAt(still, at);
    for (const by of ["bed", "fingers", "beam"] as const)
      if (gapTo(tools[by], ax, az, bx, bz, keep) < keep - closeTo)
        return { by, when: "clamped", angle: 0, panel: panelOf(chain, clamped, at) };
  }
  if (count === 1) return null;
  const met = sweep(brake, swing, brake.leafWidth + brake.leafThickness, (turned) => {
    const { x, z, cos, sin } = leafPose(tools, turned);
    let [nearest, what] = [enough, 0];
    for (let at = 1; at < count; at += 1) {
      const k = 4 * at;
      const [ax, az] = [(still[k] as number) - x, (still[k + 1] as number) - z];
      const [bx, bz] = [(still[k + 2] as number) - x, (still[k + 3] as number) - z];
      const limit = nearest + keep;
      const gap =
        gapTo(whole.leaf, ax * cos + az * sin, az * cos - ax * sin, bx * cos + bz * sin, bz * cos - bx * sin, limit) - keep;
      if (gap < nearest) [nearest, what] = [gap, at];
    }
    return { gap: nearest, what };
  });
  return met ? { by: "leaf", when: "swing", angle: degrees(met.turned), panel: panelOf(chain, clamped, met.what) } : null;
}

/** What lies on the leaf against the leaf, before and after the swing: in between it only slides a little outwards on it. */
function onLeaf({ brake, thickness, chain, hinge, tools, swing }: Setup, moving: SideShape): Block | null {
  const keep = thickness / 2 + brake.clearance;
  for (const turned of [0, radians(swing)]) {
    const leg = legAt(tools, hinge, turned);
    const leaf = leafPose(tools, turned);
    const offset = (leg.x - leaf.x) * leg.cos + (leg.z - leaf.z) * leg.sin;
    for (let at = 1; at < moving.panels.length; at += 1) {
      // A folded edge under the leg lies flat on the leaf, which is set lower by its thickness.
      if (moving.flaps.has(at)) continue;
      const [au, az, bu, bz] = segmentAt(moving.segments, at);
      if (gapTo(tools.leaf, au + offset, az, bu + offset, bz, keep) < keep - closeTo)
        return { by: "leaf", when: "clamped", angle: degrees(turned), panel: panelOf(chain, moving, at) };
    }
  }
  return null;
}

const inTheWay = ["bed", "fingers", "beam"] as const;
/** The first of them that the run can meet. */
const afterRun = 2;

/** What lies on the leaf, swung, against leaf, bed, fingers and beam. */
export function movingSide(setup: Setup, moving: SideShape): Block | null {
  const { brake, thickness, chain, hinge, tools, swing } = setup;
  const resting = onLeaf(setup, moving);
  if (resting) return resting;
  const half = thickness / 2;
  const keep = half + brake.clearance;
  const swung = new Float64Array(moving.segments.length);
  const met = sweep(brake, swing, speedOf(moving.reach, setup), (turned) => {
    placed(moving.segments, legAt(tools, hinge, turned), half, swung);
    let nearest = enough;
    let [by, segment] = [0, 0];
    for (let at = 0; at < moving.panels.length; at += 1) {
      const k = 4 * at;
      const [ax, az, bx, bz] = [swung[k] as number, swung[k + 1] as number, swung[k + 2] as number, swung[k + 3] as number];
      // The run wraps round the nose and lies on bed and leaf; the fingers lean back farther than the leaf swings.
      for (let tool = at === 0 ? afterRun : 0; tool < inTheWay.length; tool += 1) {
        const gap = gapTo(tools[inTheWay[tool] as (typeof inTheWay)[number]], ax, az, bx, bz, nearest + keep) - keep;
        if (gap < nearest) [nearest, by, segment] = [gap, tool, at];
      }
    }
    return { gap: nearest, what: { by: inTheWay[by] as Blocker, at: segment } };
  });
  if (!met) return null;
  return { by: met.what.by, when: "swing", angle: degrees(met.turned), panel: panelOf(chain, moving, met.what.at) };
}

/** Metal that touches metal: sheets may lie on each other [mm]. */
const touching = 0.01;

/** What swings against what is clamped. */
export function partItself(setup: Setup, moving: SideShape, clamped: SideShape): Block | null {
  const { brake, thickness, chain, hinge, tools, swing } = setup;
  const keep = thickness - touching;
  const still = mirrored(clamped.segments, tools.centre[0]);
  const swung = new Float64Array(moving.segments.length);
  const met = sweep(brake, swing, speedOf(moving.reach, setup), (turned) => {
    placed(moving.segments, legAt(tools, hinge, turned), thickness / 2, swung);
    let [nearest, what] = [enough, 0];
    for (let i = 0; i < moving.panels.length; i += 1) {
      const k = 4 * i;
      const [ax, az, bx, bz] = [swung[k] as number, swung[k + 1] as number, swung[k + 2] as number, swung[k + 3] as number];
      for (let j = i === 0 ? 1 : 0; j < clamped.panels.length; j += 1) {
        const m = 4 * j;
        const [cx, cz, dx, dz] = [still[m] as number, still[m + 1] as number, still[m + 2] as number, still[m + 3] as number];
        const apartX = Math.max(Math.min(ax, bx) - Math.max(cx, dx), Math.min(cx, dx) - Math.max(ax, bx));
        const apartZ = Math.max(Math.min(az, bz) - Math.max(cz, dz), Math.min(cz, dz) - Math.max(az, bz));
        if (Math.max(apartX, apartZ) - keep >= nearest) continue;
        const gap = segmentToSegment(ax, az, bx, bz, cx, cz, dx, dz) - keep;
        if (gap < nearest) [nearest, what] = [gap, i];
      }
    }
    return { gap: nearest, what };
  });
  return met ? { by: "part", when: "swing", angle: degrees(met.turned), panel: panelOf(chain, moving, met.what) } : null;
}

/** Whether a folded edge, begun on the leaf, can be pressed between fingers and bed, with the rest of the piece in front. */
export function pressed(setup: Setup, rest: SideShape): Block | null {
  const { brake, thickness, chain, hinge, tools } = setup;
  const { edge, radius } = hinge;
  if (!edge) return null;
  const keep = thickness / 2 + brake.clearance;
  // The whole width of the edge goes under the feet of the fingers, behind their rounded noses.
  const start = tools.centre[0] - edge.width + radius + thickness;
  for (let at = 1; at < rest.panels.length; at += 1) {
    const [au, az, bu, bz] = segmentAt(rest.segments, at);
    for (const by of ["bed", "leaf", "fingers", "beam"] as const)
      if (gapTo(tools[by], start + au, az, start + bu, bz, keep) < keep - closeTo)
        return { by, when: "press", angle: 0, panel: panelOf(chain, rest, at) };
  }
  return null;
}
