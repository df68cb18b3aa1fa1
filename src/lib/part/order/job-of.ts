import { swingFor } from "../bend-checks.ts";
import type { FlatChain, FlatLayout, FlatTab } from "../flatten.ts";
import type { Edge } from "../model.ts";
import type { FormingChain, FormingEdge, FormingJob, FormingTab } from "./job.ts";

/** Corners of a piece nearer to a line than this lie on it [mm]. */
const sameLine = 1e-6;
/** Farther than any leaf goes [deg]: stands for a bend that would spring back flat. */
const neverEnough = 360;

function edgeOf({ id, kind, way, width, gap, allowance }: Edge): FormingEdge {
  return { id, kind, way, width, gap: kind === "open" || kind === "teardrop" ? gap : 0, allowance };
}

function tabOf({ id, on, onto, tangents, end, span, way, radius }: FlatTab): FormingTab {
  const [root, beyond] = tangents;
  return {
    id,
    panel: on,
    onto,
    end: end < root ? "low" : "high",
    from: span.from,
    to: span.to,
    length: Math.abs(end - beyond),
    angle: 90,
    way,
    radius,
  };
}

/** Extent of a panel along its bend at the end where it begins. */
function rootOf(layout: FlatLayout, chain: FlatChain, id: string, foot: number): [number, number] | undefined {
  const [alongKey, acrossKey] = chain.axis === "y" ? (["y", "x"] as const) : (["x", "y"] as const);
  const piece = layout.pieces.find((each) => each.kind === "panel" && each.id === id);
  const ends = (piece?.polygon ?? [])
    .filter((point) => Math.abs(point[alongKey] - foot) < sameLine)
    .map((point) => point[acrossKey]);
  return ends.length > 1 ? [Math.min(...ends), Math.max(...ends)] : undefined;
}

/**
 * What a flat layout asks of the brake.
 * @returns the job for `bendOrder`; its panels and spans are where they lie on the blank
 */
export function formingJob(layout: FlatLayout): FormingJob {
  const { part, chains, spans } = layout;
  const chainOf = (chain: FlatChain): FormingChain => {
    const across = chains.find((other) => other !== chain)?.panels.find(({ id }) => id === "base");
    const baseSpan = across ?? { from: 0, to: chain.axis === "y" ? layout.width : layout.depth };
    const own = new Set(chain.panels.map(({ id }) => id));
    const { startEdge, endEdge } = chain;
    const baseIndex = chain.panels.findIndex(({ id }) => id === "base");
    return {
      axis: chain.axis,
      baseIndex,
      panels: chain.panels.map(({ id, from, to }, index) => {
        const span = spans[id] ?? baseSpan;
        const foot = index < baseIndex ? to : index > baseIndex ? from : undefined;
        const root = foot === undefined ? undefined : rootOf(layout, chain, id, foot);
        return { id, from, to, span: [span.from, span.to], ...(root && { root }) };
      }),
      bends: chain.bends.map(({ id, angle, way, radius }) => ({
        id,
        angle,
        way,
        radius,
        swing: swingFor(part.material, { angle, radius, thickness: part.thickness })?.swingAngle ?? neverEnough,
      })),
      tabs: layout.tabs.filter(({ on }) => own.has(on)).map(tabOf),
      ...(startEdge && { startEdge: edgeOf(startEdge) }),
      ...(endEdge && { endEdge: edgeOf(endEdge) }),
    };
  };
  return { thickness: part.thickness, chains: chains.map(chainOf) };
}
