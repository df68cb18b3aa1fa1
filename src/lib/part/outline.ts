import { setback } from "../bending/setback.ts";
import { reliefHole } from "../cutting/corner-notch.ts";
import { InputError } from "../input-error.ts";
import { exactly } from "../inputs.ts";
import { jointRow } from "../joining/joint-row.ts";
import { atLeast, mm, say } from "../quantity/phrase.ts";
import type { FlatBend, FlatChain, FlatPanel, Frame } from "./flatten.ts";
import { fold } from "./fold.ts";
import type { Side } from "./form.ts";
import type { FlatPoint } from "./geometry.ts";
import type { Axis, Edge, Part } from "./model.ts";

export type { FlatPoint } from "./geometry.ts";

/**
 * The edge of the blank, traced round the base.
 *
 * A side is walked outwards from the base tangent line of its first bend by s; both its ends are given by how far they reach beyond the
 * base tangent line of the neighbouring side, so every side and corner is the same piece of geometry turned.
 */

export interface Span {
  readonly from: number;
  readonly to: number;
}

export interface FlatCorner {
  /** `north-east` */
  readonly id: string;
  readonly sides: readonly [Side, Side];
  /** Where the inner tangent lines of the two bends cross. */
  readonly x: number;
  readonly y: number;
  /** Corner of the notch. */
  readonly notch: FlatPoint;
  /** How far the notch reaches in from the edges of the blank [mm]. */
  readonly guide: { readonly x: number; readonly y: number };
  readonly relief?: { readonly kind: "hole" | "notch"; readonly size: number };
  /** Metal would have to be bent both ways within this distance of the crossing [mm]; a relief must reach as far. */
  readonly bentTwice: number;
  /** Both sides are turned the same way, so their ends meet. */
  readonly meets: boolean;
}

/** A strip at the end of a side, bent round the corner and joined to the neighbour. */
export interface FlatTab {
  readonly id: string;
  /** Panel it is on, and the one it lies against. */
  readonly on: string;
  readonly onto: string;
  readonly corner: string;
  readonly way: "up" | "down";
  readonly radius: number;
  readonly allowance: number;
  /** Direction its bend line is measured in, from the west or the south edge. */
  readonly axis: Axis;
  /** Tangent lines: on its side first [mm]. */
  readonly tangents: readonly [number, number];
  readonly line: number;
  readonly sightLine: number;
  /** Free end of the tab [mm]. */
  readonly end: number;
  /** Along its bend line [mm]. */
  readonly span: Span;
  readonly width: number;
  /** Middles of its spots or rivets, on the tab and on the neighbour. */
  readonly joints: readonly { readonly tab: FlatPoint; readonly wall: FlatPoint }[];
  readonly joint: "spots" | "rivets";
  /** Diameter of its rivets [mm]. */
  readonly rivet?: number;
}

/** A panel, bend zone or raw edge by itself, without tabs and reliefs. */
export interface FlatPiece {
  readonly id: string;
  readonly kind: "panel" | "bend" | "edge";
  /** Direction in which its chain runs. */
  readonly axis: Axis;
  /** None for the base. */
  readonly side?: Side;
  readonly polygon: readonly FlatPoint[];
}

interface Strip {
  readonly id: string;
  readonly s0: number;
  readonly s1: number;
  readonly bend?: FlatBend;
  readonly panel?: FlatPanel;
  readonly edge?: Edge;
}

interface SideStrips {
  readonly side: Side;
  readonly chain: FlatChain;
  readonly strips: readonly Strip[];
  readonly legs: readonly Leg[];
}

/** A leg beyond the base: its bend, its straight part, and both faces of it once folded. */
interface Leg {
  readonly bend: FlatBend;
  readonly panel: FlatPanel;
  readonly s0: number;
  readonly s1: number;
  /** Outwards of the base tangent line and up from the bench, at its start and its end, on both faces. */
  readonly start: readonly [Folded, Folded];
  readonly end: readonly [Folded, Folded];
}

interface Folded {
  readonly out: number;
  readonly up: number;
}

/** How far an end reaches beyond the neighbour's tangent line, by s outwards. */
type EndLine = readonly { readonly s: number; readonly reach: number }[];

const axisOf: Readonly<Record<Side, Axis>> = { north: "y", south: "y", east: "x", west: "x" };
const outermost: Readonly<Record<Side, boolean>> = { north: true, east: true, south: false, west: false };
const rad = (degrees: number) => (degrees * Math.PI) / 180;

function stripsOf(side: Side, chain: FlatChain | undefined): SideStrips | undefined {
  if (!chain) return undefined;
  const up = outermost[side];
  const base = chain.panels.findIndex(({ id }) => id === "base");
  const panels = up ? chain.panels.slice(base + 1) : chain.panels.slice(0, base).toReversed();
  const bends = up ? chain.bends.slice(base) : chain.bends.slice(0, base).toReversed();
  const edge = up ? chain.endEdge : chain.startEdge;
  const origin = up ? (chain.panels[base] as FlatPanel).to : (chain.panels[base] as FlatPanel).from;
  const s = (at: number) => (up ? at - origin : origin - at);
  const section = fold(chain);
  const baseEnd = up ? (section.panels[base]?.end.x ?? 0) : 0;
  const { thickness } = chain.part;
  const facesAt = (panel: FlatPanel, outer: boolean): readonly [Folded, Folded] => {
    const folded = section.panels[chain.panels.indexOf(panel)] as (typeof section.panels)[number];
    const point = outer === up ? folded.end : folded.start;
    const out = up ? point.x - baseEnd : -point.x;
    // The other face lies one thickness to the left of the way the section is walked.
    const left = rad(folded.heading + 90);
    const sign = up ? 1 : -1;
    return [
      { out, up: point.z },
      { out: out + sign * thickness * Math.cos(left), up: point.z + thickness * Math.sin(left) },
    ];
  };
  const legs = panels.map((panel, index): Leg => {
    const [s0, s1] = up ? [s(panel.from), s(panel.to)] : [s(panel.to), s(panel.from)];
    return { bend: bends[index] as FlatBend, panel, s0, s1, start: facesAt(panel, false), end: facesAt(panel, true) };
  });
  const strips = legs.flatMap((leg): Strip[] => [
    { id: leg.bend.id, s0: leg.s0 - leg.bend.allowance, s1: leg.s0, bend: leg.bend },
    { id: leg.panel.id, s0: leg.s0, s1: leg.s1, panel: leg.panel },
  ]);
  const last = strips.at(-1)?.s1 ?? 0;
  if (edge) strips.push({ id: edge.id, s0: last, s1: last + edge.allowance, edge });
  return strips.length === 0 ? undefined : { side, chain, strips, legs };
}

const closeTo = 1e-6;

function sameUpTo(count: number, a: readonly Leg[], b: readonly Leg[]): boolean {
  if (b.length < count) return false;
  return a.slice(0, count).every((leg, index) => {
    const other = b[index] as Leg;
    return (
      Math.abs(leg.s1 - leg.s0 - (other.s1 - other.s0)) < closeTo &&
      leg.bend.angle === other.bend.angle &&
      leg.bend.way === other.bend.way &&
      leg.bend.radius === other.bend.radius
    );
  });
}

/** Innermost place of the neighbour's legs between two heights; undefined where it has no metal there. */
function innermost(legs: readonly Leg[], low: number, high: number): number | undefined {
  let best: number | undefined;
  for (const { start, end } of legs)
    for (const face of [0, 1] as const) {
      const [a, b] = [start[face], end[face]];
      const share = (height: number) => (b.up === a.up ? 0 : (height - a.up) / (b.up - a.up));
      if (Math.max(a.up, b.up) < low || Math.min(a.up, b.up) > high) continue;
      const within = [0, 1, share(low), share(high)].filter((t) => t >= 0 && t <= 1);
      for (const t of within) {
        const up = a.up + t * (b.up - a.up);
        if (up < low - closeTo || up > high + closeTo) continue;
        const out = a.out + t * (b.out - a.out);
        best = best === undefined ? out : Math.min(best, out);
      }
    }
  return best;
}

/** Slope of the mitre of a leaning side along the neighbour's plane; see `firstLeg`. */
const mitre = (own: number, other: number) => (Math.cos(rad(other)) * Math.sin(rad(own))) / Math.sin(rad(other));

/**
 * End of a first leg beside a neighbour turned the same way.
 *
 * The inside faces of the two planes meet on a line through the crossing of their inside apexes. With the neighbour turned through B and
 * this leg through A, a step dl outwards on this leg rises sin A dl, and at that height the neighbour has gone cos B/sin B of it outwards:
 * m = cos B sin A/sin B. A leg leaning in (m < 0) is always cut back along it, up to the height of the neighbour; one leaning out is
 * carried along it, unless the neighbour leans out by more than 45° of it.
 */
function firstLeg(own: Leg, other: Leg, gap: number): EndLine {
  const half = (leg: Leg) => leg.bend.radius * Math.tan(rad(leg.bend.angle) / 2);
  const m = mitre(own.bend.angle, other.bend.angle);
  const spreads = m > 1 || mitre(other.bend.angle, own.bend.angle) > 1;
  const slope = spreads ? Math.min(0, m) : m;
  const at = (along: number) => half(other) + (spreads && m > 0 ? 0 : slope * (along + half(own))) - gap;
  const length = own.s1 - own.s0;
  const rise = Math.abs(Math.sin(rad(own.bend.angle)));
  const topOfOther = Math.max(...other.end.map(({ up }) => Math.abs(up)));
  const bottom = Math.min(...own.start.map(({ up }) => Math.abs(up)));
  const until = slope < 0 && rise > 1e-6 ? Math.min(length, Math.max(0, (topOfOther - bottom) / rise)) : length;
  const line = [
    { s: own.s0, reach: at(0) },
    { s: own.s0 + until, reach: at(until) },
  ];
  return until < length ? [...line, { s: own.s1, reach: at(until) }] : line;
}

interface TabShape {
  readonly inner: number;
  readonly outer: number;
  readonly from: number;
  readonly to: number;
}

function endLine(
  own: SideStrips,
  other: SideStrips | undefined,
  part: Part,
  tab: TabShape | undefined,
  covers: number | undefined,
) {
  const { gap } = part.corners;
  const { thickness } = part;
  const points: { s: number; reach: number }[] = [];
  const level = (strip: Strip, reach: number) => points.push({ s: strip.s0, reach }, { s: strip.s1, reach });
  const first = own.legs[0];
  const otherFirst = other?.legs[0];
  const meets = first !== undefined && otherFirst !== undefined && first.bend.way === otherFirst.bend.way;
  const lines: EndLine[] = [];

  own.legs.forEach((leg, index) => {
    if (!other || !otherFirst || !meets) {
      lines.push([
        { s: leg.s0, reach: 0 },
        { s: leg.s1, reach: 0 },
      ]);
      return;
    }
    if (index === 0) {
      if (tab)
        lines.push([
          { s: leg.s0, reach: tab.inner },
          { s: leg.s0 + tab.from, reach: tab.inner },
          { s: leg.s0 + tab.from, reach: tab.outer },
          { s: leg.s0 + tab.to, reach: tab.outer },
          { s: leg.s0 + tab.to, reach: tab.inner },
          { s: leg.s1, reach: tab.inner },
        ]);
      else if (covers !== undefined)
        lines.push([
          { s: leg.s0, reach: covers },
          { s: leg.s1, reach: covers },
        ]);
      else lines.push(firstLeg(leg, otherFirst, gap));
      return;
    }
    const before = Math.min(
      (lines[index - 1] as EndLine).at(-1)?.reach ?? 0,
      covers === undefined ? Number.POSITIVE_INFINITY : covers - thickness - gap,
    );
    if (sameUpTo(index + 1, own.legs, other.legs)) {
      // Both sides are alike, so they meet in the plane that halves the corner.
      const at = (faces: readonly [Folded, Folded]) => Math.min(before, faces[0].out - gap, faces[1].out - gap);
      lines.push([
        { s: leg.s0, reach: at(leg.start) },
        { s: leg.s1, reach: at(leg.end) },
      ]);
      return;
    }
    const heights = [...leg.start, ...leg.end].map(({ up }) => up);
    const reachOf = leg.bend.radius + thickness;
    const limit = innermost(other.legs, Math.min(...heights) - reachOf, Math.max(...heights) + reachOf);
    const reach = limit === undefined ? before : Math.min(before, limit - gap);
    lines.push([
      { s: leg.s0, reach },
      { s: leg.s1, reach },
    ]);
  });

  own.strips.forEach((strip) => {
    if (strip.bend) {
      const index = own.legs.findIndex(({ bend }) => bend.id === strip.id);
      const next = (lines[index] as EndLine)[0]?.reach ?? 0;
      const before = index === 0 ? next : ((lines[index - 1] as EndLine).at(-1)?.reach ?? 0);
      level(strip, Math.min(before, next));
    } else if (strip.panel) {
      const index = own.legs.findIndex(({ panel }) => panel.id === strip.id);
      points.push(...(lines[index] as EndLine));
    } else if (own.legs.length > 0) {
      const before = points.at(-1)?.reach ?? 0;
      level(strip, meets ? before - thickness - gap : before);
    } else if (!other) level(strip, 0);
    else if (other.legs.length > 0) level(strip, -gap);
    else {
      // Two edges folded onto one face would lie over each other: both are mitred.
      points.push({ s: strip.s0, reach: -gap - strip.s0 }, { s: strip.s1, reach: -gap - strip.s1 });
    }
  });
  return points;
}

const upright = (leg: Leg | undefined) => leg !== undefined && leg.bend.angle === 90;

/** Clear height a tab keeps from the bends above and below it [mm], at least; common practice. */
const tabClearance = 0.5;

function tabShape(
  own: SideStrips,
  other: SideStrips,
  part: Part,
  allowance: number,
): TabShape & { readonly allowance: number; readonly wallOut: number } {
  const tabs = part.corners.tabs as NonNullable<Part["corners"]["tabs"]>;
  const leg = own.legs[0] as Leg;
  const against = other.legs[0] as Leg;
  if (!upright(leg) || !upright(against) || leg.bend.way !== against.bend.way)
    throw new InputError(
      "tabs",
      tabs.on,
      say`Tabs must join sides that are both turned by 90° and the same way; ${leg.panel.id} and ${against.panel.id} are not. Take the tabs off, or change their angles.`,
    );
  const { gap } = part.corners;
  const sb = setback({ angle: 90, radius: part.radius, thickness: part.thickness, legTo: "apex" });
  const flat = tabs.width - sb;
  if (!(flat > 0))
    throw new InputError(
      "tabWidth",
      tabs.width,
      say`Width of a tab must be above ${atLeast(sb)}, the part of it that its bend takes; it is ${exactly(tabs.width, "length")}.`,
    );
  const clear = Math.max(gap, tabClearance);
  const rise = against.bend.radius - leg.bend.radius;
  const from = Math.max(0, rise) + clear;
  const to = Math.min(leg.s1 - leg.s0, against.s1 - against.s0 + rise) - clear;
  if (!(to > from))
    throw new InputError(
      "tabs",
      tabs.on,
      say`There is no height for a tab between ${leg.panel.id} and ${against.panel.id}: their straight parts must overlap by more than ${mm(2 * clear)}. Make the sides higher, or take the tabs off.`,
    );
  const inner = against.bend.radius - gap - part.radius - part.thickness;
  return { inner, outer: inner + allowance + flat, from, to, allowance, wallOut: leg.bend.radius - part.radius };
}

/** The part of an end line beyond s, with a point at s. */
function beyond(line: EndLine, s: number): EndLine {
  const kept = line.filter((point) => point.s > s);
  const next = line.findIndex((point) => point.s > s);
  if (next === -1) return [{ s, reach: line.at(-1)?.reach ?? 0 }];
  const a = line[Math.max(0, next - 1)] as EndLine[number];
  const b = line[next] as EndLine[number];
  const reach = b.s === a.s || next === 0 ? b.reach : a.reach + ((s - a.s) / (b.s - a.s)) * (b.reach - a.reach);
  return [{ s, reach }, ...kept];
}

/**
 * Edge of the blank, corners, tabs and the extent of every strip.
 * @throws InputError at `tabs` or `tabWidth` for tabs that cannot be
 */
export function trace(part: Part, chains: readonly FlatChain[], frame: Frame, tabAllowance: () => number) {
  const of = (axis: Axis) => chains.find((chain) => chain.axis === axis);
  const sides = Object.fromEntries(
    (["south", "east", "north", "west"] as const).map((side) => [side, stripsOf(side, of(axisOf[side]))]),
  ) as Record<Side, SideStrips | undefined>;
  const tangent = (side: Side) => (outermost[side] ? frame[axisOf[side]].to : frame[axisOf[side]].from);
  const outwards = (side: Side) => (outermost[side] ? 1 : -1);
  /** A place s beyond `side` that reaches `reach` beyond its neighbour `end`. */
  const place = (side: Side, s: number, end: Side, reach: number): FlatPoint => {
    const along = tangent(side) + outwards(side) * s;
    const across = tangent(end) + outwards(end) * reach;
    return axisOf[side] === "y" ? { x: across, y: along } : { x: along, y: across };
  };

  const tabsOn = part.corners.tabs?.on;
  const tabs: FlatTab[] = [];
  const ends = new Map<string, EndLine>();
  const shapes = new Map<string, ReturnType<typeof tabShape>>();
  const corners: FlatCorner[] = [];
  const around = [
    ["south", "west"],
    ["south", "east"],
    ["north", "east"],
    ["north", "west"],
  ] as const;
  /** How far the straight part of an end reaches where a tab grows out of it. */
  const tabRoots = new Map<string, number>();
  let joined = false;

  for (const [along, across] of around) {
    const id = `${along}-${across}`;
    const a = sides[along];
    const b = sides[across];
    const both = a && b && a.legs.length > 0 && b.legs.length > 0;
    let tabSide: Side | undefined;
    if (tabsOn && both) {
      tabSide = tabsOn === "y" ? along : across;
      const own = sides[tabSide] as SideStrips;
      const other = tabSide === along ? b : a;
      const shape = tabShape(own, other, part, tabAllowance());
      shapes.set(id, shape);
      tabRoots.set(`${tabSide} ${tabSide === along ? across : along}`, shape.inner);
      joined = true;
    }
    for (const [own, ownSide, other, otherSide] of [
      [a, along, b, across],
      [b, across, a, along],
    ] as const) {
      if (!own) continue;
      const shape = shapes.get(id);
      const covers = shape && ownSide !== tabSide ? (other?.legs[0]?.bend.radius ?? 0) + part.thickness : undefined;
      ends.set(`${ownSide} ${otherSide}`, endLine(own, other, part, ownSide === tabSide ? shape : undefined, covers));
    }
    if (!both) continue;

    const reachA = (ends.get(`${along} ${across}`) as EndLine)[0]?.reach ?? 0;
    const reachB = (ends.get(`${across} ${along}`) as EndLine)[0]?.reach ?? 0;
    const [x, y] = [tangent(across), tangent(along)];
    const bentTwice = reachA > 0 && reachB > 0 ? Math.hypot(reachA, reachB) : 0;
    const radius = Math.max(a.legs[0]?.bend.radius ?? 0, b.legs[0]?.bend.radius ?? 0);
    const least = reliefHole({ radius, thickness: part.thickness }).diameter;
    const { relief } = part.corners;
    const size = relief === "hole" ? Math.max(least, 2 * bentTwice) : Math.max(least, 2 * reachA, 2 * reachB);
    const notch = place(along, Math.max(0, reachB), across, Math.max(0, reachA));
    const edgeOf = (side: Side) => (outermost[side] ? (of(axisOf[side])?.along ?? part.base[axisOf[side]]) : 0);
    corners.push({
      id,
      sides: [along, across],
      x,
      y,
      notch,
      guide: { x: Math.abs(edgeOf(across) - notch.x), y: Math.abs(edgeOf(along) - notch.y) },
      ...(relief !== "none" && { relief: { kind: relief, size } }),
      bentTwice,
      meets: a.legs[0]?.bend.way === b.legs[0]?.bend.way,
    });

    const shape = shapes.get(id);
    if (!shape || !tabSide) continue;
    const own = sides[tabSide] as SideStrips;
    const otherSide = tabSide === along ? across : along;
    const leg = own.legs[0] as Leg;
    const against = (sides[otherSide] as SideStrips).legs[0] as Leg;
    const sign = outwards(otherSide);
    const at = (reach: number) => tangent(otherSide) + sign * reach;
    const outward = (s: number) => tangent(tabSide) + outwards(tabSide) * s;
    const { places, rivet } = jointRow({
      joint: part.corners.tabs?.joint ?? "spots",
      thickness: part.thickness,
      length: shape.to - shape.from,
    });
    const middle = (shape.inner + shape.allowance + shape.outer) / 2;
    tabs.push({
      id: `${leg.panel.id}.tab-${otherSide}`,
      on: leg.panel.id,
      onto: against.panel.id,
      corner: id,
      way: leg.bend.way,
      radius: part.radius,
      allowance: shape.allowance,
      axis: axisOf[otherSide],
      tangents: [at(shape.inner), at(shape.inner + shape.allowance)],
      line: at(shape.inner + shape.allowance / 2),
      sightLine: at(shape.inner + part.radius),
      end: at(shape.outer),
      span: sorted(outward(leg.s0 + shape.from), outward(leg.s0 + shape.to)),
      width: part.corners.tabs?.width ?? 0,
      joint: part.corners.tabs?.joint ?? "spots",
      ...(rivet !== undefined && { rivet }),
      joints: places.map((height) => {
        const up = shape.from + height;
        // On the neighbour the tab lies as far in from the corner as it is long, at the same height above the base.
        const rise = leg.bend.radius - against.bend.radius;
        return {
          tab: place(tabSide, leg.s0 + up, otherSide, middle),
          wall: place(otherSide, against.s0 + up + rise, tabSide, shape.wallOut - (middle - shape.inner - shape.allowance)),
        };
      }),
    });
  }
  if (tabsOn && !joined)
    throw new InputError(
      "tabs",
      tabsOn,
      say`Tabs need two neighbouring sides with legs. Add a leg on ${tabsOn === "y" ? "east or west" : "north or south"}, or take the tabs off.`,
    );

  const outline: FlatPoint[] = [];
  const add = (point: FlatPoint) => {
    const last = outline.at(-1);
    if (!last || Math.hypot(last.x - point.x, last.y - point.y) > 1e-9) outline.push(point);
  };
  const round: readonly (readonly [Side, Side])[] = [
    ["west", "south"],
    ["south", "east"],
    ["east", "north"],
    ["north", "west"],
  ];
  for (const [from, to] of round) {
    const inward = ends.get(`${from} ${to}`);
    const outward = ends.get(`${to} ${from}`);
    const reachIn = inward?.[0]?.reach ?? 0;
    const reachOut = outward?.[0]?.reach ?? 0;
    const corner = corners.find(({ sides: pair }) => pair.includes(from) && pair.includes(to));
    const square = corner?.relief?.kind === "notch" ? corner.relief.size / 2 : undefined;
    const bothReach = reachIn > 0 && reachOut > 0;
    const clipIn = square ?? (bothReach ? reachOut : 0);
    const clipOut = square ?? (bothReach ? reachIn : 0);
    if (inward) for (const { s, reach } of beyond(inward, clipIn).toReversed()) add(place(from, s, to, reach));
    if (square !== undefined) {
      add(place(from, square, to, -square));
      add(place(from, -square, to, -square));
      add(place(from, -square, to, square));
    } else if (!bothReach) add(place(from, 0, to, 0));
    if (outward) for (const { s, reach } of beyond(outward, clipOut)) add(place(to, s, from, reach));
  }
  while (
    outline.length > 1 &&
    Math.hypot((outline[0]?.x ?? 0) - (outline.at(-1)?.x ?? 0), (outline[0]?.y ?? 0) - (outline.at(-1)?.y ?? 0)) <= 1e-9
  )
    outline.pop();
  const turns = outline.filter((point, index) => {
    const before = outline.at(index - 1) as FlatPoint;
    const after = outline[(index + 1) % outline.length] as FlatPoint;
    const turn = (point.x - before.x) * (after.y - point.y) - (point.y - before.y) * (after.x - point.x);
    const back = (point.x - before.x) * (after.x - point.x) + (point.y - before.y) * (after.y - point.y);
    return Math.abs(turn) > 1e-9 || back < 0;
  });

  const spans: Record<string, Span> = {};
  const pieces: FlatPiece[] = [];
  for (const own of Object.values(sides)) {
    if (!own) continue;
    const [low, high] = axisOf[own.side] === "y" ? (["west", "east"] as const) : (["south", "north"] as const);
    for (const strip of own.strips) {
      const within = (end: Side) =>
        (ends.get(`${own.side} ${end}`) ?? [])
          .filter(({ s }) => s >= strip.s0 - closeTo && s <= strip.s1 + closeTo)
          .map((point) => ({ ...point, reach: Math.min(point.reach, tabRoots.get(`${own.side} ${end}`) ?? point.reach) }));
      pieces.push({
        id: strip.id,
        kind: strip.bend ? "bend" : strip.edge ? "edge" : "panel",
        axis: axisOf[own.side],
        side: own.side,
        polygon: strip.bend
          ? ([
              [strip.s0, low],
              [strip.s1, low],
              [strip.s1, high],
              [strip.s0, high],
            ].map(([s, end]) =>
              place(own.side, s as number, end as Side, Math.min(...within(end as Side).map(({ reach }) => reach))),
            ) as FlatPoint[])
          : [
              ...within(low).map(({ s, reach }) => place(own.side, s, low, reach)),
              ...within(high)
                .toReversed()
                .map(({ s, reach }) => place(own.side, s, high, reach)),
            ],
      });
      const reachAt = (end: Side) => {
        const reaches = within(end).map(({ reach }) => reach);
        return strip.bend ? Math.min(...reaches) : Math.max(...reaches);
      };
      spans[strip.bend ? bendSpan(strip.id) : strip.id] = {
        from: tangent(low) - reachAt(low),
        to: tangent(high) + reachAt(high),
      };
    }
  }
  pieces.push({
    id: "base",
    kind: "panel",
    axis: "y",
    polygon: [
      { x: frame.x.from, y: frame.y.from },
      { x: frame.x.to, y: frame.y.from },
      { x: frame.x.to, y: frame.y.to },
      { x: frame.x.from, y: frame.y.to },
    ],
  });
  return { outline: turns, corners, tabs, spans, pieces };
}

/** A bend has the id of the panel beyond it, and an extent of its own. */
export const bendSpan = (id: string) => `bend ${id}`;

const sorted = (a: number, b: number): Span => ({ from: Math.min(a, b), to: Math.max(a, b) });
