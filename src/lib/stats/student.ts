/**
 * Probability that Student's t with whole degrees of freedom lies between −t and t.
 *
 * @param t - quantile, 0 or more
 * @param freedom - ν, degrees of freedom, a whole number from 1 to 1000
 * @returns A(t|ν), 0 to 1
 * @throws RangeError outside these ranges
 * @remarks Finite trigonometric series: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4
 *   (cited from memory; checked against JCGM 100 Table G.2 and two statistics libraries).
 */
export function studentCentral(t: number, freedom: number): number {
  if (!(t >= 0)) throw new RangeError(`t must be 0 or more; it is ${t}`);
  if (!Number.isInteger(freedom) || freedom < 1 || freedom > 1000)
    throw new RangeError(`degrees of freedom must be a whole number from 1 to 1000; it is ${freedom}`);
  const angle = Math.atan(t / Math.sqrt(freedom));
  const cosine = Math.cos(angle);
  const odd = freedom % 2 === 1;
  let term = odd ? cosine : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k <= freedom - 2; k += 2) {
    term *= ((k - 1) / k) * cosine * cosine;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
}

/**
 * Student's t such that the central probability is `probability`.
 *
 * @param probability - p, above 0 and below 1; 0.9545 is the level that k = 2 stands for
 * @param freedom - ν, a whole number from 1 to 1000
 * @returns t_p(ν)
 * @throws RangeError outside these ranges
 * @remarks Source of the use: JCGM 100:2008 (GUM), Annex G, Table G.2.
 * @example studentQuantile(0.95, 4); // 2.776
 */
export function studentQuantile(probability: number, freedom: number): number {
  if (!(probability > 0 && probability < 1))
    throw new RangeError(`probability must be above 0 and below 1; it is ${probability}`);
  let high = 1;
  while (studentCentral(high, freedom) < probability) high *= 2;
  let low = 0;
  for (let halving = 0; halving < 200 && high - low > 1e-13 * high; halving += 1) {
    const middle = (low + high) / 2;
    if (studentCentral(middle, freedom) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
