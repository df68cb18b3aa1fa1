import type { BrowserContext, Page } from "playwright-core";

/** A blocked service worker is a choice of the caller, but Chromium reports it as an error. */
const expected = [/^Service Worker registration blocked by Playwright$/];

/**
 * Collects what goes wrong on a page: console errors, uncaught errors, requests that fail or leave for another host, and
 * whatever the content security policy blocks. Call it before the page opens anything.
 * @returns a list that grows as things go wrong
 */
export function watchPage(page: Page, origin: string): string[] {
  const problems: string[] = [];
  const own = (address: string) => address.startsWith(`${origin}/`) || /^(?:data|blob|about):/.test(address);
  page.on("console", (message) => {
    if (message.type() !== "error" && message.type() !== "warning") return;
    if (expected.some((pattern) => pattern.test(message.text()))) return;
    problems.push(`${message.type()}: ${message.text()} (${message.location().url})`);
  });
  page.on("pageerror", (error) => problems.push(`uncaught: ${error.message}`));
  page.on("request", (request) => {
    if (!own(request.url())) problems.push(`request to another host: ${request.url()}`);
  });
  page.on("requestfailed", (request) => {
    // A page that is left aborts what it was still loading.
    const why = request.failure()?.errorText ?? "";
    if (why !== "net::ERR_ABORTED") problems.push(`failed request: ${request.url()} ${why}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) problems.push(`status ${response.status()}: ${response.url()}`);
  });
  return problems;
}

/** Has every page of the context say in the console what its policy blocked; some violations are silent otherwise. */
export async function reportViolations(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (event) => {
      console.error(`policy: ${event.effectiveDirective} blocked ${event.blockedURI} at ${event.sourceFile}:${event.lineNumber}`);
    });
  });
}
