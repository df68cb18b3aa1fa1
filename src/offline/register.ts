import { trustOwnScripts } from "../site/trusted-scripts.ts";

export interface NewVersion {
  /**
   * Changes to the new version and reloads the page, if it is the only one open.
   * @returns how many other pages have to be closed first; 0 when it changes now
   */
  use(): Promise<number>;
}

/** Holds "off" where the reader wants no copy on this device. */
export const copyChoice = "flat-to-formed.copy";

/** How often a page that stays open looks for a new version [ms]. */
const lookAgain = 3_600_000;

function offer(registration: ServiceWorkerRegistration): NewVersion {
  return {
    use: () =>
      new Promise((done) => {
        const { serviceWorker } = navigator;
        const change = () => {
          done(0);
          location.reload();
        };
        // Another page has changed to it in the meantime.
        if (!registration.waiting) return change();
        serviceWorker.addEventListener("message", ({ data }) => data?.type === "other-pages-open" && done(data.count), {
          once: true,
        });
        serviceWorker.addEventListener("controllerchange", change, { once: true });
        registration.waiting.postMessage({ type: "take-over" });
      }),
  };
}

/** Tells when a new version has been fetched; also when it was before this page was opened. */
function watch(registration: ServiceWorkerRegistration, onNewVersion: (version: NewVersion) => void): void {
  const tell = () => {
    // Without an active one this is the first version, and nothing changes for the reader.
    if (registration.waiting && registration.active) onNewVersion(offer(registration));
  };
  tell();
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", tell);
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
 * @param onNewVersion - called when a newer version is ready; the page goes on with its own until `use` is called or it is left
 */
export function keepOffline(onNewVersion: (version: NewVersion) => void): void {
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
