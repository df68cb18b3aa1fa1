import type { Formula, FormulaInput, FormulaSymbol } from "../formula.ts";
import { InputError } from "../input-error.ts";
import { checkRange, checkRanges, exactly } from "../inputs.ts";
import { atMost, say } from "../quantity/phrase.ts";
import { propertyInputs } from "../stock/material.ts";
import { bendAngle, insideRadius, thickness } from "./symbols.ts";

const toolRadius = {
  ...insideRadius,
  label: "Tool radius",
  symbol: "Ri",
  tex: "R_i",
} as const satisfies FormulaInput;

const radius = {
  ...insideRadius,
  label: "Inside radius after springback",
  symbol: "Rf",
  tex: "R_f",
} as const satisfies FormulaInput;

const yieldStrength = { ...propertyInputs.yield, tex: "Y" };
const elasticModulus = { ...propertyInputs.elasticModulus, tex: "E" };

const elasticShareSymbol = {
  label: "Elastic share",
  symbol: "X",
  tex: "X",
  quantity: "ratio",
} as const satisfies FormulaSymbol;

const factor = { label: "Springback factor", symbol: "Ks", tex: "K_s", quantity: "ratio" } as const satisfies FormulaSymbol;
const swing = { label: "Angle to swing", symbol: "Ai", tex: "A_i", quantity: "angle" } as const satisfies FormulaSymbol;
const overbendSymbol = { label: "Overbend", symbol: "ΔA", tex: String.raw`\Delta A`, quantity: "angle" } as const;

/** A strip of this sheet: thickness T [mm], yield strength Y and elastic modulus E [N/mm²]. */
export interface Strip {
  readonly thickness: number;
  readonly yield: number;
  readonly elasticModulus: number;
}

const strip = { thickness, yield: yieldStrength, elasticModulus };

/** X at which even the outer fibres only just yield: nothing stays bent. */
const fullyElastic = 0.5;

export const elasticShareFormula: Formula = {
  id: "elastic-share",
  name: "Elastic share of a bend",
  result: "elasticShare",
  expression: String.raw`\frac{\v{toolRadius}\cdot\v{yield}}{\v{elasticModulus}\cdot\v{thickness}}`,
  symbols: { ...strip, toolRadius, elasticShare: elasticShareSymbol },
};

/**
 * How much of a bend is elastic: 0 for a perfectly sharp one, 0.5 for one that springs back flat.
 *
 * @param bend.toolRadius - Ri [mm], the inside radius while the tool holds it; 0 to 1000
 * @param bend.thickness - T [mm]; 0.1 to 13
 * @param bend.yield - Y [N/mm²]; 5 to 2500
 * @param bend.elasticModulus - E [N/mm²]; 10 000 to 500 000
 * @returns X [1] = Ri Y/(E T)
 * @throws InputError for a value outside its range
 * @remarks Source: Kalpakjian and Schmid (from memory).
 * @example elasticShare({ toolRadius: 10, thickness: 1, yield: 200, elasticModulus: 200_000 }); // 0.01
 */
export function elasticShare(bend: Strip & { readonly toolRadius: number }): number {
  checkRanges({ toolRadius, ...strip }, bend);
  return (bend.toolRadius * bend.yield) / (bend.elasticModulus * bend.thickness);
}

/** 4X³ − 3X + 1, written as a product so that it keeps its digits near X = ½. */
function ratioAt(share: number): number {
  return (1 - 2 * share) ** 2 * (1 + share);
}

/**
 * Tool radius of a strip that springs back flat: at this radius and above, nothing stays bent.
 *
 * @param sheet - T [mm], Y and E [N/mm²]
 * @returns E T/(2 Y) [mm]
 * @throws InputError for a value outside its range
 * @remarks From X = ½: outer-fibre strain T/(2 Ri) equals the yield strain Y/E.
 */
export function elasticLimitRadius(sheet: Strip): number {
  checkRanges(strip, sheet);
  return (fullyElastic * sheet.elasticModulus * sheet.thickness) / sheet.yield;
}

/**
 * Tool radius over the radius left after springback.
 *
 * @param bend - Ri and T [mm], Y and E [N/mm²], as for `elasticShare`
 * @returns Ri/Rf [1] = 4X³ − 3X + 1; 1 for a sharp bend, towards 0 at the elastic limit
 * @throws InputError for a value outside its range, and for a tool radius that leaves no set at all (X from 0.5)
 * @remarks Pure bending of a wide strip that yields at one constant stress; no work hardening, no stretch along the sheet.
 *   Source: Gardiner, Trans. ASME 79(1), 1957, in the form Kalpakjian and Schmid give (from memory; re-derived for X up to 0.5).
 */
export function springbackRatio(bend: Strip & { readonly toolRadius: number }): number {
  const share = elasticShare(bend);
  if (share >= fullyElastic)
    throw new InputError(
      "toolRadius",
      bend.toolRadius,
      say`Tool radius must be below ${atMost(elasticLimitRadius(bend))}, or this sheet springs back flat; it is ${exactly(bend.toolRadius, "length")}.`,
    );
  return ratioAt(share);
}

export const radiusAfterSpringbackFormula: Formula = {
  id: "radius-after-springback",
  name: "Radius after springback",
  result: "radius",
  expression: String.raw`\frac{\v{toolRadius}}{4\,\v{elasticShare}^3 - 3\,\v{elasticShare} + 1}`,
  symbols: { toolRadius, elasticShare: elasticShareSymbol, radius },
};

/**
 * Inside radius left when the tool lets go.
 *
 * @param bend - Ri and T [mm], Y and E [N/mm²], as for `elasticShare`
 * @returns Rf [mm] = Ri / (4X³ − 3X + 1)
 * @throws InputError as `springbackRatio`
 * @remarks Source: as `springbackRatio`.
 * @example radiusAfterSpringback({ toolRadius: 12.7, thickness: 0.91186, yield: 275.79, elasticModulus: 206843 }); // 13.45
 */
export function radiusAfterSpringback(bend: Strip & { readonly toolRadius: number }): number {
  return bend.toolRadius / springbackRatio(bend);
}

/**
 * Tool radius that leaves a wanted inside radius: `radiusAfterSpringback` turned round.
 *
 * @param bend.radius - Rf [mm], wanted after springback; 0 to 1000
 * @param bend.thickness - T [mm]
 * @param bend.yield - Y [N/mm²]
 * @param bend.elasticModulus - E [N/mm²]
 * @returns Ri [mm], from 0 to below E T/(2 Y)
 * @throws InputError for a value outside its range
 * @remarks With u = Ri Y/(E T) and F = Rf Y/(E T), u = F (1 − 2u)² (1 + u). The left side rises and the right side falls from
 *   u = 0 to ½, so there is exactly one answer, found by halving. Source of the relation: as `springbackRatio`.
 */
export function toolRadiusFor(bend: Strip & { readonly radius: number }): number {
  checkRanges({ radius, ...strip }, bend);
  const share = (bend.radius * bend.yield) / (bend.elasticModulus * bend.thickness);
  let low = 0;
  let high = Math.min(share, fullyElastic);
  for (let halving = 0; halving < 120; halving += 1) {
    const middle = (low + high) / 2;
    if (middle < share * ratioAt(middle)) low = middle;
    else high = middle;
  }
  return (low * bend.elasticModulus * bend.thickness) / bend.yield;
}

export const springbackFactorFormula: Formula = {
  id: "springback-factor",
  name: "Springback factor of the angle",
  result: "factor",
  expression: String.raw`\frac{2\,\v{toolRadius} / \v{thickness} + 1}{2\,\v{radius} / \v{thickness} + 1}`,
  symbols: { toolRadius, radius, thickness, factor },
};

/**
 * Finished angle over the angle swung: the middle line keeps its length while its radius opens.
 *
 * @param bend.toolRadius - Ri [mm]; 0 to 1000
 * @param bend.radius - Rf [mm]; 0 to 1000
 * @param bend.thickness - T [mm]; 0.1 to 13
 * @returns Ks [1] = (2 Ri/T + 1)/(2 Rf/T + 1)
 * @throws InputError for a value outside its range
 * @remarks Source: Kalpakjian and Schmid (from memory); the same relation, as r₁ = kR (r₂ + s/2) − s/2, read in a technical article.
 * @example springbackFactor({ toolRadius: 10, radius: 10.5, thickness: 1 }); // 0.9545
 */
export function springbackFactor(bend: {
  readonly toolRadius: number;
  readonly radius: number;
  readonly thickness: number;
}): number {
  checkRanges({ toolRadius, radius, thickness }, bend);
  return (2 * bend.toolRadius + bend.thickness) / (2 * bend.radius + bend.thickness);
}

export const swingAngleFormula: Formula = {
  id: "swing-angle",
  name: "Angle to swing",
  result: "swingAngle",
  expression: String.raw`\frac{\v{angle}}{\v{factor}}`,
  symbols: { angle: bendAngle, factor, swingAngle: swing },
};

export const overbendFormula: Formula = {
  id: "overbend",
  name: "Overbend",
  result: "overbend",
  expression: String.raw`\v{swingAngle} - \v{angle}`,
  symbols: { angle: bendAngle, swingAngle: swing, overbend: overbendSymbol },
};

/** A bend to aim at, and how to get it in spite of springback. */
export interface Overbend {
  /** Ri [mm] */
  readonly toolRadius: number;
  /** X [1] */
  readonly elasticShare: number;
  /** Ri/Rf [1]; 1 for a sharp bend */
  readonly ratio: number;
  /** Ks [1] */
  readonly factor: number;
  /** Ai [deg] */
  readonly swingAngle: number;
  /** Ai − A [deg] */
  readonly overbend: number;
}

/**
 * Tool radius and swing that leave a wanted radius and angle.
 *
 * @param wanted.radius - Rf [mm], inside, after springback; 0 to 1000
 * @param wanted.angle - A [deg], turned through, after springback; above 0 to 180
 * @param wanted.thickness - T [mm]
 * @param wanted.yield - Y [N/mm²]
 * @param wanted.elasticModulus - E [N/mm²]
 * @throws InputError for a value outside its range
 * @remarks The swing may come out beyond what any machine can do; whoever asks has to look. Source: as `springbackRatio`.
 */
export function overbend(wanted: Strip & { readonly radius: number; readonly angle: number }): Overbend {
  checkRange("angle", bendAngle, wanted.angle);
  const found = toolRadiusFor(wanted);
  const share = elasticShare({ ...wanted, toolRadius: found });
  const ks = springbackFactor({ ...wanted, toolRadius: found });
  const swingAngle = wanted.angle / ks;
  return {
    toolRadius: found,
    elasticShare: share,
    ratio: ratioAt(share),
    factor: ks,
    swingAngle,
    overbend: swingAngle - wanted.angle,
  };
}

/**
 * Largest finished radius that can be had at an angle without swinging further than a limit.
 *
 * @param wanted.angle - A [deg], after springback; above 0 to 180
 * @param wanted.largestSwing - [deg], from A on
 * @param wanted.thickness - T [mm]
 * @param wanted.yield - Y [N/mm²]
 * @param wanted.elasticModulus - E [N/mm²]
 * @returns Rf [mm]; 0 when the limit is below the angle itself
 * @throws InputError for a value outside its range
 * @remarks The swing A (2 Rf + T)/(2 Ri + T) rises with Ri, so the answer is found by halving. Source: as `springbackRatio`.
 */
export function largestRadiusForSwing(wanted: Strip & { readonly angle: number; readonly largestSwing: number }): number {
  checkRanges({ angle: bendAngle, ...strip }, wanted);
  const scale = (wanted.elasticModulus * wanted.thickness) / wanted.yield;
  const finished = (share: number) => (scale * share) / ratioAt(share);
  const swingAt = (share: number) =>
    (wanted.angle * (2 * finished(share) + wanted.thickness)) / (2 * scale * share + wanted.thickness);
  let low = 0;
  let high = fullyElastic;
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (swingAt(middle) <= wanted.largestSwing) low = middle;
    else high = middle;
  }
  return finished(low);
}
