import data from "virtual:calculator-data";
import { render } from "preact";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { CutPlan } from "../../lib/sheet/cut-plan.ts";
import { hydrateTyped } from "../calculator/hydrate-typed.ts";
import type { PlanWords } from "../plan/words.ts";
import { followDeviceShop } from "../shop/device.ts";
import { unfoldAddress } from "../unfold-address.ts";
import { owner } from "./last-list.ts";
import { SheetEditor } from "./SheetEditor.tsx";

/** Brings the cutting plan of the page to life. */
export async function mount(host: HTMLElement): Promise<void> {
  const damage = await unfoldAddress(owner);
  const given: PlanWords = JSON.parse(host.dataset.words ?? "{}");
  // No calculation reads a source: all that is shown of one is its name.
  const words = { ...given, titles: { ...data.sources, ...given.titles } };
  const own = data as unknown as Catalogue;
  const examplePlan: CutPlan | undefined = host.dataset.plan ? JSON.parse(host.dataset.plan) : undefined;
  const editor = (catalogue: Catalogue) => (
    <SheetEditor catalogue={catalogue} words={words} damage={damage} examplePlan={examplePlan} />
  );
  hydrateTyped(editor(own), host);
  await followDeviceShop(own, (catalogue) => render(editor(catalogue), host), document.querySelector("[data-device-shop]"));
}
