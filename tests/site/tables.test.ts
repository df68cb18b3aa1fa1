import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, inject } from "vitest";
import { expect, test } from "./harness.ts";

const fractions = "/tables/fractions/";

/** First words of the rows that are shown, from the top. */
const firstCells = (page: Page, id: string) =>
  page.locator(`[data-table="${id}"] tbody tr:not([hidden]) > :first-child`).allInnerTexts();

/** A table is brought to life once the page has been painted. */
const alive = (page: Page) => page.locator("button.sort").first().waitFor();

const tool = (page: Page, id: string, selector: string) => page.locator(`[data-table="${id}"] ${selector}`);

function file(id: string): string {
  return readFileSync(join(inject("folder"), `tables/${id}.csv`), "utf8");
}

async function saved(page: Page, id: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent("download"), tool(page, id, "[data-save]").click()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  return { name: download.suggestedFilename(), text: Buffer.concat(chunks).toString() };
}

describe("a table", () => {
  test("is put in order by the button in a head: up, down, as it was", async ({ open }) => {
    const page = await open("/tables/gauges/");
    await alive(page);
    const head = tool(page, "gauges", "th").filter({ hasText: "No." });
    const before = await firstCells(page, "gauges");
    await head.getByRole("button").click();
    expect(await head.getAttribute("aria-sort")).toBe("ascending");
    // 2/0 is thicker than 0: neither letters nor plain numbers would say so.
    expect((await firstCells(page, "gauges")).slice(0, 8)).toEqual(["7/0", "6/0", "5/0", "4/0", "3/0", "2/0", "0", "1"]);
    await head.getByRole("button").click();
    expect(await head.getAttribute("aria-sort")).toBe("descending");
    expect(await firstCells(page, "gauges")).toEqual([...before].reverse());
    await head.getByRole("button").click();
    expect(await head.getAttribute("aria-sort")).toBe("none");
    expect(await firstCells(page, "gauges")).toEqual(before);
  });

  test("puts cells without a value last, whichever way", async ({ open }) => {
    const page = await open("/tables/materials/");
    await alive(page);
    const sort = tool(page, "materials", "th").filter({ hasText: "Reduction of" }).getByRole("button");
    for (const _ of ["ascending", "descending"]) {
      await sort.click();
      const column = await page.locator('[data-table="materials"] tbody tr td:last-child').allInnerTexts();
      const values = column.map((text) => text.trim().split("\n")[0] ?? "");
      const firstEmpty = values.indexOf("");
      expect(firstEmpty).toBeGreaterThan(0);
      expect(values.slice(firstEmpty).every((text) => text === "")).toBe(true);
    }
  });

  test("shows the rows with all words typed, counts them, and keeps them in the address", async ({ open }) => {
    const page = await open("/tables/materials/");
    await alive(page);
    await tool(page, "material-properties", "[data-find]").fill("6061-T6 yield");
    await expect.poll(() => firstCells(page, "material-properties")).toEqual(["Aluminium 6061-T6"]);
    expect(await tool(page, "material-properties", "output").textContent()).toBe("1 of 102 rows");
    await expect.poll(() => page.url()).toContain("material-properties.find=");
    await page.reload();
    await expect.poll(() => firstCells(page, "material-properties")).toEqual(["Aluminium 6061-T6"]);
    await tool(page, "material-properties", "[data-find]").fill("");
    expect(await tool(page, "material-properties", "output").textContent()).toBe("102 rows");
  });

  test("shows one gauge list alone, from a link too", async ({ open }) => {
    const page = await open("/tables/gauges/");
    await alive(page);
    await tool(page, "gauges", "[data-pick]").selectOption("Brown & Sharpe gauge");
    const heads = page.locator('[data-table="gauges"] thead tr:first-child th:visible');
    await expect.poll(() => heads.count()).toBe(2);
    const row = page.locator('[data-table="gauges"] tbody tr').filter({ hasText: /^16/ });
    expect(await row.locator(":scope > :visible").allInnerTexts()).toEqual(["16", "0.0508", "1.290"]);
    await expect.poll(() => page.url()).toContain("gauges.show=Brown");
    const again = await open(`${new URL(page.url()).pathname.replace(inject("base"), "/")}${new URL(page.url()).search}`);
    await expect.poll(() => again.locator('[data-table="gauges"] thead tr:first-child th:visible').count()).toBe(2);
  });

  test("is copied cell by cell, as it is shown, with its sources", async ({ open }) => {
    const page = await open(fractions);
    await alive(page);
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await tool(page, "fractions", "[data-find]").fill("8ths");
    await tool(page, "fractions", "[data-copy]").click();
    await expect.poll(() => tool(page, "fractions", "output").textContent()).toBe("Copied 4 of 64 rows");
    const lines = (await page.evaluate(() => navigator.clipboard.readText())).split("\n").map((line) => line.split("\t"));
    expect(lines[0]?.slice(0, 5)).toEqual(["Fraction (in)", "Rule divided in", "Sixty-fourths", "Decimal (in)", "Length (mm)"]);
    expect(lines[1]?.slice(0, 5)).toEqual(["1/8", "8ths", "8", "0.125", "3.175"]);
    expect(lines[1]?.at(-1)).toContain("[inch-definition]");
    expect(lines).toHaveLength(5);
  });

  test.for(["gauges", "materials", "smallest-radii", "spot-settings", "rivets", "general-tolerances"])(
    "%s: saves the same file with scripts as without",
    async (name, { open }) => {
      const page = await open(`/tables/${name}/`);
      await alive(page);
      for (const id of await page
        .locator("[data-table]")
        .evaluateAll((hosts) => hosts.map((host) => (host as HTMLElement).dataset.table ?? ""))) {
        const { name: fileName, text } = await saved(page, id);
        expect(fileName).toBe(`${id}.csv`);
        expect(text).toBe(file(id));
      }
    },
  );

  test("saves only the rows shown, in their order", async ({ open }) => {
    const page = await open(fractions);
    await alive(page);
    await tool(page, "fractions", "[data-find]").fill("4ths");
    const length = tool(page, "fractions", "th").filter({ hasText: "Length" }).getByRole("button");
    await length.click();
    await length.click();
    const { text } = await saved(page, "fractions");
    const lines = text.trim().split("\r\n");
    // “64ths” has these letters as well: words are looked for anywhere in a row.
    expect(lines[1]?.startsWith("63/64,64ths,63,0.984375,25.003125")).toBe(true);
    expect(await tool(page, "fractions", "[data-save]").textContent()).toBe(`Save ${lines.length - 1} rows as CSV`);
  });

  test("without JavaScript is whole, with a file and no button that does nothing", async ({ open }) => {
    const page = await open(fractions, { javaScript: false });
    expect(await page.locator("tbody tr").count()).toBe(64);
    expect(await page.locator(".data-table button:visible, .data-table input:visible").count()).toBe(0);
    const { text } = await saved(page, "fractions");
    expect(text).toBe(file("fractions"));
  });

  test("can be scrolled with the keyboard, and its letters lead to their sources", async ({ open }) => {
    const page = await open("/tables/gauges/", { screen: "phone" });
    await alive(page);
    const frame = page.locator(".table-frame");
    await frame.focus();
    for (let presses = 0; presses < 5; presses++) await page.keyboard.press("ArrowRight");
    await expect.poll(() => frame.evaluate((element) => element.scrollLeft)).toBeGreaterThan(0);
    await frame.evaluate((element) => element.scrollTo({ left: 0, behavior: "instant" }));
    await page.locator(".mark").first().click();
    expect(new URL(page.url()).hash).toBe("#gauges-from-a");
    expect(await page.locator("#gauges-from-a a").getAttribute("href")).toMatch(/\/sources\/#us-code-15-206$/);
  });
});

test("the centres of a hole circle can be copied from the calculator", async ({ open }) => {
  const page = await open("/tables/hole-circles/");
  await alive(page);
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  const circle = page.locator("#hole-circle");
  await circle.getByLabel("Number of holes").fill("6");
  await expect.poll(() => circle.locator(".answer-list tbody tr").count()).toBe(6);
  await page.getByRole("button", { name: "Copy the coordinates" }).click();
  await expect.poll(() => page.locator(".circle .table-ways output").textContent()).toBe("Copied 6 holes");
  const lines = (await page.evaluate(() => navigator.clipboard.readText())).split("\n");
  expect(lines).toHaveLength(7);
  // A circle of 70 mm about 50, 50: the first hole is 35 mm to the right of its centre.
  expect(lines[1]?.split("\t").map((cell) => Number.parseFloat(cell))).toEqual([85, 50]);
});
