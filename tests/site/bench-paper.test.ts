import { describe } from "vitest";
import { codeOf } from "../../src/components/scan-code/qr.ts";
import { accessibilityFaults, expect, type Open, test } from "./harness.ts";
import { lineLength, type PdfLine, pdfLines } from "./pdf-lines.ts";

/** What leaves the plan on paper or as a file: the sheet for the bench, the template, the drawing, the code. */

/** A tray of 210 × 160 with sides of 37: no size of it is 100 mm. K = 0.5 and R = T = 1 make each bend a round sum. */
const tray =
  "/plan/?plan.name=Tray&plan.thickness=1mm&plan.radius=1mm&plan.bendData=neutral-line&plan.kFactor=0.5&plan.width=210mm&plan.depth=160mm" +
  "&plan.south=37mm:90deg:up:&plan.north=37mm:90deg:up:&plan.west=37mm:90deg:up:&plan.east=37mm:90deg:up:&plan.holes=base:20mm:20mm:5mm";
/** Outside sizes less a deduction of 2 · 2 mm − 0.75 π mm a bend. */
const deduction = 4 - 0.75 * Math.PI;
const blank = { width: 210 + 2 * 37 - 2 * deduction, depth: 160 + 2 * 37 - 2 * deduction };

/** Wider than a sheet of paper, and nothing on it 100 mm long. */
const plate = "/plan/?plan.name=Plate&plan.width=250mm&plan.depth=120mm&plan.holes=base:20mm:20mm:5mm";

/** Small enough for one sheet of either paper. */
const cone =
  "/plan/?plan.kind=cone&plan.name=Nozzle&plan.thickness=1mm&plan.largeDiameter=60mm&plan.smallDiameter=30mm&plan.height=50mm&plan.seam=butt";

async function template(open: Open, path: string, options: Parameters<Open>[1] = {}) {
  const page = await open(path, options);
  await page.locator("[data-plan][data-live]").waitFor();
  await page.getByRole("button", { name: "Print template 1:1" }).click();
  await page.locator(".template-page h1").waitFor();
  return page;
}

const level = ({ from, to }: PdfLine) => Math.abs(from[1] - to[1]) < 0.01;
const upright = ({ from, to }: PdfLine) => Math.abs(from[0] - to[0]) < 0.01;

describe("the template at full size", () => {
  test("100 mm are 100 mm on every sheet, and so is the part, A4 and Letter", async ({ open }) => {
    const page = await template(open, plate);
    for (const [format, label, height] of [
      ["A4", "A4", 297],
      ["Letter", "Letter", 279.4],
    ] as const) {
      await page.locator(".template-page .switch label", { hasText: label }).click();
      const sheets = await page.locator(".tile").count();
      expect(sheets).toBe(2);
      const pages = pdfLines(await page.pdf({ format }));
      expect(pages, format).toHaveLength(sheets);
      for (const lines of pages) {
        const bars = lines.filter((line) => level(line) && line.from[1] > height - 20 && lineLength(line) > 50);
        expect(bars).toHaveLength(1);
        expect(Math.abs(lineLength(bars[0] as PdfLine) - 100)).toBeLessThan(0.1);
      }
      // Its west and its east side, each on a sheet of its own, and how far they are apart.
      const ends = pages.map((lines) => lines.filter((line) => upright(line) && Math.abs(lineLength(line) - 120) < 0.1));
      expect(ends.every((found) => found.length > 0)).toBe(true);
      const west = Math.min(...(ends[0] ?? []).map(({ from }) => from[0]));
      const east = Math.max(...(ends[1] ?? []).map(({ from }) => from[0]));
      // Each sheet shows 184 mm, of which it shares 10 with the next.
      expect(Math.abs(east - west + 174 - 250)).toBeLessThan(0.1);
    }
  });

  test("of a cone has its bar of 100 mm too, and its seam edges as long and as far apart as its sector says", async ({
    open,
  }) => {
    const page = await template(open, cone);
    // The radius falls by 15 mm over 50 mm of height; the outer radius is to the slant as 60 mm is to what the diameter falls by.
    const slant = Math.hypot(15, 50);
    const outer = (slant * 60) / 30;
    const half = (Math.PI * 30) / outer;
    for (const [format, height] of [
      ["A4", 297],
      ["Letter", 279.4],
    ] as const) {
      await page.locator(".template-page .switch label", { hasText: format }).click();
      expect(await page.locator(".tile").count()).toBe(1);
      const [lines = [], ...more] = pdfLines(await page.pdf({ format }));
      expect(more).toEqual([]);
      const bars = lines.filter((line) => level(line) && line.from[1] > height - 20 && lineLength(line) > 50);
      expect(bars).toHaveLength(1);
      expect(Math.abs(lineLength(bars[0] as PdfLine) - 100)).toBeLessThan(0.1);
      const edges = lines.filter((line) => !upright(line) && Math.abs(lineLength(line) - slant) < 0.1);
      const low = edges.map(({ from, to }) => (from[1] < to[1] ? from : to)).map(([x]) => x);
      expect(edges.length).toBeGreaterThan(1);
      expect(Math.abs(Math.max(...low) - Math.min(...low) - 2 * outer * Math.sin(half))).toBeLessThan(0.1);
    }
  });

  test("takes the page over and gives it back, by button and by key", async ({ open }) => {
    const page = await template(open, tray, { screen: "phone" });
    expect(await page.locator(".site-head").isVisible()).toBe(false);
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("H1");
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
    await page.keyboard.press("Escape");
    expect(await page.locator(".template-page").count()).toBe(0);
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Print template 1:1");
    await page.getByRole("button", { name: "Print template 1:1" }).click();
    await page.getByRole("button", { name: "Back to the plan" }).click();
    expect(await page.locator(".site-head").isVisible()).toBe(true);
  });
});

test("the flat drawing is downloaded in true millimetres", async ({ open }) => {
  const page = await open(tray);
  await page.locator("[data-plan][data-live]").waitFor();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: /Download flat drawing/ }).click(),
  ]);
  expect(download.suggestedFilename()).toBe("tray-flat.svg");
  const text = Buffer.concat(await (await download.createReadStream()).toArray()).toString();
  const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(text) ?? [];
  expect(Number(width)).toBeCloseTo(blank.width + 10, 2);
  expect(Number(height)).toBeCloseTo(blank.depth + 10, 2);
});

describe("the sheet for the bench", () => {
  test("has the lists of the bench in the order they are worked through", async ({ open }) => {
    const page = await open(tray);
    await page.locator("[data-plan][data-live]").waitFor();
    const heads = await page.locator(".plan-columns h3").allTextContents();
    const wanted = [
      "Practice pieces first",
      "At the shear",
      "Scribe list",
      "Holes and notches, while it is flat",
      "Finished sizes",
    ];
    expect(heads.filter((head) => wanted.includes(head))).toEqual(wanted);
    expect(await page.locator(".plan-practice tbody tr").count()).toBe(5);
    expect(await page.locator(".plan-cuts").textContent()).toMatch(/Diagonals|diagonals/);
  });

  test("prints black on white with outlines twice as wide as other lines, from the dark look too", async ({ open }) => {
    const page = await open(tray, { colorScheme: "dark" });
    await page.locator("[data-plan][data-live]").waitFor();
    await page.emulateMedia({ media: "print" });
    const strokes = await page.evaluate(() => {
      const style = (kind: string) => {
        const line = document.querySelector(`.plan-figures .fig .${kind}`);
        const { stroke, strokeWidth } = getComputedStyle(line as Element);
        return { stroke, width: Number.parseFloat(strokeWidth) };
      };
      return { sheet: style("sheet"), thin: style("thin"), sight: style("sight"), centre: style("centre") };
    });
    for (const { stroke } of Object.values(strokes)) expect(stroke).toBe("rgb(0, 0, 0)");
    for (const narrow of [strokes.thin, strokes.sight, strokes.centre])
      expect(strokes.sheet.width / narrow.width).toBeCloseTo(2, 1);
  });

  test("has no letter below 8 pt on paper outside its drawings", async ({ open }) => {
    const page = await open(tray);
    await page.locator("[data-plan][data-live]").waitFor();
    await page.emulateMedia({ media: "print" });
    const small = await page.evaluate(() =>
      [...document.querySelectorAll(".plan-sheet *")]
        .filter((element) => !element.closest("svg") && (element as HTMLElement).offsetParent !== null)
        .filter((element) => [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()))
        .filter((element) => Number.parseFloat(getComputedStyle(element).fontSize) < (8 * 96) / 72 - 0.01)
        .map((element) => `${element.tagName} ${element.className} ${element.textContent?.slice(0, 30)}`),
    );
    expect(small).toEqual([]);
  });
});

test("the code of the plan holds the address it is passed on with", async ({ open }) => {
  const page = await open(tray);
  const code = page.locator(".plan-code .code-ink");
  await code.waitFor();
  const before = await code.getAttribute("d");
  await page.getByLabel("Number of parts").fill("3");
  await expect.poll(() => page.url()).toContain("plan.quantity=3");
  await expect.poll(() => code.getAttribute("d")).not.toBe(before);
  const address = new URL(page.url());
  const { sharedQuery } = await import("../../src/components/packed.ts");
  const wanted = codeOf(`${address.origin}${address.pathname}?${await sharedQuery("plan", address.search.slice(1))}`);
  expect(await code.getAttribute("d")).toBe(wanted?.path);
});
