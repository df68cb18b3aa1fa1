import type ownData from "virtual:calculator-data";
import type { CalculatorModule } from "virtual:calculators";
import { render } from "preact";
import type { Catalogue } from "../../lib/catalogue.ts";
import { english } from "../../texts/english.ts";
import type { Language } from "../../texts/language.ts";
import { CalculatorIn, type Setting } from "./Calculator.tsx";
import { hydrateTyped } from "./hydrate-typed.ts";
import { loadWhenOpened } from "./working.ts";

/**
 * Brings a calculator of the page to life without losing what was typed into it before.
 * @returns a function that shows it with another catalogue
 */
export function mount(
  host: HTMLElement,
  { sheet, Drawing, After, titles }: CalculatorModule,
  data: typeof ownData,
  language: Language = english,
): (catalogue: Catalogue) => void {
  const root = host.querySelector<HTMLElement>("[data-root]");
  if (!root) throw new Error("A calculator without a root");
  const setting: Setting = JSON.parse(host.dataset.setting ?? "{}");
  const working = host.querySelector<HTMLDetailsElement>("[data-working]");
  const names = { ...data.sources, ...titles };
  const calculator = (catalogue: Catalogue) => (
    <CalculatorIn
      {...setting}
      language={language}
      sheet={sheet}
      catalogue={catalogue}
      titles={names}
      Drawing={Drawing}
      After={After}
      working={working}
    />
  );
  // No calculation reads a source: all that is shown of one is its name.
  hydrateTyped(calculator(data as unknown as Catalogue), root);
  if (working) loadWhenOpened(working);
  return (catalogue) => render(calculator(catalogue), root);
}
