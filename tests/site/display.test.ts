import type { Page } from "playwright-core";
import { describe } from "vitest";
import { sidewaysOverflow, smallControls } from "../../scripts/browser/layout.ts";
import { codeOf } from "../../src/components/scan-code/qr.ts";
import { accessibilityFaults, address, expect, type Open, screenshot, test } from "./harness.ts";

/** A pixel of the screen it is made for: 24 inches across the corners, 1920 × 1080. */
const mmPerPixel = (24 * 25.4) / Math.hypot(1920, 1080);

const settings = "flat-to-formed.display";

/** Opens the display with a clock that the test moves. */
async function opened(open: Open, path = "/display/"): Promise<Page> {
  const page = await open(path, { screen: "kiosk" });
  await page.clock.install();
  await page.reload();
  await page.locator("[data-display][data-live]").waitFor();
  return page;
}

const place = (page: Page, name: string) => page.locator(".place").filter({ hasText: name });
const key = (page: Page, name: string) => page.locator(".pad").getByRole("button", { name, exact: true });
const tab = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const field = (page: Page, name: string) => page.getByLabel(name, { exact: false });
const answer = (page: Page) => page.locator(".answers dd").first();

async function toCalculator(page: Page, name: string): Promise<void> {
  await place(page, name).click();
  await tab(page, "Calculate").click();
  await page.locator(".answers").waitFor();
}

/** Height [mm] of a capital H as it is drawn in an element, counted in the picture of it. */
async function capitalHeight(page: Page, selector: string): Promise<number> {
  const element = page.locator(selector).first();
  await element.evaluate((node) => {
    const letter = document.createElement("span");
    letter.textContent = "H";
    letter.id = "measured";
    letter.style.cssText = "display:inline-block;background:#000;color:#fff;line-height:2;padding:0 10px";
    node.replaceChildren(letter);
  });
  const picture = (await page.locator("#measured").screenshot()).toString("base64");
  const rows = await page.evaluate(async (text) => {
    const bytes = Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const pen = canvas.getContext("2d");
    pen?.drawImage(bitmap, 0, 0);
    const { data } = pen?.getImageData(0, 0, bitmap.width, bitmap.height) ?? { data: new Uint8ClampedArray() };
    const lit = (y: number) =>
      Array.from({ length: bitmap.width }, (_, x) => data[4 * (y * bitmap.width + x)] ?? 0).some((red) => red > 127);
    return Array.from({ length: bitmap.height }, (_, y) => y).filter(lit).length;
  }, picture);
  return rows * mmPerPixel;
}

test("what is read from 2.5 m has capitals of 16 mm", async ({ open }) => {
  for (const [view, selectors] of [
    ["start", ["h1", ".place span"]],
    ["Limits", ["h1", ".lines dt", ".lines dd", ".warning"]],
    ["Cautions", [".caution-page h2", ".caution-page p"]],
    ["Calculate", [".field-text", ".answers dd"]],
  ] as const)
    for (const selector of selectors) {
      const page = await opened(open);
      if (view === "Calculate") await toCalculator(page, "Shear");
      else if (view !== "start") {
        await place(page, "Shear").click();
        await tab(page, view).click();
        await page.locator(selector).first().waitFor();
      }
      expect(await capitalHeight(page, selector), `${view} ${selector}`).toBeGreaterThanOrEqual(16);
      await page.close();
    }
});

test("every key is 20 mm or more, and fields and answers fit the screen without scrolling", async ({ open }) => {
  const page = await opened(open);
  const least = 20 / mmPerPixel;
  expect(await smallControls(page, least)).toEqual([]);
  for (const name of ["Marking bench", "Corner cutter", "Folding brake", "Spot welder", "Furnace"]) {
    await place(page, name).click();
    expect(await smallControls(page, least), name).toEqual([]);
    await tab(page, "Cautions").click();
    expect(await smallControls(page, least), name).toEqual([]);
    await tab(page, "Calculate").click();
    await page.locator(".answers").waitFor();
    expect(await smallControls(page, least), name).toEqual([]);
    const size = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.scrollHeight]);
    expect(size, name).toEqual([1920, 1080]);
    if (name === "Marking bench") await screenshot(page, "display-calculator");
    await page.locator(".out").click();
  }
  await screenshot(page, "display-start");
});

describe("the number pad", () => {
  test("fractions, units and gauge numbers go in with gloves, and a length stays what was typed in other units", async ({
    open,
  }) => {
    const page = await opened(open);
    await toCalculator(page, "Marking bench");
    await field(page, "Leg A").click();
    for (const name of ["2", "and, between whole inches and their fraction", "5", "/16 sixteenths", "in"])
      await key(page, name).click();
    await expect.poll(() => field(page, "Leg A").inputValue()).toBe("2 5/16 in");
    await key(page, "Next field").click();
    await expect.poll(() => field(page, "Leg B").evaluate((node) => node === document.activeElement)).toBe(true);
    // 2 5/16 in = 58.7375 mm
    expect(Number(await field(page, "Leg A").inputValue())).toBeCloseTo(58.7375, 4);
    await page.locator(".units").click();
    await page.locator(".units").click();
    await expect.poll(() => field(page, "Leg A").inputValue()).toBe("2-5/16");
    await field(page, "Thickness").click();
    for (const name of ["1", "8", "ga, gauge number"]) await key(page, name).click();
    await expect.poll(() => field(page, "Thickness").inputValue()).toBe("18 ga");
    await expect.poll(() => page.locator(".answers").count()).toBe(1);
  });

  test("a real keyboard does the same, and a value that cannot be used is answered by a sentence, not by a number", async ({
    open,
  }) => {
    const page = await opened(open);
    await toCalculator(page, "Shear");
    const before = await answer(page).textContent();
    await field(page, "Length of the cut").focus();
    await page.keyboard.type("300");
    await expect.poll(() => field(page, "Length of the cut").inputValue()).toBe("300");
    await page.keyboard.press("Enter");
    await page.keyboard.type("0.8");
    await expect.poll(() => field(page, "Thickness").inputValue()).toBe("0.8");
    await expect.poll(() => answer(page).textContent()).not.toBe(before);
    // Without a field in focus the digits go to the chosen one.
    await page.locator("h1").focus();
    await page.keyboard.press("Delete");
    await page.keyboard.type("77");
    await page.clock.runFor(2000);
    await expect.poll(() => page.locator(".problem").textContent()).toMatch(/Thickness must be .*77/);
    expect(await page.locator(".answers").count()).toBe(0);
    expect(await tab(page, "To the phone").isDisabled()).toBe(true);
  });
});

test("it forgets what was typed after 90 s, says so before, and a touch in time keeps it", async ({ open }) => {
  const page = await opened(open);
  await toCalculator(page, "Shear");
  await key(page, "2").click();
  await page.clock.runFor(80_000);
  await page.locator(".soon").waitFor();
  await page.mouse.click(960, 20);
  await expect.poll(() => page.locator(".soon").count()).toBe(0);
  await page.clock.runFor(89_000);
  await expect.poll(() => field(page, "Thickness").inputValue()).toBe("2");
  await page.clock.runFor(1100);
  await place(page, "Shear").waitFor();
  await toCalculator(page, "Shear");
  await expect.poll(() => field(page, "Thickness").inputValue()).toBe("1.2");
});

test("at rest it shows cards in changing places, and the first touch only wakes it", async ({ open }) => {
  const page = await opened(open);
  // Facts come ten seconds after the page, by the clock of the test; the fetching takes its own time.
  await page.clock.runFor(11_000);
  await page.waitForLoadState("networkidle");
  await page.clock.runFor(20_000);
  const seen = new Set<string>();
  const spots = new Set<string>();
  for (let card = 0; card < 6; card++) {
    await page.locator(".card").waitFor();
    seen.add((await page.locator(".card h1").textContent()) ?? "");
    const { x, y } = (await page.locator(".card").boundingBox()) ?? { x: 0, y: 0 };
    spots.add(`${Math.round(x)} ${Math.round(y)}`);
    if (card === 1) await screenshot(page, "display-card");
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBe(1080);
    await page.clock.runFor(20_000);
  }
  expect(seen.size).toBe(6);
  expect(spots.size).toBeGreaterThanOrEqual(5);
  await page.mouse.click(300, 400);
  await place(page, "Shear").waitFor();
  expect(await page.locator(".out").count()).toBe(0);
});

test("the time is kept on the device, by address or by holding the mark", async ({ open }) => {
  const page = await opened(open, "/display/?idle=30");
  expect(new URL(page.url()).search).toBe("");
  await toCalculator(page, "Shear");
  await page.clock.runFor(30_100);
  await place(page, "Shear").waitFor();
  await page.locator(".mark").hover();
  await page.mouse.down();
  await page.clock.runFor(3100);
  await page.mouse.up();
  await tab(page, "3 min").click();
  await page.getByRole("button", { name: "Done" }).click();
  expect(await page.evaluate((name) => JSON.parse(localStorage.getItem(name) ?? "{}").idle, settings)).toBe(180);
  await toCalculator(page, "Shear");
  await page.clock.runFor(170_000);
  expect(await page.locator(".answers").count()).toBe(1);
  await page.clock.runFor(11_000);
  await place(page, "Shear").waitFor();
});

test("nothing leads out of it", async ({ open }) => {
  const page = await opened(open);
  const ways = () => page.locator("a, area, form, iframe, header nav, footer, [popover]").count();
  expect(await ways()).toBe(0);
  await toCalculator(page, "Shear");
  expect(await ways()).toBe(0);
  await tab(page, "To the phone").click();
  expect(await ways()).toBe(0);
  const menu = await page.evaluate(() =>
    document.body.dispatchEvent(new MouseEvent("contextmenu", { bubbles: true, cancelable: true })),
  );
  expect(menu, "the context menu opens").toBe(false);
});

test("the code holds the address of the calculator's page with the numbers, and that page has the same answer", async ({
  open,
}) => {
  const page = await opened(open);
  await toCalculator(page, "Punch");
  await field(page, "Diameter").click();
  await key(page, "6").click();
  const shown = await answer(page).textContent();
  await tab(page, "To the phone").click();
  await page.locator(".code-ink").waitFor();
  const held = (await page.locator(".phone").getAttribute("data-address")) ?? "";
  expect(await page.locator(".code-ink").getAttribute("d")).toBe(codeOf(held)?.path);
  await screenshot(page, "display-phone");
  const { pathname, search, hash } = new URL(held);
  expect(address(pathname.slice(new URL(address("/")).pathname.length - 1))).toBe(held.split("?")[0]);
  const there = await open(pathname.slice(new URL(address("/")).pathname.length - 1) + search + hash, { screen: "phone" });
  await expect.poll(() => there.locator("#punch-load .answer-number").first().textContent()).toBe(shown);
});

test("another address for phones can be set", async ({ open }) => {
  const page = await opened(open, "/display/?site=https://shop.example/book/");
  await toCalculator(page, "Furnace");
  await tab(page, "To the phone").click();
  expect(await page.locator(".phone").getAttribute("data-address")).toMatch(
    /^https:\/\/shop\.example\/book\/furnace\/\?anneal\./,
  );
});

test("what this device has changed in the shop is what it shows", async ({ open }) => {
  const shop = await open("/shop/");
  const file = JSON.parse((await shop.locator("[data-shop-panel]").getAttribute("data-file")) ?? "{}");
  file.shear.longestStop = "455 mm";
  await shop.evaluate((kept) => localStorage.setItem("flat-to-formed.shop", JSON.stringify(kept)), {
    version: 1,
    changed: "2026-11-25T10:00",
    own: "x",
    file,
  });
  const page = await open("/display/", { beside: shop });
  await place(page, "Shear").click();
  await expect.poll(() => page.locator(".lines").textContent()).toMatch(/10–455 mm/);
  expect(await page.locator(".limits .note").textContent()).toMatch(/2026-11-25/);
});

test("works without a network after one visit", async ({ open }) => {
  const page = await open("/display/", { screen: "kiosk", serviceWorker: true });
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller)
      await new Promise((done) => navigator.serviceWorker.addEventListener("controllerchange", done, { once: true }));
  });
  await page.context().setOffline(true);
  await page.reload();
  await toCalculator(page, "Rolls");
  await tab(page, "To the phone").click();
  await page.locator(".code-ink").waitFor();
});

test("has no accessibility fault in any of its views, and respects reduced motion", async ({ open }) => {
  const page = await open("/display/", { screen: "kiosk", reducedMotion: "reduce" });
  await toCalculator(page, "Marking bench");
  expect(await accessibilityFaults(page), "calculator").toEqual([]);
  await page.locator(".field.pick").click();
  expect(await accessibilityFaults(page), "metals").toEqual([]);
  await page.keyboard.press("Escape");
  await tab(page, "To the phone").click();
  await page.locator(".code-ink").waitFor();
  expect(await accessibilityFaults(page), "phone").toEqual([]);
  for (const name of ["Limits", "Cautions"]) {
    await tab(page, name).click();
    expect(await accessibilityFaults(page), name).toEqual([]);
  }
  const moving = await page.evaluate(() => document.getAnimations().length);
  expect(moving).toBe(0);
});

for (const { width, height } of [
  { width: 1024, height: 768 },
  { width: 1366, height: 768 },
  { width: 320, height: 640 },
])
  test(`fits ${width} × ${height}`, async ({ open }) => {
    const page = await open("/display/", { screen: "kiosk" });
    await page.setViewportSize({ width, height });
    await toCalculator(page, "Marking bench");
    expect(await sidewaysOverflow(page)).toEqual([]);
    expect(await smallControls(page, 44)).toEqual([]);
    await tab(page, "Limits").click();
    expect(await sidewaysOverflow(page)).toEqual([]);
  });
