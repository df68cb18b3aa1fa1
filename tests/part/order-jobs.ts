import type { FormingBrake, FormingChain, FormingEdge, FormingJob } from "../../src/lib/part/order/job.ts";

/** A brake with round figures. */
export const brake: FormingBrake = {
  rating: { length: 1250 },
  fingers: [25, 30, 35, 40, 50, 60, 75, 100, 100, 125, 150, 200, 250],
  fingerHeight: 110,
  fingerLean: 47,
  fingerDepth: 130,
  fingerTop: 130,
  noseRadius: 1,
  shortestLeg: 8,
  longestLeg: 600,
  largestSwing: 135,
  beamSetback: 115,
  beamDepth: 80,
  beamHeight: 90,
  bedDepth: 120,
  bedHeight: 50,
  bedNose: 50,
  leafWidth: 35,
  leafThickness: 20,
  clampOpening: 50,
  clearance: 1,
  shortestHold: 10,
  bareEnd: 20,
};

export const radius = 1;
export const thickness = 1;
/** Flat length of a bend's zone, neutral line in the middle of the sheet. */
export const zoneOf = (angle: number) => (angle * Math.PI * (radius + thickness / 2)) / 180;

export interface Leg {
  /** Straight flat length [mm] */
  readonly flat: number;
  readonly way?: "up" | "down";
  readonly angle?: number;
  readonly edge?: {
    readonly kind: FormingEdge["kind"];
    readonly width: number;
    readonly way: "up" | "down";
    readonly gap?: number;
  };
}

const springback = 3;

function edgeOf(side: string, leg: Leg | undefined): FormingEdge | undefined {
  if (!leg?.edge) return undefined;
  const { kind, width, way, gap = 0 } = leg.edge;
  return { id: `${side}.edge`, kind, width, way, gap, allowance: kind === "double" ? 2 * width : width };
}

/** A chain from its base and the legs on both sides, each counted outwards. */
export function chainOf(
  axis: "x" | "y",
  base: number,
  start: readonly Leg[],
  end: readonly Leg[],
  span: readonly [number, number],
  legSpan: readonly [number, number] = span,
): FormingChain {
  const [startSide, endSide] = axis === "y" ? ["south", "north"] : ["west", "east"];
  const legs = [
    ...start.map((leg, index) => ({ ...leg, id: `${startSide}.${index + 1}` })).reverse(),
    { flat: base, id: "base" },
    ...end.map((leg, index) => ({ ...leg, id: `${endSide}.${index + 1}` })),
  ];
  const turned = [...start].reverse().concat(end);
  let at = start.at(-1)?.edge ? (edgeOf(startSide as string, start.at(-1))?.allowance ?? 0) : 0;
  const panels: FormingChain["panels"][number][] = [];
  legs.forEach(({ id, flat }, index) => {
    panels.push({ id, from: at, to: at + flat, span: id === "base" ? span : legSpan });
    at += flat + (turned[index] ? zoneOf(turned[index]?.angle ?? 90) : 0);
  });
  const ids = [
    ...start.map((_, index) => `${startSide}.${index + 1}`).reverse(),
    ...end.map((_, index) => `${endSide}.${index + 1}`),
  ];
  const startEdge = edgeOf(startSide as string, start.at(-1));
  const endEdge = edgeOf(endSide as string, end.at(-1));
  return {
    axis,
    baseIndex: start.length,
    panels,
    bends: turned.map(({ angle = 90, way = "up" }, index) => ({
      id: ids[index] as string,
      angle,
      way,
      radius,
      swing: angle + springback,
    })),
    ...(startEdge && { startEdge }),
    ...(endEdge && { endEdge }),
  };
}

export const oneChain = (base: number, start: readonly Leg[], end: readonly Leg[], width = 200): FormingJob => ({
  thickness,
  chains: [chainOf("y", base, start, end, [0, width])],
});

/** A box: legs on all four sides; the sides of each chain reach along the whole base, less a corner gap. */
export function box(
  width: number,
  depth: number,
  sides: {
    readonly north?: readonly Leg[];
    readonly south?: readonly Leg[];
    readonly east?: readonly Leg[];
    readonly west?: readonly Leg[];
  },
  gap = 0.3,
): FormingJob {
  const { north = [], south = [], east = [], west = [] } = sides;
  const before = (legs: readonly Leg[]) => legs.reduce((sum, { flat, angle = 90 }) => sum + flat + zoneOf(angle), 0);
  const edge = (legs: readonly Leg[]) => edgeOf("", legs.at(-1))?.allowance ?? 0;
  const [left, below] = [before(west) + edge(west), before(south) + edge(south)];
  const reach = radius + thickness;
  return {
    thickness,
    chains: [
      chainOf("y", depth, south, north, [left, left + width], [left - reach + gap, left + width + reach - gap]),
      chainOf("x", width, west, east, [below, below + depth], [below - reach + gap, below + depth + reach - gap]),
    ],
  };
}
