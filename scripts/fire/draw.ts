import { seededRandom } from "../../src/lib/sheet/random.ts";

/** Choices that look random and are the same for the same seed, so that every shot can be fired again. */
export interface Draw {
  /** From 0 up to 1. */
  share(): number;
  /** True so often of 1. */
  chance(often: number): boolean;
  /** A whole number from 0 to below `most`. */
  below(most: number): number;
  of<T>(choices: readonly T[]): T;
}

export function drawFrom(seed: number): Draw {
  const share = seededRandom(seed);
  const below = (most: number) => Math.floor(share() * most);
  return {
    share,
    chance: (often) => share() < often,
    below,
    of: (choices) => {
      if (choices.length === 0) throw new Error("Nothing to draw from");
      return choices[below(choices.length)] as (typeof choices)[number];
    },
  };
}
