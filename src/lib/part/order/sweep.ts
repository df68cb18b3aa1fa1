import type { FormingBrake } from "./job.ts";

export const closeTo = 1e-6;
/** Distances beyond this need no exact value [mm]. */
export const enough = 120;
export const radians = (degrees: number) => (degrees * Math.PI) / 180;
export const degrees = (turned: number) => (turned * 180) / Math.PI;

/**
 * Turns the leaf in small steps, but leaves out those that cannot be reached before something has come closer.
 *
 * @param swing - whole turn [deg]
 * @param speed - farthest that any point moves for one radian [mm]
 * @param gapAt - distance left at a turn [rad], negative when it is too small
 * @returns the first turn [rad] at which the gap is too small, and what is met
 * @remarks No point moves farther in a step than half the clearance. The steps do not depend on what is in the way, so a brake with
 *   less in the way never refuses what a brake with more in the way takes.
 */
export function sweep<T>(
  brake: FormingBrake,
  swing: number,
  speed: number,
  gapAt: (turned: number) => { readonly gap: number; readonly what: T },
): { readonly turned: number; readonly what: T } | undefined {
  const count = Math.max(1, Math.ceil((radians(swing) * speed) / Math.max(0.3, brake.clearance / 2)));
  const step = radians(swing) / count;
  for (let at = 0; at <= count; ) {
    const { gap, what } = gapAt(at * step);
    if (gap < -closeTo) return { turned: at * step, what };
    at += Math.max(1, Math.floor(gap / (speed * step)));
  }
  return undefined;
}
