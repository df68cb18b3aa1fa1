import { statSync } from "node:fs";
import { glob } from "node:fs/promises";
import { join } from "node:path";

/** Of every kind of page (its first folder, and the folders below that) the one with the most text, by path. */
export async function heaviestPages(folder: string): Promise<string[]> {
  const heaviest = new Map<string, { path: string; bytes: number }>();
  for await (const file of glob("**/index.html", { cwd: folder })) {
    const path = `/${file.replaceAll("\\", "/").slice(0, -"index.html".length)}`;
    const [first = "", ...rest] = path.split("/").filter((part) => part !== "");
    const kind = rest.length > 0 ? `${first}/…` : first;
    const { size } = statSync(join(folder, file));
    if (size > (heaviest.get(kind)?.bytes ?? -1)) heaviest.set(kind, { path, bytes: size });
  }
  return [...heaviest.values()].map(({ path }) => path).sort();
}
