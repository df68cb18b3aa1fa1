import { describe } from "vitest";
import { sidewaysOverflow, smallControls } from "../../scripts/browser/layout.ts";
import { builtPages } from "./built.ts";
import { accessibilityFaults, expect, test } from "./harness.ts";

const pages = await builtPages();

describe.each(pages.map(({ path }) => path))("%s", (path) => {
  test("fits the narrowest screen, with controls a finger can hit", async ({ open }) => {
    const page = await open(path, { screen: "narrow" });
    expect(await sidewaysOverflow(page)).toEqual([]);
    expect(await smallControls(page, 44)).toEqual([]);
  });

  test("has no accessibility fault, in light colours or dark", async ({ open }) => {
    const page = await open(path);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: "dark" });
    // Only colours change.
    expect(await accessibilityFaults(page, ["color-contrast"])).toEqual([]);
  });

  test("can be read without JavaScript", async ({ open }) => {
    const page = await open(path, { javaScript: false });
    expect(await page.locator("main").textContent()).toMatch(/\w/);
  });
});
