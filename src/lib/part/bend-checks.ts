import { planeStrainMoment } from "../bending/plastic-moment.ts";
import { smallestRadius } from "../bending/smallest-radius.ts";
import { overbend } from "../bending/springback.ts";
import type { Catalogue, Material } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { mm, say } from "../quantity/phrase.ts";
import { type Check, check, percent, practice, shopRule } from "./check.ts";
import { bendsOf, type FlatChain, type FlatLayout, panelName } from "./flatten.ts";
import type { Edge } from "./model.ts";

/** Swing that ends at the angle wanted, or undefined when this bend would not take a set. */
export function swingFor(material: Material, bend: { angle: number; radius: number; thickness: number }) {
  try {
    return overbend({ ...bend, yield: material.yield.value, elasticModulus: material.elasticModulus.value });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return undefined;
  }
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

/** Yield strengths [N/mm²] up to which sheet is folded flat on itself: soft steel; soft aluminium, copper and brass. Common practice. */
const softest = { steel: 300, other: 150 };

const foldsFlat = ({ family, yield: strength }: Material) =>
  strength.value <= (family === "carbon-steel" ? softest.steel : softest.other);

/** Inside radius of each kind of folded edge [mm]: flattened, or half its gap. */
const edgeRadius = ({ kind, gap }: Edge) => (kind === "closed" || kind === "double" ? 0 : gap / 2);

/** Radii, swings, legs and the brake: everything that is bent or folded over. */
export function bendChecks(layout: FlatLayout, catalogue: Catalogue): readonly Check[] {
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
    const moment = planeStrainMoment({ yield: material.yield.value, thickness, width: longest });
    const rated = ratedMoment(catalogue);
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
        value: moment,
        limit: rated,
        side: "most",
        quantity: "moment",
        why: say`${percent(moment / rated)} of the rating of ${brake.name}: ${catalogue.materials[brake.rating.material].name}, ${mm(brake.rating.thickness)}, over ${mm(brake.rating.length)}; carried over by the moment that bends a wide sheet right through.`,
        ...shopRule,
      }),
    );
  }

  const sharpest = smallestRadiusOf(catalogue, material, thickness);
  for (const chain of layout.chains)
    for (const edge of [chain.startEdge, chain.endEdge])
      if (edge && sharpest)
        checks.push(
          check({
            rule: "edge-radius",
            label: `Folded edge on ${edge.side}: inside radius`,
            value: edgeRadius(edge),
            side: "least",
            quantity: "length",
            ...(foldsFlat(material)
              ? {
                  limit: 0,
                  why: say`Soft sheet is folded flat in the trade, although a free bend so sharp is below the smallest radius, ${mm(sharpest.radius)}. Look along the fold of a practice piece for cracks.`,
                  ...practice,
                }
              : {
                  limit: sharpest.radius,
                  why: say`A fold sharper than the smallest radius may crack along its outside. An open or teardrop edge with a wider gap is kinder. ${sharpest.how}`,
                  source: sharpest.source,
                  seen: sharpest.seen,
                }),
          }),
        );

  if (layout.corners.length > 0) {
    const tallest = Math.max(
      ...bends.map(({ id }) => layout.chains.flatMap(({ panels }) => panels).find((panel) => panel.id === id)?.length ?? 0),
    );
    checks.push(
      check({
        rule: "finger-height",
        label: "Sides beside the fingers: height",
        value: tallest,
        limit: brake.fingerHeight,
        side: "most",
        quantity: "length",
        why: say`Sides that already stand rise beside the fingers and must clear the clamp beam of ${brake.name}.`,
        ...shopRule,
      }),
    );
  }
  return checks;
}
