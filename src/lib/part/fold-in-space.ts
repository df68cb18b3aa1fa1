import { foldedEdge } from "../bending/folded-edge.ts";
import type { FlatChain, FlatLayout, FlatPiece, FlatPoint, FlatTab } from "./flatten.ts";
import { area, clipTo } from "./geometry.ts";
import type { Axis, Edge } from "./model.ts";

/** A place in space [mm]: x to the east, y to the north, z up; the base lies level with its bench-side face at z = 0. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A piece of the blank that stays flat, or nearly so, however far the sheet is folded. */
export interface FlatFacet {
  /** Panel, bend, edge or tab it belongs to. */
  readonly id: string;
  readonly kind: "panel" | "bend" | "tab";
  readonly polygon: readonly FlatPoint[];
  /** What carries it when the sheet is folded: the bends of a chain, or a tab. The base stays where it is. */
  readonly carrier?: Axis | FlatTab;
}

/** One flat or, in a bend, nearly flat piece of the folded sheet: its bench-side face, and the direction through the sheet. */
export interface Facet {
  readonly id: string;
  readonly kind: FlatFacet["kind"];
  readonly points: readonly Place[];
  /** The other face, point for point. */
  readonly far: readonly Place[];
  /** Unit vector from the bench-side face to the other one. */
  readonly through: Place;
}

/** How far each bend, edge or tab is turned, by id, 0 flat to 1 finished; one number for all. */
export type Turned = number | Readonly<Record<string, number>>;

/** A place on the blank carried into space: on its bench-side face and on the other. */
export interface Lifted {
  readonly near: Place;
  readonly far: Place;
}

const shareOf = (turned: Turned, id: string) => (typeof turned === "number" ? turned : (turned[id] ?? 1));
const rad = (degrees: number) => (degrees * Math.PI) / 180;
/** A bend turned by less lies flat: its radius would be beyond what numbers hold [rad]. */
const leastTurn = 1e-7;

/** Steps an arc is drawn in: even, so that one of their seams is the bend line; none turns by more than 18°. */
const stepsIn = (angle: number) => 2 * Math.max(1, Math.ceil(angle / 36));

/** A stretch of the flat that becomes an arc: a bend, or one fold of an edge. Distances are outwards from the base. */
interface Zone {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly angle: number;
  readonly way: "up" | "down";
  readonly radius: number;
  /** Of the folds of an edge, which are made one after the other: this one, and how many there are. */
  readonly turn: number;
  readonly turns: number;
}

const full = { turn: 1, turns: 1 };

function edgeZones(edge: Edge, thickness: number, along: number): Zone[] {
  const { turns } = foldedEdge({ kind: edge.kind, thickness, width: edge.width, gap: edge.gap });
  return turns.map(({ turn, angle, radius, line }) => {
    // Followed along the middle of the thickness, as the edge's own allowance is.
    const half = (rad(angle) * (radius + thickness / 2)) / 2;
    const middle = along - line;
    return { id: edge.id, from: middle - half, to: middle + half, angle, way: edge.way, radius, turn, turns: turns.length };
  });
}

/** Where the base of a chain ends on one side, and what is bent beyond it, from the base outwards. */
function outwards(chain: FlatChain, side: 1 | -1) {
  const base = chain.panels.find(({ id }) => id === "base") as FlatChain["panels"][number];
  const origin = side === 1 ? base.to : base.from;
  const s = (at: number) => side * (at - origin);
  const edge = side === 1 ? chain.endEdge : chain.startEdge;
  const bends = chain.bends
    .filter(({ baseBefore }) => baseBefore === (side === 1))
    .map(({ id, from, to, angle, way, radius }): Zone => {
      const [a, b] = [s(from), s(to)];
      return { id, from: Math.min(a, b), to: Math.max(a, b), angle, way, radius, ...full };
    });
  const edges = edge ? edgeZones(edge, chain.part.thickness, s(side === 1 ? chain.along : 0)) : [];
  const zones = [...bends, ...edges].toSorted((a, b) => a.from - b.from);
  // On a leg too short for its folded edge the fold gives way to the bend.
  let free = Number.NEGATIVE_INFINITY;
  return {
    origin,
    zones: zones.map((zone) => {
      const from = Math.min(Math.max(zone.from, free), zone.to);
      free = zone.to;
      return { ...zone, from };
    }),
  };
}

interface Mark {
  readonly out: number;
  readonly up: number;
}

/** Where both faces of a chain are at one distance along the flat. */
interface Station {
  readonly at: number;
  readonly near: Mark;
  readonly far: Mark;
}

/** How far one fold of an edge is turned, when the whole edge is turned by a share: its folds follow each other. */
const shareOfTurn = (share: number, { turn, turns }: Zone) => Math.min(1, Math.max(0, share * turns - (turn - 1)));

/**
 * Follows one side of a chain from the base outwards along its bench-side face.
 *
 * A bend that is partly turned is an arc over the whole of its zone, wider than when it is finished: its middle line keeps its length, so
 * the sheet neither grows nor shrinks while it is bent, and at the end the radius is the one wanted.
 */
function walk(chain: FlatChain, side: 1 | -1, turned: Turned): Station[] {
  const { thickness } = chain.part;
  const { origin, zones } = outwards(chain, side);
  const found: Station[] = [];
  let at = Math.min(0, zones[0]?.from ?? 0);
  let near: Mark = { out: at, up: 0 };
  let heading = 0;
  const note = () =>
    found.push({
      at: origin + side * at,
      near: { out: origin + side * near.out, up: near.up },
      far: {
        out: origin + side * (near.out - thickness * Math.sin(heading)),
        up: near.up + thickness * Math.cos(heading),
      },
    });
  const straight = (to: number) => {
    near = { out: near.out + (to - at) * Math.cos(heading), up: near.up + (to - at) * Math.sin(heading) };
    at = to;
    note();
  };
  note();
  for (const zone of zones) {
    straight(zone.from);
    const share = shareOfTurn(shareOf(turned, zone.id), zone);
    const wanted = rad(zone.angle) * share;
    const angle = wanted < leastTurn ? 0 : wanted;
    const sign = zone.way === "up" ? 1 : -1;
    const finished = zone.way === "up" ? zone.radius + thickness : zone.radius;
    const length = zone.to - zone.from;
    const steps = stepsIn(zone.angle);
    const from = zone.from;
    // Radius of the bench-side face now: the middle line's, wider while partly turned, and as far from it as when finished.
    const radius = angle === 0 ? 0 : length / angle + finished - length / rad(zone.angle);
    for (let step = 1; step <= steps; step += 1) {
      if (angle === 0) {
        straight(from + (step * length) / steps);
        continue;
      }
      const turn = angle / steps;
      const chord = 2 * radius * Math.sin(turn / 2);
      const towards = heading + (sign * turn) / 2;
      near = { out: near.out + chord * Math.cos(towards), up: near.up + chord * Math.sin(towards) };
      heading += sign * turn;
      at = from + (step * length) / steps;
      note();
    }
  }
  // One more, for what is straight beyond the last.
  straight(at + 1);
  return found;
}

/** Stations of a chain in the order of their distance from the datum edge. */
function stations(chain: FlatChain, turned: Turned): readonly Station[] {
  return [...walk(chain, -1, turned).toReversed(), ...walk(chain, 1, turned)];
}

const between = (a: number, b: number, share: number) => a + share * (b - a);

/** Both faces at a distance along the chain; beyond its ends the sheet goes on straight. */
function sectionAt(found: readonly Station[], at: number): { readonly near: Mark; readonly far: Mark } {
  const later = found.findIndex((station, index) => index > 0 && station.at >= at);
  const index = later === -1 ? found.length - 1 : later;
  const [a, b] = [found[index - 1], found[index]] as [Station, Station];
  const share = b.at === a.at ? 0 : (at - a.at) / (b.at - a.at);
  const mark = (from: Mark, to: Mark): Mark => ({ out: between(from.out, to.out, share), up: between(from.up, to.up, share) });
  return { near: mark(a.near, b.near), far: mark(a.far, b.far) };
}

/** Folds places on the blank about the bends of one chain. */
function liftAlong(found: readonly Station[], axis: Axis): (point: FlatPoint) => Lifted {
  return (point) => {
    const { near, far } = sectionAt(found, point[axis]);
    const place = ({ out, up }: Mark): Place => (axis === "y" ? { x: point.x, y: out, z: up } : { x: out, y: point.y, z: up });
    return { near: place(near), far: place(far) };
  };
}

const added = (to: Place, a: number, p: Place, b: number, q: Place): Place => ({
  x: to.x + a * p.x + b * q.x,
  y: to.y + a * p.y + b * q.y,
  z: to.z + a * p.z + b * q.z,
});

/** A tab's own fold: bent about its line while its side is still flat, then carried up with the side. */
function liftTab(
  tab: FlatTab,
  layout: FlatLayout,
  side: (point: FlatPoint) => Lifted,
  turned: Turned,
): (point: FlatPoint) => Lifted {
  const { thickness } = layout.part;
  const [inner, outer] = tab.tangents;
  const zone = Math.abs(outer - inner);
  const outward = Math.sign(outer - inner) || 1;
  const sideways: Place = tab.axis === "x" ? { x: outward, y: 0, z: 0 } : { x: 0, y: outward, z: 0 };
  const sign = tab.way === "up" ? 1 : -1;
  const finished = Math.PI / 2;
  const wanted = finished * shareOf(turned, tab.id);
  const angle = wanted < leastTurn ? 0 : wanted;
  const radius = angle === 0 ? 0 : zone / angle + (tab.way === "up" ? tab.radius + thickness : tab.radius) - zone / finished;
  const steps = stepsIn(90);
  /** Along the side, off its face and the angle there, at the seams of the zone. */
  const seam = (step: number) => {
    const at = (angle * step) / steps;
    const [along, off] = angle === 0 ? [(zone * step) / steps, 0] : [radius * Math.sin(at), radius * (1 - Math.cos(at))];
    return { along, off, farAlong: along - thickness * sign * Math.sin(at), farOff: sign * off + thickness * Math.cos(at) };
  };
  return (point) => {
    const flat = Math.abs(point[tab.axis] - inner);
    const root = side(tab.axis === "x" ? { x: inner, y: point.y } : { x: point.x, y: inner });
    const normal: Place = {
      x: (root.far.x - root.near.x) / thickness,
      y: (root.far.y - root.near.y) / thickness,
      z: (root.far.z - root.near.z) / thickness,
    };
    const within = Math.min(flat, zone);
    const step = Math.min(steps - 1, Math.floor((within / zone) * steps + 1e-9));
    const share = (within / zone) * steps - step;
    const [a, b] = [seam(step), seam(step + 1)];
    const beyond = flat - within;
    const [along, off] = [beyond * Math.cos(angle), beyond * sign * Math.sin(angle)];
    return {
      near: added(
        root.near,
        between(a.along, b.along, share) + along,
        sideways,
        sign * between(a.off, b.off, share) + off,
        normal,
      ),
      far: added(
        root.near,
        between(a.farAlong, b.farAlong, share) + along,
        sideways,
        between(a.farOff, b.farOff, share) + off,
        normal,
      ),
    };
  };
}

/** Without corners at which it goes back the way it came, or does not turn. */
function withoutSpurs(polygon: readonly FlatPoint[]): readonly FlatPoint[] {
  const needless = polygon.findIndex((point, index) => {
    const before = polygon.at(index - 1) as FlatPoint;
    const after = polygon[(index + 1) % polygon.length] as FlatPoint;
    return Math.abs((point.x - before.x) * (after.y - point.y) - (point.y - before.y) * (after.x - point.x)) < 1e-12;
  });
  // One at a time: of two corners in one place only one is needless.
  return needless === -1 ? polygon : withoutSpurs(polygon.toSpliced(needless, 1));
}

interface Slice {
  readonly polygon: readonly FlatPoint[];
  /** Its middle along the axis it was cut across. */
  readonly middle: number;
}

/** A polygon cut across an axis. */
function slices(polygon: readonly FlatPoint[], axis: Axis, cuts: readonly number[]): readonly Slice[] {
  const values = polygon.map((point) => point[axis]);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const closeTo = 1e-9;
  const at = [low, ...cuts.filter((cut) => cut > low + closeTo && cut < high - closeTo), high];
  return at.slice(1).flatMap((to, index) => {
    const from = at[index] as number;
    const kept =
      at.length === 2
        ? polygon
        : clipTo(
            clipTo(polygon, (p) => p[axis] - from),
            (p) => to - p[axis],
          );
    return Math.abs(area(kept)) < closeTo ? [] : [{ polygon: kept, middle: (from + to) / 2 }];
  });
}

interface ChainZones {
  readonly cuts: readonly number[];
  readonly zoneAt: (at: number) => string | undefined;
}

function zonesOf(chain: FlatChain): ChainZones {
  const zones = ([-1, 1] as const).flatMap((side) => {
    const { origin, zones: found } = outwards(chain, side);
    return found.map(({ id, from, to, angle }) => {
      const [a, b] = [origin + side * from, origin + side * to];
      return { id, from: Math.min(a, b), to: Math.max(a, b), steps: stepsIn(angle) };
    });
  });
  return {
    cuts: zones
      .flatMap(({ from, to, steps }) => Array.from({ length: steps + 1 }, (_, step) => between(from, to, step / steps)))
      .toSorted((a, b) => a - b),
    zoneAt: (at) => zones.find(({ from, to }) => at > from && at < to)?.id,
  };
}

/**
 * The blank in pieces that stay flat while it is folded: panels, tabs, and narrow strips of every bend and folded edge.
 *
 * @returns facets, the same however far anything is turned; reliefs and holes are not taken out of them
 */
export function flatFacets(layout: FlatLayout): readonly FlatFacet[] {
  const zones = new Map(layout.chains.map((chain) => [chain.axis, zonesOf(chain)] as const));
  const cut = ({ id, polygon }: Pick<FlatPiece, "id" | "polygon">, axis: Axis): FlatFacet[] => {
    const { cuts, zoneAt } = zones.get(axis) as ChainZones;
    return slices(withoutSpurs(polygon), axis, cuts).map((slice): FlatFacet => {
      const zone = zoneAt(slice.middle);
      if (zone === undefined && id === "base") return { id, kind: "panel", polygon: slice.polygon };
      return { id: zone ?? id, kind: zone === undefined ? "panel" : "bend", polygon: slice.polygon, carrier: axis };
    });
  };
  return [
    ...layout.pieces.flatMap((piece): FlatFacet[] => {
      if (piece.side) return cut(piece, piece.axis);
      // Edges folded straight onto the base take a narrow strip of it on each side.
      const first = zones.has("y") ? cut(piece, "y") : [{ ...piece, kind: "panel" as const }];
      return first.flatMap((facet) => (facet.kind === "panel" && zones.has("x") ? cut({ ...facet, id: "base" }, "x") : [facet]));
    }),
    ...layout.tabs.flatMap((tab) => {
      const [inner, outer] = tab.tangents;
      const across = tab.axis === "x" ? "y" : "x";
      const at = (along: number, up: number): FlatPoint => ({ [tab.axis]: along, [across]: up }) as unknown as FlatPoint;
      const steps = stepsIn(90);
      const ends = [...Array.from({ length: steps + 1 }, (_, step) => between(inner, outer, step / steps)), tab.end];
      return ends.slice(1).map((to, index): FlatFacet => {
        const from = ends[index] as number;
        const { from: low, to: high } = tab.span;
        return {
          id: tab.id,
          kind: index === steps ? "tab" : "bend",
          polygon: [at(from, low), at(to, low), at(to, high), at(from, high)],
          carrier: tab,
        };
      });
    }),
  ];
}

/**
 * Carries places on the blank into space.
 *
 * @param turned - how far each bend is turned
 * @returns for a facet of this layout, where a place on it is
 */
export function lifting(layout: FlatLayout, turned: Turned): (facet: FlatFacet) => (point: FlatPoint) => Lifted {
  const { thickness } = layout.part;
  const along = new Map(layout.chains.map((chain) => [chain.axis, liftAlong(stations(chain, turned), chain.axis)] as const));
  const level = ({ x, y }: FlatPoint): Lifted => ({ near: { x, y, z: 0 }, far: { x, y, z: thickness } });
  return ({ carrier }) => {
    if (carrier === undefined) return level;
    if (typeof carrier === "string") return along.get(carrier) ?? level;
    return liftTab(carrier, layout, along.get(carrier.axis === "x" ? "y" : "x") ?? level, turned);
  };
}

/**
 * Folds the layout in space.
 *
 * @param layout - the flat layout; along the middle of a bend every length on it is kept while it is turned
 * @param turned - how far each bend, tab and folded edge is turned
 * @returns facets with both faces of the sheet
 * @remarks Geometry only, as `fold`: nothing here knows deductions. Both chains share the base, so each folds its own legs. A double
 *   folded edge follows the rule's flat length, in which its raw end lies about 1½ thicknesses deeper in the fold than there is room.
 */
export function foldInSpace(layout: FlatLayout, turned: Turned = 1): readonly Facet[] {
  const lift = lifting(layout, turned);
  return flatFacets(layout).map((facet) => {
    const places = facet.polygon.map(lift(facet));
    const [first, last] = [places[0], places[Math.floor(places.length / 2)]] as [Lifted, Lifted];
    const middle = (axis: "x" | "y" | "z") => first.far[axis] + last.far[axis] - first.near[axis] - last.near[axis];
    const [x, y, z] = [middle("x"), middle("y"), middle("z")];
    const length = Math.hypot(x, y, z);
    return {
      id: facet.id,
      kind: facet.kind,
      points: places.map(({ near }) => near),
      far: places.map(({ far }) => far),
      through: { x: x / length, y: y / length, z: z / length },
    };
  });
}
