import { type Readings, readings } from "../scribe.ts";
import type { RolledSheet } from "./model.ts";

/** What a line is measured from. */
export type ScribeFrom =
  | "west"
  | "south"
  | "centre O"
  | "arc middle"
  | "arc end"
  | "joint"
  | "edge A"
  | "edge B"
  | "seam A"
  | "seam B";

/** One thing to mark on the blank of a rolled part, in marking order. */
export interface RolledLine extends Readings {
  readonly number: number;
  readonly from: ScribeFrom;
  readonly kind: "line" | "point" | "arc" | "step" | "check";
  readonly what: string;
}

type Draft = Omit<RolledLine, "number" | keyof Readings> & { readonly distance: number };

const closeTo = 0.005;

/** Lines of one kind from one edge at one distance are drawn once. */
function merged(drafts: readonly Draft[]): Draft[] {
  const kept: Draft[] = [];
  for (const draft of drafts) {
    const same = kept.findIndex(
      (other) => other.from === draft.from && other.kind === draft.kind && Math.abs(other.distance - draft.distance) < closeTo,
    );
    const other = kept[same];
    if (!other) kept.push(draft);
    else if (!other.what.split("; ").includes(draft.what)) kept[same] = { ...other, what: `${other.what}; ${draft.what}` };
  }
  return kept;
}

/** Both lines through the middle of every hole. */
function holeLines({ holes }: RolledSheet): Draft[] {
  return holes.flatMap(({ number, flatX, flatY }): Draft[] => [
    { from: "west", distance: flatX, kind: "line", what: `centre line of hole ${number}` },
    { from: "south", distance: flatY, kind: "line", what: `centre line of hole ${number}` },
  ]);
}

const rising = (drafts: readonly Draft[], from: ScribeFrom) =>
  merged(drafts.filter((draft) => draft.from === from)).toSorted((a, b) => a.distance - b.distance);

/** A tube: every setting from the west or the south edge. */
function tubeLines(sheet: RolledSheet): Draft[] {
  const { seam, width, joints } = sheet;
  const drafts = holeLines(sheet);
  for (const { side, distance, what } of seam.lines)
    drafts.push({ from: "west", distance: side === "A" ? distance : width - distance, kind: "line", what });
  for (const { a, b } of joints)
    drafts.push(
      { from: "west", distance: a.x, kind: "line", what: "centre line of the joints" },
      { from: "west", distance: b.x, kind: "line", what: "centre line of the joints" },
      { from: "south", distance: a.y, kind: "line", what: "joint" },
    );
  // The middle line is laid to the rolls, and shows whether the sheet runs askew.
  drafts.push({ from: "west", distance: width / 2, kind: "line", what: "middle, to be kept square to the rolls" });
  return [...rising(drafts, "west"), ...rising(drafts, "south")];
}

/** A cone: the middle line, the centre, two arcs, the ends of the seam lines, then what lies beside these. */
function coneLines(sheet: RolledSheet): Draft[] {
  const { seam, sector, joints } = sheet;
  if (!sector) return [];
  const { centre, outerRadius, innerRadius, halfChord, chord, angle } = sector;
  const off = centre.y > sheet.depth;
  const drafts: Draft[] = [
    { from: "west", distance: centre.x, kind: "line", what: "middle line" },
    {
      from: "south",
      distance: centre.y,
      kind: "point",
      what: `centre O, on the middle line${off ? ", beyond the sheet" : ""}`,
    },
    { from: "centre O", distance: outerRadius, kind: "arc", what: "outer arc, the large end" },
  ];
  if (innerRadius > 0) drafts.push({ from: "centre O", distance: innerRadius, kind: "arc", what: "inner arc, the small end" });
  drafts.push(
    {
      from: "arc middle",
      distance: halfChord,
      kind: "step",
      what: "both ways on the outer arc: seams A and B run to O",
    },
    {
      from: "arc end",
      distance: chord,
      kind: "check",
      what: `check, from end to end${angle > 180 ? ", across the gap" : ""}`,
    },
  );
  for (const side of ["A", "B"] as const) {
    const width = side === "A" ? seam.sideA : seam.sideB;
    if (width > 0) drafts.push({ from: `seam ${side}`, distance: width, kind: "line", what: `raw edge ${side}, outwards` });
  }
  // The lap line of a cone is its seam line, which is drawn already.
  for (const { side, distance, what } of seam.lines)
    if (distance !== (side === "A" ? seam.sideA : seam.sideB))
      drafts.push({ from: `edge ${side}`, distance, kind: "line", what });
  if (joints.length > 0) {
    drafts.push(
      { from: "edge A", distance: seam.width / 2, kind: "line", what: "centre line of the joints" },
      { from: "edge B", distance: seam.width / 2, kind: "line", what: "centre line of the joints" },
    );
    const [first, second] = joints.map(({ a }) => a);
    if (first)
      drafts.push({
        from: "centre O",
        distance: Math.hypot(first.x - centre.x, first.y - centre.y),
        kind: "arc",
        what: "first joint, on both lines",
      });
    if (first && second)
      drafts.push({
        from: "joint",
        distance: Math.hypot(second.x - first.x, second.y - first.y),
        kind: "step",
        what: joints.length === 2 ? "to the second, on both lines" : `to each next one, ${joints.length} in all`,
      });
  }
  const holes = holeLines(sheet);
  return [...drafts, ...rising(holes, "west"), ...rising(holes, "south")];
}

/** Everything to mark on the blank, in marking order. */
export function rolledScribe(sheet: RolledSheet): readonly RolledLine[] {
  const drafts = sheet.part.kind === "tube" ? tubeLines(sheet) : coneLines(sheet);
  return drafts.map(({ distance, ...draft }, index) => ({ ...draft, ...readings(distance), number: index + 1 }));
}
