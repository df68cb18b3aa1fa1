import { mkdir } from "node:fs/promises";
import axe from "axe-core";
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { test as base, expect, inject } from "vitest";
import { reportViolations, watchPage } from "../../scripts/browser/watch.ts";

/** Screens the pages are made for. */
export const screens = {
  phone: { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true, deviceScaleFactor: 2 },
  laptop: { viewport: { width: 1280, height: 800 } },
  kiosk: { viewport: { width: 1920, height: 1080 }, hasTouch: true },
  /** The narrowest a page has to fit, which is also 1280 px at 400 % zoom. */
  narrow: { viewport: { width: 320, height: 640 } },
} as const satisfies Record<string, BrowserContextOptions>;

export interface OpenOptions {
  /** `laptop` by default. */
  readonly screen?: keyof typeof screens;
  readonly colorScheme?: "light" | "dark";
  readonly forcedColors?: "active";
  readonly reducedMotion?: "reduce";
  /** false: as a visitor without JavaScript. */
  readonly javaScript?: boolean;
  /** true: the offline copy may install itself. */
  readonly serviceWorker?: boolean;
  /** Kinds of trouble this test causes on purpose. */
  readonly expectProblems?: RegExp;
  /** Origin of another server, for a test that changes the site. */
  readonly at?: string;
  /** Path of that server's site, when it is another one. */
  readonly base?: string;
  /** Share the browser's storage with this page. */
  readonly beside?: Page;
}

/** Opens a page of the site, e.g. `/bending/?bend-length.thickness=2mm`. */
export type Open = (path: string, options?: OpenOptions) => Promise<Page>;

/** Full address of a page of the site. */
export function address(path: string, origin: string = inject("origin"), base: string = inject("base")): string {
  return origin + base.replace(/\/$/, "") + path;
}

let shared: Promise<Browser> | undefined;

function browser(): Promise<Browser> {
  shared ??= chromium.connect(inject("browser"));
  return shared;
}

interface Opened {
  readonly path: string;
  readonly problems: readonly string[];
  readonly expected: RegExp | undefined;
}

/**
 * `test` with `open`: every page opened through it is closed at the end, and the test fails when one of them logged an error,
 * asked another host for something, failed to load something or hit the content security policy.
 */
export const test = base.extend<{ open: Open }>({
  // biome-ignore lint/correctness/noEmptyPattern: Vitest reads the names of the fixtures needed from this pattern
  open: async ({}, use) => {
    const contexts: BrowserContext[] = [];
    const pages: Opened[] = [];
    await use(async (path, options = {}) => {
      const {
        screen = "laptop",
        colorScheme = "light",
        javaScript = true,
        serviceWorker = false,
        at = inject("origin"),
        beside,
      } = options;
      const context =
        beside?.context() ??
        (await (
          await browser()
        ).newContext({
          ...screens[screen],
          colorScheme,
          forcedColors: options.forcedColors ?? "none",
          reducedMotion: options.reducedMotion ?? "no-preference",
          javaScriptEnabled: javaScript,
          serviceWorkers: serviceWorker ? "allow" : "block",
          locale: "en-GB",
        }));
      if (!beside) {
        contexts.push(context);
        await reportViolations(context);
      }
      const page = await context.newPage();
      pages.push({ path, problems: watchPage(page, at), expected: options.expectProblems });
      await page.goto(address(path, at, options.base), { waitUntil: "load" });
      return page;
    });
    for (const context of contexts) await context.close();
    for (const { path, problems, expected } of pages)
      expect(
        problems.filter((problem) => !expected?.test(problem)),
        `trouble on ${path}`,
      ).toEqual([]);
  },
});

export { expect };

/** The rules of WCAG 2.2 AA and axe's own good practice. */
const ruleSets = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/**
 * Faults axe finds, a line each.
 * @param rules - only these rules, instead of all of WCAG 2.2 AA and good practice
 */
export async function accessibilityFaults(page: Page, rules?: readonly string[]): Promise<string[]> {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate(
    (runOnly) => {
      const runner = (globalThis as unknown as { axe: typeof import("axe-core") }).axe;
      return runner.run(document, { runOnly: { type: runOnly.type, values: [...runOnly.values] }, resultTypes: ["violations"] });
    },
    rules ? ({ type: "rule", values: rules } as const) : ({ type: "tag", values: ruleSets } as const),
  );
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map((node) => `${id}: ${help}: ${node.target.join(" ")} ${node.html.slice(0, 160)}`),
  );
}

/** Saves a picture of the page as `.cache/screenshots/<name>.png`, for a person to look at. */
export async function screenshot(page: Page, name: string, { fullPage = true }: { fullPage?: boolean } = {}): Promise<void> {
  await mkdir(".cache/screenshots", { recursive: true });
  await page.screenshot({ path: `.cache/screenshots/${name}.png`, fullPage });
}
