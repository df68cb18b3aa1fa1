import { spawnSync } from "node:child_process";
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Locator } from "playwright-core";
import { inject } from "vitest";
import { writeOfflineWorker } from "../../scripts/build/offline.ts";
import { settingsFolder } from "../../scripts/build/server-settings.ts";
import { serve } from "../../scripts/server.ts";
import { builtPages } from "./built.ts";
import { copies, lookForUpdate, ownSite, whenKept } from "./editions.ts";
import { address, expect, type Open, test } from "./harness.ts";

const pages = await builtPages();

/** One visit, then no network: every page, the search, and what is not there. */
async function tryOffline(open: Open, at: string, base: string): Promise<void> {
  const page = await open("/", { serviceWorker: true, at, base, expectProblems: /nothing-here/ });
  await whenKept(page);
  await page.context().setOffline(true);
  for (const { path } of pages) {
    await page.goto(address(`${path}?a.b=1`, at, base));
    expect(await page.locator("h1").count(), path).toBe(1);
    expect(await page.evaluate(() => [...document.fonts].filter(({ status }) => status === "error").length)).toBe(0);
  }
  await page.goto(address("/bending/index.html?a.b=1", at, base));
  expect(page.url()).toBe(address("/bending/?a.b=1", at, base));
  await page.goto(address("/", at, base));
  await page.locator("[data-search] input").fill("bend");
  await page.locator(".search-link").first().click();
  expect(await page.locator("h1").count()).toBe(1);
  const answer = await page.goto(address("/nothing-here/", at, base));
  expect(answer?.status()).toBe(404);
}

test("after one visit the whole site works without a network, under a path", { timeout: 240_000 }, async ({ open }) => {
  await tryOffline(open, inject("origin"), inject("base"));
});

test("after one visit the whole site works without a network, at the root of a host", { timeout: 600_000 }, async ({ open }) => {
  const folder = `.cache/root-${process.pid}`;
  const env = { ...process.env, BASE_PATH: "/", OUT_DIR: folder, NODE_ENV: "production" };
  expect(spawnSync(process.execPath, ["scripts/build.ts"], { stdio: "inherit", env }).status).toBe(0);
  const server = await serve({ folder, base: "/", port: 0 });
  try {
    await tryOffline(open, server.origin, "/");
  } finally {
    await server.close();
    await rm(folder, { recursive: true });
    await rm(settingsFolder(folder), { recursive: true });
  }
});

test("calculators and the plan answer without a network", async ({ open }) => {
  const page = await open("/", { serviceWorker: true });
  await whenKept(page);
  await page.context().setOffline(true);
  await page.goto(address("/bending/"));
  await page.locator("#bend-length-thickness").fill("2");
  await page.waitForURL(/bend-length\.thickness=2/);
  await page.goto(address("/plan/?plan.thickness=2mm"));
  await page.locator("[data-plan][data-live]").waitFor();
});

test("a full device gets no half copy, the site goes on from the network, and the copy comes once there is room", async ({
  open,
}) => {
  const site = await ownSite();
  try {
    const page = await open("/404.html", { serviceWorker: true, at: site.server.origin });
    await page.evaluate(async () => {
      for (const registration of await navigator.serviceWorker.getRegistrations()) await registration.unregister();
      for (const name of await caches.keys()) await caches.delete(name);
    });
    const session = await page.context().newCDPSession(page);
    // Said beforehand: nothing is fetched for it. Less than said: it is noticed on the way.
    for (const quotaSize of [1_000_000, 5_800_000]) {
      await session.send("Storage.overrideQuotaForOrigin", { origin: site.server.origin, quotaSize });
      await page.goto(address("/bending/", site.server.origin));
      const state = await page.evaluate(async () => {
        const registration = await navigator.serviceWorker.getRegistration();
        const worker = registration?.installing;
        if (worker)
          await new Promise((done) => worker.addEventListener("statechange", () => worker.state === "redundant" && done(0)));
        return navigator.serviceWorker.controller;
      });
      expect(state).toBeNull();
      await expect.poll(() => copies(page)).toEqual([]);
    }
    await session.send("Storage.overrideQuotaForOrigin", { origin: site.server.origin });
    await page.goto(address("/bending/", site.server.origin));
    await whenKept(page);
    expect(await copies(page)).toHaveLength(1);
  } finally {
    await site.close();
  }
});

test("a copy that was deleted from outside is made whole again", async ({ open }) => {
  const page = await open("/", { serviceWorker: true });
  await whenKept(page);
  const count = () =>
    page.evaluate(async () => {
      const [name] = await caches.keys();
      return name === undefined ? 0 : (await (await caches.open(name)).keys()).length;
    });
  const whole = await count();
  await page.evaluate(async () => {
    for (const name of await caches.keys()) await caches.delete(name);
  });
  await page.reload();
  await expect.poll(count, { timeout: 30_000 }).toBe(whole);
  await page.context().setOffline(true);
  await page.goto(address("/bending/"));
  expect(await page.locator("h1").count()).toBe(1);
});

test("the kill switch deletes the copy, takes the worker out, and leaves what was typed", async ({ open }) => {
  const site = await ownSite();
  process.env.OFFLINE = "off";
  try {
    const page = await open("/bending/", { serviceWorker: true, at: site.server.origin });
    await whenKept(page);
    await page.evaluate(() => localStorage.setItem("flat-to-formed.units", "inch"));
    const address = `${page.url()}?bend-length.thickness=2mm`;
    await page.goto(address);
    await writeOfflineWorker(site.folder);
    await lookForUpdate(page);
    await expect.poll(() => copies(page)).toEqual([]);
    await expect.poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0);
    await page.reload();
    expect(page.url()).toBe(address);
    expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
    expect(await page.evaluate(() => localStorage.getItem("flat-to-formed.units"))).toBe("inch");
    await expect.poll(() => copies(page)).toEqual([]);
    // Without a worker the page may still be asking the server, which is about to be stopped, for its icon.
    await page.close();
  } finally {
    delete process.env.OFFLINE;
    await site.close();
  }
});

/** The page says "fetching" for as long as it takes, some 7 MB on a busy machine. */
async function whenComplete(copy: Locator): Promise<void> {
  const state = () => copy.getAttribute("data-state").catch(() => "");
  await expect.poll(state, { timeout: 20_000 }).toMatch(/fetching|complete/);
  await expect.poll(state, { timeout: 120_000 }).toBe("complete");
}

test("one reader can clear a copy that has gone wrong, keep none, and keep one again", { timeout: 300_000 }, async ({ open }) => {
  const page = await open("/device/", { serviceWorker: true });
  await whenKept(page);
  const copy = page.locator('[data-device="copy"]');
  await expect.poll(() => copy.getAttribute("data-state")).toBe("complete");
  expect(await copy.textContent()).toMatch(/Complete: \d+ files, \d\.\d MB, fetched .*Version [\w-]{12}\./);
  await page.evaluate(async (wrong) => {
    localStorage.setItem("flat-to-formed.plans", "[1]");
    const [name = ""] = await caches.keys();
    await (await caches.open(name)).put(
      wrong,
      new Response('<link rel="icon" href="data:,"><h1>Wrong</h1>', { headers: { "Content-Type": "text/html" } }),
    );
  }, address("/bending/"));
  await page.goto(address("/bending/"));
  expect(await page.locator("h1").textContent()).toBe("Wrong");
  await page.goto(address("/device/"));
  await page.getByRole("button", { name: "Delete the copy and fetch it again" }).click();
  await whenComplete(copy);
  await page.goto(address("/bending/"));
  expect(await page.locator("h1").textContent()).not.toBe("Wrong");
  expect(await page.evaluate(() => localStorage.getItem("flat-to-formed.plans"))).toBe("[1]");

  await page.goto(address("/device/"));
  await page.getByRole("button", { name: "keep none" }).click();
  await expect.poll(() => copy.getAttribute("data-state").catch(() => "")).toBe("refused");
  await page.goto(address("/bending/"));
  expect(await copies(page)).toEqual([]);
  await page.goto(address("/device/"));
  await page.getByRole("button", { name: "Keep a copy" }).click();
  await whenComplete(copy);
});

test("with the server stopped, pages open from the copy, and it is not thrown away unless the reader wants it", async ({
  open,
}) => {
  const site = await ownSite();
  try {
    const page = await open("/device/", {
      serviceWorker: true,
      at: site.server.origin,
      expectProblems: /sw\.js|CONNECTION_REFUSED/,
    });
    await whenKept(page);
    await site.server.close();
    await page.reload();
    await page.getByRole("button", { name: "Look for a new version" }).click();
    await expect.poll(() => page.locator('[data-device="word"]').textContent()).toMatch(/cannot be reached/);
    await page.getByRole("button", { name: "Delete the copy and fetch it again" }).click();
    await page.getByRole("button", { name: "Delete it all the same" }).waitFor();
    expect(await copies(page)).toHaveLength(1);
    await page.goto(address("/bending/", site.server.origin));
    expect(await page.locator("h1").textContent()).toBe("Bending");
  } finally {
    await site.close();
  }
});

test("what could not be read waits on the page of the device, to be saved or deleted", async ({ open }) => {
  const page = await open("/device/");
  await page.evaluate(() => localStorage.setItem("flat-to-formed.plans.unreadable", "{broken"));
  await page.reload();
  const row = page.locator('[data-device="unreadable-list"] li');
  const [download] = await Promise.all([page.waitForEvent("download"), row.getByRole("button", { name: "Save" }).click()]);
  const saved = join(".cache", "unreadable.txt");
  await download.saveAs(saved);
  expect(await readFile(saved, "utf8")).toBe("{broken");
  await row.getByRole("button", { name: "Delete" }).click();
  expect(await row.count()).toBe(0);
  expect(await page.evaluate(() => localStorage.getItem("flat-to-formed.plans.unreadable"))).toBeNull();
});

test("a host that redirects its own missing page still gets a copy", async ({ open }) => {
  const site = await ownSite();
  try {
    // A folder of that name is sent on to with a slash at its end.
    const missing = join(site.folder, "404.html");
    const text = await readFile(missing);
    await rm(missing);
    await mkdir(missing);
    await writeFile(join(missing, "index.html"), text);
    const page = await open("/", { serviceWorker: true, at: site.server.origin, expectProblems: /nothing-here/ });
    await whenKept(page);
    await page.context().setOffline(true);
    expect((await page.goto(address("/nothing-here/", site.server.origin)))?.status()).toBe(404);
  } finally {
    await site.close();
  }
});
