import { waken } from "../calculator/waken.ts";
import { hasDeviceShop } from "./device.ts";

const panel = document.querySelector<HTMLElement>("[data-shop-panel]");
const sheet = document.querySelector<HTMLElement>("[data-shop-sheet]");
if (panel && sheet)
  waken(panel, {
    owner: "shop",
    atOnce: hasDeviceShop(),
    bring: async () => (await import("./mount.tsx")).mount(panel, sheet),
  });
