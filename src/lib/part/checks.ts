import { planeStrainMoment } from "../bending/plastic-moment.ts";
import { smallestRadius } from "../bending/smallest-radius.ts";
import { overbend } from "../bending/springback.ts";
import type { Catalogue, Material, Seen } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { holeLimits } from "../punching/hole-rules.ts";
import { mm, type Phrase, say } from "../quantity/phrase.ts";
import type { Quantity } from "../quantity/units.ts";
import { blankSize } from "./blank.ts";
import { type FlatHole, type FlatLayout, panelName } from "./flatten.ts";
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
  const name = `Hole ${hole.index + 1}`;
  const along = part.axis === "y" ? hole.flatY : hole.flatX;
  const across = part.axis === "y" ? hole.flatX : hole.flatY;
  const radius = hole.diameter / 2;
  const panelIndex = layout.panels.findIndex(({ id }) => id === hole.panel);
  const toBends = [panelIndex - 1, panelIndex].flatMap((index) => {
    const bend = layout.bends[index];
    return bend ? [Math.max(bend.from - along, along - bend.to) - radius] : [];
  });
  const toEdges = [across, part.width - across, along, layout.along - along].map((distance) => distance - radius);
  return [
    check({
      rule: "hole-diameter",
      label: `${name}: diameter`,
      value: hole.diameter,
      limit: limits.minDiameter,
      side: "least",
      quantity: "length",
      why: say`A thin punch breaks in thick sheet; drill a smaller hole.`,
      ...practice,
    }),
    check({
      rule: "hole-edge",
      label: `${name}: metal to the nearest edge`,
      value: Math.min(...toEdges),
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

  const radii = new Map(layout.bends.map((bend) => [bend.radius, bend]));
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

  for (const bend of layout.bends) {
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
    const legs = layout.panels.slice(
      ...(bend.baseBefore ? [layout.bends.indexOf(bend) + 1] : [0, layout.bends.indexOf(bend) + 1]),
    );
    const outermost = bend.baseBefore ? legs.at(-1) : legs[0];
    const leg = layout.panels.find(({ id }) => id === bend.id);
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

  if (layout.bends.length > 0 || layout.edgeLines.length > 0) {
    checks.push(
      check({
        rule: "brake-length",
        label: "Length of the bends",
        value: part.width,
        limit: brake.rating.length,
        side: "most",
        quantity: "length",
        why: say`Longer than ${brake.name}.`,
        ...shopRule,
      }),
      check({
        rule: "brake-rating",
        label: "Moment on the brake",
        value: planeStrainMoment({ yield: material.yield.value, thickness, width: part.width }),
        limit: ratedMoment(catalogue),
        side: "most",
        quantity: "moment",
        why: say`Rated for ${catalogue.materials[brake.rating.material].name}, ${mm(brake.rating.thickness)}, over ${mm(brake.rating.length)}; carried over by the moment that bends a wide sheet right through.`,
        ...shopRule,
      }),
    );
  }

  for (const hole of layout.holes) checks.push(...holeChecks(layout, hole));

  checks.push(...stockChecks(layout, catalogue));
  return checks;
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
