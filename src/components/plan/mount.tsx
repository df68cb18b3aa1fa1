import data from "virtual:calculator-data";
import type { Catalogue } from "../../lib/catalogue.ts";
import { hydrateTyped } from "../calculator/hydrate-typed.ts";
import { PlanEditor } from "./PlanEditor.tsx";
import type { PlanWords } from "./words.ts";

/** Brings the plan of the page to life. */
export function mount(host: HTMLElement): void {
  const words: PlanWords = JSON.parse(host.dataset.words ?? "{}");
  // No calculation reads a source: all that is shown of one is its name.
  const catalogue = data as unknown as Catalogue;
  const titles = { ...data.sources, ...words.titles };
  hydrateTyped(
    <PlanEditor catalogue={catalogue} words={{ ...words, titles }} path={host.dataset.path ?? location.pathname} />,
    host,
  );
}
