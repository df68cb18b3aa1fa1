import { describe } from "vitest";
import { startingPoints } from "../../src/components/plan/starting-points.ts";
import { addressParts, queryText } from "../../src/lib/address.ts";
import { partInputs } from "../../src/lib/part/form.ts";
import { expect, test } from "./harness.ts";

/** What a student does: read, work out, measure practice pieces, plan, print. Typed and clicked as a person would. */

test("practice pieces measured at the bench move the plan of a channel", async ({ open }) => {
  const page = await open("/plan/", { screen: "phone" });
  await page.getByRole("link", { name: /^Channel/ }).click();
  const blank = page.locator(".plan-answer output");
  await expect.poll(() => blank.textContent()).toMatch(/^120\.00 mm × 95\.\d\d mm$/);
  const before = await blank.textContent();
  await page.getByLabel("Base depth, south to north").fill("52");
  await expect.poll(() => blank.textContent()).toMatch(/ × 97\.\d\d mm$/);
  await expect.poll(() => page.url()).toContain("plan.depth=52mm");

  await page.goto(page.url().replace(/\/plan\/.*/, "/bending/practice-pieces/"));
  const pieces = page.locator("#practice-pieces");
  await pieces.getByLabel("Thickness").fill("1.2");
  await pieces.getByLabel("Inside radius").fill("1.6");
  const handOn = pieces.getByRole("link", { name: "Use it in the plan of a part" });
  await handOn.click();
  await page.waitForURL(/\/plan\/\?/);

  await expect.poll(() => page.getByLabel("Bend data", { exact: true }).inputValue()).toBe("measured");
  await expect.poll(() => blank.textContent()).not.toBe(before);
  // The channel that was being planned is still there, with its changed base.
  await expect.poll(() => page.getByLabel("Base depth, south to north").inputValue()).toBe("52");
});

describe("a value that cannot be used", () => {
  test("is named at its field, keeps the last good answer in sight, and survives a reload", async ({ open }) => {
    const page = await open("/bending/");
    const strip = page.locator("#bend-length");
    const answer = strip.locator(".main-answer, .answer output").first();
    await strip.getByLabel("Thickness").fill("2");
    await expect.poll(() => page.url()).toContain("bend-length.thickness=2mm");
    const good = await answer.textContent();

    await strip.getByLabel("Thickness").fill("minus a bit");
    const message = strip.locator("#bend-length-thickness-message");
    await expect.poll(() => message.textContent()).toMatch(/“minus a bit” is not a length.*from 0\.10 mm to 13\.00 mm/);
    expect(await answer.textContent()).toBe(good);
    expect(await strip.locator(".stale-mark").textContent()).toMatch(/last good values/);

    await expect.poll(() => page.url()).toContain("minus");
    await page.reload();
    await expect.poll(() => strip.getByLabel("Thickness").inputValue()).toBe("minus a bit");
    await expect.poll(() => message.textContent()).toMatch(/is not a length/);
  });

  test("in an edited address is said, and can be left out", async ({ open }) => {
    const page = await open("/bending/?bend-length.thikness=2mm");
    const strays = page.locator("#bend-length .strays");
    await expect.poll(() => strays.textContent()).toMatch(/There is no input “thikness” here/);
    await strays.getByRole("button").click();
    await expect.poll(() => strays.count()).toBe(0);
  });

  test("in a plan leaves the last good plan in sight, and everything typed in place", async ({ open }) => {
    const page = await open("/plan/?plan.name=Clip&plan.north=25mm:90deg:up:");
    const result = page.locator(".plan-result");
    await expect.poll(() => result.locator("h2").textContent()).toBe("Clip");
    const leg = page.locator("#plan-north-0-leg");
    await leg.fill("2");
    await expect
      .poll(() => page.locator("#plan-north-0-leg-message").textContent())
      .toMatch(/Leg north 1 must be longer than 2\.80 mm/);
    expect(await result.locator("h2").textContent()).toBe("Clip");
    expect(await result.locator(".stale-mark").textContent()).toMatch(/Plan for the last good values/);
    await expect.poll(() => page.url()).toContain("plan.north=2mm");
    await page.reload();
    await expect.poll(() => leg.inputValue()).toBe("2");
  });

  test("as a part file leaves the plan as it is", async ({ open }) => {
    const page = await open("/plan/?plan.name=Clip");
    await page.locator("[data-plan][data-live]").waitFor();
    await page
      .locator("input[type=file]")
      .setInputFiles({ name: "part.json", mimeType: "application/json", buffer: Buffer.from("{ not json") });
    await expect
      .poll(() => page.locator(".plan-form > .message").textContent())
      .toMatch(/part\.json: The part file is not JSON.*unchanged/);
    expect(await page.locator(".plan-result h2").textContent()).toBe("Clip");
  });
});

test("a part file opens as the plan it was saved from", async ({ open }) => {
  const page = await open("/plan/");
  await page.getByLabel("Name of the part").focus();
  await page.locator("[data-plan][data-live]").waitFor();
  const file = {
    name: "Tab",
    base: { width: "60mm", depth: "40mm" },
    sides: { north: [{ leg: "25mm", angle: "90deg", way: "up" }] },
  };
  await page
    .locator("input[type=file]")
    .setInputFiles({ name: "tab.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(file)) });
  await expect.poll(() => page.locator(".plan-result h2").textContent()).toBe("Tab");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save part file" }).click(),
  ]);
  const saved = JSON.parse(Buffer.concat(await (await download.createReadStream()).toArray()).toString());
  expect(saved).toMatchObject(file);
});

test("units change what is shown, never what is kept", async ({ open }) => {
  const page = await open("/bending/?bend-length.thickness=18ga");
  const strip = page.locator("#bend-length");
  const thickness = strip.getByLabel("Thickness");
  const radius = strip.getByLabel("Inside radius");
  await expect.poll(() => thickness.inputValue()).toBe("18ga");
  const blank = strip.locator(".answer output").first();
  const inMillimetres = await blank.textContent();
  for (const unit of ["inch", "fraction", "mm"]) await page.locator(`input[name=units][value=${unit}]`).check();
  expect(await radius.inputValue()).toBe("1.6");
  expect(await blank.textContent()).toBe(inMillimetres);
  expect(page.url()).toContain("bend-length.thickness=18ga");
});

test("a calculator and the plan can be worked with the keyboard alone", async ({ open }) => {
  const page = await open("/plan/");
  const focused = () => page.evaluate(() => document.activeElement?.id ?? "");
  for (let presses = 0; presses < 80 && (await focused()) !== "plan-depth"; presses += 1) await page.keyboard.press("Tab");
  expect(await focused()).toBe("plan-depth");
  await page.keyboard.press("ControlOrMeta+A");
  await page.keyboard.type("70");
  await expect.poll(() => page.locator(".plan-answer output").textContent()).toMatch(/ × 115\.\d\d mm$/);
  for (let presses = 0; presses < 80 && !(await focused()).endsWith("north-add"); presses += 1) await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  // A new row takes the focus, so that its leg can be typed at once.
  await expect.poll(focused).toBe("plan-north-1-leg");
});

/** Boxes have too many lists for one sheet of every paper; then the sheets are numbered. */
const mostSheets: Readonly<Record<string, number>> = { tray: 2, box: 2 };

for (const { id, raw } of startingPoints)
  test(`the plan from “${id}” prints on ${mostSheets[id] ? "at most two sheets" : "one sheet"}, A4 and Letter`, async ({
    open,
  }) => {
    const page = await open(
      `/plan/?${queryText(addressParts(partInputs, raw).map(([key, text]) => [`plan.${key}`, text] as const))}`,
    );
    await page.locator("[data-plan][data-live]").waitFor();
    // The code and the order of the bends come a moment later, and take room on the sheet.
    await page.locator(".plan-code svg").waitFor();
    if (await page.locator(".plan-bends").count()) await page.locator(".plan-order").waitFor();
    for (const format of ["A4", "Letter"]) {
      const pdf = await page.pdf({ format });
      const sheets = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length;
      expect(sheets, format).toBeLessThanOrEqual(mostSheets[id] ?? 1);
    }
  });

test("a rolled tube and a cone are planned from their starting points, and the form shows only their fields", async ({
  open,
}) => {
  const page = await open("/plan/", { screen: "phone" });
  const blank = page.locator(".plan-answer output");
  await page.getByRole("link", { name: /^Tube/ }).click();
  // π (150 − 0.8), and three seam widths of 6 mm.
  await expect.poll(() => blank.textContent()).toBe("486.73 mm × 300.00 mm");
  expect(await page.getByLabel("Base depth, south to north").count()).toBe(0);
  await page.locator("#plan-diameter").fill("200");
  // π (200 − 0.8) + 18
  await expect.poll(() => blank.textContent()).toBe("643.81 mm × 300.00 mm");
  await page.locator("#plan-arc").fill("90");
  await expect.poll(() => page.locator("#plan-seam-message").textContent()).toMatch(/Seam must be “butt” for part of a tube/);
  await page.locator("#plan-seam").selectOption("butt");
  // A quarter of π (200 − 0.8)
  await expect.poll(() => blank.textContent()).toBe("156.45 mm × 300.00 mm");

  await page.getByLabel("Kind of part").selectOption("cone");
  expect(await page.locator("#plan-arc").count()).toBe(0);
  await expect
    .poll(() => page.locator(".plan-figures svg").first().getAttribute("aria-label"))
    .toMatch(/sector of a ring: outer radius 388\.10/);
  await page.getByLabel("Kind of part").selectOption("folded");
  await expect.poll(() => page.getByLabel("Base depth, south to north").count()).toBe(1);
});

test("without JavaScript the pages still work an example", async ({ open }) => {
  const bending = await open("/bending/", { javaScript: false });
  expect(await bending.locator("#bend-length .answer output").first().textContent()).toMatch(/^\d+\.\d\d/);
  const plan = await open("/plan/", { javaScript: false });
  expect(await plan.locator(".plan-answer output").textContent()).toMatch(/^120\.00 mm × 95\.\d\d mm$/);
  expect(await plan.locator(".plan-scribe tbody tr").count()).toBe(5);
});
