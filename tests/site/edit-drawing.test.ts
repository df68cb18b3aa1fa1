import { expect, test } from "./harness.ts";

test("a part is built and changed on the drawing: a leg, a hole where it was touched, a hole moved by keys", async ({ open }) => {
  const page = await open("/plan/?plan.name=Bracket&plan.width=80mm&plan.depth=60mm");
  await page.locator("[data-plan][data-live]").waitFor();
  await page.getByText("Edit on the drawing").click();
  const drawing = page.locator(".edit-drawing");
  await drawing.getByRole("button", { name: "Add a leg on north" }).click();
  await expect.poll(() => page.url()).toContain("plan.north=20mm:90deg:up");
  await drawing.getByLabel("Leg", { exact: true }).fill("30");
  await expect.poll(() => page.url()).toContain("plan.north=30mm:90deg:up");

  const base = drawing.getByRole("button", { name: "Base" });
  await base.click();
  await drawing.getByRole("button", { name: "Add a hole at the mark" }).click();
  // Touched in its middle.
  await expect.poll(() => page.url()).toMatch(/plan\.holes=base:40mm:(29|30)mm:5mm/);
  const hole = drawing.getByRole("button", { name: "Hole 1 on Base" });
  await hole.focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => page.url()).toMatch(/plan\.holes=base:42mm:/);

  const box = await hole.locator(".cut").boundingBox();
  if (!box) throw new Error("the hole is not drawn");
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 30, y, { steps: 4 });
  await page.mouse.up();
  await expect.poll(() => page.url()).toMatch(/plan\.holes=base:(2\d|3\d)mm:/);
  await drawing.getByRole("button", { name: "Remove hole 1" }).click();
  await expect.poll(() => page.url()).not.toContain("plan.holes");
});

test("a hole is set on the blank of a cone where it was touched", async ({ open }) => {
  const page = await open("/plan/?plan.kind=cone");
  await page.locator("[data-plan][data-live]").waitFor();
  await page.getByText("Edit on the drawing").click();
  const drawing = page.locator(".edit-drawing");
  await drawing.locator("#drawing-largeDiameter").fill("180");
  await expect.poll(() => page.url()).toContain("plan.largeDiameter=180mm");
  await drawing.getByRole("button", { name: "Base" }).focus();
  await drawing.getByRole("button", { name: "Add a hole in the middle" }).click();
  await expect.poll(() => page.url()).toMatch(/plan\.holes=base:\d+mm:\d+mm:5mm/);
  await drawing.getByRole("button", { name: "Remove hole 1" }).click();
  await expect.poll(() => page.url()).not.toContain("plan.holes");
});
