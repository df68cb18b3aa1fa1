import data from "virtual:calculator-data";
import type { Catalogue } from "../../lib/catalogue.ts";
import { hydrateTyped } from "../calculator/hydrate-typed.ts";
import { AssignEditor } from "./AssignEditor.tsx";

/** Brings the form of the page to life. */
export function mount(host: HTMLElement): void {
  const { root = "", calculators = "[]" } = host.dataset;
  hydrateTyped(<AssignEditor catalogue={data as unknown as Catalogue} calculators={JSON.parse(calculators)} root={root} />, host);
}
