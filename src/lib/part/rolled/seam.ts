import { InputError } from "../../input-error.ts";
import { type JointKind, jointRow } from "../../joining/joint-row.ts";
import { groovedMiddleLine, type SeamKind, seamAllowance } from "../../joining/seams.ts";
import { say } from "../../quantity/phrase.ts";
import type { PartValues } from "../form.ts";
import type { RolledSeam } from "./seams.ts";

/** A line of the seam, parallel to its edge. */
export interface SeamLine {
  readonly side: "A" | "B";
  /** From the raw edge of that side [mm] */
  readonly distance: number;
  readonly kind: "fold" | "lap";
  /** Way of the fold, seen from the face that becomes the inside. */
  readonly way?: "up" | "down";
  readonly what: string;
}

/** What the seam takes of the sheet. Side A is the west edge, side B the east edge. Lengths in mm. */
export interface Seam {
  readonly kind: RolledSeam;
  /** Finished; 0 for butted edges. */
  readonly width: number;
  readonly sideA: number;
  readonly sideB: number;
  readonly allowance: number;
  readonly lines: readonly SeamLine[];
  /** How far the finished seam covers the sheet on the inner side of its seam lines. */
  readonly coversA: number;
  readonly coversB: number;
  /** What a lap is joined by. */
  readonly joint?: JointKind;
  /** ± on the way round, half-width: how far two ways to reckon the allowance differ. */
  readonly doubt: number;
}

function linesOf(kind: RolledSeam, width: number, sideA: number, sideB: number): SeamLine[] {
  switch (kind) {
    case "butt":
      return [];
    case "lap":
      return [{ side: "A", distance: width, kind: "lap", what: "lap line: the other edge comes here" }];
    case "grooved":
      // Each edge goes on half a width past the middle of the seam and comes back one width.
      return [
        { side: "A", distance: width, kind: "fold", way: "up", what: "fold of hook A" },
        { side: "B", distance: width, kind: "fold", way: "down", what: "fold of hook B" },
      ];
    case "standing": {
      // What A has more than B folds over B; the two together are then folded down once more by what B has more than the height.
      const over = sideA - sideB;
      const down = sideB - width;
      return [
        { side: "A", distance: sideA, kind: "fold", way: "down", what: "edge A turned out square" },
        { side: "A", distance: over, kind: "fold", way: "down", what: "edge A folded over B" },
        { side: "B", distance: sideB, kind: "fold", way: "down", what: "edge B turned out square" },
        { side: "B", distance: down, kind: "fold", way: "down", what: "both folded over together" },
      ];
    }
  }
}

/**
 * Allowance and lines of a seam.
 *
 * @param form.seam - butt, lap, grooved or standing
 * @param form.seamWidth - W [mm]: of a lap the overlap, of a standing seam its height
 * @param form.seamJoint - what a lap is joined by
 * @throws InputError at `seamWidth` or `thickness` for one outside its range
 * @remarks Allowance: `seamAllowance`. Folds of a grooved seam: half of its four layers lie on each side of its middle, so each hook is
 *   folded one width from its edge. Those of a standing seam follow from its two heights (derived; fold a trial seam).
 */
export function seamOf(form: Pick<PartValues, "seam" | "seamWidth" | "seamJoint" | "thickness">): Seam {
  const { seam: kind, seamWidth: width, thickness } = form;
  if (kind === "butt") return { kind, width: 0, sideA: 0, sideB: 0, allowance: 0, lines: [], coversA: 0, coversB: 0, doubt: 0 };
  const { sideA, sideB, allowance } = allowanceOf(kind, width);
  const covers = { lap: [0, width], grooved: [width / 2, width / 2], standing: [0, 0] } as const;
  const [coversA, coversB] = covers[kind];
  return {
    kind,
    width,
    sideA,
    sideB,
    allowance,
    lines: linesOf(kind, width, sideA, sideB),
    coversA,
    coversB,
    ...(kind === "lap" && { joint: form.seamJoint }),
    // A standing seam has as many folds as a grooved one, and no better rule.
    doubt: kind === "lap" ? 0 : (3 * width - groovedMiddleLine({ width, thickness })) / 2,
  };
}

function allowanceOf(kind: SeamKind, width: number) {
  try {
    return seamAllowance({ kind, width });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError("seamWidth", error.value, error.phrase);
  }
}

/** Distances along a lap of its joints, from its start [mm]; none where nothing is joined. */
export function jointPlaces(seam: Seam, thickness: number, length: number): readonly number[] {
  return seam.joint ? jointRow({ joint: seam.joint, thickness, length }).places : [];
}

/** The seam of a part that does not close. @throws InputError at `seam` when one is asked for */
export function noSeam(form: Pick<PartValues, "seam" | "arc">): void {
  if (form.seam === "butt") return;
  throw new InputError(
    "seam",
    form.seam,
    say`Seam must be “butt” for part of a tube: at an arc of ${{ value: form.arc, quantity: "angle" }} its edges do not meet; it is “${form.seam}”. Take the full 360°, or butted edges.`,
  );
}
