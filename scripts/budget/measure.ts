import type { Browser, CDPSession, Page } from "playwright-core";
import budget from "../../budget.json" with { type: "json" };
import { sidewaysOverflow, smallControls } from "../browser/layout.ts";
import { reportViolations, watchPage } from "../browser/watch.ts";

/** The kinds of file that are counted apart. */
export const fileKinds = ["document", "style", "script", "font", "other"] as const;
export type FileKind = (typeof fileKinds)[number];

export interface Timing {
  readonly largestPaintMs: number;
  readonly blockingMs: number;
  readonly layoutShift: number;
}

export interface Weight {
  readonly kb: Readonly<Record<FileKind, number>>;
  readonly requests: number;
}

export interface Load extends Timing, Weight {
  /** What went wrong meanwhile: errors, requests to other hosts. */
  readonly problems: readonly string[];
}

const kindOf: Readonly<Record<string, FileKind>> = { Document: "document", Stylesheet: "style", Script: "script", Font: "font" };

/** Phone of the measurements. */
const phone = { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true, deviceScaleFactor: 2 };

async function slowDown(session: CDPSession): Promise<void> {
  const { latencyMs, downKbit, upKbit } = budget.network;
  await session.send("Network.emulateNetworkConditions", {
    offline: false,
    latency: latencyMs,
    downloadThroughput: (downKbit * 1000) / 8,
    uploadThroughput: (upKbit * 1000) / 8,
  });
  await session.send("Emulation.setCPUThrottlingRate", { rate: budget.cpuSlowdown });
}

/** Counts what comes over the network, as sent. */
async function weigh(session: CDPSession): Promise<Weight> {
  const kinds = new Map<string, FileKind>();
  const weight = { kb: { document: 0, style: 0, script: 0, font: 0, other: 0 }, requests: 0 };
  session.on("Network.responseReceived", ({ requestId, type }) => kinds.set(requestId, kindOf[type] ?? "other"));
  session.on("Network.loadingFinished", ({ requestId, encodedDataLength }) => {
    weight.kb[kinds.get(requestId) ?? "other"] += encodedDataLength / 1000;
    weight.requests++;
  });
  await session.send("Network.enable");
  return weight;
}

/** Has the page note its paints, shifts and long tasks from the start. */
async function observe(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const timing = { largestPaintMs: 0, blockingMs: 0, layoutShift: 0 };
    Object.assign(globalThis, { budgetTiming: timing });
    const each = (type: string, note: (entry: PerformanceEntry) => void) =>
      new PerformanceObserver((list) => list.getEntries().forEach(note)).observe({ type, buffered: true });
    each("largest-contentful-paint", (entry) => {
      timing.largestPaintMs = entry.startTime;
    });
    each("layout-shift", (entry) => {
      timing.layoutShift += (entry as PerformanceEntry & { value: number }).value;
    });
    // The part of a task beyond 50 ms is what keeps a tap waiting.
    each("longtask", (entry) => {
      timing.blockingMs += Math.max(0, entry.duration - 50);
    });
  });
}

async function openSlowly(browser: Browser, origin: string) {
  const context = await browser.newContext({ ...phone, serviceWorkers: "block" });
  await reportViolations(context);
  const page = await context.newPage();
  const problems = watchPage(page, origin);
  const session = await context.newCDPSession(page);
  const weight = await weigh(session);
  await slowDown(session);
  await observe(page);
  return { context, page, problems, weight };
}

/** Loads a page once, cold, on a slow phone. */
export async function measureLoad(browser: Browser, origin: string, address: string): Promise<Load> {
  const { context, page, problems, weight } = await openSlowly(browser, origin);
  try {
    await page.goto(address, { waitUntil: "networkidle" });
    // Scripts that start when the page is idle still have to run.
    await page.waitForTimeout(1000);
    const timing = await page.evaluate(() => (globalThis as unknown as { budgetTiming: Timing }).budgetTiming);
    return { ...timing, ...weight, problems };
  } finally {
    await context.close();
  }
}

/** From the first touch of the search field to the first result, on a slow phone. */
export async function measureSearch(browser: Browser, origin: string, address: string, text: string): Promise<number> {
  const { context, page } = await openSlowly(browser, origin);
  try {
    await page.goto(address, { waitUntil: "networkidle" });
    // The field may be in a menu that has to be opened first on a phone; that is not part of the search.
    await page.evaluate(() => document.querySelector("[data-search]")?.closest<HTMLElement>("[popover]")?.showPopover());
    const start = performance.now();
    await page.locator("[data-search] input").fill(text);
    await page.locator(".search-link").first().waitFor({ timeout: 30_000 });
    return performance.now() - start;
  } finally {
    await context.close();
  }
}

/** What does not fit the narrowest screen, and controls too small for a finger. */
export async function measureLayout(browser: Browser, address: string): Promise<string[]> {
  const { narrowestPx, controlPx } = budget.limits;
  const context = await browser.newContext({ viewport: { width: narrowestPx, height: 640 }, serviceWorkers: "block" });
  try {
    const page = await context.newPage();
    await page.goto(address, { waitUntil: "load" });
    return [...(await sidewaysOverflow(page)), ...(await smallControls(page, controlPx))];
  } finally {
    await context.close();
  }
}
