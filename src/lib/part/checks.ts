import { planeStrainMoment } from "../bending/plastic-moment.ts";
import { smallestRadius } from "../bending/smallest-radius.ts";
import { overbend } from "../bending/springback.ts";
import type { Catalogue, Material, Seen } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { holeLimits } from "../punching/hole-rules.ts";
import { mm, type Phrase, say } from "../quantity/phrase.ts";
import type { Quantity } from "../quantity/units.ts";
import { blankSize } from "./blank.ts";
import { bendsOf, type FlatChain, type FlatHole, type FlatLayout, holeReach, panelName } from "./flatten.ts";
import { depthIn, narrowest, overlaps } from "./geometry.ts";
import { fitShare } from "./model.ts";

/** One rule held against the part: what it is now, what it may be, and why. Nothing is adjusted silently. */
export interface Check {
  readonly rule: string;
  readonly label: string;
  readonly ok: boolean;
  readonly value: number;
  readonly limit: number;
  /** `least`: the value must not be below the limit. */
  readonly side: "least" | "most";
  readonly quantity: Quantity;
  readonly why: Phrase;
  readonly source: string;
  readonly seen: Seen;
}

const practice = { source: "common-practice", seen: "practice" } as const;
const shopRule = { source: "this-shop", seen: "read" } as const;
const closeTo = 1e-9;

function check(entry: Omit<Check, "ok">): Check {
  const ok = entry.side === "least" ? entry.value >= entry.limit - closeTo : entry.value <= entry.limit + closeTo;
  return { ...entry, ok };
}

/** Swing that ends at the angle wanted, or undefined when this bend would not take a set. */
export function swingFor(material: Material, bend: { angle: number; radius: number; thickness: number }) {
  try {
    return overbend({ ...bend, yield: material.yield.value, elasticModulus: material.elasticModulus.value });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return undefined;
  }
}

function holeChecks(layout: FlatLayout, hole: FlatHole): Check[] {
  const { part } = layout;
  const { thickness } = part;
  // Distances to a bend are measured to its tangent line here, so the radius is not part of them.
  const limits = holeLimits({ family: part.material.family, thickness, radius: 0 });
  const name = `Hole ${hole.number}`;
  const middle = { x: hole.flatX, y: hole.flatY };
  const reach = holeReach({ ...hole, turn: hole.flatTurn });
  const toBends = layout.chains.flatMap((chain) => {
    const index = chain.panels.findIndex(({ id }) => id === hole.panel);
    if (index === -1) return [];
    const at = middle[chain.axis];
    return [chain.bends[index - 1], chain.bends[index]].flatMap((bend) =>
      bend ? [Math.max(bend.from - at, at - bend.to) - reach[chain.axis]] : [],
    );
  });
  const toEdge = depthIn(layout.outline, middle) - holeRadius(hole);
  return [
    check({
      rule: "hole-diameter",
      label: hole.shape === "round" ? `${name}: diameter` : `${name}: narrow side`,
      value: Math.min(hole.width, hole.height),
      limit: limits.minDiameter,
      side: "least",
      quantity: "length",
      why: say`A thin punch breaks in thick sheet; drill a smaller hole.`,
      ...practice,
    }),
    check({
      rule: "hole-edge",
      label: `${name}: metal to the nearest edge`,
      value: toEdge,
      limit: limits.minEdge,
      side: "least",
      quantity: "length",
      why: say`A narrow strip beside a hole bulges or tears when it is punched.`,
      ...practice,
    }),
    ...(toBends.length === 0
      ? []
      : [
          check({
            rule: "hole-bend",
            label: `${name}: metal to the nearest bend`,
            value: Math.min(...toBends),
            limit: limits.minBend,
            side: "least",
            quantity: "length",
            why: say`A hole closer to the bend is pulled out of round. Punch it after bending, or move it.`,
            ...practice,
          }),
        ]),
  ];
}

/**
 * Holds the part against the material, the drawing rules and this shop's brake and stock.
 * @returns every rule that applies, kept or broken
 */
export function checkPart(layout: FlatLayout, catalogue: Catalogue): readonly Check[] {
  const { part } = layout;
  const { thickness, material } = part;
  const { brake } = catalogue.shop;
  const checks: Check[] = [];

  const bends = bendsOf(layout);
  const radii = new Map(bends.map((bend) => [bend.radius, bend]));
  for (const [radius, bend] of radii) {
    const label = radii.size === 1 ? "Inside radius" : `Inside radius of bend ${bend.id}`;
    const smallest = smallestRadiusOf(catalogue, material, thickness);
    if (smallest)
      checks.push(
        check({
          rule: "smallest-radius",
          label,
          value: radius,
          limit: smallest.radius,
          side: "least",
          quantity: "length",
          why: say`A sharper bend may crack on the outside. ${smallest.how}`,
          source: smallest.source,
          seen: smallest.seen,
        }),
      );
  }

  for (const bend of bends) {
    const swing = swingFor(material, { angle: bend.angle, radius: bend.radius, thickness });
    checks.push(
      check({
        rule: "swing",
        label: `Bend ${bend.id}: swing of the leaf`,
        value: swing?.swingAngle ?? 180,
        limit: brake.largestSwing,
        side: "most",
        quantity: "angle",
        why: swing
          ? say`The leaf goes past the angle because the metal springs back.`
          : say`At this radius the sheet springs back flat.`,
        ...shopRule,
      }),
    );
    const chain = layout.chains.find((each) => each.bends.includes(bend)) as FlatChain;
    const leg = chain.panels.find(({ id }) => id === bend.id);
    const outermost = bend.baseBefore ? chain.panels.at(-1) : chain.panels[0];
    if (leg && outermost?.id === leg.id)
      checks.push(
        check({
          rule: "shortest-leg",
          label: `${panelName(leg.id)}: length`,
          value: leg.length,
          limit: brake.shortestLeg,
          side: "least",
          quantity: "length",
          why: say`The leaf of ${brake.name} cannot hold a shorter leg.`,
          ...shopRule,
        }),
      );
    if (leg)
      checks.push(
        check({
          rule: "longest-leg",
          label: `${panelName(leg.id)}: length`,
          value: leg.length,
          limit: brake.longestLeg,
          side: "most",
          quantity: "length",
          why: say`A longer leg does not swing clear on ${brake.name}.`,
          ...shopRule,
        }),
      );
  }

  const lengths = Object.entries(layout.spans)
    .filter(([id]) => id.startsWith("bend ") || id.endsWith(".edge"))
    .map(([, { from, to }]) => to - from);
  if (lengths.length > 0) {
    const longest = Math.max(...lengths);
    checks.push(
      check({
        rule: "brake-length",
        label: lengths.length === 1 ? "Length of the bend" : "Length of the longest bend",
        value: longest,
        limit: brake.rating.length,
        side: "most",
        quantity: "length",
        why: say`Longer than ${brake.name}.`,
        ...shopRule,
      }),
      check({
        rule: "brake-rating",
        label: "Moment on the brake",
        value: planeStrainMoment({ yield: material.yield.value, thickness, width: longest }),
        limit: ratedMoment(catalogue),
        side: "most",
        quantity: "moment",
        why: say`Rated for ${catalogue.materials[brake.rating.material].name}, ${mm(brake.rating.thickness)}, over ${mm(brake.rating.length)}; carried over by the moment that bends a wide sheet right through.`,
        ...shopRule,
      }),
    );
  }

  checks.push(...cornerChecks(layout));
  for (const hole of layout.holes) checks.push(...holeChecks(layout, hole));

  checks.push(...stockChecks(layout, catalogue));
  return checks;
}

/** Largest distance from the middle of a hole to its edge, in the direction that matters for the metal beside it [mm]. */
function holeRadius(hole: FlatHole): number {
  const { x, y } = holeReach({ ...hole, turn: hole.flatTurn });
  return Math.max(x, y);
}

/** Strips narrower than this many thicknesses cannot be cut or bent; common practice. */
const sliver = 2;

/** Metal at the corners: bent both ways, lying over itself, or hardly there. */
function cornerChecks(layout: FlatLayout): Check[] {
  const { part, corners, outline } = layout;
  const crossings = overlaps(outline);
  const thin = narrowest(outline);
  return [
    ...corners
      .filter(({ meets, relief }) => meets || relief)
      .map(({ id, bentTwice, relief }) =>
        check({
          rule: "corner-relief",
          label: `Corner ${id}: reach of the relief`,
          value: relief === undefined ? 0 : relief.size / 2,
          limit: relief?.kind === "notch" ? bentTwice / Math.SQRT2 : bentTwice,
          side: "least",
          quantity: "length",
          why: say`Within this distance of where the two bends cross the metal would have to be bent both ways, and it tears.`,
          source: "geometry",
          seen: "read",
        }),
      ),
    ...(corners.length > 0 || crossings.length > 0
      ? [
          check({
            rule: "overlap",
            label: "Places where the flat part would lie over itself",
            value: crossings.length,
            limit: 0,
            side: "most",
            quantity: "count",
            why:
              crossings.length === 0
                ? say`One sheet holds the whole part.`
                : say`The first is at ${mm(crossings[0]?.x ?? 0)} from the west and ${mm(crossings[0]?.y ?? 0)} from the south edge. Shorten a leg there, or make the part of two pieces.`,
            source: "geometry",
            seen: "read",
          }),
        ]
      : []),
    ...(thin && crossings.length === 0
      ? [
          check({
            rule: "sliver",
            label: "Narrowest strip of the outline",
            value: thin.width,
            limit: sliver * part.thickness,
            side: "least",
            quantity: "length",
            why: say`At ${mm(thin.at.x)} from the west and ${mm(thin.at.y)} from the south edge. A narrower strip curls or tears off.`,
            ...practice,
          }),
        ]
      : []),
  ];
}

/** Whether a sheet in stock is thick, long and wide enough. */
function stockChecks(layout: FlatLayout, catalogue: Catalogue): Check[] {
  const { material, thickness } = layout.part;
  const ofMaterial = catalogue.shop.stock.filter((sheet) => sheet.material === material.id);
  const nearest = ofMaterial.toSorted((a, b) => Math.abs(a.thickness - thickness) - Math.abs(b.thickness - thickness))[0];
  const sheets = ofMaterial.filter((sheet) => Math.abs(sheet.thickness - thickness) <= fitShare * thickness);
  if (sheets.length === 0)
    return [
      {
        rule: "stock-thickness",
        label: "Thickness in stock",
        ok: false,
        value: thickness,
        limit: nearest?.thickness ?? 0,
        side: thickness > (nearest?.thickness ?? 0) ? "most" : "least",
        quantity: "length",
        why: nearest
          ? say`This shop has ${material.name}, but not in this thickness; the nearest is ${mm(nearest.thickness)}.`
          : say`This shop has no ${material.name} in stock.`,
        ...shopRule,
      },
    ];
  const { width, depth } = blankSize(layout);
  const long = Math.max(width, depth);
  const short = Math.min(width, depth);
  const sides = (sheet: (typeof sheets)[number]) =>
    [Math.max(sheet.width, sheet.length), Math.min(sheet.width, sheet.length)] as const;
  const largest = sheets.toSorted((a, b) => b.width * b.length - a.width * a.length)[0] as (typeof sheets)[number];
  const sheet = sheets.find((each) => long <= sides(each)[0] && short <= sides(each)[1]) ?? largest;
  const why = say`The blank must come out of a stock sheet of ${mm(sheet.width)} × ${mm(sheet.length)}.`;
  const [longest, shortest] = sides(sheet);
  return [
    check({
      rule: "stock-size",
      label: "Long side of the blank",
      value: long,
      limit: longest,
      side: "most",
      quantity: "length",
      why,
      ...shopRule,
    }),
    check({
      rule: "stock-size",
      label: "Short side of the blank",
      value: short,
      limit: shortest,
      side: "most",
      quantity: "length",
      why,
      ...shopRule,
    }),
  ];
}

function smallestRadiusOf(catalogue: Catalogue, material: Material, thickness: number) {
  try {
    return smallestRadius(catalogue, material, thickness);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return undefined;
  }
}

/** Moment this shop's brake is rated for [N·m]: that of the rated sheet over the rated length. */
export function ratedMoment(catalogue: Catalogue): number {
  const { rating } = catalogue.shop.brake;
  return planeStrainMoment({
    yield: catalogue.materials[rating.material].yield.value,
    thickness: rating.thickness,
    width: rating.length,
  });
}
