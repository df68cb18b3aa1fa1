/** The part of the package that the tests use; it brings no types of its own. */
declare module "jstat" {
  export const jStat: {
    studentt: { cdf(t: number, freedom: number): number; inv(share: number, freedom: number): number };
    /** Confidence interval of a mean. */
    tci(mean: number, alpha: number, spread: number, count: number): [number, number];
  };
}
