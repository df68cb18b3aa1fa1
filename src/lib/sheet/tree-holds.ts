import type { CutTree } from "./cut-tree.ts";

/**
 * Plates of a tree whose last cut leaves nothing long enough for the hold-downs, whatever the order of the cuts: those with no
 * part of that size. A trim that the tree does not know can only help.
 */
export function tooSmallToHold(tree: CutTree, shortestHold: number): number {
  if (tree.kind !== "split") return 0;
  const own = tree.parts.every((part) => part[tree.across] < shortestHold) ? 1 : 0;
  return tree.parts.reduce((sum, part) => sum + tooSmallToHold(part, shortestHold), own);
}
