import type { Page } from "playwright-core";
import { describe, inject } from "vitest";
import { sidewaysOverflow } from "../../scripts/browser/layout.ts";
import { siteUnderTest } from "../../scripts/test/site.ts";
import { inBrowser } from "../../src/texts/es/areas.ts";
import { atBuild } from "../../src/texts/es/build-areas.ts";
import { cautions } from "../../src/texts/es/library/cautions.ts";
import { library } from "../../src/texts/es/library.ts";
import { worksheetsInSpanish } from "../../src/texts/es/worksheets.ts";
import { expect, screenshot, test } from "./harness.ts";

/** The pages in Spanish, as somebody who reads Spanish meets them. */
const base = inject("base").replace(/\/$/, "");
const thickness = "#bend-length-thickness";

async function live(page: Page, id: string): Promise<void> {
  await page.locator(`[data-calculator]#${id}`).hover();
  await page.locator(`[data-calculator]#${id}[data-live]`).waitFor({ timeout: 60_000 });
}

/** Every text of some areas, as it stands. */
function textsIn(area: unknown): string[] {
  if (typeof area === "string") return [area];
  return typeof area === "object" && area !== null ? Object.values(area).flatMap(textsIn) : [];
}

/** English texts of the interface and of the library, each with its Spanish. */
const pairs = [
  ...[...inBrowser, ...atBuild].flatMap(([area, own]) => {
    const spanish = textsIn(own);
    return textsIn(area).map((text, index): [string, string] => [text, spanish[index] ?? ""]);
  }),
  ...library,
  ...Object.entries(cautions),
];
/** What must not be seen: English that is other words in Spanish. The name of the other language is one of its words. */
const english = new Set(
  pairs.flatMap(([text, own]) => (text === own || !/\p{L}/u.test(text) || text === "English" ? [] : [text])),
);
const englishWords = /\b(?:the|of|and|with|which|this|that|from|are|your|sheet|leg|thickness)\b/i;

/** Texts of the page that are read or heard, but for those marked as English: names of works, and of the other language. */
function visibleTexts(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const texts: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node instanceof Element ? node : node.parentElement;
      if (!element || element.closest("script, style, math, code, .katex, [lang]:not(html)")) continue;
      if (node instanceof Text) texts.push(node.data);
      else for (const name of ["aria-label", "title", "data-label", "placeholder"]) texts.push(element.getAttribute(name) ?? "");
    }
    return texts.map((text) => text.replace(/\s+/g, " ").trim()).filter((text) => text !== "");
  });
}

const leftInEnglish = (texts: readonly string[]) =>
  texts.filter((text) => english.has(text) || englishWords.test(text.replaceAll("Flat to Formed", "")));

describe("pages in Spanish", () => {
  for (const path of ["/es/", "/es/bending/", "/es/safety/", ...worksheetsInSpanish.map((id) => `/es/embed/${id}/`)])
    test(`${path} is in Spanish, and has no English left in it`, { timeout: 240_000 }, async ({ open }) => {
      const page = await open(path);
      expect(await page.locator("html").getAttribute("lang")).toBe("es");
      const ids = await page.locator("[data-calculator]").evaluateAll((all) => all.map(({ id }) => id));
      for (const id of ids) await live(page, id);
      // What is folded away is seen too, once it is there.
      await page.evaluate(() => {
        for (const part of document.querySelectorAll<HTMLDetailsElement>("main details")) part.open = true;
      });
      await page.waitForLoadState("networkidle");
      expect(leftInEnglish(await visibleTexts(page))).toEqual([]);
    });

  test("name their counterparts, and are named by them", async ({ open }) => {
    for (const [path, other] of [
      ["/bending/", "/es/bending/"],
      ["/es/safety/", "/safety/"],
    ] as const) {
      const page = await open(path);
      const versions = await page
        .locator("link[rel=alternate]")
        .evaluateAll((all) => all.map((link) => [link.getAttribute("hreflang"), link.getAttribute("href")]));
      const pair = [path, other].sort((a, b) => b.length - a.length || 0);
      const spanish = pair.find((each) => each.startsWith("/es/"));
      expect(versions).toEqual([
        ["en", `${siteUnderTest.address}${base}${spanish?.slice(3)}`],
        ["es", `${siteUnderTest.address}${base}${spanish}`],
      ]);
    }
    const page = await open("/marking/");
    expect(await page.locator("link[rel=alternate], [data-language]").count()).toBe(0);
  });

  test("links to pages in English say so", async ({ open }) => {
    const page = await open("/es/bending/");
    const links = await page.locator("main a[href], footer a[href], nav a[href]").evaluateAll((all) =>
      all.map((link) => ({
        path: (link as HTMLAnchorElement).pathname,
        host: (link as HTMLAnchorElement).host === location.host,
        hreflang: link.getAttribute("hreflang"),
      })),
    );
    const silent = links.filter(({ path, host, hreflang }) => host && !path.startsWith(`${base}/es/`) && hreflang !== "en");
    expect(silent).toEqual([]);
  });
});

describe("a calculator in Spanish", () => {
  test("takes a decimal comma, answers with one, and keeps a point in the address", { timeout: 120_000 }, async ({ open }) => {
    const page = await open("/es/embed/bend-length/");
    await live(page, "bend-length");
    expect(await page.locator(thickness).inputValue()).toBe("1,2");
    await page.locator(thickness).fill("1,5");
    await page.locator("#bend-length-radius").fill("1.6");
    await expect.poll(() => page.locator(".answer-number").textContent()).toMatch(/^\d+,\d\d mm$/);
    await expect.poll(() => new URL(page.url()).search).toContain("bend-length.thickness=1.5mm");
    await page.locator(thickness).blur();
    expect(await page.locator(thickness).inputValue()).toBe("1,5");
    await page.locator("summary", { hasText: "Desarrollo del cálculo" }).click();
    expect(await page.locator("[data-numbers]:visible").first().textContent()).toMatch(/\d,\d/);
  });

  test("says in Spanish what cannot be used, with what was typed as it was", { timeout: 120_000 }, async ({ open }) => {
    const page = await open("/es/embed/bend-length/");
    await live(page, "bend-length");
    const message = page.locator(`${thickness}-message`);
    await page.locator(thickness).fill("1.2.3 mm");
    await expect
      .poll(() => message.textContent())
      .toBe(
        "Espesor: «1.2.3 mm» no es un solo número. Escriba, por ejemplo, 1,2 mm, 0,048 in o 3/64 in. Se admite de 0,10 mm a 13,00 mm.",
      );
    await page.locator(thickness).fill("20");
    await expect.poll(() => message.textContent()).toBe("Espesor: se admite de 0,10 mm a 13,00 mm; es 20,00 mm.");
    expect(await page.locator(".stale-mark").first().textContent()).toContain("Un campo necesita otro valor.");
  });

  test("takes its values along into the other language and back", { timeout: 120_000 }, async ({ open }) => {
    const page = await open("/es/bending/");
    await live(page, "bend-length");
    await page.locator(thickness).fill("2,5");
    // At once, before the address is written by itself.
    await page.locator("a[data-language]").click();
    await page.waitForURL(/\/bending\/\?.*bend-length\.thickness=2\.5mm/);
    expect(new URL(page.url()).pathname).toBe(`${base}/bending/`);
    await page.locator("#bend-length[data-live]").waitFor({ timeout: 60_000 });
    expect(await page.locator(thickness).inputValue()).toBe("2.5");
    await page.locator("a[data-language]").click();
    await page.waitForURL(/\/es\/bending\/\?.*bend-length\.thickness=2\.5mm/);
    await expect.poll(() => page.locator(thickness).inputValue()).toBe("2,5");
  });
});

describe("the shop's screen in Spanish", () => {
  const screenHeight = 1080;
  const places = ["Mesa de trazado", "Cizalla", "Escantonadora", "Sierra de cinta", "Punzonadora"];
  const more = ["Plegadora", "Cilindradora", "Punteadora", "Horno"];
  const plain = (text: string | null) => (text ?? "").replaceAll("\u00ad", "");
  async function go(page: Page, name: string): Promise<void> {
    const names = (await page.locator(".place").allTextContents()).map(plain);
    await page.locator(".place").nth(names.indexOf(name)).click();
  }
  const tab = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

  test("has limits, cautions and numbers in Spanish, fits, and says what is in English", { timeout: 240_000 }, async ({
    open,
  }) => {
    const page = await open("/es/display/", { screen: "kiosk" });
    await page.locator("[data-display][data-live]").waitFor();
    expect(await page.locator("html").getAttribute("lang")).toBe("es");
    const look = async (what: string) => {
      expect(leftInEnglish((await visibleTexts(page)).map(plain)), what).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollHeight), what).toBe(screenHeight);
      expect(await sidewaysOverflow(page), what).toEqual([]);
    };
    await look("start");
    for (const name of [...places, ...more]) {
      await go(page, name);
      await page.locator(".lines").waitFor();
      await look(`${name}: limits`);
      await tab(page, "Precauciones").click();
      for (let next = 0; next < 40; next++) {
        await look(`${name}: caution ${next}`);
        if (await tab(page, "Siguiente").isDisabled()) break;
        await tab(page, "Siguiente").click();
      }
      await tab(page, "Calcular").click();
      await page.locator(".answers").waitFor();
      await look(`${name}: number`);
      const own = name === "Mesa de trazado" || name === "Plegadora";
      expect(await page.locator("[lang=en]").count(), name).toBe(own ? 0 : 1);
      expect(await page.getByText("Esta calculadora está solo en inglés.").count(), name).toBe(own ? 0 : 1);
      await page.locator(".out").click();
    }
    await screenshot(page, "display-spanish");
  });

  test("takes a decimal comma from its own keys, and hands a page in Spanish to the phone", { timeout: 120_000 }, async ({
    open,
  }) => {
    const page = await open("/es/display/", { screen: "kiosk" });
    await page.locator("[data-display][data-live]").waitFor();
    for (const [name, path] of [
      ["Mesa de trazado", "/es/bending/"],
      ["Plegadora", "/es/embed/springback/"],
    ] as const) {
      await go(page, name);
      await tab(page, "Calcular").click();
      const thickness = page.getByLabel("Espesor", { exact: false });
      await thickness.click();
      for (const key of ["1", ",", "5"]) await page.locator(".pad").getByRole("button", { name: key, exact: true }).click();
      await expect.poll(() => thickness.inputValue()).toBe("1,5");
      await expect.poll(() => page.locator(".answers dd").first().textContent()).toMatch(/^\d+,\d+/);
      await tab(page, "Al teléfono").click();
      const held = new URL((await page.locator(".phone").getAttribute("data-address")) ?? "");
      expect(held.pathname.endsWith(path), held.pathname).toBe(true);
      expect(held.search).toContain("thickness=1.5mm");
      await tab(page, "Cerrar").click();
      await page.locator(".out").click();
    }
  });

  test("is one touch away from the English one, and back", async ({ open }) => {
    const page = await open("/display/", { screen: "kiosk" });
    await page.locator("[data-display][data-live]").waitFor();
    await tab(page, "Español").click();
    await page.waitForURL(/\/es\/display\/$/);
    await page.locator("[data-display][data-live]").waitFor();
    await tab(page, "English").click();
    await page.waitForURL((url) => url.pathname.endsWith("/display/") && !url.pathname.includes("/es/"));
  });
});

describe("the search", () => {
  const hits = (page: Page) =>
    page.locator(".search-link").evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).pathname));

  test("finds Spanish pages on Spanish pages, and English ones on English", { timeout: 120_000 }, async ({ open }) => {
    const spanish = await open("/es/safety/");
    await spanish.locator("[data-search] input").fill("plegadora");
    await spanish.locator(".search-link").first().waitFor({ timeout: 60_000 });
    expect(await spanish.locator(".search-status").textContent()).toMatch(/páginas? encontrada/);
    expect((await hits(spanish)).every((path) => path.startsWith(`${base}/es/`))).toBe(true);
    const english = await open("/safety/");
    await english.locator("[data-search] input").fill("brake");
    await english.locator(".search-link").first().waitFor({ timeout: 60_000 });
    expect((await hits(english)).some((path) => path.startsWith(`${base}/es/`))).toBe(false);
  });

  test("works in Spanish without a network", { timeout: 240_000 }, async ({ open }) => {
    const page = await open("/es/bending/", { serviceWorker: true, expectProblems: /ERR_INTERNET_DISCONNECTED/ });
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null), { timeout: 60_000 }).toBe(true);
    await page.context().setOffline(true);
    await page.reload();
    await page.locator("[data-search] input").fill("retorno elástico");
    await page.locator(".search-link").first().waitFor({ timeout: 60_000 });
    expect((await hits(page))[0]).toBe(`${base}/es/bending/`);
    await page.context().setOffline(false);
  });
});
