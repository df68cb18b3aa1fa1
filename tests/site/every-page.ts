import { describe } from "vitest";
import { sidewaysOverflow, smallControls } from "../../scripts/browser/layout.ts";
import { accessibilityFaults, address, expect, screens, test } from "./harness.ts";

/** What has to hold on every page. In a file of its own, so that the pages can be shared out among the test files. */
export function checkPages(paths: readonly string[]): void {
  describe.each(paths)("%s", (path) => {
    test("has no accessibility fault in light colours or dark, and fits the narrowest screen, with controls a finger can hit", async ({
      open,
    }) => {
      const page = await open(path);
      expect(await accessibilityFaults(page)).toEqual([]);
      await page.emulateMedia({ colorScheme: "dark" });
      // Only colours change.
      expect(await accessibilityFaults(page, ["color-contrast"])).toEqual([]);
      await page.setViewportSize(screens.narrow.viewport);
      expect(await sidewaysOverflow(page)).toEqual([]);
      expect(await smallControls(page, 44)).toEqual([]);
    });
  });

  test("every one can be read without JavaScript", { timeout: 300_000 }, async ({ open }) => {
    const page = await open(paths[0] ?? "/", { javaScript: false });
    for (const path of paths) {
      await page.goto(address(path));
      // biome-ignore lint/performance/useDomNodeTextContent: text that is hidden without JavaScript does not count
      expect(await page.locator("main").innerText(), path).toMatch(/\w/);
    }
  });
}
