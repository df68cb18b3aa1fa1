import { trustOwnScripts } from "../site/trusted-scripts.ts";

export interface NewVersion {
  /** Changes to the new version and reloads the page, if it is the only one open. */
  use(): Promise<Outcome>;
}

/** How many other pages have to be closed first, 0 when the page is loaded again now; "stuck" when the browser does not change. */
export type Outcome = number | "stuck";

/**
 * In the storage of this tab, while it changes to a new version: how often the page has been loaded again for that, or "last"
 * when it is for the last time.
 */
const changing = "flat-to-formed.changing";

function reloads(): string | null {
  try {
    return sessionStorage.getItem(changing);
  } catch {
    return null;
  }
}

/** @param count - null: it is done, or given up */
function noteReloads(count: string | null): void {
  try {
    if (count === null) sessionStorage.removeItem(changing);
    else sessionStorage.setItem(changing, count);
  } catch {
    // Storage is off: the reader is asked again after a change that needs more than one attempt.
  }
}

/** Holds "off" where the reader wants no copy on this device. */
export const copyChoice = "flat-to-formed.copy";

/** How often a page that stays open looks for a new version [ms]. */
const lookAgain = 3_600_000;

function offer(registration: ServiceWorkerRegistration): NewVersion {
  return { use: async () => (await import("./take-over.ts")).takeOver(registration, Number(reloads()), noteReloads) };
}

type Tell = (version: NewVersion, isGoingOn: boolean) => void;

/** Tells when a new version has been fetched; also when it was before this page was opened. */
function watch(registration: ServiceWorkerRegistration, onNewVersion: Tell): void {
  const tell = (isGoingOn: boolean) => {
    // Without an active one this is the first version, and nothing changes for the reader.
    if (registration.waiting && registration.active) onNewVersion(offer(registration), isGoingOn);
  };
  const before = reloads();
  if (before === "last") noteReloads(null);
  else if (before !== null && !registration.waiting) {
    // The change came while this page was being loaded, which may still be of the old version.
    noteReloads("last");
    location.reload();
    return;
  }
  tell(before !== null);
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", () => tell(false));
  });
  setInterval(() => registration.update().catch(() => {}), lookAgain);
}

function isWanted(): boolean {
  try {
    return localStorage.getItem(copyChoice) !== "off";
  } catch {
    return true;
  }
}

/**
 * Keeps a copy of the whole site on the device. Starts when the page is done, so that nothing the reader waits for is slowed.
 * @param onNewVersion - called when a newer version is ready; the page goes on with its own until `use` is called or it is left.
 *   Going on: the reader has chosen it already, and it takes another attempt.
 */
export function keepOffline(onNewVersion: Tell): void {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator) || !isWanted()) return;
  const start = async () => {
    trustOwnScripts();
    const base = import.meta.env.BASE_URL;
    const registration = await navigator.serviceWorker.register(`${base}sw.js`, { scope: base, updateViaCache: "none" });
    watch(registration, onNewVersion);
  };
  const later = () =>
    start().catch((error: unknown) => {
      // The site works without its copy: private windows and some settings forbid one.
      console.info("No offline copy:", error);
    });
  if (document.readyState === "complete") later();
  else window.addEventListener("load", later, { once: true });
}
