import type { Place } from "./fold-in-space.ts";
import { dot, type Piece, type Plane, type RingInSpace, type SideKind } from "./solid.ts";

/**
 * Which piece hides which.
 *
 * Space is parted by the middle plane of one piece after another, and pieces that reach through such a plane are cut at it. From any side
 * the pieces can then be painted from the back to the front without comparing them: whatever lies on the viewer's side of a plane hides
 * what is in it, and that hides what lies behind. The tree depends on the fold only, so turning the view costs nothing.
 */

export interface DepthTree {
  readonly plane: Plane;
  readonly here: readonly Piece[];
  readonly behind?: DepthTree;
  readonly before?: DepthTree;
}

/** Pieces nearer to a plane than this lie in it [mm]. */
const closeTo = 1e-4;
/** How many planes are tried to find one that cuts few pieces. */
const tried = 6;

/** Where the middle of the thickness at a corner lies to a plane [mm]: positive before it, 0 in it. */
function depthOf({ near, far }: RingInSpace, corner: number, { normal, offset }: Plane): number {
  const [a, b] = [near[corner], far[corner]] as [Place, Place];
  const depth = (dot(normal, a) + dot(normal, b)) / 2 - offset;
  return Math.abs(depth) < closeTo ? 0 : depth;
}

const depthsOf = (ring: RingInSpace, plane: Plane): number[] => ring.near.map((_, corner) => depthOf(ring, corner, plane));

const along = (a: Place, b: Place, share: number): Place => ({
  x: a.x + share * (b.x - a.x),
  y: a.y + share * (b.y - a.y),
  z: a.z + share * (b.z - a.z),
});

/** The part of a ring on one side of a plane; what was known of each side goes with it, the new one is `fresh`. */
function cutRing<T>(ring: RingInSpace, known: readonly T[], depths: readonly number[], sign: 1 | -1, fresh: T) {
  const near: Place[] = [];
  const far: Place[] = [];
  const kept: T[] = [];
  depths.forEach((depth, index) => {
    const next = (index + 1) % depths.length;
    const [from, to] = [sign * depth, sign * (depths[next] as number)];
    const what = known[index] as T;
    if (from >= 0) {
      near.push(ring.near[index] as Place);
      far.push(ring.far[index] as Place);
      kept.push(from === 0 && to < 0 ? fresh : what);
    }
    if (from * to < 0) {
      const share = from / (from - to);
      near.push(along(ring.near[index] as Place, ring.near[next] as Place, share));
      far.push(along(ring.far[index] as Place, ring.far[next] as Place, share));
      kept.push(from > 0 ? fresh : what);
    }
  });
  return { ring: { near, far }, kept };
}

interface KnownSide {
  readonly side: SideKind;
  readonly beyond: number | undefined;
}

function cutPiece(piece: Piece, plane: Plane, depths: readonly number[], sign: 1 | -1): Piece {
  const known = piece.sides.map((side, index): KnownSide => ({ side, beyond: piece.beyond[index] }));
  const { ring, kept } = cutRing<KnownSide>(piece.outer, known, depths, sign, { side: "cut", beyond: undefined });
  return {
    facet: piece.facet,
    // A part of a piece lies in the plane of the whole.
    plane: piece.plane,
    outer: ring,
    sides: kept.map(({ side }) => side),
    beyond: kept.map(({ beyond }) => beyond),
    holes: piece.holes.flatMap((hole) => {
      const cut = cutRing(hole, hole.own, depthsOf(hole, plane), sign, false);
      return cut.ring.near.length < 3 ? [] : [{ ...cut.ring, own: cut.kept }];
    }),
  };
}

type Sort = "here" | "before" | "behind" | "both";

function sortOf({ outer }: Piece, plane: Plane): Sort {
  let [before, behind] = [false, false];
  for (let corner = 0; corner < outer.near.length; corner += 1) {
    const depth = depthOf(outer, corner, plane);
    if (depth > 0) before = true;
    if (depth < 0) behind = true;
    if (before && behind) return "both";
  }
  return before ? "before" : behind ? "behind" : "here";
}

/** Orders folded pieces for painting from any side. */
export function depthTree(pieces: readonly Piece[]): DepthTree | undefined {
  if (pieces.length === 0) return undefined;
  let best: { plane: Plane; sorts: readonly Sort[]; cost: number } | undefined;
  const step = Math.max(1, Math.floor(pieces.length / tried));
  for (let index = 0; index < pieces.length; index += step) {
    const { plane } = pieces[index] as Piece;
    // A sliver may stand out of its own plane; it lies there all the same, or it would be parted for ever.
    const sorts = pieces.map((piece, other) => (other === index ? "here" : sortOf(piece, plane)));
    let cost = 0;
    let balance = 0;
    for (const sort of sorts) {
      if (sort === "both") cost += 4;
      else if (sort !== "here") balance += sort === "before" ? 1 : -1;
    }
    cost += Math.abs(balance);
    if (!best || cost < best.cost) best = { plane, sorts, cost };
  }
  const { plane, sorts } = best as NonNullable<typeof best>;
  const here: Piece[] = [];
  const before: Piece[] = [];
  const behind: Piece[] = [];
  pieces.forEach((piece, index) => {
    const sort = sorts[index];
    if (sort === "here") here.push(piece);
    else if (sort === "before") before.push(piece);
    else if (sort === "behind") behind.push(piece);
    else {
      const depths = depthsOf(piece.outer, plane);
      before.push(cutPiece(piece, plane, depths, 1));
      behind.push(cutPiece(piece, plane, depths, -1));
    }
  });
  const [nearer, further] = [depthTree(before), depthTree(behind)];
  return { plane, here, ...(nearer && { before: nearer }), ...(further && { behind: further }) };
}

/**
 * Pieces from the back to the front.
 * @param towards - direction to the viewer, who is far away
 */
export function backToFront(tree: DepthTree | undefined, towards: Place): readonly Piece[] {
  const found: Piece[] = [];
  const visit = (node: DepthTree | undefined) => {
    if (!node) return;
    const facing = dot(node.plane.normal, towards) > 0;
    visit(facing ? node.behind : node.before);
    found.push(...node.here);
    visit(facing ? node.before : node.behind);
  };
  visit(tree);
  return found;
}
