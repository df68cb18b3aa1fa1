import type { Block, Blocker } from "./block.ts";
import type { CrossBox } from "./boxes.ts";
import type { Polygon } from "./distance.ts";
import type { HingeChain } from "./job.ts";
import { legAt, mirrored, placed } from "./pose.ts";
import { isDeepIn, regionGap, turnedTool } from "./region.ts";
import type { SideShape } from "./shape.ts";
import { type Setup, speedOf } from "./sides.ts";
import { closeTo, degrees, enough, radians, sweep } from "./sweep.ts";
import { leafPose } from "./tools.ts";

/** Between which lines along the bend fingers can stand [mm]. */
export interface Limits {
  readonly left: number;
  readonly right: number;
}
export const noLimits: Limits = { left: Number.NEGATIVE_INFINITY, right: Number.POSITIVE_INFINITY };

export interface Crossing {
  readonly block: Block | undefined;
  readonly limits: Limits;
  /** The boxes in the section, before and after the swing. */
  readonly before: readonly Polygon[];
  readonly after: readonly Polygon[];
}
export const noCrossing: Crossing = { block: undefined, limits: noLimits, before: [], after: [] };

/** Corners of a box in the frame of the side that carries it; undefined when the other side does. */
export function boxCorners(
  chain: HingeChain,
  shape: SideShape,
  box: CrossBox,
  view: { readonly direction: 1 | -1; readonly faceUp: boolean },
): Polygon | undefined {
  const at = shape.places.get(box.on);
  const panel = chain.panels[box.on];
  if (!at || !panel) return undefined;
  const along = (from: number, to: number) =>
    view.direction === 1 ? ([from - panel.from, to - panel.from] as const) : ([panel.to - to, panel.to - from] as const);
  const [o0, o1] = along(box.from, box.to);
  const [r0, r1] = box.root ? along(...box.root) : [o0, o1];
  // The foot is the end nearer to the sheet it stands on.
  const rises = view.faceUp === box.high > -box.low;
  const [h0, h1] = view.faceUp ? [box.low, box.high] : [-box.high, -box.low];
  const [cos, sin] = [Math.cos(at.heading), Math.sin(at.heading)];
  const corner = (o: number, h: number) => [at.u + o * cos - h * sin, at.z + o * sin + h * cos];
  const [low, high] = rises ? [[r0, r1] as const, [o0, o1] as const] : [[o0, o1] as const, [r0, r1] as const];
  return Float64Array.from([corner(low[0], h0), corner(low[1], h0), corner(high[1], h1), corner(high[0], h1)].flat());
}

/** Angles at which the ends of sides are held against bed and leaf at the corners. */
const cornerSteps = 12;
const cornerTurns = (angle: number) => Array.from({ length: cornerSteps + 1 }, (_, at) => (radians(angle) * at) / cornerSteps);

/**
 * Formed panels that stand across the section against the tools, and how much room they leave for the fingers.
 *
 * @param angle - turned through when finished [deg]. At the corners, where ends of sides pass close by bed and leaf, only this far is
 *   looked at: the few degrees of springback bend the sheet a little there.
 * @param middle - of the bend, along its line
 */
export function crossing(
  setup: Setup,
  sides: { readonly moving: SideShape; readonly clamped: SideShape; readonly outward: 1 | -1; readonly faceUp: boolean },
  boxes: readonly CrossBox[],
  { angle, middle }: { readonly angle: number; readonly middle: number },
): Crossing {
  const { brake, thickness, chain, hinge, tools, whole, swing } = setup;
  const { moving, clamped, outward, faceUp } = sides;
  const keep = brake.clearance;
  const half = thickness / 2;
  let { left, right } = noLimits;
  let block: Block | undefined;
  const [before, after]: [Polygon[], Polygon[]] = [[], []];
  for (const box of boxes) {
    const refuse = (by: Blocker, when: Block["when"], turned: number) => {
      block ??= { by, when, angle: degrees(turned), panel: box.panel };
    };
    const meets = (tool: "bed" | "fingers" | "beam" | "leaf", region: Polygon) =>
      regionGap(tools[tool], region, keep + 1) < keep - closeTo;
    let atFingers = false;
    const clampedBox = boxCorners(chain, clamped, box, { direction: outward === 1 ? -1 : 1, faceUp });
    if (clampedBox) {
      const still = mirrored(clampedBox, tools.centre[0]);
      before.push(still);
      after.push(still);
      for (const by of ["bed", "beam"] as const) if (!(by === "bed" && box.flat) && meets(by, still)) refuse(by, "clamped", 0);
      atFingers = meets("fingers", still);
      const hit = cornerTurns(angle).find((turned) => isDeepIn(turnedTool(whole.leaf, leafPose(tools, turned)), still));
      if (hit !== undefined) refuse("leaf", "swing", hit);
    }
    const movingBox = boxCorners(chain, moving, box, { direction: outward, faceUp });
    if (movingBox) {
      const at = (turned: number) => placed(movingBox, legAt(tools, hinge, turned), half);
      const [first, last] = [at(0), at(radians(angle))];
      before.push(first);
      after.push(last);
      if (!box.flat && meets("leaf", first)) refuse("leaf", "clamped", 0);
      const hit = cornerTurns(angle).find((turned) => isDeepIn(whole.bed, at(turned)));
      if (hit !== undefined) refuse("bed", "swing", hit);
      let reach = 0;
      for (let k = 0; k < 8; k += 2) reach = Math.max(reach, Math.hypot(movingBox[k] as number, movingBox[k + 1] as number));
      const speed = speedOf(reach, setup);
      const meetsOnTheWay = (tool: "fingers" | "beam") =>
        sweep(brake, swing, speed, (turned) => ({ gap: regionGap(tools[tool], at(turned), enough) - keep, what: tool }));
      const met = meetsOnTheWay("beam");
      if (met) refuse("beam", "swing", met.turned);
      // Most sides beside the fingers are there at the start or at the end; only for the others every step is looked at.
      atFingers ||= meets("fingers", first) || meets("fingers", last) || meetsOnTheWay("fingers") !== undefined;
    }
    if (!atFingers) continue;
    for (const { near, far } of box.across) {
      if (far <= middle) left = Math.max(left, far);
      else if (near >= middle) right = Math.min(right, near);
      else refuse("fingers", "clamped", 0);
    }
  }
  return { block, limits: { left, right }, before, after };
}
