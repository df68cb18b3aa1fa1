import type { FoldedEdgeKind } from "../../bending/symbols.ts";
import type { Brake } from "../../catalogue.ts";

/** Straight flat length between tangent lines, where it lies on the blank [mm]. */
export interface FormingPanel {
  readonly id: string;
  /** Along the chain, from the datum edge of the blank. */
  readonly from: number;
  readonly to: number;
  /** Along the bend lines, from the other datum edge of the blank, where the panel is widest. */
  readonly span: readonly [number, number];
  /** The same where it begins, towards the base; left out where it is as wide there. Sides that lean outwards begin narrower. */
  readonly root?: readonly [number, number];
}

/** A bend between two panels that follow each other; its zone is what lies between them. */
export interface FormingBend {
  readonly id: string;
  /** Turned through when finished [deg]; above 0 to below 180 */
  readonly angle: number;
  readonly way: "up" | "down";
  /** Inside [mm] */
  readonly radius: number;
  /** How far the leaf goes [deg], springback included; at least `angle` */
  readonly swing: number;
}

/** A folded edge beyond the first or the last panel, which ends where the finished edge is. */
export interface FormingEdge {
  readonly id: string;
  readonly kind: FoldedEdgeKind;
  readonly way: "up" | "down";
  /** Finished [mm] */
  readonly width: number;
  /** Clear height inside [mm]; 0 for closed and double */
  readonly gap: number;
  /** What it adds to the flat beyond the finished edge [mm] */
  readonly allowance: number;
}

/**
 * A tab at the end of a wall, bent about a line across the wall. The leaf is as long as the brake and would take the neighbouring side
 * along, so tabs are bent by hand before everything else.
 */
export interface FormingTab {
  readonly id: string;
  /** Panel it hangs on, in the chain that lists it. */
  readonly panel: string;
  /** Bend of the side it will lie on, in the other chain: that side is turned before the tab's own wall. */
  readonly onto: string;
  /** End of that panel's span at which it is. */
  readonly end: "low" | "high";
  /** Its extent along the chain [mm], inside the panel's. */
  readonly from: number;
  readonly to: number;
  /** Straight flat length beyond its bend [mm] */
  readonly length: number;
  readonly angle: number;
  readonly way: "up" | "down";
  readonly radius: number;
}

/** Panels in a row, bent about parallel lines. */
export interface FormingChain {
  /** Direction in which the panels follow each other. */
  readonly axis: "x" | "y";
  readonly baseIndex: number;
  readonly panels: readonly FormingPanel[];
  /** One fewer than panels; bend i is between panels i and i + 1. */
  readonly bends: readonly FormingBend[];
  readonly startEdge?: FormingEdge;
  readonly endEdge?: FormingEdge;
  readonly tabs?: readonly FormingTab[];
}

/** What has to be bent: one chain, or two that share the base. */
export interface FormingJob {
  /** T [mm] */
  readonly thickness: number;
  readonly chains: readonly FormingChain[];
}

/** What the search needs to know of a brake. */
export type FormingBrake = Omit<Brake, "name" | "rating"> & { readonly rating: { readonly length: number } };

/** A fold in a chain as the search sees it: a bend, or a folded edge. Lengths in mm, angles in degrees. */
export interface Hinge {
  readonly id: string;
  readonly edge: FormingEdge | undefined;
  readonly angle: number;
  readonly up: boolean;
  readonly radius: number;
  readonly swing: number;
  /** Flat length of its zone. */
  readonly zone: number;
}

export interface ChainPanel extends FormingPanel {
  /** Flat length before and after the hinge of a folded edge at it is made. */
  readonly flat: number;
  readonly formed: number;
}

/** A chain whose folded edges have become panels and hinges like the others. */
export interface HingeChain {
  readonly panels: readonly ChainPanel[];
  readonly hinges: readonly Hinge[];
  readonly baseIndex: number;
}

/** Radius at which the outer layer of a folded edge turns: a double one closes round one sheet. */
function edgeRadius({ kind, gap }: FormingEdge, thickness: number): number {
  if (kind === "closed") return 0;
  return kind === "double" ? thickness / 2 : gap / 2;
}

function edgeHinge(edge: FormingEdge, panel: FormingPanel, atEnd: boolean, thickness: number) {
  const radius = edgeRadius(edge, thickness);
  const angle = 180;
  const zone = Math.PI * (radius + thickness / 2);
  const back = radius + thickness;
  const beyond = Math.max(zone, back + edge.allowance);
  const length = Math.max(0, panel.to - panel.from - back);
  const held: FormingPanel = atEnd ? { ...panel, to: panel.from + length } : { ...panel, from: panel.to - length };
  const start = atEnd ? held.to + zone : held.from - beyond;
  const flap: ChainPanel = {
    id: edge.id,
    from: start,
    to: start + beyond - zone,
    span: panel.span,
    flat: beyond - zone,
    formed: Math.max(0, edge.width - back),
  };
  const hinge: Hinge = { id: edge.id, edge, angle, up: edge.way === "up", radius, swing: angle, zone };
  return { held, flap, hinge };
}

/** Puts the folded edges of a chain among its panels and hinges. */
export function hingeChain(chain: FormingChain, thickness: number): HingeChain {
  const plain = (panel: FormingPanel): ChainPanel => ({ ...panel, flat: panel.to - panel.from, formed: panel.to - panel.from });
  const given = [...chain.panels];
  const panels: ChainPanel[] = [];
  const hinges: Hinge[] = [];
  const start = chain.startEdge && edgeHinge(chain.startEdge, given[0] as FormingPanel, false, thickness);
  if (start) given[0] = start.held;
  const end = chain.endEdge && edgeHinge(chain.endEdge, given.at(-1) as FormingPanel, true, thickness);
  if (end) given[given.length - 1] = end.held;
  if (start) {
    panels.push(start.flap);
    hinges.push(start.hinge);
  }
  given.forEach((panel, index) => {
    panels.push(plain(panel));
    const bend = chain.bends[index];
    const next = given[index + 1];
    if (!bend || !next) return;
    const { id, angle, radius, swing } = bend;
    hinges.push({ id, edge: undefined, angle, up: bend.way === "up", radius, swing, zone: Math.max(0, next.from - panel.to) });
  });
  if (end) {
    panels.push(end.flap);
    hinges.push(end.hinge);
  }
  return { panels, hinges, baseIndex: chain.baseIndex + (start ? 1 : 0) };
}
