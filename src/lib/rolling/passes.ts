import { elasticLimitRadius, type Strip } from "../bending/springback.ts";
import { radiusLeft } from "./loaded-radius.ts";
import { type RearRoll, radiusAtRise, riseAtReach } from "./three-roll.ts";

/** One pass through the rolls. Lengths in mm. */
export interface Pass {
  readonly rise: number;
  readonly loadedRadius: number;
  readonly radius: number;
}

/** Even a slight curve takes two: one to look at, one to finish. */
const fewestPasses = 2;

/**
 * Settings that lead to a rise in equal steps. The rise that only bends the sheet elastically comes on top of the first step,
 * because a pass below it changes nothing.
 *
 * @param job - T [mm], Y and E [N/mm²]; D3 and x [mm]
 * @param job.rise - h [mm], of the last pass; at a loaded radius below the elastic limit
 * @param job.largestStep - [mm], most that the rear roll is raised between two passes
 * @param job.passes - at least so many, for an end that has to keep step with another; two when left out
 * @returns the passes in order, two at least; the last one has the rise asked for
 * @throws InputError for a value outside its range
 * @remarks Equal steps of at most a chosen size are shop practice; no published rule was found. What each pass leaves: `radiusLeft`.
 */
export function passPlan(
  job: Strip & RearRoll & { readonly rise: number; readonly largestStep: number; readonly passes?: number },
): Pass[] {
  const { rise, largestStep, rollSpacing, passes = fewestPasses } = job;
  const elasticRise = riseAtReach(elasticLimitRadius(job) + job.thickness + job.rearRoll / 2, rollSpacing);
  // A hair off, so that a whole number of steps is not rounded up.
  const count = Math.max(passes, Math.ceil((rise - elasticRise) / largestStep - 1e-9));
  return Array.from({ length: count }, (_, index) => {
    const done = (index + 1) / count;
    const at = index + 1 === count ? rise : elasticRise + (rise - elasticRise) * done;
    const loadedRadius = radiusAtRise({ ...job, rise: at });
    const radius = radiusLeft(job, loadedRadius);
    if (radius === undefined) throw new Error(`pass ${index + 1} lies below the elastic limit`);
    return { rise: at, loadedRadius, radius };
  });
}
