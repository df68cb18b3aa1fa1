import type { Catalogue } from "../../lib/catalogue.ts";
import { planCautions } from "../../lib/part/plan.ts";
import { rolledCautions } from "../../lib/part/rolled/plan.ts";
import { type SourceTitles, shortTitles } from "../calculator/source-titles.ts";

/** What a plan shows besides numbers: the server has all of it, and puts into the page what the browser needs. */
export interface PlanWords {
  readonly cautions: Readonly<Record<string, { readonly title: string; readonly text: string }>>;
  readonly titles: SourceTitles;
}

/** Sources that the plan's own rules name; those of published tables come with the data. */
const ruleSources = ["common-practice", "this-shop", "geometry", "equilibrium", "gardiner-1957"];

export function planWords(catalogue: Catalogue): PlanWords {
  const cautions = [...new Set<string>([...planCautions, ...rolledCautions])].map((id) => {
    const caution = catalogue.cautions[id];
    if (!caution) throw new Error(`There is no caution “${id}”; the ids are in src/content/cautions.yaml`);
    return [id, { title: caution.title, text: caution.text }] as const;
  });
  return { cautions: Object.fromEntries(cautions), titles: shortTitles(catalogue.sources, ruleSources) };
}
