import type { Browser, Page } from "playwright-core";
import budget from "../../budget.json" with { type: "json" };
import { sidewaysOverflow, smallControls } from "../browser/layout.ts";

/** How a page reads on the narrowest screen, on paper, and without scripts. */
export interface Reading {
  readonly faults: readonly string[];
  /** Share of the words outside controls that are there without scripts too. */
  readonly keptText: number;
}

/** A4 less the margins of the style sheet, upright and for what is printed across; at 96 pixels an inch. */
const paperPx = { upright: 703, across: 1032 };

/** What is wider than the paper shrinks the whole print. */
async function paperFaults(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: "print" });
  const isAcross = await page.evaluate(() =>
    [...document.querySelectorAll("body *")].some((element) => getComputedStyle(element).getPropertyValue("page") !== "auto"),
  );
  await page.setViewportSize({ width: isAcross ? paperPx.across : paperPx.upright, height: 900 });
  const faults = await sidewaysOverflow(page);
  await page.emulateMedia({ media: null });
  return faults.slice(0, 4).map((fault) => `on paper: ${fault}`);
}

/** Every word that can be read, less those of controls and of what says itself that it needs scripts. The page is spent. */
async function wordsOf(page: Page): Promise<string[]> {
  const controls = "button, select, textarea, label, fieldset, .needs-script";
  await page.locator("main").evaluate((main, spent) => {
    for (const control of main.querySelectorAll(spent)) control.remove();
  }, controls);
  // biome-ignore lint/performance/useDomNodeTextContent: text that cannot be seen does not count
  const text = await page.locator("main").innerText();
  return text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word));
}

/** Share of some words that are among others as often. */
function shareOf(words: readonly string[], others: readonly string[]): { share: number; missing: string[] } {
  const left = new Map<string, number>();
  for (const word of others) left.set(word, (left.get(word) ?? 0) + 1);
  const missing = words.filter((word) => {
    const count = left.get(word) ?? 0;
    left.set(word, count - 1);
    return count <= 0;
  });
  return { share: words.length > 0 ? 1 - missing.length / words.length : 1, missing };
}

export async function measureReading(browser: Browser, address: string): Promise<Reading> {
  const { narrowestPx, controlPx, keptText } = budget.limits;
  const screen = { viewport: { width: narrowestPx, height: 640 } };
  const live = await browser.newContext({ ...screen, serviceWorkers: "block" });
  const still = await browser.newContext({ ...screen, javaScriptEnabled: false });
  try {
    const page = await live.newPage();
    await page.goto(address, { waitUntil: "load" });
    const faults = [...(await sidewaysOverflow(page)), ...(await smallControls(page, controlPx)), ...(await paperFaults(page))];
    await page.setViewportSize(screen.viewport);
    const words = await wordsOf(page);
    const withoutScripts = await still.newPage();
    await withoutScripts.goto(address, { waitUntil: "load" });
    const { share, missing } = shareOf(words, await wordsOf(withoutScripts));
    if (share < keptText) faults.push(`text that needs scripts: ${missing.slice(0, 30).join(" ")}`);
    return { faults, keptText: share };
  } finally {
    await live.close();
    await still.close();
  }
}
