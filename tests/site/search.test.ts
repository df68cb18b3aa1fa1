import type { Page } from "playwright-core";
import { inject } from "vitest";
import { accessibilityFaults, expect, test } from "./harness.ts";

const base = inject("base");

async function search(page: Page, text: string): Promise<void> {
  // Results of an earlier search stay until the new ones are there, and a focus put on them would go with them.
  await page.evaluate(() => {
    for (const link of document.querySelectorAll(".search-link")) link.setAttribute("data-earlier", "");
  });
  await page.locator("[data-search] input").fill(text);
  await page.locator(".search-link:not([data-earlier]), .search-status:text('Nothing found')").first().waitFor();
}

test("nothing of the search is loaded until its field has the focus", async ({ open }) => {
  const page = await open("/");
  const loaded = () =>
    page.evaluate(() => performance.getEntriesByType("resource").filter(({ name }) => name.includes("/pagefind/")).length);
  expect(await loaded()).toBe(0);
  await page.locator("[data-search] input").focus();
  await expect.poll(loaded).toBeGreaterThan(0);
});

test("results are links below the base path, found by keyboard alone", async ({ open }) => {
  const page = await open("/");
  await search(page, "bend");
  const address = await page.locator(".search-link").first().getAttribute("href");
  expect(address?.startsWith(base)).toBe(true);
  expect(await page.locator(".search-status").textContent()).toMatch(/pages? found/);
  expect(await page.locator(".search-mark").first().textContent()).toMatch(/bend/i);
  await page.keyboard.press("ArrowDown");
  expect(await page.evaluate(() => document.activeElement?.className)).toBe("search-link");
  await page.keyboard.press("ArrowUp");
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("INPUT");
  await page.keyboard.press("Escape");
  expect(await page.locator(".search-panel").isVisible()).toBe(false);
  await search(page, "bends");
  await page.keyboard.press("Enter");
  const chosen = await page.evaluate(() => (document.activeElement as HTMLAnchorElement).href);
  await page.keyboard.press("Enter");
  await page.waitForURL(chosen);
});

test("what nobody wrote about is not found, and is said so", async ({ open }) => {
  const page = await open("/");
  // The search takes the longest beginning of a word that it knows, so that it must not know the first letter.
  await search(page, "ѫѫѫ");
  expect(await page.locator(".search-status").textContent()).toBe("Nothing found");
});

test("excerpts have words, no formula's single letters and no TeX", async ({ open }) => {
  const page = await open("/");
  await search(page, "bend");
  for (const excerpt of await page.locator(".search-excerpt").allInnerTexts())
    expect(excerpt).not.toMatch(/\\|(?:\b\w\b ?){8}|&\w+;/);
});

test("the open list of results has no accessibility fault", async ({ open }) => {
  const page = await open("/");
  await search(page, "bend");
  expect(await accessibilityFaults(page)).toEqual([]);
});

test("without JavaScript there is no search box that does nothing", async ({ open }) => {
  const page = await open("/", { javaScript: false });
  expect(await page.locator("[data-search]").isVisible()).toBe(false);
});
