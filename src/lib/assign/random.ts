/**
 * Numbers that look drawn by chance and are the same on every device, for the same text, for good.
 *
 * The hash is FNV-1a of 64 bits (Fowler, Noll, Vo; IETF draft-eastlake-fnv), the generator SplitMix64 (Steele, Lea and
 * Flood 2014; the form published by S. Vigna in the public domain). Both were chosen because they are written down with
 * test values and fit in a few lines. Neither is for secrets: whoever has a course name and a student id can compute what
 * comes out, and can make up a text with a wanted hash.
 */

const mask = (1n << 64n) - 1n;

/**
 * FNV-1a hash of a text in UTF-8.
 * @returns 64 bits
 * @remarks Source: IETF draft-eastlake-fnv, offset basis cbf29ce484222325 and prime 100000001b3, hexadecimal. Not for
 * secrets.
 */
export function fnv1a64(text: string): bigint {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text)) hash = ((hash ^ BigInt(byte)) * 0x100000001b3n) & mask;
  return hash;
}

/**
 * The generator SplitMix64.
 * @param seed - 64 bits
 * @returns a function that gives the next 64 bits at each call
 * @remarks Source: S. Vigna, splitmix64.c, public domain. Not for secrets.
 */
export function splitMix64(seed: bigint): () => bigint {
  let state = seed & mask;
  return () => {
    state = (state + 0x9e3779b97f4a7c15n) & mask;
    let mixed = state;
    mixed = ((mixed ^ (mixed >> 30n)) * 0xbf58476d1ce4e5b9n) & mask;
    mixed = ((mixed ^ (mixed >> 27n)) * 0x94d049bb133111ebn) & mask;
    return mixed ^ (mixed >> 31n);
  };
}

/**
 * A whole number from 0 up to, not including, `count`, each as likely as the other.
 * @param next - a generator of 64 bits
 * @param count - from 1
 * @returns the number drawn [1]
 */
export function drawBelow(next: () => bigint, count: number): number {
  const size = BigInt(count);
  // The values beyond the last whole set of `count` are drawn again; with them the first numbers would come up more often.
  const end = (1n << 64n) - ((1n << 64n) % size);
  let drawn = next();
  while (drawn >= end) drawn = next();
  return Number(drawn % size);
}
