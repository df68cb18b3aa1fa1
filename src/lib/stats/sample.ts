/**
 * Arithmetic mean.
 *
 * @param values - at least one
 * @returns x̄, in the unit of the values
 * @throws RangeError for an empty list
 */
export function mean(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError("a mean needs at least one value; there are none");
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/**
 * Sample standard deviation, with n − 1.
 *
 * @param values - at least two: one value says nothing about spread
 * @returns s, in the unit of the values
 * @throws RangeError for fewer than two values
 * @remarks Source: JCGM 100:2008 (GUM), 4.2.2.
 * @example sampleDeviation([1, 2, 3]); // 1
 */
export function sampleDeviation(values: readonly number[]): number {
  if (values.length < 2) throw new RangeError(`a standard deviation needs at least two values; there are ${values.length}`);
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1));
}
