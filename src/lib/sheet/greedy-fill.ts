import { type CutTree, inCorner } from "./cut-tree.ts";
import type { Lie } from "./model.ts";
import type { PlateOffer } from "./small-demand.ts";

/** Which open part of a sheet a piece goes to: the one with the least area left, the least left one way, or the other. */
export const fitRules = ["area", "short-side", "long-side"] as const;
/** How the part is cut when the piece lies in its corner. */
export const splitRules = ["short-first", "long-first", "large-rest", "small-rest"] as const;
/** Equal pieces are laid in blocks of lines, in lines, or one by one; the last takes the longest. */
export const blockRules = ["block", "line", "single"] as const;

export interface GreedyRules {
  readonly fit: (typeof fitRules)[number];
  readonly split: (typeof splitRules)[number];
  readonly block: (typeof blockRules)[number];
  /** Numbers of the pieces, in the order they are laid. */
  readonly order: readonly number[];
}

/** A part of a sheet while it is being filled. */
interface Open {
  readonly width: number;
  readonly length: number;
  across?: "width" | "length";
  parts?: [Open, Open];
  lie?: Lie;
  /** Lines across and along when equal pieces lie in a block. */
  many?: readonly [number, number];
}

export interface GreedySheet {
  readonly plate: number;
  readonly tree: CutTree;
}

export interface GreedyResult {
  readonly sheets: readonly GreedySheet[];
  /** How many of each piece found no place. */
  readonly left: readonly number[];
  /** Places looked at. */
  readonly work: number;
}

function blockTree(lie: Lie, [across, along]: readonly [number, number], longestCut: number): CutTree {
  const one: CutTree = { kind: "piece", piece: lie.piece, turned: lie.turned, width: lie.width, length: lie.length };
  const [width, length] = [lie.width * across, lie.length * along];
  const row: CutTree =
    across === 1
      ? one
      : { kind: "split", across: "width", width, length: lie.length, parts: new Array<CutTree>(across).fill(one) };
  const column: CutTree =
    along === 1 ? one : { kind: "split", across: "length", width: lie.width, length, parts: new Array<CutTree>(along).fill(one) };
  if (along === 1) return row;
  if (across === 1) return column;
  // The long way is shortened first: the plate is soon handy, and its cuts are the short ones.
  return width > longestCut || (length >= width && length <= longestCut) || (length > longestCut && width <= longestCut)
    ? { kind: "split", across: "length", width, length, parts: new Array<CutTree>(along).fill(row) }
    : { kind: "split", across: "width", width, length, parts: new Array<CutTree>(across).fill(column) };
}

function closed(open: Open, longestCut: number): CutTree {
  const { width, length, lie, parts, across } = open;
  if (lie) return inCorner(blockTree(lie, open.many ?? [1, 1], longestCut), width, length, longestCut);
  if (parts && across) return { kind: "split", across, width, length, parts: parts.map((part) => closed(part, longestCut)) };
  return { kind: "rest", width, length };
}

/** How many equal pieces go down together. */
function lines(lie: Lie, open: Open, left: number, rule: GreedyRules["block"]): readonly [number, number] {
  if (rule === "single" || left === 1) return [1, 1];
  const across = Math.min(left, Math.floor(open.width / lie.width));
  const along = Math.min(left, Math.floor(open.length / lie.length));
  if (rule === "line") return across * lie.width >= along * lie.length ? [across, 1] : [1, along];
  if (across * along <= left) return [across, along];
  const byRows: [number, number] = [across, Math.max(1, Math.floor(left / across))];
  const byColumns: [number, number] = [Math.max(1, Math.floor(left / along)), along];
  return byRows[0] * byRows[1] >= byColumns[0] * byColumns[1] ? byRows : byColumns;
}

/** Cuts a part of a sheet so that a piece of this size comes out of its corner; the new open parts. Undefined: the shear cannot. */
function cutOut(open: Open, lie: Lie, many: readonly [number, number], split: GreedyRules["split"], longestCut: number) {
  const [width, length] = [lie.width * many[0], lie.length * many[1]];
  const [besideWidth, besideLength] = [open.width - width, open.length - length];
  const place = (inner: Open) => {
    inner.lie = lie;
    inner.many = many;
  };
  if (besideWidth === 0 && besideLength === 0) {
    place(open);
    return [];
  }
  const widthFirstAllowed = besideWidth === 0 || open.length <= longestCut;
  const lengthFirstAllowed = besideLength === 0 || open.width <= longestCut;
  const laterWidth = besideWidth === 0 || length <= longestCut;
  const laterLength = besideLength === 0 || width <= longestCut;
  const mayWidthFirst = widthFirstAllowed && laterLength;
  const mayLengthFirst = lengthFirstAllowed && laterWidth;
  if (!mayWidthFirst && !mayLengthFirst) return undefined;
  const wanted = (): boolean => {
    if (split === "short-first") return besideWidth < besideLength;
    if (split === "long-first") return besideWidth >= besideLength;
    const largeFirst =
      Math.max(besideWidth * open.length, width * besideLength) > Math.max(open.width * besideLength, besideWidth * length);
    return split === "large-rest" ? largeFirst : !largeFirst;
  };
  const widthFirst = mayWidthFirst && (!mayLengthFirst || wanted());
  const fresh: Open[] = [];
  const piece: Open = { width, length };
  place(piece);
  const cut = (from: Open, across: "width" | "length", first: Open, second: Open) => {
    from.across = across;
    from.parts = [first, second];
    fresh.push(second);
  };
  if (widthFirst) {
    if (besideWidth === 0) cut(open, "length", piece, { width, length: besideLength });
    else {
      const column: Open = besideLength === 0 ? piece : { width, length: open.length };
      cut(open, "width", column, { width: besideWidth, length: open.length });
      if (besideLength > 0) cut(column, "length", piece, { width, length: besideLength });
    }
  } else if (besideLength === 0) cut(open, "width", piece, { width: besideWidth, length });
  else {
    const row: Open = besideWidth === 0 ? piece : { width: open.width, length };
    cut(open, "length", row, { width: open.width, length: besideLength });
    if (besideWidth > 0) cut(row, "width", piece, { width: besideWidth, length });
  }
  return fresh;
}

/**
 * Lays pieces one after the other into the part of a sheet that they fit best, opening a sheet when none fits.
 * Quick and usually good; nothing is proved by it. All in ticks. The trees are not tidied: most are thrown away.
 *
 * @param plates - offers in the order in which a new sheet is chosen from them
 */
export function greedyFill(
  lies: readonly Lie[],
  counts: readonly number[],
  plates: readonly PlateOffer[],
  rules: GreedyRules,
  longestCut: number,
): GreedyResult {
  const roots: { readonly plate: number; readonly root: Open }[] = [];
  const used = plates.map(() => 0);
  const left = [...counts];
  let work = 0;
  const open: Open[] = [];
  const score = (part: Open, lie: Lie): number => {
    const [width, length] = [part.width - lie.width, part.length - lie.length];
    if (rules.fit === "area") return part.width * part.length - lie.width * lie.length;
    return rules.fit === "short-side" ? Math.min(width, length) : Math.max(width, length);
  };
  const layInto = (at: number, lie: Lie, piece: number): boolean => {
    const part = open[at] as Open;
    const many = lines(lie, part, left[piece] as number, rules.block);
    let laid = many;
    let fresh = cutOut(part, lie, many, rules.split, longestCut);
    if (!fresh && (many[0] > 1 || many[1] > 1)) {
      laid = [1, 1];
      fresh = cutOut(part, lie, laid, rules.split, longestCut);
    }
    if (!fresh) return false;
    left[piece] = (left[piece] as number) - laid[0] * laid[1];
    open[at] = open[open.length - 1] as Open;
    open.pop();
    // Parts too small for anything still wanted need not be looked at again.
    for (const each of fresh)
      if (lies.some((one) => (left[one.piece] as number) > 0 && one.width <= each.width && one.length <= each.length))
        open.push(each);
    work += 3 * fresh.length * lies.length;
    return true;
  };

  for (const piece of rules.order) {
    const ways = lies.filter((lie) => lie.piece === piece);
    while ((left[piece] as number) > 0) {
      const places: { readonly at: number; readonly lie: Lie; readonly score: number }[] = [];
      let best: (typeof places)[number] | undefined;
      // Opening a part and cutting it costs about as much as looking at some hundred.
      work += 40 * open.length * ways.length + 2000;
      open.forEach((part, at) => {
        for (const lie of ways) {
          if (lie.width > part.width || lie.length > part.length) continue;
          const value = score(part, lie);
          if (!best || value < best.score) best = { at, lie, score: value };
        }
      });
      const found = best as (typeof places)[number] | undefined;
      if (found && layInto(found.at, found.lie, piece)) continue;
      // The best place cannot be cut out with this shear; any other will do.
      const elsewhere =
        found &&
        open.some((part, at) =>
          ways.some((lie) => lie.width <= part.width && lie.length <= part.length && layInto(at, lie, piece)),
        );
      if (elsewhere) continue;
      const next = plates.findIndex(
        (plate, index) =>
          (used[index] as number) < plate.count && ways.some((lie) => lie.width <= plate.width && lie.length <= plate.length),
      );
      const plate = plates[next];
      if (!plate) break;
      used[next] = (used[next] as number) + 1;
      const root: Open = { width: plate.width, length: plate.length };
      roots.push({ plate: next, root });
      open.push(root);
      const way = ways
        .filter((lie) => lie.width <= root.width && lie.length <= root.length)
        .sort((a, b) => score(root, a) - score(root, b))
        .find((lie) => layInto(open.length - 1, lie, piece));
      if (!way) {
        roots.pop();
        open.pop();
        break;
      }
    }
  }
  return { sheets: roots.map(({ plate, root }) => ({ plate, tree: closed(root, longestCut) })), left, work };
}
