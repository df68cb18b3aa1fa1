import { expect, test } from "./harness.ts";

/** A 200 × 150 × 40 mm tray in 1 mm steel with folded rims and twelve holes, from nothing to paper, as a new user builds it. */

for (const screen of ["phone", "laptop"] as const)
  test(`a tray with folded rims and twelve holes is planned and printed on a ${screen}`, async ({ open }) => {
    const page = await open("/plan/", { screen });
    await page.getByRole("link", { name: /^Tray/ }).click();
    await page.locator("[data-plan][data-live]").waitFor();
    await expect.poll(() => page.locator(".plan-title h2").textContent()).toBe("Tray");
    await page.locator("#plan-thickness").fill("1");

    await page.locator("summary", { hasText: /^Folded edges$/ }).click();
    for (const [index, side] of ["north", "south", "east", "west"].entries()) {
      await page.locator("#plan-edges-add").click();
      await page.locator(`#plan-edges-${index}-side`).selectOption(side);
      await page.locator(`#plan-edges-${index}-way`).selectOption("down");
    }
    // The tray comes with four holes; eight more make a grid of twelve.
    for (const [index, [x, y]] of [
      [75, 15],
      [125, 15],
      [15, 75],
      [75, 75],
      [125, 75],
      [185, 75],
      [75, 135],
      [125, 135],
    ].entries()) {
      await page.locator("#plan-holes-add").click();
      const row = `#plan-holes-${4 + index}`;
      await page.locator(`${row}-x`).fill(String(x));
      await page.locator(`${row}-y`).fill(String(y));
      await page.locator(`${row}-diameter`).fill("5");
    }
    // BD = 2 (1.6 + 1) − π/2 (1.6 + 0.45) = 1.98; 200 + 2 (40 + 6 − BD) and 150 + the same.
    const blank = page.locator(".plan-answer output");
    const grown = 2 * (46 - (2 * 2.6 - (Math.PI / 2) * 2.05));
    await expect.poll(() => blank.textContent()).toBe(`${(200 + grown).toFixed(2)} mm × ${(150 + grown).toFixed(2)} mm`);
    await expect.poll(() => page.locator(".plan-checks").textContent()).toMatch(/5\.00 mm punch with its die C/);
    // The order arrives from its worker: rims first, then the sides.
    const order = page.locator(".plan-order .order-steps > li");
    await expect.poll(() => order.count(), { timeout: 20_000 }).toBe(8);
    expect(await order.first().textContent()).toMatch(/\.edge/);
    expect(await order.last().textContent()).toMatch(/\.1/);

    const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBeLessThanOrEqual(2);
  });
