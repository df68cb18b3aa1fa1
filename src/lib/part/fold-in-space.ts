import type { FlatChain, FlatLayout, FlatPiece, FlatPoint, FlatTab } from "./flatten.ts";
import { fold } from "./fold.ts";
import type { Axis } from "./model.ts";

/** A place in space [mm]: x to the east, y to the north, z up; the base lies level with its bench-side face at z = 0. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** One flat or, in a bend, nearly flat piece of the folded sheet: its bench-side face, and the direction through the sheet. */
export interface Facet {
  /** Panel, bend, edge or tab it belongs to. */
  readonly id: string;
  readonly kind: "panel" | "bend" | "tab";
  readonly points: readonly Place[];
  /** Unit vector from the bench-side face to the other one. */
  readonly through: Place;
}

/** How far each bend, edge or tab is turned, by id, 0 flat to 1 finished; one number for all. */
export type Turned = number | Readonly<Record<string, number>>;

const shareOf = (turned: Turned, id: string) => (typeof turned === "number" ? turned : (turned[id] ?? 1));

interface Mark {
  readonly out: number;
  readonly up: number;
  readonly heading: number;
}

/** Where the walk along a chain stands after each of its stretches, unfolded lengths kept. */
interface Station {
  readonly at: number;
  readonly mark: Mark;
}

const rad = (degrees: number) => (degrees * Math.PI) / 180;

/** Steps a bend zone is drawn in. */
const zoneSteps = 6;

/**
 * Stations of a chain from its datum edge: straight panels, and each bend zone as an arc.
 * Beyond the first and last panel the sheet goes on straight, so raw edges to be folded stand out from it.
 */
function stations(chain: FlatChain, turned: Turned): readonly Station[] {
  const section = fold(
    chain,
    chain.bends.map(({ id }) => shareOf(turned, id)),
  );
  const base = chain.panels.findIndex(({ id }) => id === "base");
  const origin = chain.panels[base]?.from ?? 0;
  const found: Station[] = [];
  chain.panels.forEach((panel, index) => {
    const folded = section.panels[index];
    if (!folded) return;
    found.push({ at: panel.from, mark: { out: origin + folded.start.x, up: folded.start.z, heading: folded.heading } });
    found.push({ at: panel.to, mark: { out: origin + folded.end.x, up: folded.end.z, heading: folded.heading } });
    const bend = chain.bends[index];
    const next = section.panels[index + 1];
    if (!bend || !next) return;
    const arc = section.bends.find(({ id }) => id === bend.id);
    for (let step = 1; step < zoneSteps; step += 1) {
      const share = step / zoneSteps;
      const at = bend.from + share * (bend.to - bend.from);
      if (!arc) {
        found.push({
          at,
          mark: {
            out: origin + folded.end.x + share * (next.start.x - folded.end.x),
            up: folded.end.z + share * (next.start.z - folded.end.z),
            heading: folded.heading,
          },
        });
        continue;
      }
      const heading = arc.from + share * (arc.to - arc.from);
      const spoke = heading + (arc.up ? -90 : 90);
      found.push({
        at,
        mark: {
          out: origin + arc.centre.x + arc.faceRadius * Math.cos(rad(spoke)),
          up: arc.centre.z + arc.faceRadius * Math.sin(rad(spoke)),
          heading,
        },
      });
    }
  });
  return found.toSorted((a, b) => a.at - b.at);
}

function markAt(found: readonly Station[], at: number): Mark {
  const first = found[0] as Station;
  const last = found.at(-1) as Station;
  const straight = ({ mark, at: from }: Station): Mark => ({
    out: mark.out + (at - from) * Math.cos(rad(mark.heading)),
    up: mark.up + (at - from) * Math.sin(rad(mark.heading)),
    heading: mark.heading,
  });
  if (at <= first.at) return straight(first);
  if (at >= last.at) return straight(last);
  const index = found.findIndex((station) => station.at >= at);
  const a = found[index - 1] as Station;
  const b = found[index] as Station;
  const share = b.at === a.at ? 0 : (at - a.at) / (b.at - a.at);
  return {
    out: a.mark.out + share * (b.mark.out - a.mark.out),
    up: a.mark.up + share * (b.mark.up - a.mark.up),
    heading: a.mark.heading + share * (b.mark.heading - a.mark.heading),
  };
}

/** Folds a place on the blank about the bends of one chain; the face it lies on is the bench-side one. */
function lift(found: readonly Station[], axis: Axis, point: FlatPoint): Place {
  const { out, up } = markAt(found, point[axis]);
  return axis === "y" ? { x: point.x, y: out, z: up } : { x: out, y: point.y, z: up };
}

function throughAt(heading: number, axis: Axis): Place {
  const out = -Math.sin(rad(heading));
  const up = Math.cos(rad(heading));
  return axis === "y" ? { x: 0, y: out, z: up } : { x: out, y: 0, z: up };
}

/** A tab's own fold: bent about its line while its side is still flat, then carried up with the side. */
function tabFacets(tab: FlatTab, layout: FlatLayout, found: readonly Station[], axis: Axis, turned: Turned): Facet[] {
  const { thickness } = layout.part;
  const [inner, outer] = tab.tangents;
  const sign = Math.sign(outer - inner) || 1;
  const angle = 90 * shareOf(turned, tab.id);
  const face = tab.way === "up" ? tab.radius + thickness : tab.radius;
  const bendSign = tab.way === "up" ? 1 : -1;
  const straight = Math.abs(tab.end - outer);
  /** Distance along the tab's flat to its place: sideways beyond the tangent, off the face of its side, and the angle there. */
  const bent = (along: number) => {
    const zone = Math.abs(outer - inner);
    const share = Math.min(1, along / zone);
    const at = rad(angle * share);
    const beyond = Math.max(0, along - zone);
    if (angle === 0) return { side: along, off: 0, at };
    const scaled = { side: face * Math.sin(at), off: face * (1 - Math.cos(at)) };
    return { side: scaled.side + beyond * Math.cos(at), off: scaled.off + beyond * Math.sin(at), at };
  };
  const spot = (along: number, across: number): { place: Place; through: Place } => {
    const { side, off, at } = bent(along);
    const { heading } = markAt(found, across);
    const normal = throughAt(heading, axis);
    const flat = axis === "y" ? { x: inner + sign * side, y: across } : { x: across, y: inner + sign * side };
    const on = lift(found, axis, flat);
    const away = bendSign * off;
    const sideways = axis === "y" ? { x: sign, y: 0, z: 0 } : { x: 0, y: sign, z: 0 };
    const sin = -bendSign * Math.sin(at);
    return {
      place: { x: on.x + away * normal.x, y: on.y + away * normal.y, z: on.z + away * normal.z },
      through: {
        x: normal.x * Math.cos(at) + sideways.x * sin,
        y: normal.y * Math.cos(at) + sideways.y * sin,
        z: normal.z * Math.cos(at) + sideways.z * sin,
      },
    };
  };
  const zone = Math.abs(outer - inner);
  const cuts = [...Array.from({ length: zoneSteps + 1 }, (_, step) => (zone * step) / zoneSteps), zone + straight];
  return cuts.slice(1).map((to, index) => {
    const from = cuts[index] as number;
    return {
      id: tab.id,
      kind: to > zone + 1e-9 ? "tab" : "bend",
      points: [spot(from, tab.span.from), spot(to, tab.span.from), spot(to, tab.span.to), spot(from, tab.span.to)].map(
        ({ place }) => place,
      ),
      through: spot((from + to) / 2, tab.span.from).through,
    };
  });
}

/** A bend zone as flat strips narrow enough to follow its arc. */
function zoneStrips(piece: FlatPiece): readonly (readonly FlatPoint[])[] {
  const [a, b, c, d] = piece.polygon as [FlatPoint, FlatPoint, FlatPoint, FlatPoint];
  const between = (from: FlatPoint, to: FlatPoint, share: number): FlatPoint => ({
    x: from.x + share * (to.x - from.x),
    y: from.y + share * (to.y - from.y),
  });
  return Array.from({ length: zoneSteps }, (_, step) => {
    const [from, to] = [step / zoneSteps, (step + 1) / zoneSteps];
    return [between(a, b, from), between(a, b, to), between(d, c, to), between(d, c, from)];
  });
}

/**
 * Folds the layout in space.
 *
 * @param layout - the flat layout, every length on it unchanged by folding
 * @param turned - how far each bend is turned
 * @returns facets of the bench-side face; folded edges are left standing straight
 * @remarks Geometry only, as `fold`: nothing here knows allowances or deductions. Both chains share the base, so each folds its own legs.
 */
export function foldInSpace(layout: FlatLayout, turned: Turned = 1): readonly Facet[] {
  const found = new Map(layout.chains.map((chain) => [chain.axis, stations(chain, turned)] as const));
  const facetOf = (piece: FlatPiece, polygon: readonly FlatPoint[]): Facet => {
    const kind = piece.kind === "bend" ? "bend" : "panel";
    const along = found.get(piece.axis);
    if (!along || !piece.side)
      return { id: piece.id, kind, points: polygon.map(({ x, y }) => ({ x, y, z: 0 })), through: { x: 0, y: 0, z: 1 } };
    const values = polygon.map((point) => point[piece.axis]);
    const middle = (Math.min(...values) + Math.max(...values)) / 2;
    return {
      id: piece.id,
      kind,
      points: polygon.map((point) => lift(along, piece.axis, point)),
      through: throughAt(markAt(along, middle).heading, piece.axis),
    };
  };
  return [
    ...layout.pieces.flatMap((piece) =>
      (piece.kind === "bend" ? zoneStrips(piece) : [piece.polygon]).map((polygon) => facetOf(piece, polygon)),
    ),
    ...layout.tabs.flatMap((tab) => {
      const axis = tab.axis === "x" ? "y" : "x";
      return tabFacets(tab, layout, found.get(axis) as readonly Station[], axis, turned);
    }),
  ];
}
