import { accessibilityFaults, expect, test } from "./harness.ts";

const place = "/sign-off/";

test("a plan leads to its own sheet, with its machines and questions", { timeout: 120_000 }, async ({ open }) => {
  const page = await open("/plan/?plan.kind=tube&plan.name=Drum");
  await page.locator("[data-plan][data-live]").waitFor();
  await page.getByRole("link", { name: /Sign-off sheet/ }).click();
  await page.locator("[data-sign-off][data-live]").waitFor();
  const sheet = page.locator(".sign-off-sheet");
  expect(await sheet.locator("h2").textContent()).toContain("Drum");
  const stations = await sheet.locator("h3").allTextContents();
  expect(stations.some((title) => title.startsWith("Rolls"))).toBe(true);
  expect(stations.some((title) => title.startsWith("Folding brake"))).toBe(false);
  expect(await page.locator(".good-answer").count()).toBe(0);
  await page.getByLabel(/supervisor’s copy/).check();
  expect(await page.locator(".good-answer").count()).toBe(await sheet.locator("ol > li").count());
  const back = await page.getByRole("link", { name: "Back to the plan" }).getAttribute("href");
  expect(back).toContain("plan.name=Drum");
});

test("the sheet of the example stands there by itself, and a copy chosen before it is live is the one shown", {
  timeout: 120_000,
}, async ({ open }) => {
  const page = await open(place);
  await page.locator("[data-sign-off][data-settled]").waitFor();
  expect(await page.locator("[data-sign-off][data-live]").count()).toBe(0);
  // As a finger does it: the choice is made at once, what shows it comes later.
  await page.evaluate(() => document.querySelectorAll<HTMLInputElement>(".sign-off-choice input")[1]?.click());
  await page.locator("[data-sign-off]").dispatchEvent("pointerdown");
  await page.locator("[data-sign-off][data-live]").waitFor();
  await page.locator(".good-answer").first().waitFor();
  expect(await page.locator(".good-answer").count()).toBe(await page.locator(".sign-off-sheet ol > li").count());
  expect(await page.getByLabel(/supervisor’s copy/).isChecked()).toBe(true);
  await page.getByLabel(/student’s sheet/).check();
  expect(await page.locator(".good-answer").count()).toBe(0);
});

test("a part that cannot be planned is not signed for", async ({ open }) => {
  const page = await open(`${place}?plan.thickness=nothing`);
  await page.locator("[data-sign-off][data-live]").waitFor();
  expect(await page.getByRole("alert").filter({ hasText: "no plan to sign" }).count()).toBe(1);
  expect(await page.locator(".sign-off-sheet").count()).toBe(0);
});

for (const format of ["A4", "Letter"] as const)
  test(`prints on few sheets of ${format}, nothing of the page around it`, { timeout: 120_000 }, async ({ open }) => {
    const page = await open(place);
    await page.locator("[data-sign-off][data-settled]").waitFor();
    const pdf = (await page.pdf({ format })).toString("latin1");
    const sheets = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(sheets).toBeGreaterThanOrEqual(1);
    expect(sheets).toBeLessThanOrEqual(3);
    await page.emulateMedia({ media: "print" });
    expect(await page.getByRole("button", { name: "Print this sheet" }).isVisible()).toBe(false);
    expect(await page.getByText("Supervisor’s signature").isVisible()).toBe(true);
  });

for (const colorScheme of ["light", "dark"] as const)
  test(`reads well with aids, ${colorScheme}`, { timeout: 120_000 }, async ({ open }) => {
    const page = await open(place, { colorScheme, screen: "narrow" });
    await page.locator("[data-sign-off][data-settled]").waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });
