import data from "virtual:calculator-data";
import { hydrate, render } from "preact";
import { rawFromAddress } from "../../lib/address.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import { partInputs } from "../../lib/part/form.ts";
import type { BendOrder } from "../../lib/part/order/order.ts";
import { owner } from "../plan/last-plan.ts";
import { example } from "../plan/starting-points.ts";
import { followDeviceShop } from "../shop/device.ts";
import { unfoldAddress } from "../unfold-address.ts";
import { SignOff } from "./SignOff.tsx";

/** Shows the sheet of the plan in the page's address. */
export async function mount(host: HTMLElement): Promise<void> {
  const damage = await unfoldAddress(owner);
  const cautions = JSON.parse(host.dataset.cautions ?? "{}");
  const own = data as unknown as Catalogue;
  const held = rawFromAddress(owner, partInputs, new URLSearchParams(location.search));
  const isExample = Object.keys(held).length === 0;
  const asBuilt = isExample && damage === "";
  const exampleOrder: BendOrder | undefined = host.dataset.order ? JSON.parse(host.dataset.order) : undefined;
  const sheet = (catalogue: Catalogue) => (
    <SignOff
      catalogue={catalogue}
      cautions={cautions}
      raw={isExample ? example : held}
      isExample={isExample}
      damage={damage}
      exampleOrder={exampleOrder}
    />
  );
  if (asBuilt) {
    // A copy that was chosen before there was anything behind it.
    const early = host.querySelector<HTMLInputElement>("input:checked:not([checked])");
    hydrate(sheet(own), host);
    early?.dispatchEvent(new Event("change", { bubbles: true }));
  } else {
    // What stands there is the sheet of another part.
    host.replaceChildren();
    render(sheet(own), host);
  }
  await followDeviceShop(own, (catalogue) => render(sheet(catalogue), host), document.querySelector("[data-device-shop]"));
}
