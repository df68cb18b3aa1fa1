import calculators from "virtual:calculators";

/**
 * Finds the calculators of a page and brings each to life when it is needed: at once when the address holds values for it or
 * someone touches it, otherwise shortly before it comes into sight. Until then it costs the page nothing.
 */

/** Buttons pressed before there was anything behind them. */
const pressed = new Map<HTMLElement, HTMLButtonElement[]>();
const begun = new Set<HTMLElement>();

async function bringToLife(host: HTMLElement): Promise<void> {
  if (begun.has(host)) return;
  begun.add(host);
  const id = host.dataset.calculator ?? "";
  try {
    const load = calculators[id];
    if (!load) throw new Error(`There is no worksheet ${id}`);
    const [{ mount }, calculator, data] = await Promise.all([import("./mount.tsx"), load(), import("virtual:calculator-data")]);
    mount(host, calculator, data.default);
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

const hosts = [...document.querySelectorAll<HTMLElement>("[data-calculator]")];
const soon = new IntersectionObserver(
  (entries) => {
    for (const { isIntersecting, target } of entries) {
      if (!isIntersecting) continue;
      soon.unobserve(target);
      void bringToLife(target as HTMLElement);
    }
  },
  { rootMargin: "300px" },
);

for (const host of hosts) {
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
  soon.observe(host);
}
