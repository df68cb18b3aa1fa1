import { backToFront, type DepthTree } from "./depth-order.ts";
import type { FlatPoint } from "./flatten.ts";
import { lifting, type Place, type Turned } from "./fold-in-space.ts";
import { area } from "./geometry.ts";
import { dot, type RingInSpace, type Solid } from "./solid.ts";

/** Where the folded sheet is looked at from, far away, so that lengths in one direction are all drawn to one scale. */
export interface View {
  /** Compass direction to the viewer [deg]: 0 north, 90 east, clockwise seen from above. */
  readonly from: number;
  /** Height of the viewer above the level of the base [deg]; above −90, below 90. */
  readonly above: number;
}

/** Where parts are shown from unless asked otherwise: south-east, high enough to look into a box. */
export const usualView: View = { from: 152, above: 34 };

const rad = (degrees: number) => (degrees * Math.PI) / 180;

interface Frame {
  readonly right: Place;
  readonly up: Place;
  readonly towards: Place;
}

/** Directions of the picture in space: to its right, upwards on it, and towards the eye, each of length 1. */
export function frameOf({ from, above }: View): Frame {
  const [sin, cos] = [Math.sin(rad(from)), Math.cos(rad(from))];
  const [rise, level] = [Math.sin(rad(above)), Math.cos(rad(above))];
  return {
    right: { x: -cos, y: sin, z: 0 },
    up: { x: -rise * sin, y: -rise * cos, z: level },
    towards: { x: level * sin, y: level * cos, z: rise },
  };
}

/** A place as it is seen [mm]: to the right and up on the drawing. */
export const project = (place: Place, { right, up }: Frame): FlatPoint => ({ x: dot(place, right), y: dot(place, up) });

/** What is drawn of one piece, from the first to the last: each hides what is under it. */
export interface Painted {
  readonly facet: number;
  readonly id: string;
  /** Of the thickness that is seen, at edges of the sheet and in holes. */
  readonly bands: readonly (readonly FlatPoint[])[];
  /** The face that is seen, its holes left open when filled by the even-odd rule. */
  readonly face: readonly (readonly FlatPoint[])[];
  /** How light the face is, 0 to `shades` − 1. */
  readonly shade: number;
  /** Edges of the sheet, rims of holes, and where a bend turns out of sight. */
  readonly outlines: readonly (readonly FlatPoint[])[];
  /** Middles of bends. */
  readonly folds: readonly (readonly FlatPoint[])[];
}

/** Steps from the darkest face to the lightest. */
export const shades = 5;

/** Direction to the light, as the viewer sees it: from the left and above. */
const light = { right: -0.45, up: 0.7, towards: 0.55 };
const lightLength = Math.hypot(light.right, light.up, light.towards);

function shadeOf(normal: Place, { right, up, towards }: Frame): number {
  const lit =
    (light.right * dot(normal, right) + light.up * dot(normal, up) + light.towards * dot(normal, towards)) / lightLength;
  return Math.min(shades - 1, Math.max(0, Math.floor(((lit + 0.5) / 1.5) * shades)));
}

interface Seen {
  readonly face: readonly FlatPoint[];
  readonly hidden: readonly FlatPoint[];
}

function seen(ring: RingInSpace, farSide: boolean, frame: Frame): Seen {
  const near = ring.near.map((place) => project(place, frame));
  const far = ring.far.map((place) => project(place, frame));
  return farSide ? { face: far, hidden: near } : { face: near, hidden: far };
}

/** Whether the thickness along a side shows beyond it, on the side of the ring that has no metal. */
function shows({ face, hidden }: Seen, index: number, turn: number): boolean {
  const next = (index + 1) % face.length;
  const [a, b, c, d] = [face[index], face[next], hidden[index], hidden[next]] as [FlatPoint, FlatPoint, FlatPoint, FlatPoint];
  const [offX, offY] = [c.x + d.x - a.x - b.x, c.y + d.y - a.y - b.y];
  return turn * (offX * (b.y - a.y) - offY * (b.x - a.x)) > 1e-9;
}

const band = ({ face, hidden }: Seen, index: number): readonly FlatPoint[] => {
  const next = (index + 1) % face.length;
  return [face[index], face[next], hidden[next], hidden[index]] as FlatPoint[];
};

/** Sides that follow each other as one line. */
function joined(face: readonly FlatPoint[], wanted: (index: number) => boolean): readonly (readonly FlatPoint[])[] {
  const found: FlatPoint[][] = [];
  let last: FlatPoint[] | undefined;
  face.forEach((point, index) => {
    if (!wanted(index)) {
      last = undefined;
      return;
    }
    const next = face[(index + 1) % face.length] as FlatPoint;
    if (last) last.push(next);
    else {
      last = [point, next];
      found.push(last);
    }
  });
  return found;
}

/**
 * Draws the folded sheet.
 *
 * @param solid - the sheet, as `solidOf` gives it
 * @param tree - its folded pieces, as `depthTree` orders them
 * @param view - where it is looked at from
 * @returns what to draw from the back to the front [mm]; each piece covers what was drawn before it
 */
export function paint(solid: Solid, tree: DepthTree | undefined, view: View): readonly Painted[] {
  const frame = frameOf(view);
  const pieces = backToFront(tree, frame.towards);
  const farSides = new Map<number, boolean>();
  for (const { facet, plane } of pieces) farSides.set(facet, dot(plane.normal, frame.towards) > 0);

  return pieces.map((piece): Painted => {
    const { facet, sides, beyond } = piece;
    const farSide = farSides.get(facet) as boolean;
    const { normal } = piece.plane;
    const facing = farSide ? normal : { x: -normal.x, y: -normal.y, z: -normal.z };
    const outer = seen(piece.outer, farSide, frame);
    const turn = Math.sign(area(outer.face)) || 1;
    const holes = piece.holes.map((hole) => ({ own: hole.own, ...seen(hole, farSide, frame) }));
    const turnsAway = (at: number) => {
      const other = beyond[at];
      return other !== undefined && farSides.get(other) !== farSide;
    };
    return {
      facet,
      id: solid.facets[facet]?.id ?? "",
      bands: [
        ...sides.flatMap((side, at) => (side === "edge" && shows(outer, at, turn) ? [band(outer, at)] : [])),
        ...holes.flatMap((hole) => {
          const inwards = -Math.sign(area(hole.face)) || 1;
          return hole.own.flatMap((own, at) => (own && shows(hole, at, inwards) ? [band(hole, at)] : []));
        }),
      ],
      face: [outer.face, ...holes.map(({ face }) => face)],
      shade: shadeOf(facing, frame),
      outlines: [
        ...joined(outer.face, (at) => sides[at] === "edge" || ((sides[at] === "seam" || sides[at] === "fold") && turnsAway(at))),
        ...holes.flatMap(({ face, own }) => joined(face, (at) => own[at] === true)),
      ],
      folds: joined(outer.face, (at) => sides[at] === "fold" && !turnsAway(at)),
    };
  });
}

/** How far the sheet reaches on the drawing [mm]. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** Reach of the sheet on the drawing in all the given states of folding, from one view or from all round. */
export function extentOf({ layout, facets }: Solid, states: readonly Turned[], view: View, allRound = false): Extent {
  const frame = frameOf(view);
  const middle = project(centreOf(layout), frame);
  const [rise, level] = [Math.abs(Math.sin(rad(view.above))), Math.cos(rad(view.above))];
  let [left, right, bottom, top] = [middle.x, middle.x, middle.y, middle.y];
  const centre = centreOf(layout);
  for (const turned of states) {
    const lift = lifting(layout, turned);
    for (const facet of facets) {
      const carry = lift(facet);
      for (const point of facet.polygon) {
        const { near, far } = carry(point);
        for (const place of [near, far]) {
          if (allRound) {
            const out = Math.hypot(place.x - centre.x, place.y - centre.y);
            const height = middle.y + level * (place.z - centre.z);
            left = Math.min(left, middle.x - out);
            right = Math.max(right, middle.x + out);
            bottom = Math.min(bottom, height - rise * out);
            top = Math.max(top, height + rise * out);
          } else {
            const { x, y } = project(place, frame);
            left = Math.min(left, x);
            right = Math.max(right, x);
            bottom = Math.min(bottom, y);
            top = Math.max(top, y);
          }
        }
      }
    }
  }
  return { left, right, bottom, top };
}

/** Middle of the blank: what the view is turned about. */
export function centreOf({ width, depth }: Solid["layout"]): Place {
  return { x: width / 2, y: depth / 2, z: 0 };
}
