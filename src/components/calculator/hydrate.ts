import calculators from "virtual:calculators";
import { waken } from "./waken.ts";

/** Alone in a frame it is always in sight; a course page with ten such frames would load ten for nothing. */
const alone = document.documentElement.classList.contains("embedded");

for (const host of document.querySelectorAll<HTMLElement>("[data-calculator]"))
  waken(host, {
    owner: host.id,
    whenNear: !alone,
    async bring() {
      const id = host.dataset.calculator ?? "";
      const load = calculators[id];
      if (!load) throw new Error(`There is no worksheet ${id}`);
      const [{ mount }, calculator, data] = await Promise.all([import("./mount.tsx"), load(), import("virtual:calculator-data")]);
      mount(host, calculator, data.default);
    },
  });
