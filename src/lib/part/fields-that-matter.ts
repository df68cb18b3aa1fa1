import { usesMethod } from "../bending/method-inputs.ts";
import type { Raw } from "../inputs.ts";
import { type PartKind, partInputs, type Side } from "./form.ts";

type Key = keyof typeof partInputs;

/** Fields that say how bends are worked out. */
export const bendDataKeys: readonly Key[] = [
  "bendData",
  "measuredDeduction",
  "measuredUncertainty",
  "measuredPieces",
  "measuredThickness",
  "measuredRadius",
  "measuredAngle",
  "measuredLegTo",
];

const forKind = (kinds: readonly PartKind[], keys: readonly Key[]) => keys.map((key): [Key, readonly PartKind[]] => [key, kinds]);

/** Fields of some kinds of part alone; all others are for every kind. */
const kindsOfKey = new Map<Key, readonly PartKind[]>([
  ...forKind(["folded"], ["radius", "width", "depth", "south", "north", "west", "east", "edges"]),
  ...forKind(["folded"], ["cornerGap", "relief", "tabs", "tabWidth", "tabJoint", "attachments"]),
  ...forKind(["folded"], [...bendDataKeys, "kFactor", "hardness"]),
  ...forKind(["folded", "tube"], ["measured"]),
  ...forKind(["tube"], ["diameter", "length", "arc"]),
  ...forKind(["cone"], ["largeDiameter", "smallDiameter", "height"]),
  ...forKind(["tube", "cone"], ["seam", "seamWidth", "seamJoint"]),
]);

/** The edges of part of a tube do not meet. */
const isOpen = (raw: Raw) => raw.kind === "tube" && Number.parseFloat(String(raw.arc ?? "360")) < 360;

/** Legs on two neighbouring sides: only such parts have corners. */
function hasCorners(raw: Raw): boolean {
  const legs = (side: Side) => Array.isArray(raw[side]) && raw[side].length > 0;
  return (legs("north") || legs("south")) && (legs("east") || legs("west"));
}

/** Whether a field makes a difference to a part as it stands. */
export function matters(key: Key, raw: Raw): boolean {
  const kinds = kindsOfKey.get(key);
  if (kinds && !kinds.includes((raw.kind ?? partInputs.kind.default) as PartKind)) return false;
  if (key === "seam") return !isOpen(raw) || (raw.seam ?? "butt") !== "butt";
  if (key === "seamWidth") return (raw.seam ?? "butt") !== "butt";
  if (key === "seamJoint") return raw.seam === "lap";
  if (key === "kFactor") return usesMethod(raw.bendData, "neutral-line");
  if (key === "cornerGap" || key === "relief" || key === "tabs") return hasCorners(raw);
  if (key === "tabWidth" || key === "tabJoint") return hasCorners(raw) && (raw.tabs ?? "none") !== "none";
  if (key === "hardness") return usesMethod(raw.bendData, "soft-medium-hard");
  return !key.startsWith("measured") || key === "measured" || usesMethod(raw.bendData, "measured");
}
