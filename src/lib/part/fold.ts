import { usualLegEnd } from "../bending/symbols.ts";
import type { FlatChain } from "./flatten.ts";

interface Point {
  readonly x: number;
  readonly z: number;
}

/** One straight panel of the folded section: its face that lay on the bench, from start to end. */
export interface FoldedPanel {
  readonly id: string;
  readonly start: Point;
  readonly end: Point;
  /** Direction of the panel [deg], 0 along the base. */
  readonly heading: number;
}

export interface FoldedBend {
  readonly id: string;
  /** Axis of the bend. */
  readonly centre: Point;
  /** Radius of the bench-side face, inside or outside as the bend goes [mm]. */
  readonly faceRadius: number;
  readonly up: boolean;
  readonly from: number;
  readonly to: number;
}

/** The cross-section of the bent part, base level, in the plane across the bends. */
export interface FoldedSection {
  readonly panels: readonly FoldedPanel[];
  readonly bends: readonly FoldedBend[];
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const step = (from: Point, heading: number, length: number): Point => ({
  x: from.x + length * Math.cos(radians(heading)),
  z: from.z + length * Math.sin(radians(heading)),
});

/**
 * Bends a flat chain: every zone becomes an arc of its radius, every panel stays straight.
 *
 * @param chain - the chain, flat
 * @param share - how far each bend is turned, 0 flat to 1 finished; one number for all, or one for each bend
 * @returns the section, walked along the face that lay on the bench
 * @remarks Geometry only: nothing here knows allowances, setbacks or deductions, so it is an independent way back to the finished sizes.
 */
export function fold(chain: FlatChain, share: number | readonly number[] = 1): FoldedSection {
  const { thickness } = chain.part;
  const panels: FoldedPanel[] = [];
  const bends: FoldedBend[] = [];
  let at: Point = { x: 0, z: 0 };
  let heading = 0;
  chain.panels.forEach((panel, index) => {
    const end = step(at, heading, panel.to - panel.from);
    panels.push({ id: panel.id, start: at, end, heading });
    at = end;
    const bend = chain.bends[index];
    if (!bend) return;
    const turned = bend.angle * (typeof share === "number" ? share : (share[index] ?? 1));
    if (turned === 0) {
      at = step(at, heading, bend.to - bend.from);
      return;
    }
    const up = bend.way === "up";
    const faceRadius = up ? bend.radius + thickness : bend.radius;
    const centre = step(at, heading + (up ? 90 : -90), faceRadius);
    const turnedHeading = heading + (up ? turned : -turned);
    bends.push({ id: bend.id, centre, faceRadius, up, from: heading, to: turnedHeading });
    heading = turnedHeading;
    at = step(centre, heading + (up ? -90 : 90), faceRadius);
  });
  const base = panels.find(({ id }) => id === "base") as FoldedPanel;
  return turnLevel({ panels, bends }, base);
}

/** Turns and shifts the section so that the base lies level with its start at the origin. */
function turnLevel(section: FoldedSection, base: FoldedPanel): FoldedSection {
  const back = -base.heading;
  const cos = Math.cos(radians(back));
  const sin = Math.sin(radians(back));
  const move = (point: Point): Point => {
    const x = point.x - base.start.x;
    const z = point.z - base.start.z;
    return { x: x * cos - z * sin, z: x * sin + z * cos };
  };
  return {
    panels: section.panels.map((panel) => ({
      ...panel,
      start: move(panel.start),
      end: move(panel.end),
      heading: panel.heading + back,
    })),
    bends: section.bends.map((bend) => ({ ...bend, centre: move(bend.centre), from: bend.from + back, to: bend.to + back })),
  };
}

function faceOffset(panel: FoldedPanel, offset: number): { start: Point; end: Point } {
  return { start: step(panel.start, panel.heading + 90, offset), end: step(panel.end, panel.heading + 90, offset) };
}

function along(from: Point, heading: number, to: Point): number {
  return (to.x - from.x) * Math.cos(radians(heading)) + (to.z - from.z) * Math.sin(radians(heading));
}

/** Where two lines meet, each given by a point and a heading. */
function crossing(a: Point, headingA: number, b: Point, headingB: number): Point {
  const turn = Math.sin(radians(headingB - headingA));
  const length = ((b.x - a.x) * Math.sin(radians(headingB)) - (b.z - a.z) * Math.cos(radians(headingB))) / turn;
  return step(a, headingA, length);
}

/**
 * Measures a folded section as calipers would: each panel between the apexes or outermost points of its bends, or a free edge.
 * @returns finished length by panel id [mm], measured outside or inside as the part is
 */
export function measure({ part }: FlatChain, section: FoldedSection): Readonly<Record<string, number>> {
  const outside = part.measured === "outside";
  const reach = (panelIndex: number, bendIndex: number, atEnd: boolean): number => {
    const panel = section.panels[panelIndex] as FoldedPanel;
    const bend = section.bends[bendIndex] as FoldedBend;
    const neighbour = section.panels[atEnd ? panelIndex + 1 : panelIndex - 1] as FoldedPanel;
    // The bench-side face is outside in a bend up, inside in a bend down; the other face is one thickness away.
    const face = outside === bend.up ? 0 : part.thickness;
    const radius = bend.up ? bend.faceRadius - face : bend.faceRadius + face;
    const own = faceOffset(panel, face);
    const other = faceOffset(neighbour, face);
    const from = atEnd ? own.start : own.end;
    const heading = atEnd ? panel.heading : panel.heading + 180;
    if (usualLegEnd(Math.abs(bend.to - bend.from)) === "apex")
      return along(from, heading, crossing(from, heading, other.start, neighbour.heading));
    return along(from, heading, step(bend.centre, heading, radius));
  };
  return Object.fromEntries(
    section.panels.map((panel, index) => {
      const flat = along(panel.start, panel.heading, panel.end);
      const before = index > 0 ? reach(index, index - 1, false) - flat : 0;
      const after = index < section.bends.length ? reach(index, index, true) - flat : 0;
      return [panel.id, flat + before + after];
    }),
  );
}
