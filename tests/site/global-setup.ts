import { spawnSync } from "node:child_process";
import { rm } from "node:fs/promises";
import type { TestProject } from "vitest/node";
import { launchBrowserServer } from "../../scripts/browser/launch.ts";
import { settingsFolder } from "../../scripts/build/server-settings.ts";
import { serve } from "../../scripts/server.ts";
import { siteUnderTest } from "../../scripts/test/site.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** Folder of the built site. */
    folder: string;
    /** Path the site is under, with a slash at both ends. */
    base: string;
    /** Origin of the server, without a slash at the end. */
    origin: string;
    browser: string;
  }
}

/** Builds the site unless `npm test` has just done so, and starts one server and one browser for all test files. */
export default async function setup(project: TestProject) {
  const { base, address } = siteUnderTest;
  const isBuilt = process.env.SITE_BUILT === "yes";
  // Two runs at once must not build into the same folder.
  const folder = isBuilt ? siteUnderTest.folder : `.cache/site-${process.pid}`;
  if (!isBuilt) {
    const env = { ...process.env, BASE_PATH: base, SITE_URL: address, OUT_DIR: folder, NODE_ENV: "production" };
    const { status } = spawnSync(process.execPath, ["scripts/build.ts"], { stdio: "inherit", env });
    if (status !== 0) throw new Error("The site could not be built");
  }
  const server = await serve({ folder, base, port: 0 });
  const browser = await launchBrowserServer();
  project.provide("folder", folder);
  project.provide("base", base);
  project.provide("origin", server.origin);
  project.provide("browser", browser.wsEndpoint());
  return async () => {
    await browser.close();
    await server.close();
    if (isBuilt) return;
    for (const made of [folder, settingsFolder(folder)]) await rm(made, { recursive: true, force: true });
  };
}
