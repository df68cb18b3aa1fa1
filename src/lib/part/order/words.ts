import { amount, type Phrase, say } from "../../quantity/phrase.ts";
import type { Block } from "./block.ts";

/** `Bend north 1`, `Folded edge south`. */
export function foldName(id: string): string {
  const [side, which] = id.split(".");
  return which === "edge" ? `Folded edge ${side}` : `Bend ${side} ${which}`;
}

/** `the base`, `leg north 1`, `the folded edge south`. */
export function sheetName(id: string): string {
  const [side, which] = id.split(".");
  if (which === undefined) return "the base";
  return which === "edge" ? `the folded edge ${side}` : `leg ${side} ${which}`;
}

const tool = {
  fingers: "the fingers",
  beam: "the clamp beam",
  bed: "the bed",
  leaf: "the leaf",
  part: "the part itself",
} as const;

/** What is in the way, as the second half of a sentence. */
export function blockPhrase({ by, when, angle, panel }: Block): Phrase {
  const what = sheetName(panel);
  const at = amount(Math.round(angle), "angle");
  if (when === "swing" && by === "leaf" && panel === "") return say`the leaf does not swing that far`;
  switch (when) {
    case "held":
      if (by === "part") return say`the sides that the tabs of ${what} will lie on have to be turned before`;
      if (by === "leaf") return say`${what} is too short or too long for the leaf`;
      return say`the fingers cannot hold ${what}: too little of it is flat, or no set of them fits between the sides`;
    case "clamped":
      return say`${what} meets ${tool[by]} before the leaf moves`;
    case "swing":
      return say`${what} meets ${tool[by]} when the leaf is at ${at}`;
    case "press":
      return say`${what} meets ${tool[by]} when the folded edge is pressed`;
    case "in":
      return say`the piece does not go in past the fingers`;
    case "out":
      return say`the piece is shut in: it does not come out past the fingers`;
  }
}
