import data from "virtual:calculator-data";
import { hydrate, render } from "preact";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { ShopFile } from "../../lib/shop/form.ts";
import { unitsView, watchUnits } from "../units.ts";
import { DevicePanel } from "./DevicePanel.tsx";
import { watchDeviceShop } from "./device.ts";
import { ShopSheet } from "./ShopSheet.tsx";
import { deviceShop, deviceStore } from "./shelf.ts";

/** Brings the page of the shop to life: the form for this device, and the sheet in the reader's units with what was changed. */
export function mount(panel: HTMLElement, sheet: HTMLElement): void {
  const own = data as unknown as Catalogue;
  const root = panel.dataset.root ?? "";
  const file: ShopFile = JSON.parse(panel.dataset.file ?? "{}");

  hydrate(<ShopSheet catalogue={own} view="mm" root={root} />, sheet);
  const show = () => {
    const { shop } = deviceShop(deviceStore(), own);
    render(<ShopSheet catalogue={{ ...own, shop }} own={own.shop} view={unitsView()} root={root} />, sheet);
  };
  show();
  watchUnits(show);
  watchDeviceShop(show);
  hydrate(<DevicePanel catalogue={own} file={file} />, panel);
}
