/**
 * The library under fire: `npm run fire [-- calls seed]`, a million calls if nothing is said. Forms in and out of range go into
 * every calculator and into the plan; nothing that comes out may be other than a finite number, a sentence or an InputError.
 * Then the laws of scripts/fire/laws.ts are tried on pairs of forms. The tests do the same with fewer calls.
 */
import { loadCatalogue } from "../src/catalogue/load.ts";
import { laws, tryLaw } from "./fire/laws.ts";
import { shoot } from "./fire/shoot.ts";
import { callsOf, knowledgeOf } from "./fire/targets.ts";

const [total = 1_000_000, seed = 1] = process.argv.slice(2).map(Number);
if (!Number.isInteger(total) || total < 1 || !Number.isInteger(seed)) {
  console.error("Both are whole numbers: npm run fire -- calls seed");
  process.exit(1);
}
const catalogue = loadCatalogue();
const knows = knowledgeOf(catalogue);
const reports = [...callsOf(total)].map(([sheet, calls]) => shoot(sheet, calls, seed, catalogue, knows));

console.table(
  reports.map(({ id, calls, answered, time, slowest, faults }) => ({
    calculator: id,
    calls,
    "answered %": Math.round((100 * answered) / calls),
    "calls/s": Math.round((1000 * calls) / time),
    "slowest ms": Number(slowest.toFixed(1)),
    faults: faults.length,
  })),
);
const calls = reports.reduce((sum, report) => sum + report.calls, 0);
const time = reports.reduce((sum, report) => sum + report.time, 0);
console.log(`${calls} calls in ${(time / 1000).toFixed(1)} s in the calculators, seed ${seed}`);

const pairs = Math.max(20, Math.round(total / 1000));
const tried = laws.map((law) => ({ law, ...tryLaw(law, pairs, seed, catalogue) }));
console.log(`${laws.length} laws on ${tried.reduce((sum, each) => sum + each.pairs, 0)} pairs of forms`);

const broken = tried.filter((each) => each.breach !== undefined);
for (const { id, faults } of reports)
  for (const { what, raw, times } of faults) console.error(`${id}: ${what}\n  ${times} times, first with ${JSON.stringify(raw)}`);
for (const { law, breach } of broken) console.error(`${law.sheet}: ${law.output} by ${law.input}\n  ${breach}`);
if (broken.length > 0 || reports.some(({ faults }) => faults.length > 0)) process.exitCode = 1;
