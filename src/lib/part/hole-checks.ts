import type { Catalogue, Outline } from "../catalogue.ts";
import { holeLimits } from "../punching/hole-rules.ts";
import { perimeter } from "../punching/perimeter.ts";
import { punchForce } from "../punching/punch-force.ts";
import { punchFor, roundPunches } from "../punching/shop-punches.ts";
import { mm, type Phrase, say } from "../quantity/phrase.ts";
import type { CutSheet } from "./blank.ts";
import { type Check, check, percent, practice, shopRule } from "./check.ts";
import { type FlatHole, holeReach } from "./flatten.ts";
import { depthIn } from "./geometry.ts";

function holeRulesFor(layout: CutSheet, hole: FlatHole): Check[] {
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

/** Largest distance from the middle of a hole to its edge, in the direction that matters for the metal beside it [mm]. */
function holeRadius(hole: FlatHole): number {
  const { x, y } = holeReach({ ...hole, turn: hole.flatTurn });
  return Math.max(x, y);
}

type Sized = Pick<FlatHole, "shape" | "width" | "height">;

/** The outline a punch would need; a slot has none. */
function punchOutline({ shape, width, height }: Sized): Outline | undefined {
  if (shape === "round") return { shape, diameter: width };
  if (shape === "square") return { shape, width };
  return shape === "rectangle" ? { shape, width, height } : undefined;
}

/** What a punch is called: its size as it is stamped. */
export function punchName(punch: Outline): Phrase {
  if (punch.shape === "round") return say`${mm(punch.diameter)} punch`;
  return punch.shape === "square" ? say`${mm(punch.width)} square punch` : say`${mm(punch.width)} × ${mm(punch.height)} punch`;
}

/** The punch that makes a hole, or undefined where it has to be drilled, sawn or filed. */
export function punchOf(hole: Sized, catalogue: Pick<Catalogue, "shop">) {
  const outline = punchOutline(hole);
  return outline && punchFor(catalogue.shop.punch, outline);
}

/** Force, throat and size of the punch that one kind of hole takes. */
function punchChecks(layout: CutSheet, catalogue: Catalogue): Check[] {
  const { part } = layout;
  const { punch: set } = catalogue.shop;
  const checks: Check[] = [];
  const kinds = new Map<string, FlatHole[]>();
  for (const hole of layout.holes) {
    const key = `${hole.shape} ${hole.width} ${hole.height}`;
    kinds.set(key, [...(kinds.get(key) ?? []), hole]);
  }
  for (const holes of kinds.values()) {
    const [hole] = holes as [FlatHole, ...FlatHole[]];
    const name = holes.length === 1 ? `Hole ${hole.number}` : `Holes ${holes.map(({ number }) => number).join(", ")}`;
    const punch = punchOf(hole, catalogue);
    if (!punch) {
      const sizes = roundPunches(set);
      checks.push({
        rule: "punch-size",
        label: `${name}: punch in this shop`,
        ok: false,
        value: Math.min(hole.width, hole.height),
        limit: sizes.toSorted((a, b) => Math.abs(a - hole.width) - Math.abs(b - hole.width))[0] ?? 0,
        side: "most",
        quantity: "length",
        why:
          hole.shape === "round"
            ? say`${set.name} has no punch of ${mm(hole.width)}. Drill it, or take the nearest size.`
            : say`${set.name} has no punch of this shape and size. Drill its corners or ends and saw or file between them, or change its size.`,
        ...shopRule,
      });
      continue;
    }
    const edge = perimeter({
      shape: punch.shape,
      diameter: hole.width,
      width: hole.width,
      height: hole.height,
    });
    const force = punchForce({ perimeter: edge, thickness: part.thickness, shearStrength: part.material.shearStrength.value });
    checks.push(
      check({
        rule: "punch-force",
        label: `${name}: punching force`,
        value: force,
        limit: set.force,
        side: "most",
        quantity: "force",
        why: say`Needs the ${punchName(punch)} with its die ${punch.die}: ${percent(force / set.force)} of the force of ${set.name}.`,
        ...shopRule,
      }),
    );
    const reach = Math.max(
      ...holes.map(({ flatX, flatY }) => Math.min(flatX, layout.width - flatX, flatY, layout.depth - flatY)),
    );
    checks.push(
      check({
        rule: "punch-throat",
        label: `${name}: from the nearest edge of the blank`,
        value: reach,
        limit: set.throat,
        side: "most",
        quantity: "length",
        why: say`The frame of ${set.name} is in the way beyond its throat.`,
        ...shopRule,
      }),
    );
  }
  return checks;
}

/** Narrowest metal between two holes. */
function spacingCheck(layout: CutSheet): Check[] {
  const { part, holes } = layout;
  const { minSpacing } = holeLimits({ family: part.material.family, thickness: part.thickness, radius: 0 });
  let least: { between: number; a: FlatHole; b: FlatHole } | undefined;
  holes.forEach((a, index) => {
    for (const b of holes.slice(index + 1)) {
      const between = Math.hypot(a.flatX - b.flatX, a.flatY - b.flatY) - holeRadius(a) - holeRadius(b);
      if (!least || between < least.between) least = { between, a, b };
    }
  });
  if (!least) return [];
  return [
    check({
      rule: "hole-spacing",
      label: `Holes ${least.a.number} and ${least.b.number}: metal between them`,
      value: least.between,
      limit: minSpacing,
      side: "least",
      quantity: "length",
      why: say`The nearest two holes: a narrow bridge between them bends or tears when the second is punched.`,
      ...practice,
    }),
  ];
}

/** Everything that is punched. */
export function holeChecks(layout: CutSheet, catalogue: Catalogue): readonly Check[] {
  return [
    ...layout.holes.flatMap((hole) => holeRulesFor(layout, hole)),
    ...spacingCheck(layout),
    ...punchChecks(layout, catalogue),
  ];
}
