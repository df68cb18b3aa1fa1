import { allowanceBy } from "../bending/methods.ts";
import { setback } from "../bending/setback.ts";
import { usualLegEnd } from "../bending/symbols.ts";
import { InputError } from "../input-error.ts";
import { mm, say } from "../quantity/phrase.ts";
import type { Bend, Hole, Panel, Part } from "./model.ts";

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
  /** Centre from the west and the south edge of the blank [mm]. */
  readonly flatX: number;
  readonly flatY: number;
}

/** The part unbent. `along` runs with the chain from the datum edge, `width` across it. */
export interface FlatLayout {
  readonly part: Part;
  readonly along: number;
  readonly panels: readonly FlatPanel[];
  readonly bends: readonly FlatBend[];
  readonly holes: readonly FlatHole[];
  /** Bend lines of folded edges from the datum edge, by side. */
  readonly edgeLines: readonly { readonly side: "start" | "end"; readonly line: number; readonly turn: number }[];
}

/** Length of a finished panel that lies inside one of its bends: to the outside or the inside apex or outermost point. */
export function finishedSetback(part: Part, bend: Bend): number {
  const { angle, radius } = bend;
  const outside = setback({ angle, radius, thickness: part.thickness, legTo: usualLegEnd(angle) });
  // The inside corner is the same figure about the inside face, so the thickness drops out of the reach.
  return part.measured === "outside" ? outside : (outside * radius) / (radius + part.thickness);
}

/**
 * Unbends a part.
 *
 * @returns panels, bend zones and holes by their distance from the datum edge of the blank: the south edge, or the west edge when the chain
 *   runs west to east
 * @throws InputError for a leg shorter than its bends need, or a hole that is not on its panel
 * @remarks Each panel's flat is its finished length less the setback of each bend at it; each bend zone is its allowance long.
 *   Source: FAA-H-8083-31 ch. 4 (developed width = flats + bend allowances).
 */
export function flatten(part: Part): FlatLayout {
  const { thickness } = part;
  let at = part.startEdge?.allowance ?? 0;
  const panels: FlatPanel[] = [];
  const bends: FlatBend[] = [];
  const setbacks = part.bends.map((bend) => finishedSetback(part, bend));

  part.panels.forEach((panel, index) => {
    const beforeSetback = index > 0 ? (setbacks[index - 1] as number) : 0;
    const afterSetback = index < part.bends.length ? (setbacks[index] as number) : 0;
    const flat = panel.length - beforeSetback - afterSetback;
    if (!(flat > 0))
      throw new InputError(
        panel.field,
        panel.length,
        say`${panelName(panel.id)} must be longer than ${mm(beforeSetback + afterSetback)}, the part of it that its ${index > 0 && index < part.bends.length ? "two bends take" : "bend takes"}; it is ${mm(panel.length)}.`,
      );
    panels.push({ ...panel, from: at, to: at + flat, beforeSetback, afterSetback });
    at += flat;
    const bend = part.bends[index];
    if (!bend) return;
    const size = { angle: bend.angle, radius: bend.radius, thickness };
    const { allowance } = allowanceFor(part, bend);
    const from = at;
    const to = at + allowance;
    bends.push({
      ...bend,
      from,
      to,
      allowance,
      deduction: 2 * setback({ ...size, legTo: usualLegEnd(bend.angle) }) - allowance,
      line: (from + to) / 2,
      sightLine: bend.baseBefore ? from + bend.radius : to - bend.radius,
    });
    at = to;
  });

  const along = at + (part.endEdge?.allowance ?? 0);
  const edgeLines = [
    ...(part.startEdge?.lines ?? []).map((line, index) => ({ side: "start" as const, line, turn: index + 1 })),
    ...(part.endEdge?.lines ?? []).map((line, index) => ({ side: "end" as const, line: along - line, turn: index + 1 })),
  ];
  return { part, along, panels, bends, edgeLines, holes: part.holes.map((hole) => placeHole(part, panels, hole)) };
}

/** @throws InputError at the radius when the method cannot take this bend */
function allowanceFor(part: Part, bend: Bend): { allowance: number } {
  const { angle, radius } = bend;
  return allowanceBy(part.bendData.choice, { angle, radius, thickness: part.thickness }, usualLegEnd(angle));
}

/** A panel in words: `Base`, `Leg north 2`. */
export function panelName(id: string): string {
  const [side, number] = id.split(".");
  return number === undefined ? "Base" : `Leg ${side} ${number}`;
}

function placeHole(part: Part, panels: readonly FlatPanel[], hole: Hole): FlatHole {
  const at = `holes.${hole.index}`;
  const panel = panels.find(({ id }) => id === hole.panel);
  if (!panel)
    throw new InputError(
      `${at}.panel`,
      hole.panel,
      say`Hole ${hole.index + 1} must be on a panel of this part: ${panels.map(({ id }) => id).join(", ")}; it is on “${hole.panel}”.`,
    );
  const isBase = panel.id === "base";
  const baseIndex = panels.findIndex(({ id }) => id === "base");
  const index = panels.indexOf(panel);
  // On the base the place is given from the west and south edges; on a leg along its bend and outwards from it.
  const alongKey = isBase && part.axis === "x" ? "x" : "y";
  const acrossKey = alongKey === "x" ? "y" : "x";
  const radius = hole.diameter / 2;
  const check = (key: "x" | "y", length: number) => {
    const value = hole[key];
    if (value - radius >= 0 && value + radius <= length) return;
    if (2 * radius > length)
      throw new InputError(
        `${at}.diameter`,
        hole.diameter,
        say`Hole ${hole.index + 1} must fit on its panel, ${mm(length)} across; its diameter is ${mm(hole.diameter)}.`,
      );
    throw new InputError(
      `${at}.${key}`,
      value,
      say`Hole ${hole.index + 1} must lie on ${panelName(panel.id)}: its centre from ${mm(radius)} to ${mm(length - radius)} ${key === alongKey && !isBase ? "from the bend" : "from the edge"}; it is ${mm(value)}.`,
    );
  };
  check(alongKey, panel.length);
  check(acrossKey, part.width);

  // Legs before the base along the chain are measured back towards the datum edge.
  const backwards = index < baseIndex;
  const along = backwards ? panel.to + panel.afterSetback - hole[alongKey] : panel.from - panel.beforeSetback + hole[alongKey];
  const across = hole[acrossKey];
  return part.axis === "y" ? { ...hole, flatX: across, flatY: along } : { ...hole, flatX: along, flatY: across };
}
