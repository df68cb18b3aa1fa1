import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { addressOf, dropUnreached, writeOfflineWorker } from "../../scripts/build/offline.ts";

let folder = "";

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "offline-test-"));
  await mkdir(join(folder, "_astro"));
  await mkdir(join(folder, "bending"));
  await mkdir(join(folder, "pagefind"));
  await writeFile(join(folder, "index.html"), '<script src="/_astro/a.1.js"></script>');
  await writeFile(join(folder, "bending", "index.html"), '<link href="/_astro/s.1.css">');
  await writeFile(join(folder, "_astro", "a.1.js"), 'import("./b.1.js")');
  await writeFile(join(folder, "_astro", "b.1.js"), "");
  await writeFile(join(folder, "_astro", "s.1.css"), "url(./f.1.woff2)");
  await writeFile(join(folder, "_astro", "f.1.woff2"), "font");
  await writeFile(join(folder, "_astro", "lost.1.js"), 'import("./b.1.js")');
  await writeFile(join(folder, "pagefind", "wasm.unknown.pagefind"), "wasm");
});

afterEach(async () => {
  vi.unstubAllEnvs();
  await rm(folder, { recursive: true });
});

/** The list in the worker, and its version. */
async function published(): Promise<{ version: string; files: Record<string, string> }> {
  const [first = "", , second = ""] = (await readFile(join(folder, "sw.js"), "utf8")).split("\n");
  return {
    version: JSON.parse(first.replace(/^const VERSION = (.*);$/, "$1")),
    files: JSON.parse(second.replace(/^const FILES = (.*);$/, "$1")),
  };
}

test.each([
  ["index.html", ""],
  ["bending/index.html", "bending/"],
  ["404.html", "404.html"],
  ["myindex.html", "myindex.html"],
])("%s is kept as “%s”", (file, address) => {
  expect(addressOf(file)).toBe(address);
});

test("only bundles that no page leads to are dropped", async () => {
  expect(await dropUnreached(folder)).toEqual(["_astro/lost.1.js"]);
  expect((await readdir(join(folder, "_astro"))).sort()).toEqual(["a.1.js", "b.1.js", "f.1.woff2", "s.1.css"]);
});

test("everything published is in the offline copy, and its version changes with any content", async () => {
  await writeOfflineWorker(folder);
  const before = await published();
  expect(Object.keys(before.files).sort()).toEqual([
    "",
    "_astro/a.1.js",
    "_astro/b.1.js",
    "_astro/f.1.woff2",
    "_astro/lost.1.js",
    "_astro/s.1.css",
    "bending/",
  ]);
  await writeOfflineWorker(folder);
  expect((await published()).version).toBe(before.version);
  await writeFile(join(folder, "_astro", "b.1.js"), "changed");
  await writeOfflineWorker(folder);
  expect((await published()).version).not.toBe(before.version);
});

test("OFFLINE=off publishes the worker that takes itself out", async () => {
  vi.stubEnv("OFFLINE", "off");
  expect(await writeOfflineWorker(folder)).toBe(0);
  expect(await readFile(join(folder, "sw.js"), "utf8")).toContain("registration.unregister()");
});
