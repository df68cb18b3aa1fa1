import { waken } from "../calculator/waken.ts";
import { owner } from "../plan/last-plan.ts";
import { hasDeviceShop } from "../shop/device.ts";

const host = document.querySelector<HTMLElement>("[data-sign-off]");
// The sheet of the example stands in the page: it needs nothing more until somebody reaches for it.
if (host) waken(host, { owner, atOnce: hasDeviceShop(), bring: async () => (await import("./mount.tsx")).mount(host) });
