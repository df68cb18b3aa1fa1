/**
 * The main path in Firefox: `npm run firefox`, after `npm run build`. Debian calls the program firefox-esr; FIREFOX_PATH names
 * another. It is no part of the tests, which must run where there is only a Chromium: run it before a release.
 */
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import puppeteer, { type Page } from "puppeteer-core";
import { serve } from "./server.ts";

const width = 1280;
/** How long a page may take to do what it should [ms]. */
const patience = 60_000;

function findFirefox(): string {
  const named = process.env.FIREFOX_PATH;
  const folders = (process.env.PATH ?? "").split(delimiter);
  const found =
    named ?? ["firefox-esr", "firefox"].flatMap((name) => folders.map((folder) => join(folder, name))).find(existsSync);
  if (!found) throw new Error("No Firefox was found: install one (on Debian firefox-esr), or name its program in FIREFOX_PATH");
  return found;
}

const folder = process.env.OUT_DIR ?? "dist";
const base = process.env.BASE_PATH ?? "/";
const server = await serve({ folder, base, port: 0 });
const browser = await puppeteer.launch({ browser: "firefox", executablePath: findFirefox(), headless: true });
const problems: string[] = [];
let serving = true;

async function opened(path: string, ready = "h1"): Promise<Page> {
  const page = await browser.newPage();
  await page.setViewport({ width, height: 900 });
  page.on("console", (message) => {
    if (message.type() === "error") problems.push(`${path}: ${message.text()}`);
  });
  page.on("pageerror", (error) => problems.push(`${path}: ${String(error)}`));
  await page.goto(server.origin + base.slice(0, -1) + path, { waitUntil: "load" });
  await page.waitForSelector(ready, { timeout: patience });
  return page;
}

const textOf = (page: Page, selector: string) => page.$eval(selector, (element) => element.textContent ?? "");

/** Waits until a text fits. @throws with what stands there instead */
async function expectText(page: Page, selector: string, pattern: RegExp): Promise<void> {
  const end = Date.now() + patience;
  let found = "";
  while (Date.now() < end) {
    found = await textOf(page, selector).catch(() => "");
    if (pattern.test(found)) return;
    await new Promise((done) => setTimeout(done, 100));
  }
  throw new Error(`${selector} says “${found}”, not ${pattern}`);
}

async function type(page: Page, selector: string, text: string): Promise<void> {
  await page.$eval(selector, (element) => (element as HTMLInputElement).select());
  await page.type(selector, text);
}

const steps: Readonly<Record<string, () => Promise<void>>> = {
  async "a calculator answers, and names a value it cannot use"() {
    const page = await opened("/bending/", "#bend-length");
    await page.hover("#bend-length");
    await page.waitForSelector("#bend-length[data-live]", { timeout: patience });
    const before = await textOf(page, "#bend-length .answer output");
    await type(page, "#bend-length-thickness", "2");
    await page.waitForFunction(() => location.search.includes("bend-length.thickness=2mm"), { timeout: patience });
    if ((await textOf(page, "#bend-length .answer output")) === before)
      throw new Error("the answer did not follow the thickness");
    await type(page, "#bend-length-thickness", "minus a bit");
    await expectText(page, "#bend-length-thickness-message", /“minus a bit” is not a length/);
    await page.close();
  },
  async "the units change what is shown"() {
    const page = await opened("/embed/bend-length/?bend-length.thickness=2mm", "[data-live]");
    await page.click("input[name=units][value=inch]");
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#bend-length-thickness")?.value === "0.0787", {
      timeout: patience,
    });
    await page.click("input[name=units][value=mm]");
    await page.close();
  },
  async "the search finds"() {
    const page = await opened("/");
    await page.focus("[data-search] input");
    await page.type("[data-search] input", "springback");
    await page.waitForSelector(".search-link", { timeout: patience });
    await expectText(page, ".search-status", /found/);
    await page.close();
  },
  async "a plan follows its form, with code, order and folding picture"() {
    const page = await opened("/plan/?plan.name=Channel&plan.width=120mm&plan.depth=50mm&plan.north=25mm&plan.south=25mm");
    await page.waitForSelector("[data-plan][data-live]", { timeout: patience });
    await expectText(page, ".plan-answer output", /^120\.00 mm × 9\d\.\d\d mm$/);
    await type(page, "#plan-depth", "52");
    await expectText(page, ".plan-answer output", /^120\.00 mm × 9[67]\.\d\d mm$/);
    await page.waitForSelector(".plan-order", { timeout: patience });
    await page.waitForSelector(".plan-code svg", { timeout: patience });
    const paper = await page.pdf({ format: "a4" });
    if (!Buffer.from(paper).subarray(0, 5).equals(Buffer.from("%PDF-"))) throw new Error("it does not print");
    await page.close();
  },
  async "a worker cuts blanks out of sheets"() {
    const page = await opened("/sheet/?sheet.thickness=1mm&sheet.pieces=tray:226mm:276mm:31:;lid:182mm:232mm:12:");
    await expectText(page, ".cut-sheet", /[Pp]roved best/);
    await page.close();
  },
  async "the shop screen calculates with its own keys"() {
    const page = await opened("/display/", "[data-display][data-live]");
    await page.locator(".place ::-p-text(Shear)").click();
    await page.locator("button ::-p-text(Calculate)").click();
    await page.waitForSelector(".answers dd", { timeout: patience });
    const before = await textOf(page, ".answers dd");
    await page.locator(".pad button ::-p-text(2)").click();
    await page.waitForFunction(
      (text) => document.querySelector(".answers dd")?.textContent !== text,
      { timeout: patience },
      before,
    );
    await page.close();
  },
  async "an assignment is read"() {
    const page = await opened(
      "/task/?assign.version=1&assign.title=Blank&assign.course=Sheet+metal&assign.1.calculator=bend-length" +
        "&assign.1.range.thickness=1mm:2mm:0.25mm&assign.1.ask.blank=0.2mm",
    );
    await expectText(page, "main", /Blank/);
    await page.close();
  },
  async "nothing is wider than a phone"() {
    const page = await opened("/");
    await page.setViewport({ width: 320, height: 640 });
    for (const path of ["/", "/bending/", "/plan/", "/sheet/", "/shop/", "/tables/materials/", "/assign/", "/safety/"]) {
      await page.goto(server.origin + base.slice(0, -1) + path, { waitUntil: "load" });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      if (wide > 320) throw new Error(`${path} is ${wide} px wide`);
    }
    await page.close();
  },
  async "the whole site works with the server stopped"() {
    const page = await opened("/device/");
    await page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration())?.active?.state === "activated", {
      timeout: 4 * patience,
      polling: 500,
    });
    await server.close();
    serving = false;
    for (const path of ["/", "/rolling/", "/plan/"]) {
      await page.goto(server.origin + base.slice(0, -1) + path, { waitUntil: "load" });
      await page.waitForSelector("h1", { timeout: patience });
    }
    await page.close();
  },
};

console.log(await browser.version());
try {
  for (const [name, step] of Object.entries(steps)) {
    const start = performance.now();
    await step();
    console.log(`ok  ${name}  ${Math.round(performance.now() - start)} ms`);
  }
  for (const problem of problems) console.error(problem);
  if (problems.length > 0) process.exitCode = 1;
} finally {
  await browser.close();
  if (serving) await server.close();
}
