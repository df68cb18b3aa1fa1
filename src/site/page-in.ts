import { existsSync } from "node:fs";
import { join } from "node:path";
import { projectFolder } from "../catalogue/load.ts";

/** Whether there is a page with this path below a folder of the project. */
export function pageIn(folder: string, path: string): boolean {
  const page = join(projectFolder(), folder, path.slice(1, -1));
  return existsSync(join(page, "index.astro")) || (path !== "/" && existsSync(`${page}.astro`));
}
