import type { Page } from "playwright-core";
import { describe } from "vitest";
import { address, expect, test } from "./harness.ts";

/** A calculator alone waits until somebody reaches for it. */
async function live(page: Page): Promise<void> {
  await page.locator("[data-calculator]").hover();
  await page.locator("[data-calculator][data-live]").waitFor();
}

/** What a calculator does in a browser beyond the main path: coming to life, addresses, handing on, frames. */

const embedded = "/embed/bend-length/";
const thickness = "#bend-length-thickness";

describe("coming to life", () => {
  test("what was typed and pressed before is not lost", async ({ open }) => {
    const page = await open("/bending/", { javaScript: true });
    const context = page.context();
    // Scripts are held back until someone has typed, as on a slow line.
    let letGo = () => {};
    const held = new Promise<void>((done) => {
      letGo = done;
    });
    const slow = await context.newPage();
    await slow.route(/_astro\/calculator\.[^/]*\.js$/, async (route) => {
      await held;
      await route.continue();
    });
    await slow.goto(address(embedded), { waitUntil: "commit" });
    await slow.locator(thickness).fill("2.5");
    await slow.locator("#bend-length-method").selectOption("din-6935");
    await slow.getByRole("button", { name: "Add to legs" }).click();
    letGo();
    await slow.locator("[data-calculator][data-live]").waitFor();
    await expect.poll(() => slow.locator(thickness).inputValue()).toBe("2.5");
    expect(await slow.locator("#bend-length-method").inputValue()).toBe("din-6935");
    await expect.poll(() => slow.locator("#bend-length-legs-2-leg").count()).toBe(1);
  });

  test("values of the address are never preceded by the answer to others", async ({ open }) => {
    const page = await open("/bending/");
    const seen = await page.context().newPage();
    await seen.addInitScript(() => {
      const texts = new Set<string>();
      Object.assign(globalThis, { seenAnswers: texts });
      const look = () => {
        const answer = document.querySelector("#bend-length .answer-number");
        if (answer?.checkVisibility({ visibilityProperty: true })) texts.add(answer.textContent ?? "");
        requestAnimationFrame(look);
      };
      requestAnimationFrame(look);
    });
    await seen.goto(`${address(embedded)}?bend-length.legs=100mm;100mm`, { waitUntil: "load" });
    await seen.locator("[data-live]").waitFor();
    await seen.waitForTimeout(200);
    const answers = await seen.evaluate(() => [...(globalThis as unknown as { seenAnswers: Set<string> }).seenAnswers]);
    expect(answers).toHaveLength(1);
    expect(answers[0]).toMatch(/^197\.\d\d mm$/);
  });

  test("without scripts the page shows the worked example and says so", async ({ open }) => {
    const page = await open(`${embedded}?bend-length.thickness=2mm`, { javaScript: false });
    expect(await page.locator(".answer-number").isVisible()).toBe(true);
    expect(await page.locator(".not-live").isVisible()).toBe(true);
  });
});

test("a calculator alone loads nothing until somebody reaches for it, or wants inches", async ({ open }) => {
  const page = await open(embedded);
  const scripts = () =>
    page.evaluate(
      () => performance.getEntriesByType("resource").filter(({ name }) => /\/calculator\.[^/]*\.js$/.test(name)).length,
    );
  await page.waitForTimeout(300);
  expect(await scripts()).toBe(0);
  await page.locator("input[name=units][value=inch]").check();
  await expect.poll(() => page.locator(".answer-number").textContent()).toMatch(/^3\.258 in$/);
  expect(await scripts()).toBe(1);
  await page.reload();
  await expect.poll(() => page.locator(".answer-number").textContent()).toMatch(/^3\.258 in$/);
});

describe("the address", () => {
  test("holds what was typed, and nothing that was not", async ({ open }) => {
    const page = await open(`${embedded}?utm=course%20page`);
    await page.locator(thickness).fill("3/64 in");
    await page.locator("#bend-length-legs-1-leg").fill("40");
    await expect
      .poll(() => new URL(page.url()).search)
      .toBe("?utm=course+page&bend-length.thickness=3/64in&bend-length.legs=60mm;40mm");
    await page.locator(thickness).fill("1.2");
    await page.locator("#bend-length-legs-1-leg").fill("25");
    await expect.poll(() => new URL(page.url()).search).toBe("?utm=course+page");
  });

  test("is written when the page is left in the middle of typing", async ({ open }) => {
    const page = await open(embedded);
    await live(page);
    await page.locator(thickness).fill("2.75");
    await page.goto(address("/safety/"));
    await page.goBack();
    await expect.poll(() => page.locator(thickness).inputValue()).toBe("2.75");
  });

  test("goes back to the start values, and from there back again", async ({ open }) => {
    const page = await open(`${embedded}?bend-length.thickness=2mm`);
    await page.getByRole("button", { name: "Back to the start values" }).click();
    await expect.poll(() => page.locator(thickness).inputValue()).toBe("1.2");
    expect(new URL(page.url()).search).toBe("");
    await page.goBack();
    await expect.poll(() => page.locator(thickness).inputValue()).toBe("2");
  });
});

describe("rows of a list", () => {
  test("come and go, and the focus follows", async ({ open }) => {
    const page = await open(embedded);
    await live(page);
    const focused = () => page.evaluate(() => document.activeElement?.id ?? "");
    await page.getByRole("button", { name: "Add to legs" }).click();
    await expect.poll(focused).toBe("bend-length-legs-2-leg");
    await expect.poll(() => page.locator("#bend-length-legs-2-leg-message").textContent()).toMatch(/not entered/);
    await page.keyboard.type("30");
    await expect.poll(() => page.locator(".stale-mark").count()).toBe(0);
    await page.getByRole("button", { name: "Remove row 1 of legs" }).click();
    expect(await page.locator("#bend-length-legs-0-leg").inputValue()).toBe("25");
    await expect.poll(focused).toBe("bend-length-legs-0-leg");
  });
});

test("the working follows the answer", async ({ open }) => {
  const page = await open(embedded);
  await page.getByText("Working", { exact: true }).click();
  const step = page.locator("[data-formula=blank-from-legs] .katex-html");
  await page.locator("#bend-length-legs-1-leg").fill("40");
  // By hand: BA = π/2 (1.6 + 0.45 · 1.2) = 3.3615, BD = 2 · 2.8 − BA = 2.2385, L = 60 + 40 − BD.
  await expect.poll(() => step.last().textContent()).toMatch(/100\.00−1⋅2\.24=97\.76 mm/);
  await page.locator("#bend-length-method").selectOption("faa-handbook");
  await expect.poll(() => page.locator("[data-formula=faa-allowance]").isVisible()).toBe(true);
  expect(await page.locator("[data-formula=bend-allowance]").isVisible()).toBe(false);
});

test("the working of a calculator among others is fetched when it is opened", async ({ open }) => {
  const page = await open("/bending/?bend-length.method=din-6935");
  const working = page.locator("#bend-length [data-working]");
  expect(await working.locator(".katex").count()).toBe(0);
  await working.locator("summary").click();
  await expect.poll(() => working.locator("[data-formula=din-allowance]").isVisible()).toBe(true);
  expect(await working.locator("[data-formula=bend-allowance]").isVisible()).toBe(false);
  await page.locator("#bend-length-legs-1-leg").fill("40");
  await expect
    .poll(() => working.locator("[data-formula=blank-from-legs] .katex-html").last().textContent())
    .toMatch(/=97\.58 mm/);
  // What it needs to look right came with it.
  expect(await page.locator('link[rel=stylesheet][href*="equations"]').count()).toBe(1);
});

test("a message while typing waits until the typing pauses", async ({ open }) => {
  const page = await open(embedded);
  await live(page);
  await page.locator(thickness).fill("");
  await page.locator(thickness).pressSequentially("3/64 in", { delay: 30 });
  expect(await page.locator(`${thickness}-message`).textContent()).toBe("");
  await page.keyboard.press("Backspace");
  await page.keyboard.press("Backspace");
  await page.keyboard.type("xx");
  await expect.poll(() => page.locator(`${thickness}-message`).textContent()).toMatch(/“3\/64 ?xx” /);
});

test("a calculator in a frame tells the page around it how tall it is", async ({ open }) => {
  const page = await open("/safety/");
  const heights = await page.evaluate(async (source) => {
    const frame = document.createElement("iframe");
    frame.src = source;
    frame.width = "600";
    const told: { id: string; height: number }[] = [];
    addEventListener("message", ({ data, source: from }) => {
      if (data?.type === "flat-to-formed:height" && from === frame.contentWindow) told.push(data);
    });
    document.body.append(frame);
    await new Promise<void>((done) => {
      const wait = () => (told.length > 0 ? done() : setTimeout(wait, 50));
      wait();
    });
    return told;
  }, address(embedded));
  expect(heights[0]?.id).toBe("bend-length");
  expect(heights.at(-1)?.height).toBeGreaterThan(700);
});
