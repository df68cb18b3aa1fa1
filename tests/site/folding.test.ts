import { describe } from "vitest";
import { accessibilityFaults, expect, type Open, test } from "./harness.ts";

const tray = "/plan/?plan.width=200mm&plan.depth=150mm&plan.north=40mm:90deg:up&plan.south=40mm:90deg:up&plan.east=40mm:90deg:up";

async function picture(open: Open, path: string, options: Parameters<Open>[1] = {}) {
  const page = await open(path, options);
  const section = page.locator(".plan-folding");
  await section.scrollIntoViewIfNeeded();
  return {
    page,
    section,
    words: section.locator(".fold-words"),
    folded: section.getByLabel("Folded so far"),
    around: section.getByLabel("Walk round it"),
    drawn: () =>
      section.locator(".fold-stage .fold-face").evaluateAll((faces) => faces.map((face) => face.getAttribute("d")).join("\n")),
    live: () => page.locator("[data-plan][data-live]").waitFor(),
  };
}

describe("the picture that folds", () => {
  test("follows its slider, and says which bend is being made", async ({ open }) => {
    const { folded, words, drawn, live } = await picture(open, tray);
    await live();
    expect(await words.textContent()).toBe("Flat, before step 1 of 3.");
    const flat = await drawn();
    await folded.fill("0.5");
    await expect.poll(() => words.textContent()).toMatch(/^Step 1 of 3: bend \w+\.1 up to 90°\.$/);
    expect(await folded.getAttribute("aria-valuetext")).toMatch(/^Step 1 of 3: .* 50 % of it done\.$/);
    const half = await drawn();
    expect(half).not.toBe(flat);
    await folded.fill("3");
    await expect.poll(() => words.textContent()).toMatch(/^Step 3 of 3: .* Finished\.$/);
    expect(await drawn()).not.toBe(half);
    await folded.fill("0");
    await expect.poll(drawn).toBe(flat);
  });

  test("goes by keyboard: along the folding, and round the part", async ({ open }) => {
    const { page, folded, around, words, drawn, live } = await picture(open, tray);
    await live();
    await folded.focus();
    await page.keyboard.press("End");
    await expect.poll(() => words.textContent()).toMatch(/^Step 3 of 3/);
    const before = await drawn();
    await around.focus();
    const from = await around.getAttribute("aria-valuetext");
    for (let press = 0; press < 9; press += 1) await page.keyboard.press("ArrowRight");
    await expect.poll(drawn).not.toBe(before);
    expect(await around.getAttribute("aria-valuetext")).not.toBe(from);
  });

  test("turns when it is dragged", async ({ open }) => {
    const { page, section, drawn, live } = await picture(open, tray);
    await live();
    const before = await drawn();
    const box = await section.locator(".fold-stage").boundingBox();
    const [x, y] = [(box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 90, y, { steps: 4 });
    await page.mouse.up();
    await expect.poll(drawn).not.toBe(before);
    const turned = await drawn();
    await page.mouse.move(x - 90, y, { steps: 2 });
    expect(await drawn()).toBe(turned);
  });

  test("does nothing by itself; played, it stops when asked and goes on by steps", async ({ open }) => {
    const { page, section, folded, words, live } = await picture(open, tray);
    await live();
    await page.waitForTimeout(500);
    expect(await folded.inputValue()).toBe("0");
    await section.getByRole("button", { name: "Play" }).click();
    await expect.poll(async () => Number(await folded.inputValue())).toBeGreaterThan(0.2);
    await section.getByRole("button", { name: "Pause" }).click();
    const stopped = await folded.inputValue();
    expect(await words.textContent()).toMatch(/^Step 1 of 3/);
    await section.getByRole("button", { name: "Next step" }).click();
    await expect.poll(() => folded.inputValue()).toBe("1");
    expect(Number(stopped)).toBeLessThan(1);
    await section.getByRole("button", { name: "Back one step" }).click();
    await expect.poll(() => folded.inputValue()).toBe("0");
    expect(await words.textContent()).toBe("Flat, before step 1 of 3.");
  });

  test("jumps from step to step where motion is to be reduced", async ({ open }) => {
    const { page, section, folded, live } = await picture(open, tray, { reducedMotion: "reduce" });
    await live();
    await page.evaluate(() => {
      const seen: number[] = [];
      (globalThis as unknown as { seen: number[] }).seen = seen;
      const slider = document.querySelector<HTMLInputElement>(".fold-controls input") as HTMLInputElement;
      const look = () => {
        seen.push(Number(slider.value));
        requestAnimationFrame(look);
      };
      look();
    });
    await section.getByRole("button", { name: "Next step" }).click();
    await expect.poll(() => folded.inputValue()).toBe("1");
    await section.getByRole("button", { name: "Play" }).click();
    await expect.poll(() => folded.inputValue(), { timeout: 10_000 }).toBe("3");
    const seen = await page.evaluate(() => (globalThis as unknown as { seen: number[] }).seen);
    expect([...new Set(seen)]).toEqual([0, 1, 2, 3]);
  });

  test("is pressed before the page is live, and plays then", async ({ open }) => {
    const { section, folded } = await picture(open, "/plan/", { screen: "phone" });
    await section.getByRole("button", { name: "Play" }).tap();
    await expect.poll(async () => Number(await folded.inputValue())).toBeGreaterThan(0);
  });

  test("follows the part that is entered", async ({ open }) => {
    const { page, section, words, drawn, live } = await picture(open, tray);
    await live();
    const before = await drawn();
    await page.getByLabel("Base width, west to east").fill("240");
    await expect.poll(drawn).not.toBe(before);
    await page.getByRole("link", { name: /^J a lip/ }).click();
    await expect.poll(() => words.textContent()).toBe("Flat, before step 1 of 3.");
    await section.getByLabel("Folded so far").fill("0.6");
    await expect.poll(() => words.textContent()).toMatch(/^Step 1 of 3: fold the south edge up, flat onto the sheet\.$/);
  });

  test("without scripts is a strip of stills, from the flat blank to the finished part", async ({ open }) => {
    const page = await open("/plan/", { javaScript: false });
    const stills = page.locator(".fold-strip li");
    expect(await stills.count()).toBe(3);
    expect(await page.locator(".fold-live").isVisible()).toBe(false);
    expect(await stills.first().isVisible()).toBe(true);
    expect(await stills.allTextContents()).toEqual([
      "Flat, before step 1 of 2.",
      expect.stringMatching(/^Step 1 of 2: bend \w+\.1 up to 90°\.$/),
      expect.stringMatching(/^Step 2 of 2: bend \w+\.1 up to 90°\. Finished\.$/),
    ]);
    const drawings = await stills.locator("svg").evaluateAll((all) => all.map((svg) => svg.innerHTML));
    expect(new Set(drawings).size).toBe(3);
  });

  test("on paper is only the finished part", async ({ open }) => {
    const { page, section, live } = await picture(open, tray);
    await live();
    await page.emulateMedia({ media: "print" });
    expect(await section.isVisible()).toBe(false);
    const finished = page.getByRole("img", { name: /, finished, seen from the south-east$/ });
    expect(await finished.isVisible()).toBe(true);
  });
});

for (const screen of ["phone", "narrow", "laptop"] as const)
  test(`the folding picture on a ${screen} is free of faults axe finds, and big enough to touch`, async ({ open }) => {
    const { page, section, folded, live } = await picture(open, tray, { screen });
    await live();
    await folded.fill("1.4");
    expect(await accessibilityFaults(page)).toEqual([]);
    for (const control of await section.locator("button, input").all()) {
      const box = await control.boundingBox();
      expect(box?.height).toBeGreaterThanOrEqual(44);
      expect(box?.width).toBeGreaterThanOrEqual(44);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  });
