import type { Brake } from "../../catalogue.ts";
import { amount, mm, say } from "../../quantity/phrase.ts";
import type { Remark } from "../../worksheet.ts";

/**
 * What this shop's brake cannot do of a bent strip, whatever the order of its bends.
 *
 * @param strip.angle - [degrees], turned through
 * @param strip.legs - [mm], outside, in order along the strip
 */
export function brakeRemarks(brake: Brake, strip: { readonly angle: number; readonly legs: readonly number[] }): Remark[] {
  const remarks: Remark[] = [];
  const caution = (field: string, phrase: Remark["phrase"]) =>
    remarks.push({ level: "caution", field, phrase, source: "this-shop" });
  if (strip.angle > brake.largestSwing)
    caution(
      "angle",
      say`${brake.name} swings to ${amount(brake.largestSwing, "angle")}; this bend is ${amount(strip.angle, "angle")}. Close the rest by hand or under the clamp.`,
    );
  strip.legs.forEach((leg, index) => {
    if (leg < brake.shortestLeg)
      caution(
        `legs.${index}.leg`,
        say`${brake.name} turns up legs from ${mm(brake.shortestLeg)}; leg ${index + 1} is ${mm(leg)}.`,
      );
  });
  if (strip.legs.every((leg) => leg > brake.longestLeg))
    caution("legs.0.leg", say`${brake.name} turns up legs to ${mm(brake.longestLeg)}; every leg of this strip is longer.`);
  return remarks;
}
