import fc from "fast-check";
import { jStat } from "jstat";
import { sampleStandardDeviation, mean as simpleMean } from "simple-statistics";
import { describe, expect, test } from "vitest";
import { countToHalve, meanUncertainty } from "../../src/lib/stats/mean-uncertainty.ts";
import { outlier, outlierLimit } from "../../src/lib/stats/outlier.ts";
import { mean, sampleDeviation } from "../../src/lib/stats/sample.ts";
import { studentCentral, studentQuantile } from "../../src/lib/stats/student.ts";

const { studentt } = jStat;

const counts = fc.integer({ min: 2, max: 30 });
const deductions = fc.array(fc.double({ min: 1.5, max: 3, noNaN: true }), { minLength: 2, maxLength: 30 });

describe("Student's t", () => {
  test("the central share agrees with a statistics library", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), fc.integer({ min: 1, max: 200 }), (t, freedom) => {
        expect(studentCentral(t, freedom)).toBeCloseTo(2 * studentt.cdf(t, freedom) - 1, 6);
      }),
    );
  });

  test("the quantile agrees with a statistics library", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 0.999, noNaN: true }), fc.integer({ min: 1, max: 100 }), (share, freedom) => {
        const theirs = studentt.inv((1 + share) / 2, freedom);
        expect(Math.abs(studentQuantile(share, freedom) / theirs - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  test("the quantile is the central share turned round", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.9999, noNaN: true }), fc.integer({ min: 1, max: 1000 }), (share, freedom) => {
        expect(studentCentral(studentQuantile(share, freedom), freedom)).toBeCloseTo(share, 10);
      }),
    );
  });

  test("falls with the degrees of freedom towards the normal distribution", () => {
    for (let freedom = 1; freedom < 60; freedom += 1)
      expect(studentQuantile(0.9545, freedom + 1)).toBeLessThan(studentQuantile(0.9545, freedom));
    expect(studentQuantile(0.9545, 1000)).toBeCloseTo(2.0, 2);
  });

  test.each([
    [-1, 3],
    [Number.NaN, 3],
    [1, 0],
    [1, 1.5],
    [1, 1001],
  ])("refuses t = %s with %s degrees of freedom", (t, freedom) => {
    expect(() => studentCentral(t, freedom)).toThrow(RangeError);
  });

  test.each([0, 1, -0.1, Number.NaN])("refuses the probability %s", (probability) => {
    expect(() => studentQuantile(probability, 5)).toThrow("probability must be above 0 and below 1");
  });
});

describe("a sample", () => {
  test("mean and standard deviation agree with a statistics library", () => {
    fc.assert(
      fc.property(deductions, (values) => {
        expect(mean(values)).toBeCloseTo(simpleMean(values), 12);
        expect(sampleDeviation(values)).toBeCloseTo(sampleStandardDeviation(values), 12);
      }),
    );
  });

  test("the ± of its mean is half the confidence interval of a statistics library", () => {
    fc.assert(
      fc.property(deductions, (values) => {
        const [low, high] = jStat.tci(mean(values), 1 - 0.9545, sampleStandardDeviation(values), values.length);
        const half = meanUncertainty({ spread: sampleDeviation(values), count: values.length });
        expect(half).toBeCloseTo((high - low) / 2, 6);
      }),
    );
  });

  test("refuses too few values", () => {
    expect(() => mean([])).toThrow("at least one value");
    expect(() => sampleDeviation([2])).toThrow("at least two values; there are 1");
  });
});

describe("the ± of a mean", () => {
  test("the number of pieces that halves it does, and one fewer does not", () => {
    fc.assert(
      fc.property(counts, (count) => {
        const enough = countToHalve(count);
        const at = (pieces: number) => meanUncertainty({ spread: 1, count: pieces });
        expect(at(enough)).toBeLessThanOrEqual(at(count) / 2);
        if (enough > count + 1) expect(at(enough - 1)).toBeGreaterThan(at(count) / 2);
        expect(enough).toBeLessThanOrEqual(4 * count);
      }),
    );
  });

  test("grows with the spread and shrinks with the count", () => {
    expect(meanUncertainty({ spread: 0, count: 5 })).toBe(0);
    expect(meanUncertainty({ spread: 0.2, count: 5 })).toBeCloseTo(2 * meanUncertainty({ spread: 0.1, count: 5 }), 12);
    expect(meanUncertainty({ spread: 0.1, count: 6 })).toBeLessThan(meanUncertainty({ spread: 0.1, count: 5 }));
  });

  test("refuses a spread or count that is none", () => {
    expect(() => meanUncertainty({ spread: -1, count: 3 })).toThrow("spread must be 0 or more");
    expect(() => meanUncertainty({ spread: 1, count: 1 })).toThrow(RangeError);
    expect(() => countToHalve(1)).toThrow("count must be a whole number from 2 to 200");
  });
});

describe("a value that stands apart", () => {
  test("is found beyond the limit and only there", () => {
    fc.assert(
      fc.property(deductions, (values) => {
        const found = outlier(values);
        const spread = sampleStandardDeviation(values);
        const farthest = Math.max(...values.map((value) => Math.abs(value - simpleMean(values)) / spread));
        const doubtful = values.length > 2 && spread > 1e-6 && farthest > outlierLimit(values.length);
        expect(found !== undefined).toBe(doubtful);
        if (found) expect(found.distance).toBeCloseTo(farthest, 9);
      }),
    );
  });

  test("one caliper slip among six is named", () => {
    expect(outlier([2.17, 2.18, 2.16, 3.17, 2.17, 2.18])).toMatchObject({ index: 3 });
  });

  test("two values, or values all alike but for binary rounding, have none", () => {
    expect(outlier([1, 9])).toBeUndefined();
    expect(outlier([2.2, 2.2, 2.2, 2.2 + 4e-16])).toBeUndefined();
  });

  test("refuses fewer than three", () => {
    expect(() => outlierLimit(2)).toThrow("from 3 to 1000; it is 2");
  });
});
