/**
 * How one sheet comes apart by cuts that go from edge to edge. Sizes in ticks.
 * `across: "width"`: the parts lie side by side across the width, so its cuts run along the length, and the other way round.
 */
export type CutTree =
  | { readonly kind: "piece"; readonly piece: number; readonly turned: boolean; readonly width: number; readonly length: number }
  | { readonly kind: "rest"; readonly width: number; readonly length: number }
  | {
      readonly kind: "split";
      readonly across: Across;
      readonly width: number;
      readonly length: number;
      readonly parts: readonly CutTree[];
    };

export type Across = "width" | "length";

export const other = (across: Across): Across => (across === "width" ? "length" : "width");

/** Text that is the same for trees that are cut alike. */
export function signature(tree: CutTree): string {
  const size = `${tree.width}x${tree.length}`;
  if (tree.kind === "rest") return `-${size}`;
  if (tree.kind === "piece") return `${tree.piece}${tree.turned ? "t" : ""}`;
  return `${tree.across === "width" ? "w" : "l"}${size}(${tree.parts.map(signature).join(",")})`;
}

const rest = (width: number, length: number): CutTree => ({ kind: "rest", width, length });

/** Where a thing of one size lies in the corner of a larger plate: cut off what is left so that its larger part stays whole. */
export function inCorner(inner: CutTree, width: number, length: number, longestCut: number): CutTree {
  const besideWidth = width - inner.width;
  const besideLength = length - inner.length;
  if (besideWidth === 0 && besideLength === 0) return inner;
  const widthFirst = (): CutTree => {
    const column = inCorner(inner, inner.width, length, longestCut);
    return { kind: "split", across: "width", width, length, parts: [column, rest(besideWidth, length)] };
  };
  const lengthFirst = (): CutTree => {
    const row = inCorner(inner, width, inner.length, longestCut);
    return { kind: "split", across: "length", width, length, parts: [row, rest(width, besideLength)] };
  };
  if (besideLength === 0) return widthFirst();
  if (besideWidth === 0) return lengthFirst();
  if (length > longestCut) return lengthFirst();
  if (width > longestCut) return widthFirst();
  const largestWidthFirst = Math.max(besideWidth * length, inner.width * besideLength);
  const largestLengthFirst = Math.max(width * besideLength, besideWidth * inner.length);
  return largestWidthFirst > largestLengthFirst ? widthFirst() : lengthFirst();
}

/** Gives trees that are cut alike the same number. */
function numbering(): (tree: CutTree) => number {
  const known = new Map<string, number>();
  const numbers = new Map<CutTree, number>();
  const numberOf = (tree: CutTree): number => {
    const before = numbers.get(tree);
    if (before !== undefined) return before;
    const { kind, width, length } = tree;
    const text =
      kind === "piece"
        ? `${tree.piece}${tree.turned ? "t" : ""}`
        : `${kind === "rest" ? "-" : tree.across}${width}x${length}${kind === "rest" ? "" : tree.parts.map(numberOf).join()}`;
    const number = known.get(text) ?? known.size;
    known.set(text, number);
    numbers.set(tree, number);
    return number;
  };
  return numberOf;
}

/** The same cuts put in order: parallel cuts of one plate together, equal parts side by side, what is left over in one part. */
export function tidy(tree: CutTree): CutTree {
  const numberOf = numbering();
  const put = (node: CutTree): CutTree => {
    if (node.kind !== "split") return node;
    const { across, width, length } = node;
    const parts: CutTree[] = [];
    let left = 0;
    const keep = (part: CutTree): void => {
      if (part.kind === "split" && part.across === across) part.parts.forEach(keep);
      else if (part.kind === "rest") left += part[across];
      else parts.push(part);
    };
    // Parallel cuts are gathered before anything within them is put in order: long rows of cuts are then gone through once.
    const gather = (part: CutTree): void => {
      if (part.kind === "split" && part.across === across) part.parts.forEach(gather);
      else keep(put(part));
    };
    node.parts.forEach(gather);
    if (parts.length === 0) return rest(width, length);
    const groups = new Map<number, CutTree[]>();
    for (const part of parts) {
      const number = numberOf(part);
      const known = groups.get(number);
      if (known) known.push(part);
      else groups.set(number, [part]);
    }
    const sorted = [...groups.values()].sort(([a], [b]) => (b?.[across] ?? 0) - (a?.[across] ?? 0)).flat();
    if (left > 0) sorted.push(across === "width" ? rest(left, length) : rest(width, left));
    if (sorted.length === 1) return sorted[0] as CutTree;
    return { kind: "split", across, width, length, parts: sorted };
  };
  return put(tree);
}

/** How many of each piece a tree gives. */
export function countPieces(tree: CutTree, pieces: number): number[] {
  const counts = new Array<number>(pieces).fill(0);
  const visit = (node: CutTree): void => {
    if (node.kind === "piece") counts[node.piece] = (counts[node.piece] ?? 0) + 1;
    if (node.kind === "split") node.parts.forEach(visit);
  };
  visit(tree);
  return counts;
}

/** The tree with at most so many of each piece; what is too many becomes rest. */
export function atMost(tree: CutTree, counts: readonly number[]): CutTree {
  const left = [...counts];
  const visit = (node: CutTree): CutTree => {
    if (node.kind === "split") return { ...node, parts: node.parts.map(visit) };
    if (node.kind === "rest") return node;
    const has = left[node.piece] ?? 0;
    if (has === 0) return rest(node.width, node.length);
    left[node.piece] = has - 1;
    return node;
  };
  return tidy(visit(tree));
}

/** Every leaf with its place on the plate, from the corner where the first parts lie. */
export function leaves(tree: CutTree): { readonly leaf: Exclude<CutTree, { kind: "split" }>; x: number; y: number }[] {
  const found: { leaf: Exclude<CutTree, { kind: "split" }>; x: number; y: number }[] = [];
  const visit = (node: CutTree, x: number, y: number): void => {
    if (node.kind !== "split") {
      found.push({ leaf: node, x, y });
      return;
    }
    let at = 0;
    for (const part of node.parts) {
      visit(part, node.across === "width" ? x + at : x, node.across === "length" ? y + at : y);
      at += part[node.across];
    }
  };
  visit(tree, 0, 0);
  return found;
}

/** Area of the largest part that no piece uses [square ticks]. */
export function largestRest(tree: CutTree): number {
  return leaves(tree).reduce((most, { leaf }) => (leaf.kind === "rest" ? Math.max(most, leaf.width * leaf.length) : most), 0);
}
