import type { Page } from "playwright-core";
import { expect, test } from "./harness.ts";

/**
 * "A 1 mm aluminium cover with eight 4 mm holes on a 70 mm circle and two flanges, and a steel clip welded to it":
 * a student who knows no page goes through the handbook by its links, and comes to the right numbers and the right refusal.
 */

const aluminium = "al-3003-h14";

/** A choice of metals has all of them once its calculator is awake. */
async function choose(page: Page, id: string, value: string) {
  await page.locator(`#${id}`).focus();
  await page.locator(`#${id} option[value=${value}]`).waitFor({ state: "attached" });
  await page.locator(`#${id}`).selectOption(value);
}

test("the pages lead from a drawing of a cover to its numbers and to the refusal of the weld", async ({ open }) => {
  const page = await open("/");
  const text = (selector: string) => page.locator(selector).first().textContent();
  await page.getByRole("link", { name: "Marking out", exact: true }).first().click();
  await page.waitForURL(/\/marking\/$/);
  await page.locator("main a[href$='/marking/hole-circles/']").first().click();
  await page.waitForURL(/\/marking\/hole-circles\//);
  await page.locator("#hole-circle-diameter").fill("70");
  await page.locator("#hole-circle-count").fill("8");
  for (const field of ["startAngle", "centreX", "centreY"]) await page.locator(`#hole-circle-${field}`).fill("0");
  // 70 sin 22.5° between neighbours; the second hole stands at 35 cos 45° both ways.
  await expect.poll(() => text("#hole-circle .answer")).toContain("26.79");
  await expect.poll(() => text("#hole-circle")).toContain("24.75");

  await page.getByRole("link", { name: "Punching", exact: true }).first().click();
  await page.waitForURL(/\/punching\//);
  await choose(page, "hole-place-material", aluminium);
  await page.locator("#hole-place-thickness").fill("1");
  await page.locator("#hole-place-diameter").fill("4");
  await expect.poll(() => text("#hole-place .answer")).toContain("well placed");
  await choose(page, "punch-load-material", aluminium);
  await page.locator("#punch-load-thickness").fill("1");
  await page.locator("#punch-load-diameter").fill("4");
  // π · 4 mm · 1 mm times a shear strength of some 97 N/mm².
  await expect.poll(() => text("#punch-load .answer")).toContain("1.2 kN");

  await page.getByRole("link", { name: "Joining", exact: true }).first().click();
  await page.waitForURL(/\/joining\//);
  await choose(page, "weld-pair-materialA", aluminium);
  await choose(page, "weld-pair-materialB", "steel-cr");
  await expect.poll(() => text("#weld-pair .answer")).toMatch(/\bno$/);
  await page.locator("#weld-pair").getByRole("link", { name: "Rivet it instead" }).waitFor();

  await page.locator("main a[href$='/joining/spot-welding/']").first().click();
  await page.waitForURL(/\/joining\/spot-welding\//);
  await page.locator("#spot-setting-thickness").fill("1");
  await choose(page, "spot-setting-material", aluminium);
  await expect
    .poll(() => text("#spot-setting-material-message"))
    .toMatch(/must be carbon steel or stainless steel.*Use rivets or a folded seam/);
  await page.locator("#spot-setting").getByRole("link", { name: "Rivet it instead" }).click();
  await page.waitForURL(/\/joining\/rivets\/.*thicknessA=1mm/);
  // The thickness has come along: 3 × 1 mm asks for the next size up, 1/8 in.
  await expect.poll(() => page.locator("#rivet-joint-thicknessA").inputValue()).toBe("1");
  await expect.poll(() => text("#rivet-joint")).toMatch(/3\.18/);
});

test("the plan of the cover has its holes on the circle, its flanges, and its checks", async ({ open }) => {
  const page = await open("/plan/");
  await page.locator("#plan-name").fill("Cover");
  await choose(page, "plan-material", aluminium);
  await page.locator("#plan-thickness").fill("1");
  await page.locator("#plan-width").fill("120");
  await page.locator("#plan-depth").fill("100");
  await page.getByText("Square, rectangular and slotted holes, hole circles").click();
  await page.locator("#plan-circles-add").click();
  for (const [field, value] of [
    ["x", "60"],
    ["y", "50"],
    ["around", "70"],
    ["count", "8"],
    ["diameter", "4"],
  ] as const)
    await page.locator(`#plan-circles-0-${field}`).fill(value);
  // The channel's own two holes, and the eight of the circle.
  await expect.poll(() => page.locator(".plan-holes tbody tr").count()).toBeGreaterThanOrEqual(8);
  await expect.poll(() => page.locator(".plan-checks").textContent()).toMatch(/4\.00 mm punch with its die B/);
  await expect.poll(() => page.locator(".plan-title").textContent()).toContain("120.00 mm");

  // The steel clip: the plan refuses the weld as the joining pages do.
  await page.getByText("Pieces spot-welded to it").first().click();
  await page.locator("#plan-attachments-add").click();
  await page.locator("#plan-attachments-0-x").fill("20");
  await page.locator("#plan-attachments-0-y").fill("20");
  await page.locator("#plan-attachments-0-metal").selectOption("steel");
  await expect
    .poll(() => page.locator(".plan-checks .broken").allTextContents())
    .toEqual(expect.arrayContaining([expect.stringMatching(/metals that a small welder joins.*Use rivets/)]));
});
