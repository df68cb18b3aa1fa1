import type { Catalogue } from "../../lib/catalogue.ts";
import { shortTitles } from "../calculator/source-titles.ts";
import type { PlanWords } from "../plan/words.ts";

/** What holds for every plan that is cut on a shear. */
export const cutCautions = [
  "shear-blades",
  "shear-treadle",
  "shear-offcuts",
  "within-rating",
  "sharp-edges",
  "lifting",
  "defer-to-manual",
] as const;

/** What a plan shows besides numbers: the server has all of it, and puts into the page what the browser needs. */
export function cutWords(catalogue: Catalogue): PlanWords {
  const cautions = cutCautions.map((id) => {
    const caution = catalogue.cautions[id];
    if (!caution) throw new Error(`There is no caution “${id}”; the ids are in src/content/cautions.yaml`);
    return [id, { title: caution.title, text: caution.text }] as const;
  });
  return { cautions: Object.fromEntries(cautions), titles: shortTitles(catalogue.sources, ["this-shop", "niosh-lifting"]) };
}
