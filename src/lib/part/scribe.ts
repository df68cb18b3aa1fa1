import { nearestFraction } from "../quantity/fraction.ts";
import { fromBase } from "../quantity/units.ts";
import type { FlatLayout } from "./flatten.ts";
import { chainEnds } from "./model.ts";

/** One line to scribe: the caliper or gauge is set once and run along the datum edge. */
export interface ScribeLine {
  readonly number: number;
  /** Edge the setting is taken from. */
  readonly from: "south" | "west";
  /** Setting [mm] */
  readonly distance: number;
  /** [in] */
  readonly inch: number;
  readonly fraction: string;
  /** What the fraction is off by [mm]. */
  readonly fractionError: number;
  readonly what: string;
  /** `front`: the face that is up on the bench, which becomes the inside of bends up. */
  readonly face: "front" | "back";
  readonly kind: "sight" | "fold" | "hole";
  /** Ids of the bends or numbers of the holes it serves. */
  readonly for: readonly string[];
}

type Draft = Omit<ScribeLine, "number" | "inch" | "fraction" | "fractionError">;

/** Two settings closer than this are one line. */
const sameSetting = 0.005;

function merged(drafts: readonly Draft[]): Draft[] {
  const kept: Draft[] = [];
  for (const draft of drafts) {
    const same = kept.findIndex(
      (other) =>
        other.kind === "hole" &&
        draft.kind === "hole" &&
        other.face === draft.face &&
        Math.abs(other.distance - draft.distance) < sameSetting,
    );
    const other = kept[same];
    if (other) kept[same] = { ...other, for: [...other.for, ...draft.for] };
    else kept.push(draft);
  }
  return kept;
}

/**
 * The caliper settings in marking order: from the datum edge of the bends first, rising, then the cross lines of the holes.
 * Every setting is from one edge, so no error is carried from line to line.
 */
export function scribeList(layout: FlatLayout): readonly ScribeLine[] {
  const { part } = layout;
  const { start, end } = chainEnds[part.axis];
  const from = start as "south" | "west";
  const lines: Draft[] = [
    ...layout.bends.map(
      (bend): Draft => ({
        from,
        distance: bend.sightLine,
        what: `sight line of bend ${bend.id}`,
        // Seen under the nose of the fingers, which sits on the inside of the bend.
        face: bend.way === "up" ? "front" : "back",
        kind: "sight",
        for: [bend.id],
      }),
    ),
    ...layout.edgeLines.map(
      (edge): Draft => ({
        from,
        distance: edge.line,
        what: `fold line ${edge.turn} of the ${edge.side === "start" ? start : end} edge`,
        face: "front",
        kind: "fold",
        for: [`${edge.side === "start" ? start : end}.edge`],
      }),
    ),
  ];
  const cross = (axis: "x" | "y"): Draft[] =>
    layout.holes.map((hole) => ({
      from: axis === "x" ? "west" : "south",
      distance: axis === "x" ? hole.flatX : hole.flatY,
      what: "hole",
      face: "front",
      kind: "hole",
      for: [String(hole.index + 1)],
    }));
  const byDistance = (drafts: readonly Draft[]) => merged(drafts).toSorted((a, b) => a.distance - b.distance);
  const ordered = [...byDistance([...lines, ...cross(part.axis)]), ...byDistance(cross(part.axis === "x" ? "y" : "x"))];
  return ordered.map((draft, index) => {
    const fraction = nearestFraction(draft.distance);
    const holes = draft.for.length === 1 ? `hole ${draft.for[0]}` : `holes ${draft.for.join(", ")}`;
    return {
      ...draft,
      what: draft.kind === "hole" ? `centre line of ${holes}` : draft.what,
      number: index + 1,
      inch: fromBase(draft.distance, "length", "in"),
      fraction: fraction.text,
      fractionError: fraction.error,
    };
  });
}
