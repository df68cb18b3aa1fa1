import data from "virtual:calculator-data";
import { render } from "preact";
import type { Catalogue } from "../../lib/catalogue.ts";
import { hydrateTyped } from "../calculator/hydrate-typed.ts";
import { followDeviceShop } from "../shop/device.ts";
import { PlanEditor } from "./PlanEditor.tsx";
import type { PlanWords } from "./words.ts";

/** Brings the plan of the page to life. */
export async function mount(host: HTMLElement): Promise<void> {
  const given: PlanWords = JSON.parse(host.dataset.words ?? "{}");
  // No calculation reads a source: all that is shown of one is its name.
  const words = { ...given, titles: { ...data.sources, ...given.titles } };
  const own = data as unknown as Catalogue;
  const path = host.dataset.path ?? location.pathname;
  const plan = (catalogue: Catalogue) => <PlanEditor catalogue={catalogue} words={words} path={path} />;
  hydrateTyped(plan(own), host);
  await followDeviceShop(own, (catalogue) => render(plan(catalogue), host), document.querySelector("[data-device-shop]"));
}
