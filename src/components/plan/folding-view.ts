import { type DepthTree, depthTree } from "../../lib/part/depth-order.ts";
import type { FlatPoint } from "../../lib/part/flatten.ts";
import { type FoldingStep, turnedAt } from "../../lib/part/folding-steps.ts";
import { poseOf, type Solid } from "../../lib/part/solid.ts";
import { type Extent, extentOf, type View } from "../../lib/part/view.ts";
import { paperWidth, type Spot, spot } from "../figures/pen.tsx";

/** How a drawing in millimetres is put on the paper. */
export interface Fit {
  readonly height: number;
  readonly place: (point: FlatPoint) => Spot;
}

const margin = 12;
const tallest = 300;
const lowest = 120;

export function paperFit({ left, right, bottom, top }: Extent): Fit {
  const [width, depth] = [Math.max(right - left, 1e-6), Math.max(top - bottom, 1e-6)];
  const scale = Math.min((paperWidth - 2 * margin) / width, (tallest - 2 * margin) / depth);
  const height = Math.max(lowest, depth * scale + 2 * margin);
  const [x, y] = [(left + right) / 2, (bottom + top) / 2];
  return { height: Math.round(height), place: (p) => spot(paperWidth / 2 + (p.x - x) * scale, height / 2 - (p.y - y) * scale) };
}

/** The sheet as it is at a position of the order, ready to be painted from any side. */
export const treeAt = (solid: Solid, steps: readonly FoldingStep[], position: number): DepthTree | undefined =>
  depthTree(poseOf(solid, turnedAt(steps, position)));

/** Reach of the sheet over the whole of its folding, so that it keeps its size and place on the paper. */
export function wholeExtent(solid: Solid, steps: readonly FoldingStep[], view: View, allRound: boolean): Extent {
  // Half way through a step a leg reaches further up than before or after it.
  const states = Array.from({ length: 2 * steps.length + 1 }, (_, half) => turnedAt(steps, half / 2));
  return extentOf(solid, states, view, allRound);
}

/**
 * The side of the part that is nearest to the viewer, in words.
 * @param compass - the eight of them, clockwise from the north
 */
export const seenFrom = (from: number, compass: readonly string[]): string =>
  compass[Math.round(from / 45) % compass.length] as string;
