import type { GeneralTolerances, ToleranceClass } from "../catalogue.ts";

/** The column whose band, closed at its upper edge, holds a size; −1 beyond the last. */
const columnOf = (edges: readonly (number | null)[], size: number) => edges.findIndex((upTo) => upTo === null || size <= upTo);

/**
 * The ± of a size on a drawing that names only a tolerance class.
 *
 * @param tolerances - the published tables
 * @param toleranceClass - f fine, m medium, c coarse, v very coarse
 * @param size - nominal [mm]
 * @returns ± [mm], or undefined where the standard gives none: up to 0.5 mm, beyond its last column, or no such class there
 * @remarks A size on the edge of two columns belongs to the lower one. Source: ISO 2768-1, Table 1 (read in a reproduction).
 */
export function linearTolerance({ linear }: GeneralTolerances, toleranceClass: ToleranceClass, size: number): number | undefined {
  if (!(size >= linear.above)) return undefined;
  return linear.classes[toleranceClass][columnOf(linear.upTo, size)] ?? undefined;
}

/**
 * The ± of an angle on a drawing that names only a tolerance class.
 *
 * @param tolerances - the published tables
 * @param toleranceClass - f fine, m medium, c coarse, v very coarse
 * @param shorterSide - shorter of the two sides of the angle [mm]
 * @returns ± [deg], or undefined for a side that is not a length
 * @remarks Source: ISO 2768-1, Table 3 (read in a reproduction).
 */
export function angularTolerance(
  { angular }: GeneralTolerances,
  toleranceClass: ToleranceClass,
  shorterSide: number,
): number | undefined {
  if (!(shorterSide > 0)) return undefined;
  return angular.classes[toleranceClass][columnOf(angular.upTo, shorterSide)];
}
