import type { Segments } from "./distance.ts";
import type { HingeChain } from "./job.ts";

/** Where a panel begins on the way outwards from the bend, and how it lies. */
export interface PanelPlace {
  readonly u: number;
  readonly z: number;
  readonly heading: number;
}

/**
 * What lies on one side of a bend, in section: `u` outwards from the tangent line, `z` up from the bed, along the middle of the sheet.
 * The first segment is the run: the flat that the bend's own tangent line begins.
 */
export interface SideShape {
  readonly segments: Segments;
  /** Panel each segment belongs to; an arc belongs to the panel beyond it. */
  readonly panels: readonly number[];
  /** Length of the run [mm]. */
  readonly run: number;
  /** What the fold at the far end of the run adds to its outside length [mm]. */
  readonly runSetback: number;
  /** Farthest any of it is from the tangent line [mm]. */
  readonly reach: number;
  /** Panels by index, for what is fixed on them. */
  readonly places: ReadonlyMap<number, PanelPlace>;
  /** Segments, from the second on, that lie on the run because a folded edge is closed on it. */
  readonly flaps: ReadonlySet<number>;
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;
/** Coarsest step of an arc [rad]: 45° of a small bend is off its circle by a fraction of the sheet's thickness. */
const coarse = Math.PI / 4;

export interface ShapeView {
  /** 1 outwards to the end of the chain, −1 to its start. */
  readonly direction: 1 | -1;
  /** Whether the face that is up on the bench is up. */
  readonly faceUp: boolean;
  /** Step of arcs [rad]. */
  readonly arcStep?: number;
}

/**
 * Walks a chain outwards from a bend.
 *
 * @param from - index of the first panel walked; its near end is the tangent line
 * @param formed - bit i: hinge i is made
 */
export function sideShape(chain: HingeChain, from: number, formed: number, thickness: number, view: ShapeView): SideShape {
  const { direction, faceUp, arcStep = coarse } = view;
  const points: number[] = [];
  const owners: number[] = [];
  const flaps = new Set<number>();
  const places = new Map<number, PanelPlace>();
  let [u, z, heading] = [0, thickness / 2, 0];
  let pending = 0;
  let run = -1;
  let runSetback = 0;
  let reach = 0;
  const draw = (toU: number, toZ: number, panel: number) => {
    points.push(u, z, toU, toZ);
    owners.push(panel);
    [u, z] = [toU, toZ];
    reach = Math.max(reach, Math.hypot(u, z - thickness / 2));
  };
  const straight = (panel: number) => {
    if (pending > 0 || points.length === 0) draw(u + pending * Math.cos(heading), z + pending * Math.sin(heading), panel);
    pending = 0;
  };
  const last = direction === 1 ? chain.panels.length - 1 : 0;
  for (let index = from; ; index += direction) {
    const panel = chain.panels[index] as HingeChain["panels"][number];
    const inner = direction === 1 ? index - 1 : index;
    const before = index === from ? undefined : chain.hinges[inner];
    const isFlap = before?.edge !== undefined;
    const madeFlap = isFlap && (formed & (1 << inner)) !== 0;
    places.set(index, { u: u + pending * Math.cos(heading), z: z + pending * Math.sin(heading), heading });
    pending += madeFlap ? panel.formed : panel.flat;
    if (index === last) {
      straight(index);
      if (madeFlap) flaps.add(owners.length - 1);
      break;
    }
    const hingeIndex = direction === 1 ? index : index - 1;
    const hinge = chain.hinges[hingeIndex] as HingeChain["hinges"][number];
    if ((formed & (1 << hingeIndex)) === 0) {
      pending += hinge.zone;
      continue;
    }
    straight(index);
    if (run < 0) {
      run = u;
      runSetback = Math.min(1, Math.tan(radians(Math.min(hinge.angle, 90)) / 2)) * (hinge.radius + thickness);
    }
    const turn = hinge.up === faceUp ? 1 : -1;
    const middle = hinge.radius + thickness / 2;
    const angle = radians(hinge.angle);
    const steps = Math.max(1, Math.ceil(angle / arcStep - 1e-9));
    const centreU = u - turn * middle * Math.sin(heading);
    const centreZ = z + turn * middle * Math.cos(heading);
    const start = heading;
    for (let step = 1; step <= steps; step += 1) {
      heading = start + (turn * angle * step) / steps;
      draw(centreU + turn * middle * Math.sin(heading), centreZ - turn * middle * Math.cos(heading), index + direction);
      if (hinge.edge) flaps.add(owners.length - 1);
    }
  }
  if (run < 0) run = u;
  return { segments: Float64Array.from(points), panels: owners, run, runSetback, reach, places, flaps };
}
