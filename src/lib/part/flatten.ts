import { allowanceBy } from "../bending/methods.ts";
import { setback } from "../bending/setback.ts";
import { usualLegEnd } from "../bending/symbols.ts";
import { InputError } from "../input-error.ts";
import { exactly } from "../inputs.ts";
import { atLeast, atMost, say } from "../quantity/phrase.ts";
import type { Attachment, Axis, Bend, Chain, Edge, Hole, Panel, Part } from "./model.ts";
import { type FlatCorner, type FlatPiece, type FlatPoint, type FlatTab, type Span, trace } from "./outline.ts";

export type { FlatCorner, FlatPiece, FlatPoint, FlatTab, Span } from "./outline.ts";

/** A stretch along the flat, from the datum edge [mm]. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface FlatPanel extends Panel, Stretch {
  /** How far the finished length reaches beyond each end of the stretch [mm]. */
  readonly beforeSetback: number;
  readonly afterSetback: number;
}

export interface FlatBend extends Bend, Stretch {
  readonly allowance: number;
  readonly deduction: number;
  /** Middle of the bend zone. */
  readonly line: number;
  /** Where the nose of the fingers is set: one radius inside the zone from the tangent line of the side that is clamped. */
  readonly sightLine: number;
}

export interface FlatHole extends Hole {
  /** Middle from the west and the south edge of the blank [mm]. */
  readonly flatX: number;
  readonly flatY: number;
  /** As it lies on the blank [deg], anticlockwise from west to east. */
  readonly flatTurn: number;
}

/** A spot of a piece welded on, on the blank [mm]. */
export interface FlatAttachment extends Attachment {
  readonly flatX: number;
  readonly flatY: number;
}

/** One chain unbent. `along` runs with it from its datum edge. */
export interface FlatChain extends Chain {
  readonly part: Part;
  readonly along: number;
  readonly panels: readonly FlatPanel[];
  readonly bends: readonly FlatBend[];
  /** Bend lines of folded edges from the datum edge, by side. */
  readonly edgeLines: readonly { readonly edge: Edge; readonly line: number; readonly turn: number }[];
}

/** The part unbent, seen with the face up that lies on top on the bench: x from the west edge, y from the south edge. */
export interface FlatLayout {
  readonly part: Part;
  readonly chains: readonly FlatChain[];
  /** West to east, south to north [mm]. */
  readonly width: number;
  readonly depth: number;
  readonly holes: readonly FlatHole[];
  readonly attachments: readonly FlatAttachment[];
  /** Edge of the blank, anticlockwise from its south-west, relief holes not taken out. */
  readonly outline: readonly FlatPoint[];
  readonly corners: readonly FlatCorner[];
  readonly tabs: readonly FlatTab[];
  readonly pieces: readonly FlatPiece[];
  /** Extent of each bend and panel along its bend lines [mm], by id; of edges too. */
  readonly spans: Readonly<Record<string, Span>>;
}

/** Every bend of the part, tabs left out. */
export const bendsOf = (layout: FlatLayout): readonly FlatBend[] => layout.chains.flatMap(({ bends }) => bends);

/** Base panel of a direction: its own chain's, or the whole base where nothing is bent about lines across that direction. */
export type Frame = Readonly<Record<Axis, Pick<FlatPanel, "from" | "to" | "beforeSetback" | "afterSetback">>>;

/** Length of a finished panel that lies inside one of its bends: to the outside or the inside apex or outermost point. */
export function finishedSetback(part: Part, bend: Bend): number {
  const { angle, radius } = bend;
  const outside = setback({ angle, radius, thickness: part.thickness, legTo: usualLegEnd(angle) });
  // The inside corner is the same figure about the inside face, so the thickness drops out of the reach.
  return part.measured === "outside" ? outside : (outside * radius) / (radius + part.thickness);
}

/** What binary arithmetic leaves of a panel that is just as long as its bends take [mm]. */
const noFlat = 1e-9;

/** @throws InputError for a leg shorter than its bends need */
function flattenChain(part: Part, chain: Chain): FlatChain {
  const { thickness } = part;
  let at = chain.startEdge?.allowance ?? 0;
  const panels: FlatPanel[] = [];
  const bends: FlatBend[] = [];
  const setbacks = chain.bends.map((bend) => finishedSetback(part, bend));

  chain.panels.forEach((panel, index) => {
    const beforeSetback = index > 0 ? (setbacks[index - 1] as number) : 0;
    const afterSetback = index < chain.bends.length ? (setbacks[index] as number) : 0;
    const flat = panel.length - beforeSetback - afterSetback;
    if (!(flat > noFlat))
      throw new InputError(
        panel.field,
        panel.length,
        say`${panelName(panel.id)} must be longer than ${atLeast(beforeSetback + afterSetback)}, the part of it that its ${index > 0 && index < chain.bends.length ? "two bends take" : "bend takes"}; it is ${exactly(panel.length, "length")}.`,
      );
    panels.push({ ...panel, from: at, to: at + flat, beforeSetback, afterSetback });
    at += flat;
    const bend = chain.bends[index];
    if (!bend) return;
    const allowance = allowanceFor(part, bend);
    const from = at;
    const to = at + allowance;
    bends.push({
      ...bend,
      from,
      to,
      allowance,
      deduction: 2 * setback({ angle: bend.angle, radius: bend.radius, thickness, legTo: usualLegEnd(bend.angle) }) - allowance,
      line: (from + to) / 2,
      sightLine: bend.baseBefore ? from + bend.radius : to - bend.radius,
    });
    at = to;
  });

  const { startEdge, endEdge } = chain;
  const along = at + (endEdge?.allowance ?? 0);
  const edgeLines = [
    ...(startEdge ? startEdge.lines.map((line, index) => ({ edge: startEdge, line, turn: index + 1 })) : []),
    ...(endEdge ? endEdge.lines.map((line, index) => ({ edge: endEdge, line: along - line, turn: index + 1 })) : []),
  ];
  return { ...chain, part, along, panels, bends, edgeLines };
}

/**
 * Unbends a part.
 *
 * @returns panels, bend zones, holes and the edge of the blank by their distance from its west and south edges
 * @throws InputError for a leg shorter than its bends need, a hole that is not on its panel, tabs that have no neighbour to lie on
 * @remarks Each panel's flat is its finished length less the setback of each bend at it; each bend zone is its allowance long.
 *   Source: FAA-H-8083-31 ch. 4 (developed width = flats + bend allowances).
 */
export function flatten(part: Part): FlatLayout {
  const chains = part.chains.map((chain) => flattenChain(part, chain));
  const of = (axis: Axis) => chains.find((chain) => chain.axis === axis);
  const frameOf = (axis: Axis) =>
    of(axis)?.panels.find(({ id }) => id === "base") ?? { from: 0, to: part.base[axis], beforeSetback: 0, afterSetback: 0 };
  const frame: Frame = { x: frameOf("x"), y: frameOf("y") };
  const tabAllowance = () => allowanceFor(part, { angle: 90, radius: part.radius });
  return {
    part,
    chains,
    width: of("x")?.along ?? part.base.x,
    depth: of("y")?.along ?? part.base.y,
    holes: part.holes.map((hole) => placeHole(part, chains, frame, hole)),
    attachments: part.attachments.map((spot) => {
      const { flatX, flatY } = placeHole(part, chains, frame, { ...spot, ...aSpot }, "Spot");
      return { ...spot, flatX, flatY };
    }),
    ...trace(part, chains, frame, tabAllowance),
  };
}

/** @throws InputError at the radius when the method cannot take this bend */
function allowanceFor(part: Part, { angle, radius }: Pick<Bend, "angle" | "radius">): number {
  return allowanceBy(part.bendData.choice, { angle, radius, thickness: part.thickness }, usualLegEnd(angle)).allowance;
}

/** A panel in words: `Base`, `Leg north 2`. */
export function panelName(id: string): string {
  const [side, number] = id.split(".");
  return number === undefined ? "Base" : `Leg ${side} ${number}`;
}

/** How far a hole reaches from its middle along and outwards [mm], turned as it is. */
export function holeReach({ shape, width, height, turn }: Hole): { readonly x: number; readonly y: number } {
  const cos = Math.abs(Math.cos((turn * Math.PI) / 180));
  const sin = Math.abs(Math.sin((turn * Math.PI) / 180));
  if (shape === "round" || shape === "slot") {
    // A slot is its narrow width carried along its middle line.
    const half = Math.min(width, height) / 2;
    const x = width / 2 - half;
    const y = height / 2 - half;
    return { x: x * cos + y * sin + half, y: x * sin + y * cos + half };
  }
  return { x: (width * cos + height * sin) / 2, y: (width * sin + height * cos) / 2 };
}

/** A spot is placed as a hole of no size is. */
const aSpot = { shape: "round", width: 0, height: 0, turn: 0 } as const;

function placeHole(part: Part, chains: readonly FlatChain[], frame: Frame, hole: Hole, called = "Hole"): FlatHole {
  const at = hole.field;
  const chain = chains.find(({ panels }) => panels.some(({ id }) => id === hole.panel));
  const panel = chain?.panels.find(({ id }) => id === hole.panel);
  if (!chain || !panel) {
    const ids = new Set(chains.flatMap(({ panels }) => panels.map(({ id }) => id)));
    throw new InputError(
      `${at}.panel`,
      hole.panel,
      say`${called} ${hole.number} must be on a panel of this part: ${[...ids].join(", ")}; it is on “${hole.panel}”.`,
    );
  }
  const isBase = panel.id === "base";
  const reach = holeReach(hole);
  const check = (key: "x" | "y", length: number, from: string) => {
    const value = hole[key];
    const half = reach[key];
    const closeTo = 1e-9;
    if (value - half >= -closeTo && value + half <= length + closeTo) return;
    if (2 * half > length + closeTo) {
      const size = hole.shape === "round" ? "diameter" : key === "x" ? "width" : "height";
      throw new InputError(
        `${at}.${at.startsWith("cutouts") ? (key === "x" ? "width" : "height") : "diameter"}`,
        hole.width,
        say`${called} ${hole.number} must fit on its panel, ${atMost(length)} across; its ${size} is ${exactly(key === "x" ? hole.width : hole.height, "length")}.`,
      );
    }
    throw new InputError(
      `${at}.${key}`,
      value,
      say`${called} ${hole.number} must lie on ${panelName(panel.id)}: its centre from ${atLeast(half)} to ${atMost(length - half)} ${from}; it is ${exactly(value, "length")}.`,
    );
  };
  if (isBase) {
    check("x", part.base.x, "from the edge");
    check("y", part.base.y, "from the edge");
    const flatX = frame.x.from - frame.x.beforeSetback + hole.x;
    const flatY = frame.y.from - frame.y.beforeSetback + hole.y;
    return { ...hole, flatX, flatY, flatTurn: hole.turn };
  }
  const crossing = chain.axis === "y" ? "x" : "y";
  check("y", panel.length, "from the bend");
  check("x", part.base[crossing], "from the edge");
  // Legs before the base along the chain are measured back towards the datum edge.
  const backwards = chain.panels.indexOf(panel) < chain.panels.findIndex(({ id }) => id === "base");
  const outwards = backwards ? panel.to + panel.afterSetback - hole.y : panel.from - panel.beforeSetback + hole.y;
  const across = frame[crossing].from - frame[crossing].beforeSetback + hole.x;
  return chain.axis === "y"
    ? { ...hole, flatX: across, flatY: outwards, flatTurn: backwards ? -hole.turn : hole.turn }
    : { ...hole, flatX: outwards, flatY: across, flatTurn: backwards ? 90 + hole.turn : 90 - hole.turn };
}
