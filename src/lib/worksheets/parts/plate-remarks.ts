import type { Rating } from "../../catalogue.ts";
import { mm, say } from "../../quantity/phrase.ts";
import type { Remark } from "../../worksheet.ts";

/** For a calculator that does not know the metal: the sheet is thicker than the plate of the machine says. */
export function thickerThanPlate(
  { name, rating }: { readonly name: string; readonly rating: Rating },
  metal: string,
  thickness: number,
): Remark {
  return {
    level: "caution",
    field: "thickness",
    phrase: say`${name}: rated for ${mm(rating.thickness)} ${metal} over ${mm(rating.length)}; this sheet is ${mm(thickness)}. In a softer metal the moment may allow it, but only the manual can say.`,
    source: "this-shop",
  };
}
