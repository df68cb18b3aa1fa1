import type { Page } from "playwright-core";
import { describe } from "vitest";
import { whenKept } from "./editions.ts";
import { address, expect, test } from "./harness.ts";
import { pdfLines } from "./pdf-lines.ts";

/** What goes wrong in a workshop: no network at the printer, a full device, a clock that was never set. */

const channel = "/plan/?plan.name=Channel&plan.width=120mm&plan.depth=50mm&plan.north=25mm&plan.south=25mm";
const blank = (page: Page) => page.locator(".plan-answer output");
const live = (page: Page) => page.locator("[data-live]").first().waitFor();

/** Straight strokes on every sheet of paper. */
async function strokes(page: Page): Promise<number[]> {
  await live(page);
  await page.locator(".plan-order").waitFor();
  await page.locator(".plan-code svg").waitFor();
  return pdfLines(await page.pdf({ format: "A4" })).map((lines) => lines.length);
}

test("a plan prints without a network as it does with one", { timeout: 300_000 }, async ({ open }) => {
  const page = await open(channel, { serviceWorker: true });
  const before = await strokes(page);
  expect(before[0]).toBeGreaterThan(20);
  await whenKept(page);
  await page.context().setOffline(true);
  await page.goto(address("/"));
  await page.goto(address(channel));
  expect(await strokes(page)).toEqual(before);
});

describe("a full device", () => {
  const fill = (page: Page) =>
    page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    });

  test("a plan is planned on, its address holds it, and keeping it says why not", async ({ open }) => {
    const page = await open(channel);
    await live(page);
    await fill(page);
    await page.getByLabel("Base depth, south to north").fill("52");
    await expect.poll(() => blank(page).textContent()).toMatch(/ × 97\.\d\d mm$/);
    await page.getByRole("button", { name: "Keep this plan on the device" }).click();
    await expect.poll(() => page.locator("main").textContent()).toContain("There is no room on this device");
    await expect.poll(() => page.url()).toContain("plan.depth=52mm");
    await page.reload();
    await expect.poll(() => blank(page).textContent()).toMatch(/ × 97\.\d\d mm$/);
  });

  test("a list of pieces is cut on, and its address holds it", async ({ open }) => {
    const page = await open("/sheet/?sheet.thickness=1mm");
    await live(page);
    await fill(page);
    await page.locator("#sheet-trim").fill("12");
    await expect.poll(() => page.url()).toContain("sheet.trim=12mm");
    await expect.poll(() => page.locator(".cut-sheet").textContent()).toMatch(/proved best/i);
    await page.reload();
    await expect.poll(() => page.locator("#sheet-trim").inputValue()).toBe("12");
  });
});

describe("a clock that is wrong", () => {
  test.for(["1970-01-01T00:00:10Z", "2099-12-31T23:59:00Z"])("%s", { timeout: 300_000 }, async (time, { open }) => {
    const page = await open("/", { serviceWorker: true });
    await page.clock.setFixedTime(time);
    await page.goto(address(channel));
    await live(page);
    await page.getByRole("button", { name: "Keep this plan on the device" }).click();
    await whenKept(page);
    await page.context().setOffline(true);
    await page.goto(address("/plan/"));
    await page.locator(".open-kept").filter({ hasText: "Channel" }).click();
    await expect.poll(() => blank(page).textContent()).toMatch(/^120\.00 mm × 95\.\d\d mm$/);
    await page.goto(address("/device/"));
    await expect.poll(() => page.locator("[data-state=complete]").count()).toBe(1);
    expect(await page.locator("main").textContent()).not.toMatch(/Invalid|NaN/);
  });
});
