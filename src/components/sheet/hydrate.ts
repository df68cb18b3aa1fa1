import { waken } from "../calculator/waken.ts";
import { hasDeviceShop } from "../shop/device.ts";
import { lastListQuery, owner } from "./last-list.ts";

const host = document.querySelector<HTMLElement>("[data-cut-plan]");
if (host)
  waken(host, {
    owner,
    // Only a live page can offer to go on with it, or hold the plan against the shop of this device.
    atOnce: lastListQuery() !== undefined || hasDeviceShop(),
    bring: async () => (await import("./mount.tsx")).mount(host),
  });
