import data from "virtual:calculator-data";
import { render } from "preact";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { BendOrder } from "../../lib/part/order/order.ts";
import { hydrateTyped } from "../calculator/hydrate-typed.ts";
import { followDeviceShop } from "../shop/device.ts";
import { unfoldAddress } from "../unfold-address.ts";
import { owner } from "./last-plan.ts";
import { PlanEditor } from "./PlanEditor.tsx";
import type { PlanWords } from "./words.ts";

/** Brings the plan of the page to life. */
export async function mount(host: HTMLElement): Promise<void> {
  const damage = await unfoldAddress(owner);
  const given: PlanWords = JSON.parse(host.dataset.words ?? "{}");
  // No calculation reads a source: all that is shown of one is its name.
  const words = { ...given, titles: { ...data.sources, ...given.titles } };
  const own = data as unknown as Catalogue;
  const path = host.dataset.path ?? location.pathname;
  const exampleOrder: BendOrder | undefined = host.dataset.order ? JSON.parse(host.dataset.order) : undefined;
  const plan = (catalogue: Catalogue) => (
    <PlanEditor
      catalogue={catalogue}
      words={words}
      path={path}
      damage={damage}
      embedded={host.dataset.frame !== undefined}
      exampleOrder={exampleOrder}
    />
  );
  hydrateTyped(plan(own), host);
  await followDeviceShop(own, (catalogue) => render(plan(catalogue), host), document.querySelector("[data-device-shop]"));
}
