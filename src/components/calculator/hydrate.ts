import type { ComponentType } from "preact";
import type { Worksheet } from "../../lib/worksheet.ts";
import type { DrawingProps } from "../drawings/parts/Drawing.tsx";

/**
 * Finds the calculators of a page and brings each to life when it is needed: at once when the address holds values for it or
 * someone touches it, when the page is idle for the first one, and shortly before it comes into sight for the others.
 */
const sheets = import.meta.glob<{ default: Worksheet }>("../../lib/worksheets/*.ts");
const drawings = import.meta.glob<{ default: ComponentType<DrawingProps> }>("../drawings/*.tsx");

/** Buttons pressed before there was anything behind them. */
const pressed = new Map<HTMLElement, HTMLButtonElement[]>();
const begun = new Set<HTMLElement>();

async function bringToLife(host: HTMLElement): Promise<void> {
  if (begun.has(host)) return;
  begun.add(host);
  const id = host.dataset.calculator;
  try {
    const [{ mount }, sheet, drawing, catalogue] = await Promise.all([
      import("./mount.tsx"),
      sheets[`../../lib/worksheets/${id}.ts`]?.(),
      drawings[`../drawings/${id}.tsx`]?.(),
      import("virtual:catalogue"),
    ]);
    if (!sheet) throw new Error(`There is no worksheet ${id}`);
    mount(host, sheet.default, catalogue.default, drawing?.default);
    for (const button of pressed.get(host) ?? []) button.click();
  } catch (error) {
    begun.delete(host);
    host.dataset.failed = "";
    throw error;
  } finally {
    pressed.delete(host);
  }
}

function holdsValues(host: HTMLElement): boolean {
  const owner = `${host.id}.`;
  return [...new URLSearchParams(location.search).keys()].some((name) => name.startsWith(owner));
}

const whenIdle = window.requestIdleCallback ?? ((run: () => void) => setTimeout(run, 200));
const hosts = [...document.querySelectorAll<HTMLElement>("[data-calculator]")];
const soon = new IntersectionObserver(
  (entries) => {
    for (const { isIntersecting, target } of entries) {
      if (!isIntersecting) continue;
      soon.unobserve(target);
      void bringToLife(target as HTMLElement);
    }
  },
  { rootMargin: "600px" },
);

for (const [index, host] of hosts.entries()) {
  host.addEventListener("focusin", () => void bringToLife(host));
  host.addEventListener("pointerdown", () => void bringToLife(host));
  host.addEventListener("click", ({ target }) => {
    const button = target instanceof Element ? target.closest("button") : null;
    if (button && host.dataset.live === undefined) pressed.set(host, [...(pressed.get(host) ?? []), button]);
  });
  if (holdsValues(host) || document.documentElement.classList.contains("embedded")) {
    void bringToLife(host);
    continue;
  }
  // Its start values are what it will show: they need not wait behind the values of other calculators.
  host.dataset.settled = "";
  if (index === 0) whenIdle(() => void bringToLife(host));
  else soon.observe(host);
}
