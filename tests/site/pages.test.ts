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

  test.for(["light", "dark"] as const)("has no accessibility fault in %s colours", async (colorScheme, { open }) => {
    expect(await accessibilityFaults(await open(path, { colorScheme }))).toEqual([]);
  });

  test("can be read without JavaScript", async ({ open }) => {
    const page = await open(path, { javaScript: false });
    expect(await page.locator("main").textContent()).toMatch(/\w/);
  });
});
