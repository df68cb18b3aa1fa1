import type { Place } from "./fold-in-space.ts";
import type { Piece, RingInSpace, SideKind } from "./solid.ts";

/**
 * Which piece hides which.
 *
 * Space is parted by the middle plane of one piece after another, and pieces that reach through such a plane are cut at it. From any side
 * the pieces can then be painted from the back to the front without comparing them: whatever lies on the viewer's side of a plane hides
 * what is in it, and that hides what lies behind. The tree depends on the fold only, so turning the view costs nothing.
 */

export interface Plane {
  readonly normal: Place;
  readonly offset: number;
}

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

export const dot = (a: Place, b: Place) => a.x * b.x + a.y * b.y + a.z * b.z;

const middle = ({ near, far }: RingInSpace): Place[] =>
  near.map((a, index) => {
    const b = far[index] as Place;
    return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 };
  });

/** Plane half way through a piece. */
export function planeOf({ outer }: Piece): Plane {
  const points = middle(outer);
  // Newell's sum over all corners: no three of them have to be far apart, and small errors even out.
  let [x, y, z] = [0, 0, 0];
  points.forEach((a, index) => {
    const b = points[(index + 1) % points.length] as Place;
    x += (a.y - b.y) * (a.z + b.z);
    y += (a.z - b.z) * (a.x + b.x);
    z += (a.x - b.x) * (a.y + b.y);
  });
  const length = Math.hypot(x, y, z) || 1;
  const normal = { x: x / length, y: y / length, z: z / length };
  return { normal, offset: points.reduce((sum, point) => sum + dot(normal, point), 0) / points.length };
}

function distances(ring: RingInSpace, { normal, offset }: Plane): number[] {
  return middle(ring).map((point) => {
    const distance = dot(normal, point) - offset;
    return Math.abs(distance) < closeTo ? 0 : distance;
  });
}

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
    outer: ring,
    sides: kept.map(({ side }) => side),
    beyond: kept.map(({ beyond }) => beyond),
    holes: piece.holes.flatMap((hole) => {
      const cut = cutRing(hole, hole.own, distances(hole, plane), sign, false);
      return cut.ring.near.length < 3 ? [] : [{ ...cut.ring, own: cut.kept }];
    }),
  };
}

interface Measured {
  readonly piece: Piece;
  readonly plane: Plane;
}

/** Orders folded pieces for painting from any side. */
export function depthTree(pieces: readonly Piece[]): DepthTree | undefined {
  return part(pieces.map((piece) => ({ piece, plane: planeOf(piece) })));
}

function sortOf(depths: readonly number[]): "here" | "before" | "behind" | "both" {
  let [before, behind] = [false, false];
  for (const depth of depths) {
    if (depth > 0) before = true;
    if (depth < 0) behind = true;
  }
  if (before && behind) return "both";
  return before ? "before" : behind ? "behind" : "here";
}

function part(pieces: readonly Measured[]): DepthTree | undefined {
  if (pieces.length === 0) return undefined;
  let best: { plane: Plane; depths: readonly (readonly number[])[]; cost: number } | undefined;
  const step = Math.max(1, Math.floor(pieces.length / tried));
  for (let index = 0; index < pieces.length; index += step) {
    const { plane } = pieces[index] as Measured;
    const depths = pieces.map(({ piece }) => distances(piece.outer, plane));
    let cost = 0;
    let balance = 0;
    for (const each of depths) {
      const sort = sortOf(each);
      if (sort === "both") cost += 4;
      else if (sort !== "here") balance += sort === "before" ? 1 : -1;
    }
    cost += Math.abs(balance);
    if (!best || cost < best.cost) best = { plane, depths, cost };
  }
  const { plane, depths } = best as NonNullable<typeof best>;
  const here: Piece[] = [];
  const before: Measured[] = [];
  const behind: Measured[] = [];
  pieces.forEach((measured, index) => {
    const depth = depths[index] as readonly number[];
    switch (sortOf(depth)) {
      case "here":
        here.push(measured.piece);
        break;
      case "before":
        before.push(measured);
        break;
      case "behind":
        behind.push(measured);
        break;
      case "both":
        // A part of a piece lies in the plane of the whole.
        before.push({ piece: cutPiece(measured.piece, plane, depth, 1), plane: measured.plane });
        behind.push({ piece: cutPiece(measured.piece, plane, depth, -1), plane: measured.plane });
    }
  });
  const [nearer, further] = [part(before), part(behind)];
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
