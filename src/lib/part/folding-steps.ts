import { type Phrase, say } from "../quantity/phrase.ts";
import type { FlatLayout } from "./flatten.ts";
import type { Side } from "./form.ts";
import type { Edge } from "./model.ts";

/** What an order says of one of its steps. */
export interface OrderedStep {
  /** Id of the bend, tab or folded edge. */
  readonly bend: string;
  /** Tabs that are bent in the same go. */
  readonly tabs?: readonly string[];
}

/** One bend, tab or folded edge, as it is made in its turn. */
export interface FoldingStep {
  readonly id: string;
  /** Tabs that are bent in the same go. */
  readonly tabs: readonly string[];
  readonly what: "bend" | "tab" | "edge";
  /** [deg], turned through; of an edge, all its folds together */
  readonly angle: number;
  readonly way: "up" | "down";
  /** `bend north.1 up to 90°` */
  readonly words: Phrase;
}

const opposite: Readonly<Record<Side, Side>> = { north: "south", south: "north", east: "west", west: "east" };
const kindWords: Readonly<Record<Edge["kind"], string>> = {
  closed: "flat onto the sheet",
  open: "over, with a gap",
  teardrop: "over to a loop",
  double: "over twice",
};

function stepsById(layout: FlatLayout): Map<string, FoldingStep> {
  const steps = new Map<string, FoldingStep>();
  for (const { edgeLines } of layout.chains)
    for (const { edge } of edgeLines) {
      if (steps.has(edge.id)) continue;
      const words = say`fold the ${edge.side} edge ${edge.way}, ${kindWords[edge.kind]}`;
      steps.set(edge.id, {
        id: edge.id,
        tabs: [],
        what: "edge",
        angle: edge.kind === "double" ? 360 : 180,
        way: edge.way,
        words,
      });
    }
  const bent = (id: string, what: "bend" | "tab", angle: number, way: "up" | "down") =>
    steps.set(id, { id, tabs: [], what, angle, way, words: say`bend ${id} ${way} to ${Number(angle.toFixed(1))}°` });
  for (const { id, way } of layout.tabs) bent(id, "tab", 90, way);
  for (const { bends } of layout.chains) for (const { id, angle, way } of bends) bent(id, "bend", angle, way);
  return steps;
}

/**
 * An order to show a part in while none has been worked out for its brake.
 *
 * @returns ids of folded edges, then of tabs, then of bends: of the outermost first, so that each is made while what it stands on is still
 *   flat; and of two pairs of opposite sides the pair with fewer bends first, then the one with the shorter base side
 * @remarks Common practice for simple shapes; nothing here knows whether the piece clears a brake.
 */
export function usualFoldingOrder(layout: FlatLayout): readonly string[] {
  const edges = layout.chains.flatMap(({ startEdge, endEdge }) => [startEdge, endEdge].flatMap((edge) => edge?.id ?? []));
  const chains = layout.chains.toSorted(
    (a, b) =>
      a.bends.length - b.bends.length ||
      layout.part.base[a.axis === "y" ? "x" : "y"] - layout.part.base[b.axis === "y" ? "x" : "y"],
  );
  const place = (id: string) => Number(id.split(".")[1] ?? 0);
  const bends = chains.flatMap(({ bends: own }) =>
    own
      .toSorted((a, b) => place(b.id) - place(a.id) || (a.side === opposite[b.side] ? a.side.localeCompare(b.side) : 0))
      .map(({ id }) => id),
  );
  // Inner bends of both pairs wait until every rim is turned.
  const ranked = bends.toSorted((a, b) => Number(place(a) === 1) - Number(place(b) === 1));
  return [...edges, ...layout.tabs.map(({ id }) => id), ...ranked];
}

/**
 * What is folded, in order.
 *
 * @param order - bends, tabs and folded edges as they are made; tabs it leaves out are bent by hand before it, all else it leaves out
 *   follows in the usual order
 * @throws RangeError for an id that is not on the part
 */
export function foldingSteps(layout: FlatLayout, order: readonly OrderedStep[] = []): readonly FoldingStep[] {
  const steps = stepsById(layout);
  const stepOf = (id: string): FoldingStep => {
    const step = steps.get(id);
    if (!step) throw new RangeError(`order holds “${id}”; bends of this part are ${[...steps.keys()].join(", ")}`);
    return step;
  };
  const named = new Set(order.flatMap(({ bend, tabs = [] }) => [bend, ...tabs]));
  const left = usualFoldingOrder(layout)
    .filter((id) => !named.has(id))
    .map(stepOf);
  const given = order.map(({ bend, tabs = [] }): FoldingStep => {
    const step = stepOf(bend);
    const others = tabs.map((id) => stepOf(id).id);
    return others.length === 0 ? step : { ...step, tabs: others, words: say`${step.words}, with ${others.join(", ")}` };
  });
  if (given.length === 0) return left;
  return [...left.filter(({ what }) => what === "tab"), ...given, ...left.filter(({ what }) => what !== "tab")];
}

/**
 * How far everything is turned part way through an order.
 * @param position - 0 flat, 1 after the first step, up to the number of steps
 */
export function turnedAt(steps: readonly FoldingStep[], position: number): Readonly<Record<string, number>> {
  return Object.fromEntries(
    steps.flatMap(({ id, tabs }, index) => [id, ...tabs].map((each) => [each, Math.min(1, Math.max(0, position - index))])),
  );
}

/** Positions for a strip of stills: flat, finished, and steps between them, at most `most` in all. */
export function stillPositions(steps: readonly FoldingStep[], most = 6): readonly number[] {
  const last = steps.length;
  if (last === 0) return [0];
  if (last === 1) return [0, 0.5, 1];
  const count = Math.min(most, last + 1);
  return Array.from({ length: count }, (_, index) => Math.round((index * last) / (count - 1)));
}
