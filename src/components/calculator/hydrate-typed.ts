import { hydrate, type VNode } from "preact";

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

interface Typed {
  readonly control: Control;
  readonly value: string;
}

/** What was typed and chosen while the page was only read: hydration would put the start values back. */
function typedEarly(root: HTMLElement): Typed[] {
  return [...root.querySelectorAll<Control>("input, select, textarea")].flatMap((control) => {
    const first =
      control instanceof HTMLSelectElement
        ? [...control.options].find((option) => option.defaultSelected)?.value
        : control.defaultValue;
    return control.value === (first ?? control.value) ? [] : [{ control, value: control.value }];
  });
}

function typeAgain({ control, value }: Typed): void {
  const caret = control instanceof HTMLSelectElement ? null : control.selectionStart;
  control.value = value;
  if (!(control instanceof HTMLSelectElement)) control.setSelectionRange(caret, caret);
  control.dispatchEvent(new Event(control instanceof HTMLSelectElement ? "change" : "input", { bubbles: true }));
  if (control !== document.activeElement) control.dispatchEvent(new FocusEvent("blur"));
}

/** Hydrates a form without losing what was typed into it while the page was only read. */
export function hydrateTyped(form: VNode, root: HTMLElement): void {
  const early = typedEarly(root);
  hydrate(form, root);
  for (const typed of early) typeAgain(typed);
}
