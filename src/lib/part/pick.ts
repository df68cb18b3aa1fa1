import type { FlatChain, FlatLayout, FlatPanel, FlatPoint } from "./flatten.ts";
import { inside } from "./geometry.ts";
import type { Axis } from "./model.ts";

/** Where a place of the blank lies on its panel, as holes are given: along and outwards. */
export interface OnPanel {
  readonly panel: string;
  /** [mm] */
  readonly x: number;
  readonly y: number;
}

const baseOf = (chain: FlatChain | undefined) => chain?.panels.find(({ id }) => id === "base");

/** Where the finished base begins on the blank in one direction [mm]. */
function baseStart(layout: FlatLayout, axis: Axis): number {
  const base = baseOf(layout.chains.find((chain) => chain.axis === axis));
  return base ? base.from - base.beforeSetback : 0;
}

/**
 * A place of the blank as a place on one of its panels: the way back of laying a hole out.
 *
 * @param layout - the flat layout
 * @param panel - id of the panel
 * @param point - place on the blank, from its west and south edges [mm]
 * @returns along and outwards on that panel [mm]; undefined where the part has no such panel
 */
export function toPanel(layout: FlatLayout, panel: string, point: FlatPoint): OnPanel | undefined {
  if (panel === "base") return { panel, x: point.x - baseStart(layout, "x"), y: point.y - baseStart(layout, "y") };
  for (const chain of layout.chains) {
    const found = chain.panels.findIndex(({ id }) => id === panel);
    if (found === -1) continue;
    const on = chain.panels[found] as FlatPanel;
    const crossing: Axis = chain.axis === "y" ? "x" : "y";
    const backwards = found < chain.panels.findIndex(({ id }) => id === "base");
    const along = point[chain.axis];
    return {
      panel,
      x: point[crossing] - baseStart(layout, crossing),
      y: backwards ? on.to + on.afterSetback - along : along - on.from + on.beforeSetback,
    };
  }
  return undefined;
}

/**
 * The panel under a place of the blank.
 *
 * @param layout - the flat layout
 * @param point - place on the blank, from its west and south edges [mm]
 * @returns the panel and the place on it [mm]; undefined on a bend, a folded edge or beside the metal
 */
export function pick(layout: FlatLayout, point: FlatPoint): OnPanel | undefined {
  const piece = layout.pieces.find(({ kind, polygon }) => kind === "panel" && inside(polygon, point));
  return piece && toPanel(layout, piece.id, point);
}
