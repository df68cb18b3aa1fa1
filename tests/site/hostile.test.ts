import type { Page } from "playwright-core";
import { describe } from "vitest";
import { seededRandom } from "../../src/lib/sheet/random.ts";
import type { Random } from "../fuzz/damage.ts";
import { readers } from "../fuzz/readers.ts";
import { expect, type Open, test } from "./harness.ts";

/** Damaged addresses and damaged stored data in a real browser; `HOSTILE_CASES=5000 npm run test:site -- hostile` for more of them. */
const cases = Number(process.env.HOSTILE_CASES ?? 6);

/** The makers of damaged texts, which the readers are tried with by themselves too. */
function maker(name: string): (random: Random) => string | Promise<string> {
  const found = readers.find((reader) => reader.name === name);
  if (!found) throw new Error(`There is no reader called ${name}`);
  return found.make;
}

const addresses: Readonly<Record<string, (random: Random) => Promise<string>>> = {
  "of a calculator": async (random) => {
    const [id = "", ...query] = (await maker("address of a calculator")(random)).split("?");
    return `/embed/${id}/?${query.join("?")}`;
  },
  "of a plan": async (random) => `/plan/?${await maker("address of a plan")(random)}`,
  "of a packed plan": async (random) =>
    `/plan/?${new URLSearchParams({ "plan.packed": await maker("packed address")(random) }).toString()}`,
  "of a task": async (random) => `/task/?${await maker("address of an assignment")(random)}`,
  "of an assignment": async (random) => `/assign/?${await maker("address of an assignment")(random)}`,
};

/** The page is there, answers, and nothing of what it was given has run. */
async function expectSound(page: Page, what: string): Promise<void> {
  // biome-ignore lint/performance/useDomNodeTextContent: a page whose text is hidden is a blank page
  expect(await page.locator("main").innerText(), what).toMatch(/\w{3}/);
  // The damaged texts hold scripts that would set this.
  expect(await page.evaluate(() => "ran" in globalThis), what).toBe(false);
}

/** Opens pages one after the other in one tab, as a reader would who is sent one bad link after another. */
async function tab(open: Open): Promise<(path: string) => Promise<Page>> {
  const page = await open("/404.html");
  page.on("dialog", (dialog) => {
    void dialog.dismiss();
    throw new Error(`A page that was given ${page.url()} asked “${dialog.message()}”`);
  });
  const root = page.url().replace(/\/404\.html$/, "");
  return async (path) => {
    // A fragment would not load the page anew.
    await page.goto(root + path.replaceAll("#", "%23"), { waitUntil: "load" });
    return page;
  };
}

describe("damaged addresses", () => {
  test.for(Object.keys(addresses))("%s", { timeout: 60_000 + cases * 15_000 }, async (name, { open }) => {
    const visit = await tab(open);
    for (let index = 0; index < cases; index++) {
      const path = (await addresses[name]?.(seededRandom(7 * 1_000_003 + index))) ?? "";
      const page = await visit(path);
      await page
        .locator("[data-live]")
        .first()
        .waitFor({ timeout: 5000 })
        .catch(() => {});
      await expectSound(page, path);
    }
  });
});

describe("damaged stored data", () => {
  test("on the pages that read it: nothing is blank, and what was kept is still there", {
    timeout: 60_000 + cases * 15_000,
  }, async ({ open }) => {
    const visit = await tab(open);
    const pages = ["/plan/", "/shop/", "/assign/", "/display/", "/device/", "/sheet/"];
    for (let index = 0; index < cases; index++) {
      const text = await maker("what a device keeps")(seededRandom(11 * 1_000_003 + index));
      const at = text.indexOf("=");
      const [key, kept] = [text.slice(0, at), text.slice(at + 1)];
      const page = await visit("/404.html");
      await page.evaluate(
        ([name = "", value = ""]) => {
          localStorage.clear();
          localStorage.setItem(name, value);
        },
        [key, kept],
      );
      const stored = await page.evaluate((name) => localStorage.getItem(name), key);
      const path = pages[index % pages.length] ?? "/plan/";
      await visit(path);
      await page
        .locator("[data-live]")
        .first()
        .waitFor({ timeout: 5000 })
        .catch(() => {});
      await expectSound(page, `${path} with ${key}=${kept.slice(0, 200)}`);
      const all = await page.evaluate(() => Object.values({ ...localStorage }));
      expect(all, `what was kept under ${key}: ${kept.slice(0, 200)}`).toContain(stored);
    }
  });
});
