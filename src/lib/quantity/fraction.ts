const inch = 25.4;

export interface NearestFraction {
  /** Sign kept here so that `whole` and `numerator` are never negative. */
  readonly negative: boolean;
  readonly whole: number;
  readonly numerator: number;
  readonly denominator: number;
  /** Fraction minus the true length [mm]: positive when the fraction is too long. */
  readonly error: number;
  /** As written in the trade: `2-1/16`, `3/64`, `5`. */
  readonly text: string;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/**
 * Inch fraction nearest to a length.
 *
 * @param length - [mm], any finite value
 * @param denominator - finest division of the rule, a whole number from 1 to 128; 64 by default
 * @returns the fraction in lowest terms, with the error it makes [mm]
 * @throws RangeError when the length is not finite or the denominator is not such a number
 * @remarks Source: definition, 1 in = 25.4 mm exactly, so 1/64 in = 0.396875 mm.
 * @example nearestFraction(52.3875).text; // "2-1/16"
 */
export function nearestFraction(length: number, denominator = 64): NearestFraction {
  if (!Number.isFinite(length)) throw new RangeError(`length must be a finite number; it is ${length}`);
  if (!Number.isInteger(denominator) || denominator < 1 || denominator > 128)
    throw new RangeError(`denominator must be a whole number from 1 to 128; it is ${denominator}`);
  const parts = Math.round((Math.abs(length) / inch) * denominator);
  const negative = length < 0 && parts > 0;
  const whole = Math.floor(parts / denominator);
  const rest = parts - whole * denominator;
  const divisor = greatestCommonDivisor(rest, denominator);
  const numerator = rest / divisor;
  const lowest = rest === 0 ? 1 : denominator / divisor;
  const signed = (negative ? -1 : 1) * parts;
  const fraction = rest === 0 ? "" : `${numerator}/${lowest}`;
  const text = (negative ? "−" : "") + (rest === 0 ? String(whole) : whole === 0 ? fraction : `${whole}-${fraction}`);
  return {
    negative,
    whole,
    numerator: rest === 0 ? 0 : numerator,
    denominator: lowest,
    error: (signed * inch) / denominator - length,
    text,
  };
}
