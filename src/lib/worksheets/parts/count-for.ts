/**
 * How many welds or rivets a load takes.
 *
 * @param joint.load - F [N]
 * @param joint.safetyFactor - S [1]
 * @param joint.strength - P [N] of one
 * @returns F S / P, up to the next whole number; a whole number that binary arithmetic made a hair larger stays itself
 */
export function countFor(joint: { readonly load: number; readonly safetyFactor: number; readonly strength: number }): number {
  const exact = (joint.load * joint.safetyFactor) / joint.strength;
  return Math.ceil(exact - 1e-9 * exact);
}
