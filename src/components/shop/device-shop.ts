import type { Catalogue } from "../../lib/catalogue.ts";
import { calculator } from "../../texts/en/calculator.ts";
import { pageTexts } from "../../texts/page-language.ts";
import { deviceShop, deviceStore } from "./shelf.ts";

/** The catalogue with the shop as this device has it. */
export function deviceCatalogue(own: Catalogue): Catalogue {
  return { ...own, shop: deviceShop(deviceStore(), own).shop };
}

/** Says in the line of a form whether this device has a shop of its own. */
export async function sayDeviceShop(line: HTMLElement, own: Catalogue): Promise<void> {
  const texts = await pageTexts(calculator);
  const { changed, unusable } = deviceShop(deviceStore(), own);
  line.hidden = changed === undefined && !unusable;
  const words = line.querySelector("[data-words]");
  if (!words) return;
  words.textContent = changed ? texts.deviceShopChanged(changed) : texts.deviceShopUnusable;
}
