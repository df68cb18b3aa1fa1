import { cp, glob, mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { basename, dirname, join } from "node:path";
import type { Page } from "playwright-core";
import { inject } from "vitest";
import { writeOfflineWorker } from "../../scripts/build/offline.ts";
import { type Serving, serve } from "../../scripts/server.ts";

/** A copy of the built site that a test may publish again, and a server for it. */
export interface OwnSite {
  readonly folder: string;
  readonly server: Serving;
  /** Publishes another edition: every title begins with its name, and no script keeps its file name. */
  publish(edition: string): Promise<void>;
  close(): Promise<void>;
}

async function textFiles(folder: string): Promise<string[]> {
  const files: string[] = [];
  for await (const file of glob("**/*.{html,js,css}", { cwd: folder })) files.push(join(folder, file));
  return files;
}

async function republish(folder: string, edition: string): Promise<void> {
  const files = await textFiles(folder);
  const bundles = files.filter((file) => basename(dirname(file)) === "_astro" && file.endsWith(".js"));
  const newName = new Map(bundles.map((file) => [basename(file), basename(file).replace(/\.js$/, `${edition}.js`)]));
  for (const file of files) {
    const text = await readFile(file, "utf8");
    const next = text
      .replace(/[\w.-]+\.js\b/g, (name) => newName.get(name) ?? name)
      .replace(/<title>(?:\w+: )?/, `<title>${edition}: `);
    if (next !== text) await writeFile(file, next);
  }
  for (const file of bundles) await rename(file, join(dirname(file), newName.get(basename(file)) ?? ""));
  await writeOfflineWorker(folder);
}

export async function ownSite({ folder: from = inject("folder"), base = inject("base") } = {}): Promise<OwnSite> {
  const folder = await mkdtemp(join(tmpdir(), "edition-test-"));
  await cp(from, folder, { recursive: true });
  const server = await serve({ folder, base, port: 0 });
  return {
    folder,
    server,
    publish: (edition) => republish(folder, edition),
    close: async () => {
      // A test may have stopped it already.
      await server.close().catch(() => {});
      await rm(folder, { recursive: true });
    },
  };
}

/** Waits until the offline copy is complete and serves this page. */
export async function whenKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller)
      await new Promise((done) => navigator.serviceWorker.addEventListener("controllerchange", done, { once: true }));
  });
}

/** Has the browser look for a newer worker, as it does by itself when a page is opened. */
export async function lookForUpdate(page: Page): Promise<void> {
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update().catch(() => {}));
}

/** Names of the copies on this device, without what they all begin with. */
export function copies(page: Page): Promise<string[]> {
  return page.evaluate(async () => (await caches.keys()).map((name) => name.split(" ").at(-1) ?? ""));
}
