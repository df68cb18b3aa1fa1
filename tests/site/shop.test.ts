import { text } from "node:stream/consumers";
import type { Page } from "playwright-core";
import { describe } from "vitest";
import { readCatalogue } from "../../src/catalogue/read-catalogue.ts";
import { onDisk } from "../catalogue/test-shop.ts";
import { accessibilityFaults, expect, type Open, test } from "./harness.ts";

/** The shop as it is changed, measured, saved and opened on one device. */

const shearLoad = "/embed/shear-load/?shear-load.thickness=1.2mm&shear-load.length=600mm";

async function changeShop(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Change the shop on this device" }).click();
  await page.locator("[data-shop-panel][data-live]").waitFor();
}

async function unfold(page: Page, group: string): Promise<void> {
  await page.locator(".shop-group > summary", { hasText: group }).first().click();
}

/** A page of the shop with a shear rated for 0.8 mm, and a calculator in another tab. */
async function withThinShear(open: Open): Promise<{ shop: Page; calculator: Page }> {
  const shop = await open("/shop/");
  await changeShop(shop);
  await unfold(shop, "Shear");
  await shop.locator("#shop-shear-rating-thickness").fill("0.8");
  const calculator = await open(shearLoad, { beside: shop });
  await calculator.locator("[data-calculator][data-live]").waitFor();
  return { shop, calculator };
}

const remarks = (page: Page) => page.locator(".calculator-body").textContent();

describe("changes on this device", () => {
  test("reach the calculators, also in other tabs, and say so", async ({ open }) => {
    const { shop, calculator } = await withThinShear(open);
    // (1.2/0.8)² of the rating.
    await expect.poll(() => remarks(calculator)).toContain("This is 225 % of the rating");
    await expect
      .poll(() => calculator.locator("[data-device-shop]").textContent())
      .toMatch(/changes to the shop, of \d{4}-\d\d-\d\d/);

    // A rating of 1.2 mm is used up.
    await shop.locator("#shop-shear-rating-thickness").fill("1.2");
    await expect.poll(() => remarks(calculator)).toContain("100 % of the rating");

    await shop.getByRole("button", { name: "Back to the shop’s own file" }).click();
    await expect.poll(() => remarks(calculator)).toContain("64 % of the rating");
    expect(await calculator.locator("[data-device-shop]").isVisible()).toBe(false);

    await shop.getByRole("button", { name: /^Bring back the changes/ }).click();
    await expect.poll(() => remarks(calculator)).toContain("100 % of the rating");
  });

  test("outlive a reload, also with a value that cannot be used; the last good ones count until then", async ({ open }) => {
    const { shop, calculator } = await withThinShear(open);
    await shop.locator("#shop-shear-rating-thickness").fill("80");
    await expect
      .poll(() => shop.locator("#shop-shear-rating-thickness-message").textContent())
      .toContain("allowed is 0.3 mm to 6 mm");
    await shop.reload();
    await shop.getByRole("button", { name: "Change more" }).click();
    expect(await shop.locator("#shop-shear-rating-thickness").inputValue()).toBe("80");
    await calculator.reload();
    await expect.poll(() => remarks(calculator)).toContain("This is 225 % of the rating");
  });

  test("are saved as a file that the handbook can be built with, and opened again", async ({ open }) => {
    const { shop, calculator } = await withThinShear(open);
    await unfold(shop, "Stock");
    await shop.getByRole("button", { name: "Add to sheets" }).click();
    await shop.locator("#shop-stock-13-thickness").fill("18 ga");
    await shop.locator("#shop-stock-13-width").fill("1000");
    await shop.locator("#shop-stock-13-length").fill("2000");
    const [download] = await Promise.all([
      shop.waitForEvent("download"),
      shop.getByRole("button", { name: "Save as shop.yaml" }).click(),
    ]);
    const saved = await text(await download.createReadStream());
    const { shop: built } = readCatalogue({ ...onDisk, shop: saved });
    expect(built.shear.rating.thickness).toBe(0.8);
    expect(built.stock.at(-1)?.thickness).toBeCloseTo(0.0478 * 25.4, 3);

    await shop.getByRole("button", { name: "Back to the shop’s own file" }).click();
    await expect.poll(() => remarks(calculator)).toContain("64 % of the rating");
    await shop
      .locator("input[type=file]")
      .setInputFiles({ name: "mine.yaml", mimeType: "application/yaml", buffer: Buffer.from(saved) });
    await expect.poll(() => remarks(calculator)).toContain("This is 225 % of the rating");
  });

  test("are left alone by a bad file, which is told what is wrong in which line", async ({ open }) => {
    const { shop, calculator } = await withThinShear(open);
    const bad = onDisk.shop.replace("rake: 1.5 deg", "rake: 15 deg");
    await shop
      .locator("input[type=file]")
      .setInputFiles({ name: "bad.yaml", mimeType: "application/yaml", buffer: Buffer.from(bad) });
    const line = bad.slice(0, bad.indexOf("rake: 15")).split("\n").length;
    await expect
      .poll(() => shop.locator(".report").textContent())
      .toContain(`Line ${line}, shear.rake: 15 deg; allowed is 0° to 10°`);
    await shop
      .locator("input[type=file]")
      .setInputFiles({ name: "worse.yaml", mimeType: "application/yaml", buffer: Buffer.from("a: [") });
    await expect.poll(() => shop.locator(".report").textContent()).toContain("worse.yaml cannot be used");
    expect(await remarks(calculator)).toContain("This is 225 % of the rating");
  });

  test("that cannot be read are put out of the way, not deleted", async ({ open }) => {
    const shop = await open("/shop/");
    await shop.evaluate(() => localStorage.setItem("flat-to-formed.shop", "{ half a"));
    await shop.reload();
    await expect.poll(() => shop.locator("[data-shop-panel]").textContent()).toContain("flat-to-formed.shop.unreadable");
    expect(await shop.evaluate(() => localStorage.getItem("flat-to-formed.shop.unreadable"))).toBe("{ half a");
  });

  test("are warned of when the browser keeps nothing", async ({ open }) => {
    const shop = await open("/shop/");
    await shop.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    });
    await changeShop(shop);
    await unfold(shop, "Shear");
    await shop.locator("#shop-shear-rating-thickness").fill("0.8");
    await expect.poll(() => shop.locator(".device-body").textContent()).toContain("could not keep the last change");
    expect(await shop.locator("#shop-shear-rating-thickness").inputValue()).toBe("0.8");
  });
});

test("practice pieces are kept, used for a blank, corrected, deleted and brought back", async ({ open }) => {
  const pieces = "100mm:61.10mm:41.10mm;100mm:61.14mm:41.10mm;100mm:61.12mm:41.10mm";
  const page = await open(
    `/embed/practice-pieces/?practice-pieces.thickness=2mm&practice-pieces.radius=2mm&practice-pieces.pieces=${pieces}`,
  );
  await page.locator("[data-calculator][data-live]").waitFor();
  await page.getByText("Keep this result on this device").click();
  await page.getByLabel("Metal of the pieces").selectOption("copper-soft");
  await page.getByLabel("Lot of the sheet, if known").fill("4711");
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole("button", { name: "Keep it" }).click();
  await expect.poll(() => page.locator(".keep-form").textContent()).toContain("Kept.");

  const query = "bend-length.material=copper-soft&bend-length.thickness=2mm&bend-length.radius=2mm&bend-length.method=measured";
  const blank = await open(`/embed/bend-length/?${query}&bend-length.legs=50mm;30mm`, { beside: page });
  await blank.locator("[data-calculator][data-live]").waitFor();
  // 50 + 30 less the 2.22 mm that the legs of the pieces are longer than their flats.
  await expect.poll(() => blank.locator(".answer-number").textContent()).toMatch(/^77\.78 mm/);
  expect(await remarks(blank)).toContain("kept on this device");
  expect(await remarks(blank)).toContain("lot 4711");

  const shop = await open("/shop/", { beside: page });
  await shop.locator("#shop-kept-0-deduction").fill("2.42");
  await expect.poll(() => blank.locator(".answer-number").textContent()).toMatch(/^77\.58 mm/);
  await shop.getByRole("button", { name: "Remove row 1 of bends" }).click();
  await expect.poll(() => remarks(blank)).toContain("no bend measured in");
  await shop.getByRole("button", { name: /^Bring back the bend/ }).click();
  await expect.poll(() => blank.locator(".answer-number").textContent()).toMatch(/^77\.58 mm/);
});

describe("the page of the shop", () => {
  test("is complete without scripts", async ({ open }) => {
    const page = await open("/shop/", { javaScript: false });
    const words = (await page.locator("main").textContent()) ?? "";
    for (const part of [
      "Finger brake by the window",
      "40 kN",
      "F, 10.15 mm round",
      "Bench furnace",
      "Largest thickness at the full length",
    ])
      expect(words).toContain(part);
    expect(await page.locator(".panel-of-device").isVisible()).toBe(false);
  });

  for (const screen of ["phone", "laptop"] as const)
    for (const colorScheme of ["light", "dark"] as const)
      test(`has no accessibility fault on a ${screen}, ${colorScheme}, with everything unfolded`, async ({ open }) => {
        const page = await open("/shop/", { screen, colorScheme });
        await changeShop(page);
        for (const group of await page.locator(".shop-group > summary").all()) await group.click();
        await page.getByRole("button", { name: "Add to bends" }).last().click();
        expect(await accessibilityFaults(page)).toEqual([]);
        const { scroll, width } = await page.evaluate(() => ({
          scroll: document.documentElement.scrollWidth,
          width: document.documentElement.clientWidth,
        }));
        expect(scroll).toBeLessThanOrEqual(width);
      });
});
