import type { ComponentType } from "preact";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import type { DrawingProps } from "../drawings/parts/Drawing.tsx";
import { Calculator, type Setting } from "./Calculator.tsx";
import { hydrateTyped } from "./hydrate-typed.ts";

/** Brings a calculator of the page to life without losing what was typed into it before. */
export function mount(
  host: HTMLElement,
  sheet: Worksheet,
  catalogue: Catalogue,
  Drawing: ComponentType<DrawingProps> | undefined,
): void {
  const root = host.querySelector<HTMLElement>("[data-root]");
  if (!root) throw new Error("A calculator without a root");
  const setting: Setting = JSON.parse(host.dataset.setting ?? "{}");
  const working = host.querySelector<HTMLElement>("[data-working]");
  hydrateTyped(<Calculator {...setting} sheet={sheet} catalogue={catalogue} Drawing={Drawing} working={working} />, root);
  host.dataset.live = "";
}
