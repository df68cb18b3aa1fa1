import { mean, sampleDeviation } from "./sample.ts";
import { studentQuantile } from "./student.ts";

/** Two-sided level: one honest sample in twenty is called into question. */
const level = 0.05;

/**
 * The distance from the mean, in standard deviations, beyond which the most outlying of n values is doubtful.
 *
 * @param count - n, a whole number from 3 to 1000
 * @returns G = (n − 1)/√n · √(t²/(n − 2 + t²)), t the upper 0.05/(2n) quantile of Student's t with n − 2 degrees of freedom
 * @throws RangeError outside this range
 * @remarks Grubbs' test, two-sided 5 %. Source: ISO 5725-2; ASTM E178 (both from memory).
 * @example outlierLimit(6); // 1.887
 */
export function outlierLimit(count: number): number {
  if (!Number.isInteger(count) || count < 3 || count > 1000)
    throw new RangeError(`an outlier test needs a whole number of values from 3 to 1000; it is ${count}`);
  // studentQuantile takes the share in the middle: both tails of 0.05/(2n) left out.
  const t = studentQuantile(1 - level / count, count - 2);
  return ((count - 1) / Math.sqrt(count)) * Math.sqrt(t ** 2 / (count - 2 + t ** 2));
}

export interface Outlier {
  /** Place in the list, from 0. */
  readonly index: number;
  /** Distance from the mean in standard deviations. */
  readonly distance: number;
  readonly limit: number;
}

/**
 * The value that stands apart from the others, if there is one.
 *
 * @param values - any number; fewer than three, or all alike, have no outlier
 * @returns the most outlying value when it is beyond `outlierLimit`, otherwise undefined
 * @remarks Never a reason by itself to leave a value out. Source: as `outlierLimit`.
 */
export function outlier(values: readonly number[]): Outlier | undefined {
  if (values.length < 3) return undefined;
  const spread = sampleDeviation(values);
  const middle = mean(values);
  // Values that differ only by the rounding of binary arithmetic are alike.
  if (spread <= 1e-9 * Math.abs(middle)) return undefined;
  const distances = values.map((value) => Math.abs(value - middle) / spread);
  const distance = Math.max(...distances);
  const limit = outlierLimit(values.length);
  return distance > limit ? { index: distances.indexOf(distance), distance, limit } : undefined;
}
