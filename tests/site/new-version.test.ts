import { readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { copies, lookForUpdate, type OwnSite, ownSite, whenKept } from "./editions.ts";
import { address, expect, type Open, test } from "./harness.ts";

/** Runs a test with a site of its own. */
function withSite(run: (site: OwnSite, open: Open) => Promise<void>) {
  return async ({ open }: { open: Open }) => {
    const site = await ownSite();
    try {
      await run(site, open);
    } finally {
      await site.close();
    }
  };
}

const notice = (page: Page) => page.locator("[data-notice]");
const useIt = (page: Page) => notice(page).getByRole("button", { name: "Use it now" });

/** The title, once the page says that it changes no more: a change may take more than one reload. */
const titleOf = (page: Page) =>
  page
    .evaluate(() => (sessionStorage.getItem("flat-to-formed.changing") === null ? document.title : "changing"))
    .catch(() => "reloading");

/** A page of the first edition that is served by its copy. */
async function firstEdition(site: OwnSite, open: Open, path: string): Promise<Page> {
  const page = await open(path, { serviceWorker: true, at: site.server.origin });
  await whenKept(page);
  return page;
}

test(
  "a new version waits while two pages are open, and is used when the last one asks for it",
  withSite(async (site, open) => {
    const first = await firstEdition(site, open, "/");
    const second = await open("/", { beside: first, at: site.server.origin });
    const before = await first.title();
    await site.publish("Second");
    await lookForUpdate(first);
    await useIt(first).click();
    await expect.poll(() => notice(first).locator("p:visible").textContent()).toMatch(/Close the other open pages/);
    // Still the old edition, on both pages.
    await second.reload();
    expect(await second.title()).toBe(before);
    await second.close();
    await useIt(first).click();
    await expect.poll(() => titleOf(first)).toMatch(/^Second: /);
    // The old edition's copy is gone.
    await expect.poll(() => copies(first)).toHaveLength(1);
  }),
);

test(
  "the notice can be sent away, and comes again with the next page",
  withSite(async (site, open) => {
    const page = await firstEdition(site, open, "/");
    await site.publish("Second");
    await lookForUpdate(page);
    await notice(page).getByRole("button", { name: "Later" }).click();
    expect(await notice(page).textContent()).toBe("");
    await page.goto(address("/bending/", site.server.origin));
    await useIt(page).waitFor();
    expect(await page.title()).not.toMatch(/^Second/);
  }),
);

test(
  "a page of the old version gets its own scripts after the new one was published, before and after that takes over",
  { timeout: 180_000 },
  withSite(async (site, open) => {
    const page = await firstEdition(site, open, "/bending/");
    const other = await open("/punching/", { beside: page, at: site.server.origin });
    const third = await open("/cutting/", { beside: page, at: site.server.origin });
    await site.publish("Second");
    // Published, not yet fetched.
    await page.locator("#bend-length").hover();
    await page.locator("#bend-length[data-live]").waitFor();
    // Fetched and waiting.
    await lookForUpdate(page);
    await useIt(page).waitFor();
    await other.locator("[data-calculator]").first().hover();
    await other.locator("[data-calculator][data-live]").first().waitFor();
    // In charge, while old pages are still open: no page asks for this, but two may race.
    const workers = page.context().serviceWorkers();
    await Promise.all(
      workers.map((worker) =>
        worker.evaluate(() => (globalThis as unknown as { skipWaiting(): Promise<void> }).skipWaiting()).catch(() => {}),
      ),
    );
    await expect
      .poll(() => third.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting ?? null))
      .toBeNull();
    await third.locator("[data-calculator]").first().hover();
    await third.locator("[data-calculator][data-live]").first().waitFor();
    // What is opened now is new throughout, and its copy the only one once the old pages are closed.
    await page.close();
    await other.close();
    await third.goto(address("/cutting/", site.server.origin));
    expect(await third.title()).toMatch(/^Second: /);
    await third.locator("[data-calculator]").first().hover();
    await third.locator("[data-calculator][data-live]").first().waitFor();
    await third.goto(address("/", site.server.origin));
    await expect.poll(() => copies(third)).toHaveLength(1);
  }),
);

test(
  "a page without a copy says so when its scripts are gone from the server, and what was typed comes back",
  withSite(async (site, open) => {
    const page = await open("/bending/?spring.thickness=2mm", {
      at: site.server.origin,
      expectProblems: /status 404|404 \(Not Found\)|dynamically imported module/,
    });
    await site.publish("Second");
    await page.locator("#bend-length").hover();
    await notice(page).getByText("could not be fetched").waitFor();
    await notice(page).getByRole("button", { name: "Load the page again" }).click();
    await expect.poll(() => titleOf(page)).toMatch(/^Second: /);
    expect(page.url()).toMatch(/spring\.thickness=2mm/);
    await page.locator("#bend-length").hover();
    await page.locator("#bend-length[data-live]").waitFor();
  }),
);

test(
  "an update that breaks off leaves the old version whole, and is gone on with later",
  { timeout: 180_000 },
  withSite(async (site, open) => {
    const page = await firstEdition(site, open, "/");
    const before = await page.title();
    const [old = ""] = await copies(page);
    await site.publish("Second");
    const bending = join(site.folder, "bending/index.html");
    const broken = `${bending}.away`;
    const stays = async () => {
      await lookForUpdate(page);
      await expect
        .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.installing ?? null))
        .toBeNull();
      await page.context().setOffline(true);
      await page.goto(address("/bending/", site.server.origin));
      expect(await page.title()).not.toMatch(/^Second/);
      await page.goto(address("/", site.server.origin));
      expect(await page.title()).toBe(before);
      await page.context().setOffline(false);
      expect(await copies(page)).toContain(old);
      expect(await useIt(page).count()).toBe(0);
    };
    // A file is missing.
    await rename(bending, broken);
    await stays();
    // A file is of another version than the list.
    await writeFile(bending, (await readFile(broken, "utf8")).replace("<title>", "<title>Third "));
    await stays();
    await rename(broken, bending);
    await lookForUpdate(page);
    await useIt(page).click({ timeout: 30_000 });
    await expect.poll(() => titleOf(page)).toMatch(/^Second: /);
    await page.context().setOffline(true);
    await page.goto(address("/bending/", site.server.origin));
    expect(await page.title()).toMatch(/^Second: /);
    await expect.poll(() => copies(page)).toHaveLength(1);
  }),
);

test(
  "a page that is loaded again past its copy is of the new version throughout",
  withSite(async (site, open) => {
    const page = await firstEdition(site, open, "/bending/");
    await site.publish("Second");
    const session = await page.context().newCDPSession(page);
    const loaded = page.waitForEvent("load");
    await session.send("Page.reload", { ignoreCache: true });
    await loaded;
    expect(await page.title()).toMatch(/^Second: /);
    expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
    await page.locator("#bend-length").hover();
    await page.locator("#bend-length[data-live]").waitFor();
    expect(
      await page.evaluate(() => [...document.scripts].filter(({ src }) => src !== "" && !src.includes("Second")).length),
    ).toBe(0);
  }),
);

/** Has the new worker of a site let the browser's first calls to take over go by, as Chromium does now and then. */
async function makeSlowToChange(site: OwnSite, deaf: number): Promise<void> {
  const worker = join(site.folder, "sw.js");
  const slow = `let calls = 0; const skip = self.skipWaiting.bind(self); self.skipWaiting = async () => { if (++calls > ${deaf}) await skip(); };`;
  await writeFile(worker, `${slow}\n${await readFile(worker, "utf8")}`);
}

test(
  "a browser that does not change at once is asked again, and nothing typed is lost by it",
  { timeout: 180_000 },
  withSite(async (site, open) => {
    const page = await firstEdition(site, open, "/bending/");
    const field = page.locator("#bend-length-thickness");
    await field.fill("2.5");
    await site.publish("Second");
    await makeSlowToChange(site, 1);
    await lookForUpdate(page);
    await useIt(page).click({ timeout: 30_000 });
    await expect.poll(() => titleOf(page)).toMatch(/^Second: /);
    await expect.poll(() => field.inputValue().catch(() => "")).toBe("2.5");
    await expect.poll(() => useIt(page).count()).toBe(0);
  }),
);

test(
  "a browser that never changes is not asked for ever: the page says what to do, and goes on",
  { timeout: 180_000 },
  withSite(async (site, open) => {
    const page = await firstEdition(site, open, "/");
    const before = await page.title();
    await site.publish("Second");
    await makeSlowToChange(site, 1000);
    await lookForUpdate(page);
    await useIt(page).click({ timeout: 30_000 });
    await notice(page).getByText("Close all pages of this site").waitFor({ timeout: 60_000 });
    expect(await titleOf(page)).toBe(before);
    await page.reload();
    // It begins anew only when the reader asks for it.
    await useIt(page).waitFor();
    expect(await notice(page).locator("p:visible").textContent()).toMatch(/is ready/);
  }),
);

const shopField = "#shop-shear-rating-thickness";

async function openShopForm(page: Page, button: RegExp): Promise<void> {
  await page.getByRole("button", { name: button }).click();
  await page.locator(".shop-group > summary", { hasText: "Shear" }).first().click();
}

/** A field of three kinds of page, what is typed into it, and what it takes to see it before the reload and after. */
const typed = [
  { path: "/bending/", field: "#bend-length-thickness", text: "2.5", before: async () => {}, after: async () => {} },
  { path: "/plan/", field: "#plan-thickness", text: "oddly 1,5", before: async () => {}, after: async () => {} },
  {
    path: "/shop/",
    field: shopField,
    text: "0.8",
    before: (page: Page) => openShopForm(page, /Change the shop on this device/),
    after: (page: Page) => page.getByRole("button", { name: "Change more" }).click(),
  },
] as const;

for (const { path, field, text, before, after } of typed)
  test(
    `the new version is announced while one types on ${path}, and nothing typed is lost by using it`,
    { timeout: 180_000 },
    withSite(async (site, open) => {
      const page = await firstEdition(site, open, path);
      await before(page);
      const place = page.locator(field);
      await place.fill(text);
      await site.publish("Second");
      await lookForUpdate(page);
      await useIt(page).waitFor();
      // More is typed while the notice is there, and it is used at once.
      await place.press("End");
      await place.pressSequentially("7");
      await useIt(page).click();
      await expect.poll(() => titleOf(page)).toMatch(/^Second: /);
      await after(page);
      await expect.poll(() => place.inputValue().catch(() => "")).toBe(`${text}7`);
    }),
  );
