import calculators from "virtual:calculators";
import type { Catalogue } from "../../lib/catalogue.ts";
import { foreignLanguage } from "../../texts/page-language.ts";
import { followDeviceShop, hasDeviceShop } from "../shop/device.ts";
import { waken } from "./waken.ts";

/** Alone in a frame it is always in sight; a course page with ten such frames would load ten for nothing. */
const alone = document.documentElement.classList.contains("embedded");

for (const host of document.querySelectorAll<HTMLElement>("[data-calculator]")) {
  /** Only where the answer is held against the shop. */
  const line = host.querySelector<HTMLElement>("[data-device-shop]");
  waken(host, {
    owner: host.id,
    whenNear: !alone,
    atOnce: alone && line !== null && hasDeviceShop(),
    async bring() {
      const id = host.dataset.calculator ?? "";
      const load = calculators[id];
      if (!load) throw new Error(`There is no worksheet ${id}`);
      const [{ mount }, calculator, data, language] = await Promise.all([
        import("./mount.tsx"),
        load(),
        import("virtual:calculator-data"),
        foreignLanguage(),
      ]);
      const show = mount(host, calculator, data.default, language);
      if (line) await followDeviceShop(data.default as unknown as Catalogue, show, line);
    },
  });
}
