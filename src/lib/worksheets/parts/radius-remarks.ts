import { smallestRadius } from "../../bending/smallest-radius.ts";
import type { Catalogue, Material } from "../../catalogue.ts";
import { InputError } from "../../input-error.ts";
import { mm, say } from "../../quantity/phrase.ts";
import type { Remark } from "../../worksheet.ts";

/**
 * What is to be said about cracking at an inside radius, for an answer that does not depend on it.
 *
 * @param bend.radius - inside [mm]
 * @param bend.thickness - [mm]
 * @returns a caution below the smallest radius; a note where the table of radii does not reach this sheet; otherwise nothing
 */
export function radiusRemarks(
  catalogue: Catalogue,
  material: Material,
  bend: { readonly radius: number; readonly thickness: number },
): Remark[] {
  try {
    const smallest = smallestRadius(catalogue, material, bend.thickness);
    if (bend.radius >= smallest.radius) return [];
    return [
      {
        level: "caution",
        field: "radius",
        phrase: say`Inside radius should be at least ${mm(smallest.radius)} for ${material.name} this thick; it is ${mm(bend.radius)}. A sharper bend may crack.`,
        source: smallest.source,
      },
    ];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return [{ level: "note", phrase: error.phrase }];
  }
}
