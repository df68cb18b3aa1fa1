import type { LengthView } from "../lib/quantity/format.ts";

/**
 * How lengths are shown: one choice for the whole site, remembered on this device. It is kept in `data-units` of the root,
 * where `src/site/boot.js` puts it before the first paint. Browser only.
 */
const listeners = new Set<() => void>();

export function unitsView(): LengthView {
  return (document.documentElement.dataset.units as LengthView | undefined) ?? "mm";
}

export function chooseUnits(view: LengthView): void {
  document.documentElement.dataset.units = view;
  try {
    localStorage.setItem("flat-to-formed.units", view);
  } catch {
    // A browser that keeps nothing still shows the choice until the page is left.
  }
  for (const listener of listeners) listener();
}

/** @returns a function that stops the watching */
export function watchUnits(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
