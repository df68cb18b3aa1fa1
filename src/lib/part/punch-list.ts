import type { Catalogue, Punch } from "../catalogue.ts";
import { perimeter } from "../punching/perimeter.ts";
import { punchForce } from "../punching/punch-force.ts";
import { carriedRatings } from "../shop/carry-over.ts";
import type { CutSheet } from "./blank.ts";
import type { FlatCorner, FlatHole, FlatPoint } from "./flatten.ts";
import { punchOf } from "./hole-checks.ts";
import type { HoleShape } from "./model.ts";

/** What makes a hole or takes a corner off, and why where it is not the tool one would look for first. */
export type HoleTool =
  | {
      readonly by: "punch";
      readonly punch: Punch;
      /** Of this hole [N], and as a share of the machine's. */
      readonly force: number;
      readonly share: number;
    }
  | {
      /** `saw`: drill its corners or ends, then saw or file between them. */
      readonly by: "drill" | "saw";
      readonly why: "no-punch" | "force" | "throat";
    };

export interface NotchTool {
  /** `lines`: with snips or the band saw to the scribed lines. */
  readonly by: "corner-cutter" | "lines";
  readonly why?: "size" | "thickness" | "shape";
}

interface Step {
  readonly number: number;
  /** Ids of the corners, or numbers of the holes. */
  readonly for: readonly string[];
}

/** Holes of one shape and size, made one after the other with one tool. Lengths in mm. */
export interface HoleStep extends Step {
  readonly kind: "relief" | "hole";
  readonly shape: HoleShape;
  readonly width: number;
  readonly height: number;
  /** Middles from the west and the south edge of the blank. */
  readonly places: readonly FlatPoint[];
  readonly tool: HoleTool;
}

/** Corners taken off at one setting of the guides. Lengths in mm. */
export interface NotchStep extends Step {
  readonly kind: "notch";
  /** How far the notch reaches in from the west or east edge, and from the south or north edge. */
  readonly guide: { readonly x: number; readonly y: number };
  /** Side of the square relief where the bends cross, cut with the notch. */
  readonly square?: number;
  readonly tool: NotchTool;
}

export type PunchStep = HoleStep | NotchStep;

type Data = Pick<Catalogue, "materials" | "shop">;
type Sized = Pick<HoleStep, "shape" | "width" | "height">;

/** The tool for one hole at one place. */
function holeTool(layout: CutSheet, hole: Sized, places: readonly FlatPoint[], { shop }: Data): HoleTool {
  const { part, width, depth } = layout;
  const { shape } = hole;
  const instead = shape === "round" ? "drill" : "saw";
  const punch = punchOf(hole, { shop });
  if (!punch) return { by: instead, why: "no-punch" };
  const edge = perimeter({ shape: punch.shape, diameter: hole.width, width: hole.width, height: hole.height });
  const force = punchForce({ perimeter: edge, thickness: part.thickness, shearStrength: part.material.shearStrength.value });
  if (force > shop.punch.force) return { by: instead, why: "force" };
  const reach = Math.max(...places.map(({ x, y }) => Math.min(x, width - x, y, depth - y)));
  if (reach > shop.punch.throat) return { by: instead, why: "throat" };
  return { by: "punch", punch, force, share: force / shop.punch.force };
}

const closeTo = 1e-6;

/** Nothing of the part lies in the rectangle between the corner of the blank and the notch, and all else is left on. */
function isPlainNotch({ outline, width, depth }: CutSheet, { notch, sides, guide }: FlatCorner): boolean {
  const edge = { x: sides.includes("east") ? width : 0, y: sides.includes("north") ? depth : 0 };
  const [low, high] = [
    { x: Math.min(edge.x, notch.x), y: Math.min(edge.y, notch.y) },
    { x: Math.max(edge.x, notch.x), y: Math.max(edge.y, notch.y) },
  ];
  const has = (x: number, y: number) => outline.some((point) => Math.hypot(point.x - x, point.y - y) <= closeTo);
  const within = outline.some(
    ({ x, y }) => x > low.x + closeTo && x < high.x - closeTo && y > low.y + closeTo && y < high.y - closeTo,
  );
  return guide.x > closeTo && guide.y > closeTo && !within && has(notch.x, edge.y) && has(edge.x, notch.y);
}

/** @param thickest - sheet of the part's metal that the corner cutter takes [mm] */
function notchTool(layout: CutSheet, corner: FlatCorner, thickest: number, largestSide: number): NotchTool {
  if (!isPlainNotch(layout, corner)) return { by: "lines", why: "shape" };
  if (Math.max(corner.guide.x, corner.guide.y) > largestSide + closeTo) return { by: "lines", why: "size" };
  if (layout.part.thickness > thickest + closeTo) return { by: "lines", why: "thickness" };
  return { by: "corner-cutter" };
}

/** Two sizes closer than this are made with one tool or at one setting. */
const sameSize = 0.005;

function grouped<T>(all: readonly T[], same: (a: T, b: T) => boolean): [T, ...T[]][] {
  const groups: [T, ...T[]][] = [];
  for (const each of all) {
    const group = groups.find(([first]) => same(first, each));
    if (group) group.push(each);
    else groups.push([each]);
  }
  return groups;
}

const sameHole = (a: Sized, b: Sized) =>
  a.shape === b.shape && Math.abs(a.width - b.width) < sameSize && Math.abs(a.height - b.height) < sameSize;

const shapes: readonly HoleShape[] = ["round", "square", "rectangle", "slot"];

/**
 * Everything that is taken out of the blank while it is flat, in order: relief holes, so that notches end in a hole; then holes, those of
 * one shape and size together, small to large, punched ones first; then the notches, by the guides of the corner cutter.
 *
 * @remarks A hole beyond the force or the throat of the punch is drilled. Order: common practice. Rivet holes of tabs are not here: they
 *   are drilled when the tab lies on its neighbour.
 */
export function punchList(layout: CutSheet, catalogue: Data): readonly PunchStep[] {
  const reliefs = layout.corners.flatMap((corner) =>
    corner.relief?.kind === "hole"
      ? [{ corner, shape: "round" as const, width: corner.relief.size, height: corner.relief.size }]
      : [],
  );
  const reliefSteps = grouped(reliefs, sameHole).map((group): Omit<HoleStep, "number"> => {
    const [{ shape, width, height }] = group;
    const places = group.map(({ corner }) => ({ x: corner.x, y: corner.y }));
    return {
      kind: "relief",
      for: group.map(({ corner }) => corner.id),
      shape,
      width,
      height,
      places,
      tool: holeTool(layout, { shape, width, height }, places, catalogue),
    };
  });
  const byTool: readonly HoleTool["by"][] = ["punch", "drill", "saw"];
  const holeSteps = grouped<FlatHole>(layout.holes, sameHole)
    .map((group): Omit<HoleStep, "number"> => {
      const [{ shape, width, height }] = group;
      const places = group.map(({ flatX, flatY }) => ({ x: flatX, y: flatY }));
      return {
        kind: "hole",
        for: group.map(({ number }) => String(number)),
        shape,
        width,
        height,
        places,
        tool: holeTool(layout, { shape, width, height }, places, catalogue),
      };
    })
    .toSorted(
      (a, b) =>
        byTool.indexOf(a.tool.by) - byTool.indexOf(b.tool.by) ||
        shapes.indexOf(a.shape) - shapes.indexOf(b.shape) ||
        a.width * a.height - b.width * b.height,
    );
  const { largestSide } = catalogue.shop.cornerCutter;
  const carried = layout.corners.length > 0 ? carriedRatings(catalogue) : [];
  const thickest = carried.find(({ material }) => material === layout.part.material.id)?.cornerCutter ?? 0;
  const notches = layout.corners.map((corner) => ({ corner, tool: notchTool(layout, corner, thickest, largestSide) }));
  const sameGuides = (a: (typeof notches)[number], b: (typeof notches)[number]) =>
    Math.abs(a.corner.guide.x - b.corner.guide.x) < sameSize &&
    Math.abs(a.corner.guide.y - b.corner.guide.y) < sameSize &&
    a.tool.by === b.tool.by;
  const notchSteps = grouped(notches, sameGuides).map((group): Omit<NotchStep, "number"> => {
    const [{ corner, tool }] = group;
    return {
      kind: "notch",
      for: group.map((each) => each.corner.id),
      guide: corner.guide,
      ...(corner.relief?.kind === "notch" && { square: corner.relief.size }),
      tool,
    };
  });
  return [...reliefSteps, ...holeSteps, ...notchSteps].map((step, index) => ({ number: index + 1, ...step }) as PunchStep);
}

/** The step that makes a hole, by its number. */
export function stepOfHole(steps: readonly PunchStep[], number: number): HoleStep | undefined {
  return steps.find((step): step is HoleStep => step.kind === "hole" && step.for.includes(String(number)));
}
