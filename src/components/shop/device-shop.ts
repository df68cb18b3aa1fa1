import type { Catalogue } from "../../lib/catalogue.ts";
import { deviceShop, deviceStore } from "./shelf.ts";

/** The catalogue with the shop as this device has it. */
export function deviceCatalogue(own: Catalogue): Catalogue {
  return { ...own, shop: deviceShop(deviceStore(), own).shop };
}

/** Says in the line of a form whether this device has a shop of its own. */
export function sayDeviceShop(line: HTMLElement, own: Catalogue): void {
  const { changed, unusable } = deviceShop(deviceStore(), own);
  line.hidden = changed === undefined && !unusable;
  const words = line.querySelector("[data-words]");
  if (!words) return;
  words.textContent = changed
    ? `Uses this device’s changes to the shop, of ${changed}.`
    : "This device’s changes to the shop cannot be used; the shop’s own file is used.";
}
