import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { inject } from "vitest";
import { type Serving, serve } from "../../scripts/server.ts";
import { builtPages } from "./built.ts";
import { address, expect, test } from "./harness.ts";

const pages = await builtPages();
const base = inject("base");

/** Waits until the offline copy is complete and serves this page. */
async function whenKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller)
      await new Promise((done) => navigator.serviceWorker.addEventListener("controllerchange", done, { once: true }));
  });
}

/** A copy of the built site that this test may change, and a server for it. */
async function ownSite(): Promise<{ folder: string; server: Serving }> {
  const folder = await mkdtemp(join(tmpdir(), "offline-test-"));
  await cp(inject("folder"), folder, { recursive: true });
  return { folder, server: await serve({ folder, base, port: 0 }) };
}

/** Publishes the site again with another text on its first page. */
async function publish(folder: string, text: string): Promise<void> {
  const worker = join(folder, "sw.js");
  const page = join(folder, "index.html");
  const before = await readFile(worker, "utf8");
  await writeFile(page, (await readFile(page, "utf8")).replace(/<title>[^<]*/, `<title>${text}`));
  await writeFile(
    worker,
    before.replace(/^const VERSION = "[^"]*"/, `const VERSION = "${text}"`).replace(/"":"[^"]*"/, `"":"${text}"`),
  );
}

test("after one visit every page opens without a network, whatever the values in its address", { timeout: 180_000 }, async ({
  open,
}) => {
  const page = await open("/", { serviceWorker: true });
  await whenKept(page);
  await page.context().setOffline(true);
  for (const { path } of pages) {
    await page.goto(address(`${path}?a.b=1`));
    expect(await page.locator("h1").count(), path).toBe(1);
    expect(await page.evaluate(() => [...document.fonts].filter(({ status }) => status === "error").length)).toBe(0);
  }
});

test("the search works without a network", async ({ open }) => {
  const page = await open("/", { serviceWorker: true });
  await whenKept(page);
  await page.context().setOffline(true);
  await page.reload();
  await page.locator("[data-search] input").fill("bend");
  await page.locator(".search-link").first().click();
  expect(await page.locator("h1").count()).toBe(1);
});

test("an address that does not exist says so without a network", async ({ open }) => {
  const page = await open("/", { serviceWorker: true, expectProblems: /nothing-here/ });
  await whenKept(page);
  await page.context().setOffline(true);
  const answer = await page.goto(address("/nothing-here/"));
  expect(answer?.status()).toBe(404);
});

test("a new version waits while two pages are open, and is used when the last one asks for it", async ({ open }) => {
  const { folder, server } = await ownSite();
  try {
    const first = await open("/", { serviceWorker: true, at: server.origin });
    await whenKept(first);
    const second = await open("/", { beside: first, at: server.origin });
    const before = await first.title();
    await publish(folder, "second-edition");
    await first.evaluate(async () => (await navigator.serviceWorker.ready).update());
    const notice = first.locator("[data-new-version]");
    await notice.getByRole("button").click();
    await expect.poll(() => notice.textContent()).toMatch(/Close the other page/);
    // Still the old edition, on both pages and from the network's point of view.
    await second.reload();
    expect(await second.title()).toBe(before);
    await second.close();
    await notice.getByRole("button").click();
    await expect.poll(() => first.title().catch(() => "reloading")).toBe("second-edition");
    // The old edition's copy is gone.
    await expect.poll(() => first.evaluate(async () => (await caches.keys()).length)).toBe(1);
  } finally {
    await server.close();
    await rm(folder, { recursive: true });
  }
});

test("the kill switch deletes the copy and takes the worker out", async ({ open }) => {
  const { folder, server } = await ownSite();
  try {
    const page = await open("/", { serviceWorker: true, at: server.origin });
    await whenKept(page);
    await cp("src/offline/retired-worker.js", join(folder, "sw.js"));
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await expect.poll(() => page.evaluate(async () => (await caches.keys()).length)).toBe(0);
    await expect.poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0);
  } finally {
    await server.close();
    await rm(folder, { recursive: true });
  }
});
