import { elasticLimitRadius, type Strip, springbackRatio, toolRadiusFor } from "../bending/springback.ts";
import { InputError } from "../input-error.ts";
import { exactly } from "../inputs.ts";
import { atLeast, atMost, mm, say } from "../quantity/phrase.ts";

/**
 * Elastic share beyond which a setting is not worth making: a sheet a quarter stronger (0.5/0.4) than was reckoned
 * would come back flat, and sheets of one grade differ by more than that.
 */
const largestShare = 0.4;

/** Ri/Rf by the elastic share alone: any strip with this share has the same ratio. */
const ratioOfShare = (share: number) =>
  springbackRatio({ thickness: 1, yield: 100, elasticModulus: 10_000, toolRadius: 100 * share });

/**
 * Inside radius left by a radius between the rolls.
 *
 * @param sheet - T [mm], Y and E [N/mm²]
 * @param loadedRadius - Ri [mm], above 0, without an upper limit: the first passes are wide
 * @returns Rf [mm]; undefined when the sheet comes back flat
 * @throws InputError for a sheet outside its range
 * @remarks The tightest pass alone counts: between passes the sheet springs back and returns along the same line, so wider passes
 *   before it leave no trace (elastic, perfectly plastic metal). Source: as `springbackRatio`.
 * @example radiusLeft({ thickness: 1, yield: 250, elasticModulus: 200_000 }, 100); // 158.0
 */
export function radiusLeft(sheet: Strip, loadedRadius: number): number | undefined {
  if (loadedRadius >= elasticLimitRadius(sheet)) return undefined;
  return loadedRadius / ratioOfShare((loadedRadius * sheet.yield) / (sheet.elasticModulus * sheet.thickness));
}

/**
 * Widest finished radius that this sheet can be relied on to keep.
 *
 * @param sheet - T [mm], Y and E [N/mm²]
 * @returns Rf [mm], left by the elastic share 0.4; about 14 times the radius from which on a sheet takes no set
 * @throws InputError for a sheet outside its range
 */
export function widestRadius(sheet: Strip): number {
  // The elastic limit is at the share ½.
  return (2 * largestShare * elasticLimitRadius(sheet)) / ratioOfShare(largestShare);
}

/**
 * Radius the rolls have to hold so that a wanted one is left.
 *
 * @param wanted.radius - Rf [mm], inside, after springback; 0 to 1000
 * @param wanted.tightest - [mm], the tightest radius these rolls can hold
 * @param wanted.thickness - T [mm]
 * @param wanted.yield - Y [N/mm²]
 * @param wanted.elasticModulus - E [N/mm²]
 * @returns Ri [mm], from `tightest` to below E T/(2 Y)
 * @throws InputError for a value outside its range; for a sheet that comes back flat even from the tightest radius; for a
 *   radius smaller than the tightest one leaves; and for one so wide that the sheet could as well come back flat
 * @remarks Source: as `toolRadiusFor`.
 * @example loadedRadiusFor({ radius: 150, tightest: 25, thickness: 1, yield: 250, elasticModulus: 200_000 }); // 96.68
 */
export function loadedRadiusFor(wanted: Strip & { readonly radius: number; readonly tightest: number }): number {
  const { radius, tightest } = wanted;
  const found = toolRadiusFor(wanted);
  const limit = elasticLimitRadius(wanted);
  const smallest = radiusLeft(wanted, tightest);
  if (smallest === undefined)
    throw new InputError(
      "thickness",
      wanted.thickness,
      say`Thickness must be above about ${atLeast((2 * tightest * wanted.yield) / wanted.elasticModulus)} to keep any curve from these rolls; it is ${exactly(wanted.thickness, "length")}. They hold it at ${mm(tightest)} at the tightest, and from ${mm(limit)} on it comes back flat: take a thicker or softer sheet, or thinner rolls.`,
    );
  if (radius < smallest)
    throw new InputError(
      "radius",
      radius,
      say`Inside radius must be at least ${atLeast(smallest)} on these rolls; it is ${exactly(radius, "length")}. The rolls hold the sheet at ${mm(tightest)} at the tightest, and it springs back from there.`,
    );
  const widest = widestRadius(wanted);
  if (radius > widest)
    throw new InputError(
      "radius",
      radius,
      say`Inside radius must be at most ${atMost(widest)} for this sheet; it is ${exactly(radius, "length")}. Held at ${mm(limit)} or more the sheet comes back flat, and a wider curve would have to be held so near to that that a sheet a quarter stronger takes no set at all.`,
    );
  return Math.max(tightest, found);
}

/** Poisson's ratio of sheet metals, near enough for a comparison. */
const poisson = 0.3;

/**
 * The strip that stands for a sheet much wider than thick: it cannot narrow as it bends, so it is stiffer and yields later.
 *
 * @param sheet - T [mm], Y and E [N/mm²]
 * @returns the same with 2 Y/√3 and E/(1 − 0.3²)
 * @remarks Plane strain. Source: mechanics of materials, any textbook (from memory).
 */
export function wideSheet(sheet: Strip): Strip {
  return {
    ...sheet,
    yield: (2 / Math.sqrt(3)) * sheet.yield,
    elasticModulus: sheet.elasticModulus / (1 - poisson ** 2),
  };
}
