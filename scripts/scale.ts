/**
 * How the handbook grows: `npm run scale [-- 300]` copies the project, adds that many generated technique pages, builds it, and
 * measures the first search over all of them on a slow phone. Nothing of it is kept or published.
 */
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, readdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { cpus, loadavg } from "node:os";
import { join, resolve } from "node:path";
import budget from "../budget.json" with { type: "json" };
import { worksheets } from "../src/lib/registry.ts";
import { launchBrowser } from "./browser/launch.ts";
import { measureSearch } from "./budget/measure.ts";
import { generatedPage } from "./scale/generated-page.ts";
import { serve } from "./server.ts";

const count = Number(process.argv[2] ?? 300);
if (!Number.isInteger(count) || count < 1 || count > 5000)
  throw new Error(`The number of pages must be from 1 to 5000; it is ${count}`);

const place = resolve(".cache/scale");
const left = new Set(["node_modules", "dist", ".cache", ".astro", ".git", "coverage"]);
rmSync(place, { recursive: true, force: true });
mkdirSync(place, { recursive: true });
for (const name of readdirSync(".")) if (!left.has(name)) cpSync(name, join(place, name), { recursive: true });
symlinkSync(resolve("node_modules"), join(place, "node_modules"), "dir");

const pages = join(place, "src/content/techniques/bending/generated");
mkdirSync(pages);
for (let page = 0; page < count; page++)
  writeFileSync(join(pages, `page-${page}.mdx`), generatedPage(page, worksheets[page % worksheets.length]?.id ?? "bend-length"));

function build(): number {
  const start = performance.now();
  const { status } = spawnSync(process.execPath, ["scripts/build.ts"], {
    cwd: place,
    stdio: "inherit",
    env: { ...process.env, NODE_ENV: "production", BASE_PATH: "/", OUT_DIR: "dist" },
  });
  if (status !== 0) throw new Error("The site with generated pages could not be built");
  return (performance.now() - start) / 1000;
}

try {
  const first = build();
  const again = build();
  console.log(`${count} more technique pages: built in ${first.toFixed(1)} s, once more in ${again.toFixed(1)} s.`);
  const server = await serve({ folder: join(place, "dist"), base: "/", port: 0 });
  const browser = await launchBrowser();
  try {
    for (const text of ["bend", `word${count - 1}x7`]) {
      const time = await measureSearch(browser, server.origin, `${server.origin}/`, text);
      console.log(
        `First result for “${text}”: ${time.toFixed(0)} ms on ${budget.network.name}, limit ${budget.limits.firstSearchMs} ms.`,
      );
    }
  } finally {
    await browser.close();
    await server.close();
  }
  console.log(`${cpus().length} processors, load ${loadavg()[0]?.toFixed(1)} at the end.`);
} finally {
  rmSync(place, { recursive: true, force: true });
}
