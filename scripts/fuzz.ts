/**
 * Hands damaged texts to everything that reads what comes from outside: `npm run fuzz [-- cases [seed [part of a reader's name]]]`.
 * The same seed gives the same texts. Ends with 1 when a text was too much for a reader.
 */
import { readers } from "../tests/fuzz/readers.ts";
import { tryReader } from "../tests/fuzz/try-reader.ts";

const [cases = "100000", seed = "1", wanted = ""] = process.argv.slice(2);
const some = readers.filter(({ name }) => name.includes(wanted));
const each = Math.ceil(Number(cases) / some.length);
if (!(Number.isInteger(Number(seed)) && each > 0)) {
  console.error("Give a number of cases and a whole number as seed: npm run fuzz -- 100000 1");
  process.exit(2);
}
const rows = [];
for (const reader of some) {
  const start = performance.now();
  const { faults, cases: tried, accepted, slowestMs } = await tryReader(reader, each, Number(seed));
  const seconds = (performance.now() - start) / 1000;
  rows.push({
    reader: reader.name,
    cases: tried,
    accepted,
    faults: faults.length,
    "slowest ms": Math.round(slowestMs),
    seconds: Math.round(seconds),
  });
  for (const { seed: own, text, what } of faults) {
    console.error(`\n${reader.name}, seed ${own}: ${what.slice(0, 1500)}\n${JSON.stringify(text.slice(0, 1000))}`);
    process.exitCode = 1;
  }
}
console.table(rows);
