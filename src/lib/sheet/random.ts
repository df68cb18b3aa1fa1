/** Numbers from 0 up to 1 that look random and are the same for the same seed, so that a plan can be repeated. */
export function seededRandom(seed: number): () => number {
  let state = seed | 0;
  return () => {
    // A 32-bit counter, stirred: the generator known as mulberry32, in the public domain; from memory.
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
