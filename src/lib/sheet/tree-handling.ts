import { type CutTree, signature } from "./cut-tree.ts";

/**
 * Plates of a tree whose last cut leaves nothing long enough for the hold-downs, whatever the order of the cuts: those with no
 * part of that size [1]. A trim that the tree does not know can only help.
 */
export function tooSmallToHold(tree: CutTree, shortestHold: number): number {
  if (tree.kind !== "split") return 0;
  const own = tree.parts.every((part) => part[tree.across] < shortestHold) ? 1 : 0;
  return tree.parts.reduce((sum, part) => sum + tooSmallToHold(part, shortestHold), own);
}

/**
 * About how often the stop has to be set for these sheets: different sizes at each depth of cut, sheets that are cut alike
 * counted once [1]. The order of the cuts can save a few of them; to compare plans that does not matter.
 */
export function settingsNeeded(trees: readonly CutTree[]): number {
  let needed = 0;
  for (const tree of new Map(trees.map((each) => [signature(each), each])).values()) {
    const settings = new Set<string>();
    const visit = (node: CutTree, depth: number): void => {
      if (node.kind !== "split") return;
      const sizes = node.parts.flatMap((part) => (part.kind === "rest" ? [] : [part[node.across]]));
      const rest = sizes.length < node.parts.length;
      // Without a part left over the last piece is what remains, and its size is not set.
      const set = !rest && sizes.length > 1 ? sizes.slice(0, -1) : sizes;
      for (const size of set) settings.add(`${depth}:${size}`);
      for (const part of node.parts) visit(part, depth + 1);
    };
    visit(tree, 0);
    needed += settings.size;
  }
  return needed;
}
