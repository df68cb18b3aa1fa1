import type { Frame, Page } from "playwright-core";
import decodeQR from "qr/decode.js";
import { describe } from "vitest";
import { serveCoursePage } from "./course-page.ts";
import { accessibilityFaults, address, expect, screens, screenshot, test } from "./harness.ts";

/** What an instructor gives away: links with fixed values and units, frames in a course page, codes to scan. */

const bracket = "bend-length.material=steel-galv&bend-length.thickness=2mm&bend-length.legs=50mm;30mm";
const fixedBracket = `/embed/bend-length/?${bracket}&bend-length.fixed=material,thickness,legs`;
const thickness = "#bend-length-thickness";

async function live(page: Page | Frame): Promise<void> {
  await page.locator("[data-live]").first().waitFor();
}

async function openPanel(page: Page, form: string): Promise<void> {
  await page.locator(`${form} summary`, { hasText: "Link and course page" }).click();
  await page.locator(`${form} .link-panel dl`).waitFor();
}

/** A text of the panel, by the name that stands over it. */
const offered = async (page: Page, name: string): Promise<string> =>
  (await page.locator(".link-panel dl > div").filter({ hasText: name }).locator("code").first().textContent()) ?? "";

/** What stands in the code that a page shows, read from its picture by another library than the one that drew it. */
async function scanned(page: Page, code: string): Promise<string> {
  const picture = (await page.locator(code).screenshot()).toString("base64");
  const { width, height, data } = await page.evaluate(async (png) => {
    const bytes = Uint8Array.from(atob(png), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const context = canvas.getContext("2d");
    if (!context) throw new Error("no canvas");
    context.drawImage(bitmap, 0, 0);
    const image = context.getImageData(0, 0, bitmap.width, bitmap.height);
    return { width: image.width, height: image.height, data: [...image.data] };
  }, picture);
  return decodeQR({ width, height, data: Uint8ClampedArray.from(data) });
}

describe("fixed values", () => {
  test("are shown, marked, and stay whatever is typed, removed or put back", async ({ open }) => {
    const page = await open(fixedBracket);
    await live(page);
    expect(await page.locator(".given").textContent()).toContain("Given by the link: Material, Thickness, Outside legs.");
    expect(await page.locator(thickness).inputValue()).toBe("2");
    expect(await page.locator("#bend-length-thickness-given").textContent()).toBe("Given by the link");
    expect(await page.locator(thickness).getAttribute("aria-describedby")).toContain("bend-length-thickness-given");
    await page.locator(thickness).focus();
    await page.keyboard.type("5");
    await page.keyboard.press("Backspace");
    expect(await page.locator(thickness).inputValue()).toBe("2");
    expect(await page.locator("#bend-length-material option").count()).toBe(1);
    expect(await page.getByRole("button", { name: /Add to legs|Remove row/ }).count()).toBe(0);
    expect(await page.locator("#bend-length-legs-1-leg").getAttribute("readonly")).not.toBeNull();

    await page.locator("#bend-length-angle").fill("45");
    await expect.poll(() => new URL(page.url()).search).toContain("bend-length.angle=45");
    expect(new URL(page.url()).search).toContain("bend-length.fixed=material,thickness,legs");
    await page.getByRole("button", { name: "Back to the start values" }).click();
    await expect.poll(() => page.locator("#bend-length-angle").inputValue()).toBe("90");
    expect(await page.locator(thickness).inputValue()).toBe("2");
    expect(new URL(page.url()).search).toContain("bend-length.thickness=2mm");
    await page.reload();
    await live(page);
    expect(await page.locator(thickness).inputValue()).toBe("2");
    expect(await page.locator(thickness).getAttribute("readonly")).not.toBeNull();
  });

  test("are left behind on the ordinary page only, by one link", async ({ open }) => {
    const framed = await open(fixedBracket);
    await live(framed);
    expect(await framed.getByRole("link", { name: "Start over with own values" }).count()).toBe(0);
    const page = await open(`/bending/?${bracket}&bend-length.fixed=thickness&units=inch#bend-length`);
    await page.locator("#bend-length[data-live]").waitFor();
    await page.locator("#bend-length").getByRole("link", { name: "Start over with own values" }).click();
    await expect.poll(() => new URL(page.url()).search).toBe("");
    await page.locator(thickness).hover();
    await page.locator("#bend-length[data-live]").waitFor();
    await page.locator(thickness).fill("3");
    expect(await page.locator(thickness).inputValue()).toBe("3");
  });

  test("an answer handed on within the page changes the rest and says what stays", async ({ open }) => {
    const page = await open(
      "/cutting/?cut-method.thickness=1mm&cut-method.cutLength=300mm&shear-load.thickness=2mm&shear-load.fixed=thickness",
    );
    await page.locator("#cut-method[data-live]").waitFor();
    await page.locator("#shear-load[data-live]").waitFor();
    await page.locator("#cut-method a.button", { hasText: "Force and blade gap" }).click();
    await expect.poll(() => page.locator("#shear-load-length").inputValue()).toBe("300");
    expect(await page.locator("#shear-load-thickness").inputValue()).toBe("2");
    expect(await page.locator("#shear-load .given [role=status]").textContent()).toMatch(/stays as it is: Thickness/);
  });

  test("that are no inputs are named, and can be left out", async ({ open }) => {
    const page = await open("/embed/bend-length/?bend-length.fixed=thickness,colour,__proto__");
    await live(page);
    expect(await page.locator(".strays").textContent()).toMatch(/fixes “colour”, “__proto__”, which/);
    await page.getByRole("button", { name: "Leave out what is not known here" }).click();
    await expect.poll(() => page.locator(".strays").count()).toBe(0);
    await expect.poll(() => new URL(page.url()).search).toBe("?bend-length.thickness=1.2mm&bend-length.fixed=thickness");
  });

  test("that cannot be used say whom to tell", async ({ open }) => {
    const page = await open("/embed/bend-length/?bend-length.thickness=thick&bend-length.fixed=thickness");
    await live(page);
    expect(await page.locator(".given").textContent()).toContain("Tell whoever gave you the link");
    expect(await page.locator("#bend-length-thickness-message").textContent()).toContain("“thick”");
  });

  test("hold in a plan against starting points and the drawing", async ({ open }) => {
    const page = await open("/plan/?plan.name=Clip&plan.material=al-5052-h32&plan.south=30mm&plan.fixed=material,south,name");
    await live(page);
    await page.getByRole("link", { name: /^Tray/ }).click();
    await expect.poll(() => page.locator("#plan-north-0-leg").count()).toBe(1);
    expect(await page.locator("#plan-south-0-leg").inputValue()).toBe("30");
    expect(await page.locator("#plan-material").inputValue()).toBe("al-5052-h32");
    expect(await page.locator("#plan-name").inputValue()).toBe("Clip");
    await expect
      .poll(() => page.locator(".given [role=status]").textContent())
      .toMatch(/stays as it is: .*Legs on the south side/);
    await page.getByText("Edit on the drawing").click();
    await page.locator(".edit-sheet").waitFor();
    const again = await open("/plan/", { beside: page });
    await live(again);
    // What the link gave is not carried into the visitor's own plan: it is not fixed there.
    expect(await again.locator(".given").count()).toBe(0);
  });
});

describe("units in the address", () => {
  const inches = "/embed/bend-length/?bend-length.thickness=2mm&units=inch";

  test("are shown, lock the switch and say so; what the visitor chose is untouched", async ({ open }) => {
    const page = await open("/embed/bend-length/");
    await page.locator("input[name=units][value=fraction]").check();
    const kept = () => page.evaluate(() => localStorage.getItem("flat-to-formed.units"));
    expect(await kept()).toBe("fraction");
    await page.goto(address(inches));
    await live(page);
    await expect.poll(() => page.locator(thickness).inputValue()).toBe("0.0787");
    await expect.poll(() => page.locator("input[name=units][value=mm]").isDisabled()).toBe(true);
    expect(await page.locator(".units-said").textContent()).toBe(
      "Set by the link: decimal inches. Your own choice is kept for other pages.",
    );
    expect(await kept()).toBe("fraction");
    await page.goto(address("/embed/bend-length/?units=mm"));
    await expect.poll(() => page.locator("input[name=units][value=mm]").isChecked()).toBe(true);
    await page.locator("[data-calculator]").hover();
    await live(page);
    expect(await page.locator(thickness).inputValue()).toBe("1.2");
    await page.goto(address("/embed/bend-length/"));
    await expect.poll(() => page.locator("input[name=units][value=fraction]").isChecked()).toBe(true);
    expect(await page.locator("input[name=units][value=mm]").isDisabled()).toBe(false);
  });

  test("that there are not are named, and lock nothing", async ({ open }) => {
    const page = await open("/bending/?units=furlong");
    await expect.poll(() => page.locator(".units-said").textContent()).toMatch(/“furlong”.*mm, inch, fraction/);
    expect(await page.locator("input[name=units][value=mm]").isDisabled()).toBe(false);
  });
});

describe("the fold at a calculator", () => {
  test("makes the link, the frame and the code with what was ticked", async ({ open }) => {
    const page = await open(`/bending/?${bracket}#bend-length`);
    await page.locator("#bend-length[data-live]").waitFor();
    await openPanel(page, "#bend-length");
    const panel = page.locator("#bend-length .link-panel");
    await panel.getByLabel(/^Thickness/).check();
    await panel.getByLabel(/^Angle/).check();
    await panel.getByRole("combobox").selectOption("inch");
    const link = `${address("/bending/")}?${bracket.replace("&bend-length.legs", "&bend-length.angle=90deg&bend-length.legs")}&bend-length.fixed=thickness,angle&units=inch#bend-length`;
    await expect.poll(() => offered(page, "Link to this page")).toBe(link);
    await panel.getByRole("button", { name: "Show the code" }).click();
    await panel.locator(".link-code svg").waitFor();
    expect(await scanned(page, "#bend-length .link-code svg")).toBe(link);
    expect(await accessibilityFaults(page)).toEqual([]);
    await screenshot(page, "link-panel");

    await page.goto(link);
    await page.locator("#bend-length[data-live]").waitFor();
    await expect.poll(() => page.locator(thickness).inputValue()).toBe("0.0787");
    expect(await page.locator("#bend-length-angle").getAttribute("readonly")).not.toBeNull();
  });

  test("is not fetched before it is opened", async ({ open }) => {
    const page = await open(fixedBracket);
    await live(page);
    const files = () =>
      page.evaluate(() => performance.getEntriesByType("resource").filter(({ name }) => /link-?panel/i.test(name)).length);
    expect(await files()).toBe(0);
    await openPanel(page, "#bend-length");
    expect(await files()).toBeGreaterThan(1);
  });
});

describe("a frame in a course page of another origin", () => {
  test("is as tall as it needs where the page listens, and works where it does not", async ({ open }) => {
    const page = await open(`/bending/?${bracket}#bend-length`);
    await page.locator("#bend-length[data-live]").waitFor();
    await openPanel(page, "#bend-length");
    await page
      .locator("#bend-length .link-panel")
      .getByLabel(/^Thickness/)
      .check();
    await expect.poll(() => offered(page, "Frame for a course page")).toContain("fixed=thickness");
    const frame = await offered(page, "Frame for a course page");
    const script = await offered(page, "Script for that course page");

    const listening = await serveCoursePage(frame + script);
    const plain = await serveCoursePage(frame);
    try {
      const course = await page.context().newPage();
      await course.goto(listening.address);
      const height = () => course.locator("iframe").evaluate((element) => element.getBoundingClientRect().height);
      await expect.poll(height).toBeGreaterThan(900);
      const inner = course.frames().find((each) => each.url().includes("/embed/bend-length/"));
      if (!inner) throw new Error("the frame is not there");
      await live(inner);
      expect(await inner.locator(thickness).inputValue()).toBe("2");
      expect(await inner.locator(thickness).getAttribute("readonly")).not.toBeNull();
      const whole = () => inner.evaluate(() => Math.ceil(document.body.getBoundingClientRect().height));
      const frameFits = async () => Math.abs((await height()) - (await whole())) <= 5;
      await expect.poll(frameFits).toBe(true);
      const before = await height();
      await inner.getByText("Where this holds, cautions and sources").click();
      await expect.poll(height).toBeGreaterThan(before + 100);
      await expect.poll(frameFits).toBe(true);
      await inner.getByText("Where this holds, cautions and sources").click();
      await expect.poll(async () => Math.abs((await height()) - before) <= 5).toBe(true);

      await course.goto(plain.address);
      expect(await height()).toBeLessThan(900);
      const still = course.frames().find((each) => each.url().includes("/embed/bend-length/"));
      if (!still) throw new Error("the frame is not there");
      await live(still);
      await still.locator("#bend-length-angle").fill("60");
      await expect.poll(() => still.locator("#bend-length .answer-number").textContent()).toMatch(/mm/);
    } finally {
      await listening.close();
      await plain.close();
    }
  });

  test("holds a plan too, and leaves the visitor's own plan alone", async ({ open }) => {
    const page = await open("/plan/?plan.name=Own&plan.width=90mm");
    await live(page);
    await openPanel(page, "[data-plan]");
    await page.locator(".link-panel").getByRole("button", { name: "Fix all" }).click();
    await expect.poll(() => offered(page, "Frame for a course page")).toContain("/embed/plan/?");
    const frame = await offered(page, "Frame for a course page");
    const script = await offered(page, "Script for that course page");
    const kept = () => page.evaluate(() => localStorage.getItem("flat-to-formed:last-plan"));
    const own = await kept();
    const served = await serveCoursePage(frame + script);
    try {
      const course = await page.context().newPage();
      const told: unknown[] = [];
      await course.exposeFunction("tell", (data: unknown) => told.push(data));
      await course.addInitScript(() => {
        addEventListener("message", ({ data }) => (globalThis as unknown as { tell: (data: unknown) => void }).tell(data));
      });
      await course.goto(served.address);
      await expect.poll(() => told.length).toBeGreaterThan(0);
      expect(told[0]).toEqual({ type: "flat-to-formed:height", id: "plan", height: expect.any(Number) });
      const inner = course.frames().find((each) => each.url().includes("/embed/plan/"));
      if (!inner) throw new Error("the frame is not there");
      await live(inner);
      expect(await inner.locator("#plan-width").inputValue()).toBe("90");
      expect(await inner.locator("#plan-width").getAttribute("readonly")).not.toBeNull();
      expect(await inner.getByText("Keep this plan on the device").count()).toBe(0);
    } finally {
      await served.close();
    }
    expect(await kept()).toBe(own);
  });
});

describe("pages for frames and the page for instructors", () => {
  for (const path of [
    "/links/",
    "/embed/plan/?plan.material=steel-cr&plan.fixed=material,south&units=inch",
    `${fixedBracket}&units=inch`,
  ])
    for (const colorScheme of ["light", "dark"] as const)
      test(`${path.split("?")[0]} has no fault that can be found, ${colorScheme}`, async ({ open }) => {
        const page = await open(path, { colorScheme, screen: "narrow" });
        if (!path.startsWith("/links/")) await live(page);
        expect(await accessibilityFaults(page)).toEqual([]);
        const { scroll, small } = await page.evaluate(() => ({
          scroll: document.documentElement.scrollWidth,
          small: [
            ...document.querySelectorAll<HTMLElement>("button, select, summary, .switch label, .link-panel label, .given a"),
          ]
            .filter((each) => each.checkVisibility())
            .map((each) => each.getBoundingClientRect())
            .filter(({ height }) => height < 43.9).length,
        }));
        expect(scroll).toBeLessThanOrEqual(screens.narrow.viewport.width);
        expect(small).toBe(0);
      });
});

test("the fold fits the narrowest screen, and every target is large enough", async ({ open }) => {
  const page = await open(`/bending/?${bracket}#bend-length`, { screen: "narrow" });
  await page.locator("#bend-length[data-live]").waitFor();
  await openPanel(page, "#bend-length");
  await page.getByRole("button", { name: "Show the code" }).click();
  await page.locator(".link-code svg").waitFor();
  const { scroll, small } = await page.evaluate(() => ({
    scroll: document.documentElement.scrollWidth,
    small: [...document.querySelectorAll<HTMLElement>(".link-panel :is(button, select, li label)")]
      .map((each) => each.getBoundingClientRect())
      .filter(({ height }) => height < 43.9).length,
  }));
  expect(scroll).toBeLessThanOrEqual(screens.narrow.viewport.width);
  expect(small).toBe(0);
});
