/**
 * The rows of a table on both sides of a value; twice the same row when the value is that row's.
 *
 * @param rows - at least one, rising
 * @param at - the value a row stands at
 * @throws RangeError for a value outside the table; the caller's range check says it to the user
 */
export function enclosing<Row>(rows: readonly Row[], at: (row: Row) => number, value: number): readonly [Row, Row] {
  const tiny = 1e-9;
  const upper = rows.findIndex((row) => value <= at(row) + tiny);
  const above = rows[upper];
  const exact = above !== undefined && Math.abs(at(above) - value) <= tiny;
  const below = exact ? above : rows[upper - 1];
  if (above === undefined || below === undefined) throw new RangeError(`${value} is outside the table`);
  return [below, above];
}

/**
 * A column of such a table at a value, on the straight line between its rows; in the column's own unit [unit of the column].
 * The value has to lie in the table, as for `enclosing`.
 */
export function interpolate<Row>(
  rows: readonly Row[],
  at: (row: Row) => number,
  column: (row: Row) => number,
  value: number,
): number {
  const [below, above] = enclosing(rows, at, value);
  const step = at(above) - at(below);
  if (step === 0) return column(above);
  return column(below) + ((value - at(below)) / step) * (column(above) - column(below));
}
