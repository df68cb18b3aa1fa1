import { type Browser, type BrowserServer, chromium, type LaunchOptions } from "playwright-core";
import { findBrowser } from "../setup/browser.mjs";

/** A quiet browser: no sandbox, since tests run as root; nothing that calls home. */
export function browserCommand(): { path: string; args: string[] } {
  const path = findBrowser();
  if (!path) throw new Error("No Chrome or Chromium was found: run npm test, which gets one or says how, or set CHROME_PATH");
  const args = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
  ];
  return { path, args };
}

function options(): LaunchOptions {
  const { path, args } = browserCommand();
  return { executablePath: path, args };
}

export function launchBrowser(): Promise<Browser> {
  return chromium.launch(options());
}

/** A browser that several test processes share. */
export function launchBrowserServer(): Promise<BrowserServer> {
  return chromium.launchServer(options());
}
