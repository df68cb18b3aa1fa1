import { waken } from "../calculator/waken.ts";
import { hasDeviceShop } from "../shop/device.ts";
import { hasLastPlan, owner } from "./last-plan.ts";

const host = document.querySelector<HTMLElement>("[data-plan]");
if (host)
  waken(host, {
    owner,
    // Only a live page can offer to go on with it, or hold the part against the shop of this device.
    atOnce: (host.dataset.frame === undefined && hasLastPlan()) || hasDeviceShop(),
    bring: async () => (await import("./mount.tsx")).mount(host),
  });
