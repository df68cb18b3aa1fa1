import { createHash } from "node:crypto";
import { glob, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";

const workers = new URL("../../src/offline/", import.meta.url);

/** Nothing asks for these: the search falls back to the second one only on a page without a language. */
const unasked = new Set(["sw.js", "pagefind/wasm.unknown.pagefind"]);

async function filesOf(folder: string): Promise<string[]> {
  const files: string[] = [];
  for await (const found of glob("**/*", { cwd: folder, withFileTypes: true }))
    if (found.isFile())
      files.push(
        join(found.parentPath, found.name)
          .slice(join(folder, "x").length - 1)
          .replaceAll("\\", "/"),
      );
  return files.sort();
}

/** A page is kept under the address it is asked for by: `bending/index.html` → `bending/`. */
export function addressOf(file: string): string {
  return file.replace(/(^|\/)index\.html$/, "$1");
}

/**
 * Deletes bundles that no page leads to; Astro writes some for ways of starting components that are not used here.
 * A bundle is reached when its name stands in a page or in a bundle that is reached.
 */
export async function dropUnreached(folder: string): Promise<string[]> {
  const files = await filesOf(folder);
  const bundles = files.filter((file) => file.startsWith("_astro/"));
  const waiting = files.filter((file) => !file.startsWith("_astro/") && /\.(?:html|js|webmanifest)$/.test(file));
  const reached = new Set(waiting);
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (!/\.(?:html|js|css|webmanifest)$/.test(file)) continue;
    const text = await readFile(join(folder, file), "utf8");
    for (const bundle of bundles)
      if (!reached.has(bundle) && text.includes(bundle.slice("_astro/".length))) {
        reached.add(bundle);
        waiting.push(bundle);
      }
  }
  const dropped = bundles.filter((bundle) => !reached.has(bundle));
  for (const bundle of dropped) await rm(join(folder, bundle));
  return dropped;
}

/** Writes the service worker with the list of everything published. @returns how many bytes a first visit keeps */
export async function writeOfflineWorker(folder: string): Promise<number> {
  if (process.env.OFFLINE === "off") {
    await writeFile(join(folder, "sw.js"), await readFile(new URL("retired-worker.js", workers)));
    return 0;
  }
  const list: Record<string, string> = {};
  let bytes = 0;
  for (const file of await filesOf(folder)) {
    if (unasked.has(file)) continue;
    const content = await readFile(join(folder, file));
    bytes += content.length;
    list[addressOf(file)] = createHash("sha256").update(content).digest("base64url").slice(0, 8);
  }
  const worker = await readFile(new URL("worker.js", workers), "utf8");
  const files = JSON.stringify(list);
  const version = createHash("sha256").update(files).update(worker).digest("base64url").slice(0, 12);
  const constants = `const VERSION = ${JSON.stringify(version)};\nconst BYTES = ${bytes};\nconst FILES = ${files};\n`;
  await writeFile(join(folder, "sw.js"), constants + worker);
  return bytes;
}
