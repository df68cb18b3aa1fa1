import type { FlatHole, FlatLayout, FlatPoint } from "./flatten.ts";
import type { Axis } from "./model.ts";

/**
 * The flat layout as plain lines in millimetres, for whatever draws or writes it at full size: x from the west, y from the south edge.
 */

export type Mark =
  | { readonly kind: "polygon"; readonly points: readonly FlatPoint[] }
  | { readonly kind: "line"; readonly from: FlatPoint; readonly to: FlatPoint; readonly name?: string }
  | { readonly kind: "circle"; readonly centre: FlatPoint; readonly radius: number }
  /** A narrow side carried along its middle line. */
  | { readonly kind: "slot"; readonly a: FlatPoint; readonly b: FlatPoint; readonly radius: number }
  | { readonly kind: "cross"; readonly centre: FlatPoint; readonly reach: number; readonly name?: string };

export const layers = {
  outline: "Edge of the blank with its notches",
  "relief-holes": "Relief holes",
  holes: "Holes",
  "hole-centres": "Middles of holes, reliefs and joints",
  "bend-lines": "Middle of each bend",
  "bend-zones": "Where each bend starts and ends",
  "sight-lines": "Sight lines",
  "fold-lines": "Fold lines of folded edges and seams",
  "seam-lines": "Seam and lap lines of a rolled part",
  "middle-line": "Middle line, laid square to the rolls",
} as const;
export type LayerId = keyof typeof layers;

/** ISO 128: what is there is drawn wide, what is only marked narrow, centre lines long-dashed dotted. Widths and dashes in mm. */
const wide = { width: 0.5 } as const;
const narrow = { width: 0.25 } as const;
const centreDashes = "3 0.75 0.25 0.75";
export const lineStyles: Readonly<Record<LayerId, { readonly width: number; readonly dashes?: string }>> = {
  outline: wide,
  "relief-holes": wide,
  holes: wide,
  "hole-centres": { ...narrow, dashes: centreDashes },
  "bend-lines": narrow,
  "bend-zones": narrow,
  "sight-lines": narrow,
  "fold-lines": narrow,
  "seam-lines": narrow,
  "middle-line": { ...narrow, dashes: centreDashes },
};

export type Drawing = Readonly<Record<LayerId, readonly Mark[]>>;

/** A blank to be drawn at full size, whatever is made of it. Lengths in mm. */
export interface FullSize {
  readonly name: string;
  /** Name of the metal. */
  readonly material: string;
  readonly thickness: number;
  readonly width: number;
  readonly depth: number;
  readonly outline: readonly FlatPoint[];
  /** Which face is seen. */
  readonly face: string;
  readonly drawing: Drawing;
}

const rad = (degrees: number) => (degrees * Math.PI) / 180;

/** Edge of a hole as it lies on the blank. */
export function holeMark({ shape, width, height, flatTurn, flatX, flatY }: FlatHole): Mark {
  const centre = { x: flatX, y: flatY };
  if (shape === "round") return { kind: "circle", centre, radius: width / 2 };
  const cos = Math.cos(rad(flatTurn));
  const sin = Math.sin(rad(flatTurn));
  const at = (x: number, y: number): FlatPoint => ({ x: flatX + x * cos - y * sin, y: flatY + x * sin + y * cos });
  if (shape === "slot") {
    const radius = Math.min(width, height) / 2;
    const [x, y] = [width / 2 - radius, height / 2 - radius];
    return { kind: "slot", a: at(x, y), b: at(-x, -y), radius };
  }
  const [x, y] = [width / 2, height / 2];
  return { kind: "polygon", points: [at(x, y), at(-x, y), at(-x, -y), at(x, -y)] };
}

/** How far the two lines of a centre reach beyond the hole they are in, and where there is only a place to mark [mm]. */
const beyondHole = 3;
export const markReach = 4;

/** Edge, holes and their middles: what every blank has, whatever is made of it. */
export const cutMarks = ({ outline, holes }: Pick<FlatLayout, "outline" | "holes">) => ({
  outline: [{ kind: "polygon", points: outline }] satisfies Mark[],
  holes: holes.map(holeMark),
  centres: holes.map(
    ({ flatX, flatY, width, height, number }): Mark => ({
      kind: "cross",
      centre: { x: flatX, y: flatY },
      reach: Math.min(width, height) / 2 + beyondHole,
      name: String(number),
    }),
  ),
});

/** Both ends of a line across one axis. */
const across = (axis: Axis, distance: number, { from, to }: { readonly from: number; readonly to: number }) =>
  axis === "y"
    ? { from: { x: from, y: distance }, to: { x: to, y: distance } }
    : { from: { x: distance, y: from }, to: { x: distance, y: to } };

interface Lined {
  readonly id: string;
  readonly from: "south" | "west";
  readonly span: { readonly from: number; readonly to: number };
  readonly line: number;
  readonly tangents: readonly [number, number];
  readonly sightLine: number;
  readonly angle: number;
  readonly way: "up" | "down";
}

/** `north.1 90° up` */
export const bendName = ({ id, angle, way }: Pick<Lined, "id" | "angle" | "way">) => `${id} ${Number(angle.toFixed(1))}° ${way}`;

/**
 * Everything that is cut or marked on the blank, by layers.
 * @param plan.layout - the flat layout
 * @param plan.bends - bends and tabs with their lines
 */
export function drawingOf({ layout, bends }: { readonly layout: FlatLayout; readonly bends: readonly Lined[] }): Drawing {
  const lineOf = (bend: Lined, distance: number, name?: string): Mark => ({
    kind: "line",
    ...across(bend.from === "south" ? "y" : "x", distance, bend.span),
    ...(name !== undefined && { name }),
  });
  const holesOut = layout.corners.flatMap(({ x, y, relief }) =>
    relief?.kind === "hole" ? [{ centre: { x, y }, radius: relief.size / 2 }] : [],
  );
  const { outline, holes, centres } = cutMarks(layout);
  return {
    outline,
    "relief-holes": holesOut.map((hole) => ({ kind: "circle", ...hole })),
    holes,
    "hole-centres": [
      ...centres,
      ...holesOut.map(({ centre, radius }): Mark => ({ kind: "cross", centre, reach: radius + beyondHole })),
      ...layout.attachments.map(
        ({ flatX, flatY, number }): Mark => ({
          kind: "cross",
          centre: { x: flatX, y: flatY },
          reach: markReach,
          name: `spot ${number}`,
        }),
      ),
      ...layout.tabs.flatMap(({ joints }) =>
        joints.flatMap(({ tab, wall }) => [tab, wall].map((centre): Mark => ({ kind: "cross", centre, reach: markReach }))),
      ),
    ],
    "bend-lines": bends.map((bend) => lineOf(bend, bend.line)),
    "bend-zones": bends.flatMap((bend) => bend.tangents.map((tangent) => lineOf(bend, tangent))),
    "sight-lines": bends.map((bend) => lineOf(bend, bend.sightLine, `sight line of ${bendName(bend)}`)),
    "fold-lines": layout.chains.flatMap(({ axis, edgeLines }) =>
      edgeLines.map(
        ({ edge, line, turn }): Mark => ({
          kind: "line",
          ...across(axis, line, layout.spans[edge.id] ?? { from: 0, to: 0 }),
          name: `fold ${turn} of the ${edge.side} edge`,
        }),
      ),
    ),
    "seam-lines": [],
    "middle-line": [],
  };
}

/** The blank of a folded part at full size. */
export function fullSize({ layout, bends }: { readonly layout: FlatLayout; readonly bends: readonly Lined[] }): FullSize {
  const { part, width, depth, outline } = layout;
  return {
    name: part.name,
    material: part.material.name,
    thickness: part.thickness,
    width,
    depth,
    outline,
    face: "front face up",
    drawing: drawingOf({ layout, bends }),
  };
}

/** Puts a place on the blank onto a paper whose y grows downwards. */
export type Place = (point: FlatPoint) => FlatPoint;

/** Thousandths of a millimetre: finer than anybody can cut, and the same on every machine. */
const tidy = (value: number) => String(Number(value.toFixed(3)) + 0);
const at = ({ x, y }: FlatPoint) => `${tidy(x)} ${tidy(y)}`;

/** A mark as the data of an SVG path, in millimetres. */
export function pathData(mark: Mark, place: Place): string {
  switch (mark.kind) {
    case "polygon":
      return `M${mark.points.map((point) => at(place(point))).join("L")}Z`;
    case "line":
      return `M${at(place(mark.from))}L${at(place(mark.to))}`;
    case "cross": {
      const { x, y } = place(mark.centre);
      const reach = mark.reach;
      return `M${at({ x: x - reach, y })}H${tidy(x + reach)}M${at({ x, y: y - reach })}V${tidy(y + reach)}`;
    }
    case "circle": {
      const { x, y } = place(mark.centre);
      const r = tidy(mark.radius);
      return `M${at({ x: x - mark.radius, y })}A${r} ${r} 0 1 0 ${at({ x: x + mark.radius, y })}A${r} ${r} 0 1 0 ${at({ x: x - mark.radius, y })}Z`;
    }
    case "slot": {
      const [a, b] = [place(mark.a), place(mark.b)];
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      if (length === 0) return pathData({ kind: "circle", centre: mark.a, radius: mark.radius }, place);
      const side = { x: (-(b.y - a.y) / length) * mark.radius, y: ((b.x - a.x) / length) * mark.radius };
      const corner = (end: FlatPoint, sign: 1 | -1) => at({ x: end.x + sign * side.x, y: end.y + sign * side.y });
      const arc = `A${tidy(mark.radius)} ${tidy(mark.radius)} 0 0 1 `;
      // From a along one side to b, round its end, back along the other side, round the end of a.
      return `M${corner(a, -1)}L${corner(b, -1)}${arc}${corner(b, 1)}L${corner(a, 1)}${arc}${corner(a, -1)}Z`;
    }
  }
}
