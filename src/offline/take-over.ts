import type { Outcome } from "./register.ts";

/** How long the browser may take to change to the new version before the page is loaded again [ms]. */
const patience = 3000;

/** How often the page is loaded again for that. */
const most = 3;

/**
 * Asks the waiting version to take over, and reloads the page once it has.
 *
 * Chromium now and then lets it wait although nothing is in its way, for minutes, and goes on when the page is loaded anew.
 * So that is done when the change does not come by itself, and the new page asks again.
 *
 * @param before - how often this was tried and the page loaded again
 * @param note - keeps that number over a reload; null when the change is done or given up
 */
export function takeOver(
  registration: ServiceWorkerRegistration,
  before: number,
  note: (count: string | null) => void,
): Promise<Outcome> {
  return new Promise((done) => {
    const { serviceWorker } = navigator;
    const over = new AbortController();
    const { signal } = over;
    const end = (outcome: Outcome, count: string | null) => {
      over.abort();
      clearTimeout(timer);
      note(count);
      done(outcome);
      if (outcome !== 0) return;
      // What was typed a moment ago goes into the address, as when the page is hidden: a reload goes where it says now.
      document.dispatchEvent(new Event("visibilitychange"));
      location.reload();
    };
    const timer = setTimeout(() => (before < most ? end(0, String(before + 1)) : end("stuck", null)), patience);
    serviceWorker.addEventListener("message", ({ data }) => data?.type === "other-pages-open" && end(data.count, null), {
      signal,
    });
    serviceWorker.addEventListener("controllerchange", () => end(0, null), { signal });
    // Without one, another page has changed to it in the meantime.
    if (registration.waiting) registration.waiting.postMessage({ type: "take-over" });
    else end(0, null);
  });
}
