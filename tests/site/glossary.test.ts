import { inject } from "vitest";
import { attribute, builtPages, elements } from "./built.ts";
import { expect, test } from "./harness.ts";

const isTerm = (element: Parameters<typeof attribute>[0]) => element.tagName === "a" && attribute(element, "class") === "term";
const techniques = (await builtPages())
  .map(({ path, html }) => ({ path, terms: elements(html).filter(isTerm) }))
  .filter(({ terms }) => terms.length > 0);

test("pages of the techniques lead to the glossary, once for each word", () => {
  expect(techniques.map(({ path }) => path)).toContain("/bending/");
  for (const { path, terms } of techniques) {
    const targets = terms.map((term) => attribute(term, "href"));
    expect(new Set(targets).size, path).toBe(targets.length);
    for (const target of targets) expect(target?.startsWith(`${inject("base")}glossary/#`), `${path} ${target}`).toBe(true);
  }
});

test.for(techniques.map(({ path }) => path))("%s: no word is a link where it would disturb", async (path, { open }) => {
  const page = await open(path);
  expect(await page.locator(":is(h1, h2, h3, h4, figure, table, .calculator, pre, code, .formula) a.term").count()).toBe(0);
});

test("a link lands on its word, with drawing and sentence in sight", async ({ open }) => {
  for (const screen of ["phone", "laptop"] as const) {
    const page = await open("/bending/", { screen, reducedMotion: "reduce" });
    await page.locator("a.term", { hasText: "apex" }).first().click();
    await page.waitForURL(/\/glossary\/#apex$/);
    const entry = page.locator(".entry:has(#apex)");
    await expect.poll(async () => (await entry.boundingBox())?.y ?? -1).toBeGreaterThanOrEqual(-8);
    const box = await entry.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual((page.viewportSize()?.height ?? 0) + 8);
    expect(await entry.getByRole("img").getAttribute("aria-label")).toMatch(/Marked: apex\.$/);
  }
});

test("the search finds a word in the glossary", async ({ open }) => {
  const page = await open("/");
  await page.locator("[data-search] input").fill("galling");
  const hit = page.locator(".search-link", { hasText: "Glossary" }).first();
  await hit.waitFor();
  expect(await hit.getAttribute("href")).toBe(`${inject("base")}glossary/#galling`);
});

test("every letter and every word of the index leads to its place", async ({ open }) => {
  const page = await open("/glossary/");
  expect(await page.locator(".letters a").count()).toBe(await page.locator("h2.letter").count());
  expect(await page.locator(".index li").count()).toBe(await page.locator(".entry").count());
});
