/** A length [mm] as a text to type, without the tails of binary arithmetic; 0.0001 mm is far finer than any caliper. */
export function typedLength(value: number): string {
  return `${Number(value.toFixed(4))}mm`;
}
