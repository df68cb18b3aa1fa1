import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawBelow, fnv1a64, splitMix64 } from "../../src/lib/assign/random.ts";

describe("published test values", () => {
  // IETF draft-eastlake-fnv, appendix with test vectors, FNV-1a of 64 bits.
  test.each([
    ["", 0xcbf29ce484222325n],
    ["a", 0xaf63dc4c8601ec8cn],
    ["foobar", 0x85944171f73967e8n],
  ])("FNV-1a of “%s”", (text, hash) => expect(fnv1a64(text)).toBe(hash));

  // First values of splitmix64.c (S. Vigna) from seed 1234567, as printed at rosettacode.org, “Pseudo-random numbers/Splitmix64”.
  test("SplitMix64", () => {
    const next = splitMix64(1234567n);
    expect([next(), next(), next(), next(), next()]).toEqual([
      6457827717110365317n,
      3203168211198807973n,
      9817491932198370423n,
      4593380528125082431n,
      16408922859458223821n,
    ]);
  });
});

describe("draws", () => {
  test("lie in the range, whatever the seed", () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: (1n << 64n) - 1n }), fc.integer({ min: 1, max: 10_000 }), (seed, count) => {
        const drawn = drawBelow(splitMix64(seed), count);
        expect(Number.isInteger(drawn) && drawn >= 0 && drawn < count).toBe(true);
      }),
    );
  });

  test("values past the last whole set are drawn again", () => {
    const values = [(1n << 64n) - 1n, 7n];
    // 2^64 leaves 1 when divided by 3, 5 or 15: the topmost value belongs to no whole set.
    expect(drawBelow(() => values.shift() ?? 0n, 5)).toBe(2);
  });
});
