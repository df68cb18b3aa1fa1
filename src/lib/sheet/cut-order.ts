import type { Across, CutTree } from "./cut-tree.ts";
import { other } from "./cut-tree.ts";
import { millimetres, type ShearLimits, type Sheet, type SheetJob, ticks } from "./model.ts";

/** What a part of a sheet is: a piece wanted, a plate to be cut further, a strip of trim, or what is left over. */
export type PartKind = "piece" | "plate" | "trim" | "rest";

/** One part, in mm. */
export interface Part {
  /** Its number within the sheet, `2.1` being the first part of part 2; the whole sheet has none. */
  readonly id: string;
  readonly kind: PartKind;
  /** Number of the piece in the job. */
  readonly piece?: number;
  /** Its length lies across the sheet. */
  readonly turned?: boolean;
  readonly width: number;
  readonly length: number;
}

/** A piece or an offcut where it lies on the raw sheet: x across the width, y along the length [mm]. */
export interface Placed extends Part {
  readonly x: number;
  readonly y: number;
}

export type CutFault = "longer-than-shear" | "too-small-to-hold";

/** One stroke of the shear, from edge to edge. Lengths in mm. */
export interface ShearCut {
  /** The plate as it goes into the shear. */
  readonly from: Part;
  /** Which of its sizes gets shorter; the blade runs along the other. */
  readonly across: Across;
  /** Along the blade. */
  readonly cutLength: number;
  /** Setting of the back stop; left out: cut to a scribed line. */
  readonly stop?: number;
  /** What falls behind the blade. It lies at the start of the plate, where x or y is least, or at its end. */
  readonly off: Part;
  readonly offAt: "start" | "end";
  /** What stays under the hold-downs. */
  readonly held: Part;
  readonly faults: readonly CutFault[];
}

/** The cuts of one sheet in order, and where everything lies. */
export interface SheetCuts {
  readonly cuts: readonly ShearCut[];
  readonly pieces: readonly Placed[];
  /** What is left over, large to small. */
  readonly offcuts: readonly Placed[];
  /** The stop settings in order, each with the cuts made at it; `stop` left out: cuts to a scribed line. */
  readonly settings: readonly { readonly stop?: number; readonly cuts: number }[];
  /** How often the stop is set. */
  readonly stopSettings: number;
}

/** A plate that is to be cut into parts lying side by side. Sizes in ticks. */
interface Node {
  kind: PartKind;
  readonly piece?: number;
  readonly turned?: boolean;
  readonly width: number;
  readonly length: number;
  readonly across?: Across;
  /** In the order in which they will lie on the plate; settled by the order of the cuts. */
  parts: Node[];
}

const leaf = (kind: "trim" | "rest", width: number, length: number): Node => ({ kind, width, length, parts: [] });

function plain(tree: CutTree): Node {
  const { width, length } = tree;
  if (tree.kind === "piece") return { kind: "piece", piece: tree.piece, turned: tree.turned, width, length, parts: [] };
  if (tree.kind === "rest") return leaf("rest", width, length);
  return { kind: "plate", across: tree.across, width, length, parts: tree.parts.map(plain) };
}

interface Edges {
  readonly width: boolean;
  readonly length: boolean;
}

/**
 * Puts the trim round a tree: cuts that take the raw edges off. A long edge that the shear cannot take off the whole sheet is
 * taken off the shorter plates instead; what is left over keeps its raw edge.
 */
function withTrim(tree: CutTree, trim: number, raw: Edges, longestCut: number): Node {
  if (trim === 0 || (!raw.width && !raw.length)) return plain(tree);
  const width = tree.width + (raw.width ? 2 * trim : 0);
  const length = tree.length + (raw.length ? 2 * trim : 0);
  if (tree.kind === "rest") return leaf("rest", width, length);
  const strip = (across: Across) => (across === "width" ? leaf("trim", trim, length) : leaf("trim", width, trim));
  /** Takes the raw edges off one way, and cuts the tree at the same time where it is cut that way too. */
  const take = (across: Across): Node => {
    const rawInside = { ...raw, [across]: false };
    if (tree.kind !== "split" || tree.across !== across) {
      const inner = withTrim(tree, trim, rawInside, longestCut);
      return { kind: "plate", across, width, length, parts: [strip(across), inner, strip(across)] };
    }
    const parts = tree.parts.map((part) => withTrim(part, trim, rawInside, longestCut));
    const last = parts[parts.length - 1] as Node;
    if (last.kind === "rest") {
      const size = { width: last.width, length: last.length };
      size[across] += trim;
      parts[parts.length - 1] = leaf("rest", size.width, size.length);
    } else parts.push(strip(across));
    return { kind: "plate", across, width, length, parts: [strip(across), ...parts] };
  };
  const reaches = (across: Across) => (across === "width" ? length : width) <= longestCut;
  const own: Across = tree.kind === "split" ? tree.across : "length";
  const cross = other(own);
  if (raw[own] && raw[cross]) return reaches(cross) ? take(cross) : take(own);
  if (raw[own]) return take(own);
  if (reaches(cross) || tree.kind !== "split") return take(cross);
  return {
    kind: "plate",
    across: own,
    width,
    length,
    parts: tree.parts.map((part) => withTrim(part, trim, raw, longestCut)),
  };
}

/** A part that is to be dropped, and the stop it needs. */
interface Drop {
  readonly node: Node;
  readonly part: Node;
  readonly stop: number | undefined;
  readonly at: "start" | "end";
}

interface Limits {
  readonly longestCut: number;
  readonly shortestHold: number;
  readonly shortestStop: number;
  readonly longestStop: number;
}

const limitsOf = (shear: ShearLimits | undefined): Limits => ({
  longestCut: shear ? ticks(shear.longestCut) : Infinity,
  shortestHold: shear ? ticks(shear.shortestHold) : 0,
  shortestStop: shear ? ticks(shear.shortestStop) : 0,
  longestStop: shear ? ticks(shear.longestStop) : Infinity,
});

/** Plates to be cut, by how many cuts deep they lie: no plate is cut before all larger ones of the stage above are. */
function stagesOf(root: Node): Node[][] {
  const stages: Node[][] = [];
  let now = [root];
  while (now.length > 0) {
    const plates = now.filter(({ parts }) => parts.length > 0);
    if (plates.length > 0) stages.push(plates.sort((a, b) => b.width * b.length - a.width * a.length));
    now = plates.flatMap(({ parts }) => parts);
  }
  return stages;
}

/** The part of a plate that is never dropped but is what remains of it. */
function remainder(node: Node, limits: Limits, uses: ReadonlyMap<number, number>): Node {
  const across = node.across as Across;
  const parts = node.parts.filter(({ kind }) => kind !== "trim");
  const rest = parts.find(({ kind }) => kind === "rest");
  if (rest && rest[across] >= limits.shortestHold) return rest;
  const rank = (part: Node): readonly number[] => {
    const size = part[across];
    const held = size >= limits.shortestHold;
    const noStop = size > limits.longestStop || size < limits.shortestStop;
    return [held ? 1 : 0, part.kind === "rest" ? 0 : 1, noStop ? 1 : 0, uses.get(size) === 1 ? 1 : 0, size];
  };
  return parts.reduce((best, part) => {
    const [a, b] = [rank(part), rank(best)];
    const at = a.findIndex((value, index) => value !== b[index]);
    return at >= 0 && (a[at] as number) > (b[at] as number) ? part : best;
  });
}

/** One run of strokes for which the order of the stop settings is free. */
interface Run {
  readonly drops: readonly Drop[];
  /** Different settings it needs. */
  readonly stops: readonly number[];
}

/**
 * The order of the settings of each run with the fewest changes in all: within a run each setting comes once, large first;
 * two runs can share the setting at their seam. Chosen over all seams together.
 */
function orderOfStops(runs: readonly Run[]): number[][] {
  interface Way {
    readonly changes: number;
    readonly orders: readonly number[][];
    readonly last: number | undefined;
  }
  let ways: Way[] = [{ changes: 0, orders: [], last: undefined }];
  for (const { stops } of runs) {
    const falling = [...stops].sort((a, b) => b - a);
    if (falling.length === 0) {
      ways = ways.map((way) => ({ ...way, orders: [...way.orders, []] }));
      continue;
    }
    const next = new Map<number, Way>();
    for (const way of ways)
      for (const end of falling) {
        const shared = way.last !== undefined && falling.includes(way.last) && (falling.length === 1 || way.last !== end);
        const begin = shared ? way.last : undefined;
        const middle = falling.filter((stop) => stop !== begin && stop !== end);
        const order = [...(begin === undefined || begin === end ? [] : [begin]), ...middle, end];
        const changes = way.changes + falling.length - (shared ? 1 : 0);
        const known = next.get(end);
        // Ways come with the smallest setting last, the natural order; a later one has to be better.
        if (!known || changes < known.changes) next.set(end, { changes, orders: [...way.orders, order], last: end });
      }
    ways = [...next.values()].reverse();
  }
  return ways.reduce((best, way) => (way.changes < best.changes ? way : best)).orders.map((order) => [...order]);
}

/**
 * The strokes of the shear that take one sheet apart, in order.
 *
 * Large plates come first, while they are whole: all plates of one stage are cut before those cut out of them. Within a stage
 * every stop setting is made once, and stages share a setting where they can. What is measured falls off behind the blade; what
 * is left over stays under the hold-downs, so that no piece is held that is too short for them, as long as there is another way.
 *
 * @param tree - inside the trim, in ticks
 * @returns cuts, places and settings in mm
 * @throws Error when the tree is not as large as the sheet inside its trim
 * @remarks A squaring shear cuts from edge to edge and stops repeats with a back stop (FAA-H-8083-31); the order is common
 * practice. Source of the rule for the fewest settings: none needed; it tries all seams.
 */
export function cutOrder(tree: CutTree, sheet: Sheet, job: Pick<SheetJob, "trim" | "shear">): SheetCuts {
  const limits = limitsOf(job.shear);
  const trim = ticks(job.trim);
  const root = withTrim(tree, trim, { width: trim > 0, length: trim > 0 }, limits.longestCut);
  if (root.width !== ticks(sheet.width) || root.length !== ticks(sheet.length))
    throw new Error(`the cut tree is ${root.width} × ${root.length} ticks, not the sheet ${sheet.name}`);

  const stages = stagesOf(root);
  const stopFor = (size: number) => (size >= limits.shortestStop && size <= limits.longestStop ? size : undefined);
  const runs: Run[] = [];
  for (const plates of stages) {
    const uses = new Map<number, number>();
    for (const { parts, across } of plates)
      for (const part of parts)
        if (part.kind !== "trim") uses.set(part[across as Across], (uses.get(part[across as Across]) ?? 0) + 1);
    const trims: Drop[] = [];
    const byLine: Drop[] = [];
    const byStop: Drop[] = [];
    for (const node of plates) {
      const across = node.across as Across;
      const stays = remainder(node, limits, uses);
      node.parts.forEach((part, index) => {
        if (part === stays) return;
        const stop = stopFor(part[across]);
        if (part.kind === "trim") trims.push({ node, part, stop, at: index === 0 ? "start" : "end" });
        else if (part.kind === "rest") (stop === undefined ? byLine : byStop).push({ node, part, stop, at: "end" });
        else (stop === undefined ? byLine : byStop).push({ node, part, stop, at: "start" });
      });
    }
    for (const drops of [trims, byLine, byStop])
      if (drops.length > 0) runs.push({ drops, stops: [...new Set(drops.flatMap(({ stop }) => (stop ? [stop] : [])))] });
  }
  const orders = orderOfStops(runs);
  const sequence = runs.flatMap(({ drops }, index) => {
    const rank = new Map((orders[index] as number[]).map((stop, at) => [stop, at]));
    const at = ({ stop }: Drop) => (stop === undefined ? -1 : (rank.get(stop) ?? -1));
    return drops.map((drop, order) => ({ drop, order })).sort((a, b) => at(a.drop) - at(b.drop) || a.order - b.order);
  });

  // Where the parts lie follows from the order in which they fall.
  const fallen = new Map<Node, Drop[]>();
  for (const { drop } of sequence) {
    const known = fallen.get(drop.node);
    if (known) known.push(drop);
    else fallen.set(drop.node, [drop]);
  }
  for (const [node, drops] of fallen) {
    const of = (side: Drop["at"]) => drops.filter(({ at }) => at === side).map(({ part }) => part);
    const gone = new Set(drops.map(({ part }) => part));
    node.parts = [...of("start"), ...node.parts.filter((part) => !gone.has(part)), ...of("end").reverse()];
  }
  const ids = new Map<Node, string>([[root, ""]]);
  const pieces: Placed[] = [];
  const offcuts: Placed[] = [];
  const place = (node: Node, x: number, y: number): void => {
    const id = ids.get(node) ?? "";
    const placed = { ...partOf(node, id), x: millimetres(x), y: millimetres(y) };
    if (node.kind === "piece") pieces.push(placed);
    if (node.kind === "rest") offcuts.push(placed);
    let offset = 0;
    let count = 0;
    for (const part of node.parts) {
      if (part.kind !== "trim") {
        count += 1;
        ids.set(part, id === "" ? String(count) : `${id}.${count}`);
      }
      const across = node.across as Across;
      place(part, across === "width" ? x + offset : x, across === "length" ? y + offset : y);
      offset += part[across];
    }
  };
  place(root, 0, 0);

  const left = new Map(
    [...fallen.keys()].map((node) => [node, { size: node[node.across as Across], parts: new Set(node.parts) }]),
  );
  const cuts = sequence.map(({ drop: { node, part, stop, at } }): ShearCut => {
    const across = node.across as Across;
    const lying = left.get(node);
    if (!lying) throw new Error("a plate that is cut is among those that are");
    const { size } = lying;
    lying.size -= part[across];
    lying.parts.delete(part);
    const id = ids.get(node) ?? "";
    const sized = (along: number) => ({
      width: millimetres(across === "width" ? along : node.width),
      length: millimetres(across === "length" ? along : node.length),
    });
    const [only] = lying.parts;
    const along = millimetres(node[other(across)]);
    const faults: CutFault[] = [];
    if (node[other(across)] > limits.longestCut) faults.push("longer-than-shear");
    if (size - part[across] < limits.shortestHold) faults.push("too-small-to-hold");
    return {
      from: { id, kind: "plate", ...sized(size) },
      across,
      cutLength: along,
      ...(stop === undefined ? {} : { stop: millimetres(stop) }),
      off: partOf(part, ids.get(part) ?? id),
      offAt: at,
      held:
        lying.parts.size === 1 && only ? partOf(only, ids.get(only) ?? id) : { id, kind: "plate", ...sized(size - part[across]) },
      faults,
    };
  });

  const settings: { stop?: number; cuts: number }[] = [];
  let set: number | undefined;
  let stopSettings = 0;
  for (const { stop } of cuts) {
    const last = settings[settings.length - 1];
    if (last && last.stop === stop) last.cuts += 1;
    else settings.push({ ...(stop === undefined ? {} : { stop }), cuts: 1 });
    if (stop !== undefined && stop !== set) {
      set = stop;
      stopSettings += 1;
    }
  }
  offcuts.sort((a, b) => b.width * b.length - a.width * a.length);
  return { cuts, pieces, offcuts, settings, stopSettings };
}

function partOf({ kind, piece, turned, width, length }: Node, id: string): Part {
  return {
    id,
    kind,
    ...(piece === undefined ? {} : { piece, turned }),
    width: millimetres(width),
    length: millimetres(length),
  };
}
