import { watchUnits } from "../units.ts";

/**
 * Brings a form that the server rendered to life when it is needed: at once when the address holds values for it, otherwise
 * when somebody reaches for it. Until then it costs the page nothing.
 */

export interface Waken {
  /** Name the form has in addresses. */
  readonly owner: string;
  /** Loads what the form needs and hydrates it. */
  readonly bring: () => Promise<void>;
  /** For reasons of the page's own. */
  readonly atOnce?: boolean;
  /** Does not wait to be touched, but only until it is nearly in sight. */
  readonly whenNear?: boolean;
}

const near = new Map<Element, () => void>();
const soon = new IntersectionObserver(
  (entries) => {
    for (const { isIntersecting, target } of entries) {
      if (!isIntersecting) continue;
      soon.unobserve(target);
      near.get(target)?.();
    }
  },
  { rootMargin: "300px" },
);

function addressHolds(owner: string): boolean {
  return [...new URLSearchParams(location.search).keys()].some((name) => name.startsWith(`${owner}.`));
}

/** Watches a form of the page. Its host says in `data-live` or `data-failed` how it went, in `data-settled` that it may be shown as it is. */
export function waken(host: HTMLElement, { owner, bring, atOnce = false, whenNear = false }: Waken): void {
  /** Buttons pressed before there was anything behind them. */
  let pressed: HTMLButtonElement[] = [];
  let begun = false;
  const begin = async () => {
    if (begun) return;
    begun = true;
    try {
      await bring();
      host.dataset.live = "";
      delete host.dataset.failed;
      for (const button of pressed) button.click();
    } catch (error) {
      begun = false;
      host.dataset.failed = "";
      throw error;
    } finally {
      pressed = [];
    }
  };
  for (const reaching of ["focusin", "pointerover", "pointerdown"] as const) host.addEventListener(reaching, () => void begin());
  host.addEventListener("click", ({ target }) => {
    const button = target instanceof Element ? target.closest("button") : null;
    if (button && host.dataset.live === undefined) pressed.push(button);
  });
  // The page was made in millimetres: where inches are wanted, what is in sight cannot stay as it is.
  const otherUnits = document.documentElement.dataset.units !== undefined;
  watchUnits(() => void begin());
  if (atOnce || addressHolds(owner) || (otherUnits && !whenNear)) {
    void begin();
    return;
  }
  // Its start values are what it will show: they need not wait behind the values of other forms.
  host.dataset.settled = "";
  if (!whenNear) return;
  near.set(host, () => void begin());
  soon.observe(host);
}
