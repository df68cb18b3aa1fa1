import type { ComponentType } from "preact";
import { hydrate } from "preact";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import type { DrawingProps } from "../drawings/parts/Drawing.tsx";
import { Calculator, type Setting } from "./Calculator.tsx";

type Control = HTMLInputElement | HTMLSelectElement;

interface Typed {
  readonly control: Control;
  readonly value: string;
}

/** What was typed and chosen while the page was only read: hydration would put the start values back. */
function typedEarly(root: HTMLElement): Typed[] {
  return [...root.querySelectorAll<Control>("input, select")].flatMap((control) => {
    const first =
      control instanceof HTMLSelectElement
        ? [...control.options].find((option) => option.defaultSelected)?.value
        : control.defaultValue;
    return control.value === (first ?? control.value) ? [] : [{ control, value: control.value }];
  });
}

function typeAgain({ control, value }: Typed): void {
  const caret = control instanceof HTMLInputElement ? control.selectionStart : null;
  control.value = value;
  if (control instanceof HTMLInputElement) control.setSelectionRange(caret, caret);
  control.dispatchEvent(new Event(control instanceof HTMLSelectElement ? "change" : "input", { bubbles: true }));
  if (control !== document.activeElement) control.dispatchEvent(new FocusEvent("blur"));
}

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
  const early = typedEarly(root);
  const working = host.querySelector<HTMLElement>("[data-working]");
  hydrate(<Calculator {...setting} sheet={sheet} catalogue={catalogue} Drawing={Drawing} working={working} />, root);
  for (const typed of early) typeAgain(typed);
  host.dataset.live = "";
}
