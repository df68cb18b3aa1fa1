import type data from "virtual:calculator-data";
import type { CalculatorModule } from "virtual:calculators";
import type { Catalogue } from "../../lib/catalogue.ts";
import { Calculator, type Setting } from "./Calculator.tsx";
import { hydrateTyped } from "./hydrate-typed.ts";
import { loadWhenOpened } from "./working.ts";

/** Brings a calculator of the page to life without losing what was typed into it before. */
export function mount(host: HTMLElement, { sheet, Drawing, titles }: CalculatorModule, catalogue: typeof data): void {
  const root = host.querySelector<HTMLElement>("[data-root]");
  if (!root) throw new Error("A calculator without a root");
  const setting: Setting = JSON.parse(host.dataset.setting ?? "{}");
  const working = host.querySelector<HTMLDetailsElement>("[data-working]");
  hydrateTyped(
    <Calculator
      {...setting}
      sheet={sheet}
      // No calculation reads a source: all that is shown of one is its name.
      catalogue={catalogue as unknown as Catalogue}
      titles={{ ...catalogue.sources, ...titles }}
      Drawing={Drawing}
      working={working}
    />,
    root,
  );
  if (working) loadWhenOpened(working);
}
