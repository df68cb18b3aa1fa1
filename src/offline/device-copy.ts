import { copyChoice } from "./register.ts";

/** The copy of the site that this device keeps, as a page sees it. Browser only. */

export type DeviceCopy =
  | { readonly state: "unsupported" | "refused" | "none" | "fetching" | "partial" | "silent" }
  | {
      readonly state: "complete";
      readonly version: string;
      readonly files: number;
      readonly bytes: number;
      /** ISO 8601. */
      readonly kept: string;
      /** A newer version has been fetched beside it. */
      readonly waiting: boolean;
    };

/** How long a worker may take to say who it is [ms]. */
const patience = 3000;

const base = () => new URL(import.meta.env.BASE_URL, location.href).href;
const prefix = () => `flat-to-formed ${base()} `;

const registration = () => navigator.serviceWorker.getRegistration(base());

async function copies(): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(prefix()));
}

/** @returns its version, or undefined when it does not answer */
function ask(worker: ServiceWorker, type: "version" | "retire"): Promise<string | undefined> {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => done(String(data));
    setTimeout(() => done(undefined), patience);
    worker.postMessage({ type }, [port2]);
  });
}

export function isRefused(): boolean {
  try {
    return localStorage.getItem(copyChoice) === "off";
  } catch {
    return false;
  }
}

export async function findCopy(): Promise<DeviceCopy> {
  if (!("serviceWorker" in navigator) || !("caches" in globalThis)) return { state: "unsupported" };
  try {
    const found = await registration();
    if (found && !found.active && (found.installing || found.waiting)) return { state: "fetching" };
    if (!found?.active) return { state: isRefused() ? "refused" : (await copies()).length > 0 ? "partial" : "none" };
    const version = await ask(found.active, "version");
    if (version === undefined) return { state: "silent" };
    const list = await caches.match(`${base()}offline-files`, { cacheName: prefix() + version });
    if (!list) return { state: "partial" };
    const { files, bytes, kept } = await list.json();
    return { state: "complete", version, files: Object.keys(files).length, bytes, kept, waiting: found.waiting !== null };
  } catch {
    // Private windows of some browsers have the interface and refuse its use.
    return { state: "unsupported" };
  }
}

/** Whether the site itself answers, past every copy. */
export async function isReachable(): Promise<boolean> {
  try {
    // The worker lets this method past. A stuck one may also swallow it.
    const answer = await fetch(`${base()}sw.js`, { method: "HEAD", cache: "no-store", signal: AbortSignal.timeout(patience) });
    return answer.ok;
  } catch {
    return false;
  }
}

/** Looks for a newer version. @returns whether there is one, or undefined when the site cannot be reached */
export async function lookForNewer(): Promise<boolean | undefined> {
  try {
    const found = await (await registration())?.update();
    return Boolean(found?.installing ?? found?.waiting);
  } catch {
    return undefined;
  }
}

/** Deletes the copy and takes its worker out; what was made on the device stays. */
export async function clearCopy(): Promise<void> {
  const found = await registration();
  const workers = [found?.installing, found?.waiting, found?.active].filter((worker) => worker instanceof ServiceWorker);
  // Pages that are open keep their worker until they are closed: from now on it must neither hand out nor mend the copy.
  await Promise.all(workers.map((worker) => ask(worker, "retire")));
  await found?.unregister();
  await Promise.all((await copies()).map((name) => caches.delete(name)));
}

/** Chooses whether a copy is kept from now on. */
export function chooseCopy(wanted: boolean): void {
  try {
    if (wanted) localStorage.removeItem(copyChoice);
    else localStorage.setItem(copyChoice, "off");
  } catch {
    // Storage is off, and with it the copy.
  }
}
