/**
 * Times the library: `npm run bench [-- name]`. Every bench/*.bench.ts exports the functions to time, by name; one called
 * `figures` gives rows to print instead, where the quality of an answer counts besides its time.
 */
import { glob } from "node:fs/promises";
import { basename, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { Bench } from "tinybench";

const [wanted = ""] = process.argv.slice(2);
const files: string[] = [];
for await (const file of glob("bench/*.bench.ts")) if (file.includes(wanted)) files.push(file);
if (files.length === 0) {
  console.error(`There is no bench/*.bench.ts${wanted && ` with “${wanted}” in its name`}`);
  process.exit(1);
}

for (const file of files.sort()) {
  const bench = new Bench({ name: basename(file, ".bench.ts"), time: 300, warmupTime: 100 });
  const { figures, ...tasks }: Record<string, () => unknown> = await import(pathToFileURL(resolve(file)).href);
  for (const [name, task] of Object.entries(tasks)) bench.add(name, task);
  await bench.run();
  console.log(`\n${bench.name}`);
  console.table(
    bench.tasks.map(({ name, result }) => {
      if (!("latency" in result))
        throw new Error(`${bench.name}, ${name}: ${"error" in result ? result.error.message : result.state}`);
      const { mean, p99, rme } = result.latency;
      return { what: name, "mean µs": (mean * 1000).toFixed(2), "99 % below µs": (p99 * 1000).toFixed(2), "± %": rme.toFixed(1) };
    }),
  );
  if (figures) console.table(figures());
}
