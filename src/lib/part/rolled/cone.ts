import { InputError } from "../../input-error.ts";
import { exactly } from "../../inputs.ts";
import { atMost, mm, say } from "../../quantity/phrase.ts";
import { coneBlank, faceOffset } from "../../rolling/cone-blank.ts";
import { type FlatHole, type FlatPoint, holeReach } from "../flatten.ts";
import type { PartValues } from "../form.ts";
import type { ConePart, RolledEnd, RolledSheet, Sector } from "./model.ts";
import { jointPlaces, type Seam } from "./seam.ts";
import { within } from "./tube.ts";

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const degrees = (angle: number) => (angle * 180) / Math.PI;

/** How far a straight line of the outline may leave its arc [mm]. */
const sagitta = 0.01;

/** A tab narrower than this share of the inner radius can end on the inner arc; a wider one is cut off at 45°. */
const arcEnd = 0.5;

/** Share of the free angle that the strips of the seam may take: a slit between them can still be cut. */
const tabShare = 0.8;

/** A strip along a seam line: it reaches `width` outwards, from `from` at its outer edge to the outer arc [mm along the seam line]. */
interface Tab {
  readonly width: number;
  /** Along the outer edge of the strip. */
  readonly from: number;
  readonly to: number;
  /** Its inner end runs along the inner arc. */
  readonly onArc: boolean;
  /** What its ends add to the arcs [deg] */
  readonly outerAngle: number;
  readonly innerAngle: number;
}

/**
 * The strip of a seam along one seam line.
 * @param room - [deg], free beyond this seam line
 * @throws InputError at `seamWidth` when there is no room for it
 */
function tabOf(width: number, outer: number, inner: number, room: number, seam: Seam): Tab {
  if (width === 0) return { width, from: inner, to: outer, onArc: true, outerAngle: 0, innerAngle: 0 };
  const to = width < outer ? Math.sqrt(outer ** 2 - width ** 2) : 0;
  const clear = room < 90 ? width / Math.tan(radians(room)) : 0;
  const arc = width < arcEnd * inner ? Math.sqrt(inner ** 2 - width ** 2) : undefined;
  const onArc = arc !== undefined && arc >= clear;
  const from = onArc ? arc : Math.max(inner + width, clear);
  if (!(from < to))
    throw new InputError(
      "seamWidth",
      seam.width,
      say`Width of the seam must leave room on the blank: it adds ${exactly(width, "length")} beside an edge of ${mm(outer - inner)}${room < 90 ? say`, with ${{ value: room, quantity: "angle" as const }} of the circle free there` : ""}. Take a narrower seam, or butted edges.`,
    );
  return {
    width,
    from,
    to,
    onArc,
    outerAngle: degrees(Math.asin(width / outer)),
    innerAngle: onArc ? degrees(Math.asin(width / inner)) : 0,
  };
}

/**
 * A cone unrolled: the sector of a ring with its middle line upright, the large end to the south, so that the centre of its arcs lies
 * one outer radius from the south edge; strips of the seam along its straight edges.
 *
 * @returns outline (arcs in steps that leave them by no more than 0.01 mm), the sector itself, holes, joints
 * @throws InputError for diameters the wrong way round or alike, a seam without room, a hole that is not on the surface
 * @remarks Sector: `coneBlank`. A hole at a height keeps it along the slant and its distance from the seam along the circumference there.
 */
export function unrollCone(part: ConePart, seam: Seam, form: Pick<PartValues, "circles">): RolledSheet {
  const { outerRadius, innerRadius, sectorAngle, slant, chord } = coneBlank(part);
  const half = sectorAngle / 2;
  const free = 360 - sectorAngle;
  const share = (side: number) => (seam.allowance === 0 ? free / 2 : (tabShare * free * side) / seam.allowance);
  const tabA = tabOf(seam.sideA, outerRadius, innerRadius, share(seam.sideA), seam);
  const tabB = tabOf(seam.sideB, outerRadius, innerRadius, share(seam.sideB), seam);

  // About the centre of the arcs: angles from the south, anticlockwise; A lies at −half, B at +half.
  const polar = (radius: number, angle: number): FlatPoint => ({
    x: radius * Math.sin(radians(angle)),
    y: -radius * Math.cos(radians(angle)),
  });
  /** The place `round` further along the circumference and `inwards` nearer to the centre than another. */
  const moved = (from: FlatPoint, angle: number, round: number, inwards: number): FlatPoint => {
    const turn = radians(angle);
    return {
      x: from.x + round * Math.cos(turn) - inwards * Math.sin(turn),
      y: from.y + round * Math.sin(turn) + inwards * Math.cos(turn),
    };
  };
  /** A place along a seam line and outwards from it. */
  const beside = (side: "A" | "B", along: number, outwards: number): FlatPoint => {
    const sign = side === "A" ? -1 : 1;
    return moved(polar(along, sign * half), sign * half, sign * outwards, 0);
  };
  const arc = (radius: number, from: number, to: number): FlatPoint[] => {
    if (radius === 0) return [{ x: 0, y: 0 }];
    const step = 2 * Math.acos(Math.max(0, 1 - sagitta / radius));
    const count = Math.max(1, Math.ceil(Math.abs(radians(to - from)) / step));
    const angles = Array.from({ length: count + 1 }, (_, index) => from + ((to - from) * index) / count);
    // The farthest places of the arc are on it, so that the blank is as large as the sector.
    for (const extreme of [-90, 0, 90])
      if ((extreme - from) * (extreme - to) < 0 && !angles.includes(extreme)) angles.push(extreme);
    return angles.sort((a, b) => (to > from ? a - b : b - a)).map((angle) => polar(radius, angle));
  };
  const around = [
    ...arc(outerRadius, -half - tabA.outerAngle, half + tabB.outerAngle),
    ...(tabB.onArc ? [] : [beside("B", tabB.from, tabB.width)]),
    ...arc(innerRadius, half + tabB.innerAngle, -half - tabA.innerAngle),
    ...(tabA.onArc ? [] : [beside("A", tabA.from, tabA.width)]),
  ];
  const [minX, minY] = [Math.min(...around.map(({ x }) => x)), Math.min(...around.map(({ y }) => y))];
  const lay = ({ x, y }: FlatPoint): FlatPoint => ({ x: x - minX, y: y - minY });
  const outline = around.map(lay);

  const circumference = Math.PI * part.largeDiameter;
  const toSeam = new Map<number, number>();
  const holes = part.holes.map((hole): FlatHole => {
    const middle = middleOf(hole.field, form) ?? hole;
    const off = { x: hole.x - middle.x, y: hole.y - middle.y };
    const radius = outerRadius - (middle.y * slant) / part.height;
    if (middle !== hole) within({ ...hole, ...middle }, "y", part.height, 0, "the large end");
    const angle = radius > 0 ? degrees(middle.x / radius) - half : 0;
    const place = moved(polar(radius, angle), angle, off.x, off.y);
    checkOnCone(hole, place);
    const flat = lay(place);
    return { ...hole, flatX: flat.x, flatY: flat.y, flatTurn: angle + hole.turn };
  });

  function checkOnCone(hole: (typeof part.holes)[number], place: FlatPoint): void {
    const reach = holeReach(hole);
    const radius = Math.hypot(place.x, place.y);
    const perHeight = part.height / slant;
    const height = (outerRadius - radius) * perHeight;
    // Messages speak of the place that was typed: for hole circles, of the hole that sticks out.
    within({ ...hole, y: height }, "y", part.height, reach.y * perHeight, "the large end");
    const angle = degrees(Math.atan2(place.x, -place.y));
    const round = radians(sectorAngle) * radius;
    within({ ...hole, x: radians(half + angle) * radius }, "x", round, Math.min(reach.x, round), "the seam");
    if (seam.kind === "butt") return;
    const distance = (from: number) => (from < 90 ? radius * Math.sin(radians(from)) : radius);
    toSeam.set(
      hole.number,
      Math.min(distance(half + angle) - seam.coversA, distance(half - angle) - seam.coversB) - Math.max(reach.x, reach.y),
    );
  }

  const jointsFrom = Math.max(tabA.from, innerRadius);
  const joints = jointPlaces(seam, part.thickness, tabA.to - jointsFrom).map((place) => ({
    a: lay(beside("A", tabA.to - place, seam.width / 2)),
    b: lay(beside("B", tabA.to - place, -seam.width / 2)),
  }));
  const sector: Sector = {
    centre: lay({ x: 0, y: 0 }),
    outerRadius,
    innerRadius,
    slant,
    angle: sectorAngle,
    chord,
    halfChord: 2 * outerRadius * Math.sin(radians(half / 2)),
    seamLines: (["A", "B"] as const).map((side) => ({
      side,
      outer: lay(beside(side, outerRadius, 0)),
      inner: lay(beside(side, innerRadius, 0)),
    })),
  };
  return {
    part,
    seam,
    width: Math.max(...outline.map(({ x }) => x)),
    depth: Math.max(...outline.map(({ y }) => y)),
    around: circumference,
    alongRolls: slant,
    outline,
    holes,
    chains: [],
    corners: [],
    joints,
    toSeam,
    ends: endsOf(part, slant),
    sector,
  };
}

/** Middle of the hole circle that a hole belongs to. */
function middleOf(field: string, { circles }: Pick<PartValues, "circles">) {
  const [list, index] = field.split(".");
  return list === "circles" ? circles[Number(index)] : undefined;
}

/** Both ends of a cone, or the large one where it ends in a point. */
function endsOf(part: ConePart, slant: number): RolledEnd[] {
  const offset = faceOffset(part, part.thickness);
  const lean = part.height / slant;
  const end = (name: RolledEnd["name"], diameter: number): RolledEnd => ({
    name,
    outside: diameter + offset,
    inside: diameter - offset,
    // The sheet is curved square to the lines along the rolls; there the radius is that of the circle over the cosine of the lean.
    radius: diameter / 2 / lean - part.thickness / 2,
  });
  const large = end("large end", part.largeDiameter);
  if (part.smallDiameter === 0) return [large];
  const small = end("small end", part.smallDiameter);
  if (!(small.inside > 0))
    throw new InputError(
      "smallDiameter",
      part.smallDiameter,
      say`Small diameter must leave a hole inside: above ${atMost(offset)} at mid-thickness for this sheet, or 0 for a point; it is ${exactly(part.smallDiameter, "length")}.`,
    );
  return [large, small];
}
