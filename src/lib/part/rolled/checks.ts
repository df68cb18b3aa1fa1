import { fullPlasticMoment } from "../../bending/plastic-moment.ts";
import type { Catalogue } from "../../catalogue.ts";
import { leastJoints } from "../../joining/joint-row.ts";
import { rivetSizeFor } from "../../joining/rivets.ts";
import { leastHook, thickestFold } from "../../joining/seams.ts";
import { jointSpacing } from "../../joining/spot-spacing.ts";
import { weldPair } from "../../joining/weld-pair.ts";
import { holeLimits } from "../../punching/hole-rules.ts";
import { mm, say } from "../../quantity/phrase.ts";
import { longestSwing } from "../../rolling/cone-blank.ts";
import { widestRadius } from "../../rolling/loaded-radius.ts";
import { leastRatio } from "../../rolling/rolled-blank.ts";
import { rivetDistances } from "../../stock/rivet-spacing.ts";
import { type Check, check, percent, practice, shopRule } from "../check.ts";
import { holeChecks } from "../hole-checks.ts";
import { cutChecks, stockChecks } from "../stock-checks.ts";
import type { RolledSheet } from "./model.ts";
import { type RollSettings, stripOf } from "./setting.ts";

/**
 * Holds a rolled part against the rolls, the rules of its seam, the punch set, the shear, the welder and the stock.
 * @returns every rule that applies, kept or broken
 */
export function checkRolled(sheet: RolledSheet, rolling: RollSettings, catalogue: Catalogue): readonly Check[] {
  return [
    ...rollChecks(sheet, rolling, catalogue),
    ...seamChecks(sheet, catalogue),
    ...holeChecks(sheet, catalogue),
    ...holesBesideSeam(sheet),
    ...cutChecks(sheet, catalogue),
    ...stockChecks(sheet, catalogue),
  ];
}

const geometry = { source: "geometry", seen: "practice" } as const;

function rollChecks(sheet: RolledSheet, rolling: RollSettings, catalogue: Catalogue): Check[] {
  const { part, ends, alongRolls } = sheet;
  const { rolls } = catalogue.shop;
  const strip = stripOf(part);
  const rated = catalogue.materials[rolls.rating.material];
  const most = fullPlasticMoment({
    yield: rated.yield.value,
    thickness: rolls.rating.thickness,
    width: rolls.rating.length,
  });
  const moment = alongRolls * fullPlasticMoment({ yield: strip.yield, thickness: part.thickness, width: 1 });
  const narrowest = ends.reduce((least, end) => (end.inside < least.inside ? end : least));
  const widest = ends.reduce((largest, end) => (end.radius > largest.radius ? end : largest));
  const tightest = ends.reduce((least, end) => (end.radius < least.radius ? end : least));
  const cone = part.kind === "cone";
  const at = (end: { readonly name: string }) => (cone ? ` at the ${end.name}` : "");
  const checks: Check[] = [
    check({
      rule: "rolls-width",
      label: cone ? "Slant along the rolls" : "Length along the rolls",
      value: alongRolls,
      limit: rolls.width,
      side: "most",
      quantity: "length",
      why: say`${percent(alongRolls / rolls.width)} of the width of ${rolls.name}.`,
      ...shopRule,
    }),
    check({
      rule: "rolls-thickness",
      label: "Thickness at the rolls",
      value: part.thickness,
      limit: rolls.rating.thickness,
      side: "most",
      quantity: "length",
      why: say`${rolls.name} are rated for ${mm(rolls.rating.thickness)} ${rated.name} over ${mm(rolls.rating.length)}. Whether they take a thicker sheet that is narrower or softer is for their manual to say.`,
      ...shopRule,
    }),
    check({
      rule: "rolls-rating",
      label: "Bending moment at the rolls",
      value: moment,
      limit: most,
      side: "most",
      quantity: "moment",
      why: say`${percent(moment / most)} of the bending moment that ${rolls.name} are rated for, by yield strength, thickness squared and width.`,
      source: "equilibrium",
      seen: "practice",
    }),
    check({
      rule: "rolls-diameter",
      label: `Inside diameter${at(narrowest)}`,
      value: narrowest.inside,
      limit: rolls.smallestDiameter,
      side: "least",
      quantity: "length",
      why: cone
        ? say`${rolls.name} roll no smaller by their manual. Form the narrow end by hand over a stake or a mandrel.`
        : say`${rolls.name} roll no smaller by their manual. Bend it in steps on the brake, or round a mandrel.`,
      ...shopRule,
    }),
  ];
  if (rolling.smallestDiameter !== undefined)
    checks.push(
      check({
        rule: "rolls-tightest",
        label: `Curve${at(tightest)}, as a diameter`,
        value: 2 * tightest.radius,
        limit: rolling.smallestDiameter,
        side: "least",
        quantity: "length",
        why: say`The tightest curve of these rolls springs back to this in ${part.material.name} of ${mm(part.thickness)}.`,
        ...geometry,
      }),
    );
  checks.push(
    check({
      rule: "rolls-widest",
      label: `Inside radius${at(widest)}`,
      value: widest.radius,
      limit: widestRadius(strip),
      side: "most",
      quantity: "length",
      why: say`A wider curve is so nearly elastic that a sheet a quarter stronger would come back flat.`,
      source: "gardiner-1957",
      seen: "memory",
    }),
    check({
      rule: "neutral-line",
      label: `Inside radius${at(tightest)} over thickness`,
      value: tightest.radius / part.thickness,
      limit: leastRatio,
      side: "least",
      quantity: "ratio",
      why: say`In a sharper curve the middle of the thickness no longer keeps its length, and the blank comes out a little long.`,
      source: "common-practice",
      seen: "memory",
    }),
  );
  const flat = Math.max(0, ...rolling.settings.map(({ flatEnd }) => flatEnd));
  if (flat > 0)
    checks.push(
      check({
        rule: "flat-ends",
        label: "Way round the part",
        value: sheet.around,
        limit: 2 * flat,
        side: "least",
        quantity: "length",
        why: say`About ${mm(flat)} at each end stay nearly flat; where the two meet, nothing is rolled.`,
        ...geometry,
      }),
    );
  if (sheet.sector)
    checks.push(
      check({
        rule: "swing-radius",
        label: "Radius of the outer arc",
        value: sheet.sector.outerRadius,
        limit: longestSwing,
        side: "most",
        quantity: "length",
        why: say`Too long to swing on a bench. Draw the arc through points of its chord, or with a bent lath.`,
        ...practice,
      }),
    );
  return checks;
}

function seamChecks({ part, seam, joints, depth, alongRolls }: RolledSheet, catalogue: Catalogue): Check[] {
  const { thickness, material } = part;
  if (seam.kind === "butt") return [];
  if (seam.kind !== "lap")
    return [
      check({
        rule: "seam-thickness",
        label: "Thickness in the folded seam",
        value: thickness,
        limit: thickestFold,
        side: "most",
        quantity: "length",
        why: say`Seams are folded by hand in thinner sheet only. Lap it and rivet it.`,
        ...practice,
      }),
      check({
        rule: "seam-hook",
        label: seam.kind === "grooved" ? "Width of the hooks" : "Height of the standing seam",
        value: seam.width,
        limit: leastHook * thickness,
        side: "least",
        quantity: "length",
        why: say`Hooks narrower than four thicknesses can hardly be folded.`,
        ...practice,
      }),
    ];

  const { welder } = catalogue.shop;
  const spots = seam.joint === "spots";
  const edge = spots ? jointSpacing(thickness).edge : rivetDistances.edge * rivetSizeFor(thickness).diameter;
  const name = spots ? "Spots" : "Rivets";
  const checks: Check[] = [
    check({
      rule: spots ? "spot-lap" : "rivet-edge",
      label: `${name} in the lap: distance to the edge`,
      value: seam.width / 2,
      limit: edge,
      side: "least",
      quantity: "length",
      why: spots
        ? say`Nearer to the edge the metal is squeezed out from between the tips. Make the lap wider.`
        : say`Nearer to the edge the rivet tears out. Make the lap wider.`,
      ...practice,
    }),
    // Their pitch is laid out by the same rules, so it cannot break one; only the room for them can be short.
    check({
      rule: spots ? "spot-count" : "rivet-count",
      label: `${name} in the lap`,
      value: joints.length,
      limit: leastJoints,
      side: "least",
      quantity: "count",
      why: say`One alone lets the edges turn about it. Make the part longer, or take smaller joints.`,
      ...practice,
    }),
  ];
  if (!spots) return checks;
  const { verdict, reasons } = weldPair(material, material);
  const [reason] = reasons;
  const range = say`${welder.name} welds mild steel from ${mm(welder.thinnest)} to ${mm(welder.thickest)}, each of two sheets.`;
  const half = (part.kind === "tube" ? depth : alongRolls) / 2;
  checks.push(
    check({
      rule: "weldability",
      label: "Metals in the lap that a small welder joins",
      value: verdict === "no" ? 0 : 1,
      limit: 1,
      side: "least",
      quantity: "count",
      why: say`${material.name}: ${reason?.text ?? "it welds to itself."}${verdict === "no" ? " Rivet the lap." : ""}`,
      source: reason?.source ?? "common-practice",
      seen: reason ? "read" : "practice",
    }),
    check({
      rule: "welder-thickest",
      label: "Thickness at the spot welder, at most",
      value: thickness,
      limit: welder.thickest,
      side: "most",
      quantity: "length",
      why: range,
      ...shopRule,
    }),
    check({
      rule: "welder-thinnest",
      label: "Thickness at the spot welder, at least",
      value: thickness,
      limit: welder.thinnest,
      side: "least",
      quantity: "length",
      why: range,
      ...shopRule,
    }),
    check({
      rule: "welder-throat",
      label: "Middle of the seam from either end",
      value: half,
      limit: welder.throat,
      side: "most",
      quantity: "length",
      why: say`The lower arm of ${welder.name} goes in at one end, then at the other.`,
      ...shopRule,
    }),
  );
  return checks;
}

/** Holes must leave metal between them and the seam, which is folded, lapped or joined there. */
function holesBesideSeam({ part, toSeam }: RolledSheet): Check[] {
  const { minEdge } = holeLimits({ family: part.material.family, thickness: part.thickness, radius: 0 });
  return [...toSeam].map(([number, metal]) =>
    check({
      rule: "hole-seam",
      label: `Hole ${number}: metal to the seam`,
      value: metal,
      limit: minEdge,
      side: "least",
      quantity: "length",
      why: say`The seam needs the metal there whole. Move the hole, or turn the seam away from it.`,
      ...practice,
    }),
  );
}
