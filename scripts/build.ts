/**
 * Builds the site: Astro, then the policy and classes of every page, the search index and the offline copy.
 * BASE_PATH (`/` or `/name/`): the path it is published under. SITE_URL: its address, for absolute links.
 * OUT_DIR: where to, `dist` by default; settings for web servers go beside it, into `dist-server`. OFFLINE=off: without the offline copy, and deleting the copies people have.
 */
import { rm } from "node:fs/promises";
import { resolve } from "node:path";
import { build } from "astro";
import { dropUnreached, writeOfflineWorker } from "./build/offline.ts";
import { finishPages } from "./build/pages.ts";
import { writeSearchIndex } from "./build/search-index.ts";
import { writeServerSettings } from "./build/server-settings.ts";

process.env.ASTRO_TELEMETRY_DISABLED = "1";
const folder = resolve(process.env.OUT_DIR ?? "dist");
const base = process.env.BASE_PATH ?? "/";

try {
  // Pagefind adds to what is there; stale fragments would pile up.
  await rm(folder, { recursive: true, force: true });
  await build({ logLevel: process.env.BUILD_LOG === "all" ? "info" : "warn" });
  const pages = await finishPages(folder, base);
  const searched = await writeSearchIndex(folder, pages);
  await dropUnreached(folder);
  const bytes = await writeOfflineWorker(folder);
  const settings = await writeServerSettings(folder, base);
  console.log(
    `Built ${pages.length} pages, ${searched} of them in the search; the offline copy is ${Math.round(bytes / 1000)} kB. Settings for web servers are in ${settings}`,
  );
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
