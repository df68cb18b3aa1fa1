import { nearestFraction } from "../quantity/fraction.ts";
import { fromBase } from "../quantity/units.ts";
import type { FlatLayout } from "./flatten.ts";
import { type Axis, chainEnds } from "./model.ts";

/** One setting as the tools at the bench show it. */
export interface Readings {
  /** [mm] */
  readonly distance: number;
  /** [in] */
  readonly inch: number;
  readonly fraction: string;
  /** What the fraction is off by [mm]. */
  readonly fractionError: number;
}

/** A distance [mm] in millimetres, inches and the nearest 1/64 in. */
export function readings(distance: number): Readings {
  const fraction = nearestFraction(distance);
  return { distance, inch: fromBase(distance, "length", "in"), fraction: fraction.text, fractionError: fraction.error };
}

/** One line to scribe: the caliper or gauge is set once and run along the datum edge. */
export interface ScribeLine extends Readings {
  readonly number: number;
  /** Edge the setting is taken from. */
  readonly from: "south" | "west";
  readonly what: string;
  /** `front`: the face that is up on the bench, which becomes the inside of bends up. */
  readonly face: "front" | "back";
  readonly kind: "sight" | "fold" | "notch" | "relief" | "hole" | "spot";
  /** Ids of the bends, corners or tabs, or numbers of the holes it serves. */
  readonly for: readonly string[];
}

type Draft = Omit<ScribeLine, "number" | "inch" | "fraction" | "fractionError">;

/** Two settings closer than this are one line. */
const sameSetting = 0.005;

/** Lines of one kind at one setting are scribed once. */
function merged(drafts: readonly Draft[]): Draft[] {
  const kept: Draft[] = [];
  for (const draft of drafts) {
    const same = kept.findIndex(
      (other) =>
        other.kind === draft.kind &&
        other.kind !== "fold" &&
        other.face === draft.face &&
        Math.abs(other.distance - draft.distance) < sameSetting,
    );
    const other = kept[same];
    if (other) kept[same] = { ...other, for: [...other.for, ...draft.for.filter((each) => !other.for.includes(each))] };
    else kept.push(draft);
  }
  return kept;
}

/** What each kind of line is called, with the things it serves. */
function words({ kind, what, for: served }: Draft): string {
  const all = served.join(", ");
  switch (kind) {
    case "sight":
      return `sight line of ${served.length === 1 ? "bend" : "bends"} ${all}`;
    case "notch":
      return `${served.length === 1 ? "side of notch" : "sides of notches"} ${all}`;
    case "relief":
      return `${served.length === 1 ? "middle of relief" : "middles of reliefs"} ${all}`;
    case "spot":
      return `joints of ${all}`;
    case "hole":
      return `centre line of ${served.length === 1 ? "hole" : "holes"} ${all}`;
    default:
      return what;
  }
}

/**
 * The caliper settings in marking order: for each direction from its datum edge, rising, directions with bends first.
 * Every setting is from one of two edges, so no error is carried from line to line.
 */
export function scribeList(layout: FlatLayout): readonly ScribeLine[] {
  const lines: Record<Axis, Draft[]> = { x: [], y: [] };
  const edgeOf = (axis: Axis) => chainEnds[axis].start as ScribeLine["from"];
  const add = (axis: Axis, draft: Omit<Draft, "from" | "what" | "face"> & Partial<Draft>) =>
    lines[axis].push({ what: "", face: "front", ...draft, from: edgeOf(axis) });

  for (const chain of layout.chains) {
    for (const bend of chain.bends)
      add(chain.axis, {
        distance: bend.sightLine,
        // Seen under the nose of the fingers, which sits on the inside of the bend.
        face: bend.way === "up" ? "front" : "back",
        kind: "sight",
        for: [bend.id],
      });
    for (const { edge, line, turn } of chain.edgeLines)
      add(chain.axis, {
        distance: line,
        what: `fold line ${turn} of the ${edge.side} edge`,
        face: edge.way === "up" ? "front" : "back",
        kind: "fold",
        for: [edge.id],
      });
  }
  for (const tab of layout.tabs)
    add(tab.axis, { distance: tab.sightLine, face: tab.way === "up" ? "front" : "back", kind: "sight", for: [tab.id] });
  for (const corner of layout.corners) {
    add("y", { distance: corner.notch.y, kind: "notch", for: [corner.id] });
    add("x", { distance: corner.notch.x, kind: "notch", for: [corner.id] });
    if (!corner.relief) continue;
    add("y", { distance: corner.y, kind: "relief", for: [corner.id] });
    add("x", { distance: corner.x, kind: "relief", for: [corner.id] });
  }
  const cross = (point: { x: number; y: number }, kind: "hole" | "spot", served: string) => {
    add("y", { distance: point.y, kind, for: [served] });
    add("x", { distance: point.x, kind, for: [served] });
  };
  for (const hole of layout.holes) cross({ x: hole.flatX, y: hole.flatY }, "hole", String(hole.number));
  for (const { number, flatX, flatY } of layout.attachments) cross({ x: flatX, y: flatY }, "spot", `spot ${number}`);
  for (const { id, joints } of layout.tabs)
    for (const { tab, wall } of joints) {
      cross(tab, "spot", id);
      cross(wall, "spot", id);
    }

  const first: Axis = layout.chains[0]?.axis ?? "y";
  const ordered = ([first, first === "y" ? "x" : "y"] as const).flatMap((axis) =>
    merged(lines[axis]).toSorted((a, b) => a.distance - b.distance),
  );
  return ordered.map((draft, index) => ({
    ...draft,
    ...readings(draft.distance),
    what: words(draft),
    number: index + 1,
  }));
}
