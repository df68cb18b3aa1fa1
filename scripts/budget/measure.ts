import type { Browser, CDPSession, Page } from "playwright-core";
import budget from "../../budget.json" with { type: "json" };
import { reportViolations, watchPage } from "../browser/watch.ts";

/** The kinds of file that are counted apart. */
export const fileKinds = ["document", "style", "script", "font", "other"] as const;
export type FileKind = (typeof fileKinds)[number];

export interface Timing {
  readonly largestPaintMs: number;
  /** Of tasks longer than 50 ms the rest, as far as the page's thread had a processor meanwhile. */
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

/** What a page notes while it loads. */
interface Noted {
  largestPaintMs: number;
  layoutShift: number;
  readonly longTasks: number[];
}

/** Has the page note its paints, shifts and long tasks from the start. */
async function observe(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const timing: Noted = { largestPaintMs: 0, longTasks: [], layoutShift: 0 };
    Object.assign(globalThis, { budgetTiming: timing });
    const each = (type: string, note: (entry: PerformanceEntry) => void) =>
      new PerformanceObserver((list) => list.getEntries().forEach(note)).observe({ type, buffered: true });
    each("largest-contentful-paint", (entry) => {
      timing.largestPaintMs = entry.startTime;
    });
    each("layout-shift", (entry) => {
      timing.layoutShift += (entry as PerformanceEntry & { value: number }).value;
    });
    each("longtask", (entry) => timing.longTasks.push(entry.duration));
  });
}

/** Share of the time of its tasks in which the page's thread had a processor: the rest went to other programs. */
async function shareOfProcessor(session: CDPSession): Promise<number> {
  const { metrics } = await session.send("Performance.getMetrics");
  const seconds = (name: string) => metrics.find((metric) => metric.name === name)?.value ?? 0;
  const tasks = seconds("TaskDuration");
  return tasks > 0 ? Math.min(1, seconds("ThreadTime") / tasks) : 1;
}

async function openSlowly(browser: Browser, origin: string) {
  const context = await browser.newContext({ ...phone, serviceWorkers: "block" });
  await reportViolations(context);
  const page = await context.newPage();
  const problems = watchPage(page, origin);
  const session = await context.newCDPSession(page);
  const weight = await weigh(session);
  await session.send("Performance.enable");
  await slowDown(session);
  await observe(page);
  return { context, page, session, problems, weight };
}

/** Loads a page once, cold, on a slow phone. */
export async function measureLoad(browser: Browser, origin: string, address: string): Promise<Load> {
  const { context, page, session, problems, weight } = await openSlowly(browser, origin);
  try {
    await page.goto(address, { waitUntil: "networkidle" });
    // Scripts that start when the page is idle still have to run.
    await page.waitForTimeout(1000);
    const look = () => page.evaluate(() => (globalThis as unknown as { budgetTiming: Noted }).budgetTiming);
    let noted = await look();
    // The network may pause before anything was painted; a page without a paint has not been measured.
    for (let tried = 0; noted.largestPaintMs === 0; tried++) {
      if (tried === 20) throw new Error(`${address} was not painted`);
      await page.waitForTimeout(500);
      noted = await look();
    }
    const { longTasks, ...timing } = noted;
    const share = await shareOfProcessor(session);
    // The part of a task beyond 50 ms is what keeps a tap waiting.
    const blockingMs = longTasks.reduce((sum, task) => sum + Math.max(0, task * share - 50), 0);
    return { ...timing, blockingMs, ...weight, problems };
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
