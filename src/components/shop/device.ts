import type { Catalogue } from "../../lib/catalogue.ts";

/**
 * Whether this device keeps its own shop. Every page with a calculator loads this file, so it does no more than look;
 * what reads and merges comes when there is something to read. Browser only.
 */

/** Where the changes to the shop's file are kept. */
export const shopShelf = "flat-to-formed.shop";
/** Where bends measured on this device are kept. */
export const bendShelf = "flat-to-formed.bends";

export function hasDeviceShop(): boolean {
  try {
    return localStorage.getItem(shopShelf) !== null || localStorage.getItem(bendShelf) !== null;
  } catch {
    return false;
  }
}

const watchers = new Set<() => void>();

/** Tells this page that it has changed what is kept; other pages are told by the browser. */
export function tellDeviceShop(): void {
  for (const watcher of watchers) watcher();
}

/** Calls a function whenever what this device keeps has changed, here or in another tab. */
export function watchDeviceShop(watcher: () => void): void {
  watchers.add(watcher);
  addEventListener("storage", ({ key }) => {
    if (key === null || key === shopShelf || key === bendShelf) watcher();
  });
}

/**
 * Keeps a form of the page at the shop of this device.
 *
 * @param own - the catalogue with the shop's own file
 * @param show - shows the form with another catalogue; not called while the device keeps nothing
 * @param line - says that it does
 */
export async function followDeviceShop(
  own: Catalogue,
  show: (catalogue: Catalogue) => void,
  line: HTMLElement | null,
): Promise<void> {
  let followed = false;
  const look = async () => {
    if (!followed && !hasDeviceShop()) return;
    followed = true;
    const { deviceCatalogue, sayDeviceShop } = await import("./device-shop.ts");
    show(deviceCatalogue(own));
    if (line) await sayDeviceShop(line, own);
  };
  watchDeviceShop(() => void look());
  await look();
}
