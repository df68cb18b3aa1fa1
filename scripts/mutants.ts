/**
 * Mutation testing: `npm run mutants -- bending`, and the other pieces of scripts/mutants/pieces.ts. Stryker changes the
 * library in one place at a time and sees whether a test fails; what survives is listed in .cache/mutants/. A piece takes
 * from ten minutes to an hour, so it never runs with the tests. A file after the piece narrows it: `part flatten`.
 */
import { Stryker } from "@stryker-mutator/core";
import { pieces, pieceVariable } from "./mutants/pieces.ts";

const [wanted = "", only] = process.argv.slice(2);
if (!Object.hasOwn(pieces, wanted)) {
  console.error(`Name a piece: npm run mutants -- ${Object.keys(pieces).join(" | ")}`);
  process.exit(1);
}
const name = wanted as keyof typeof pieces;
process.env[pieceVariable] = name;
const mutate = pieces[name].mutate.map((file) => (only === undefined ? file : file.replace(/[^/]*$/, `${only}.ts`)));
const report = `.cache/mutants/${only === undefined ? name : `${name}-${only}`}`;

await new Stryker({
  mutate: [...new Set(mutate)],
  testRunner: "vitest",
  vitest: { configFile: "scripts/mutants/vitest.config.ts", related: false },
  plugins: ["@stryker-mutator/vitest-runner"],
  coverageAnalysis: "perTest",
  // The words of messages and labels are read by people, not by tests.
  mutator: { excludedMutations: ["StringLiteral"] },
  // Labels, ranges and formulas at the head of a file are data: each would start everything anew, and tests of the data see them.
  ignoreStatic: true,
  concurrency: 1,
  // On a busy machine a slow test is no endless loop; a mutant counts as found only where a test fails.
  timeoutMS: 120_000,
  timeoutFactor: 10,
  dryRunTimeoutMinutes: 60,
  reporters: ["json", "html", "clear-text", "progress-append-only"],
  jsonReporter: { fileName: `${report}.json` },
  htmlReporter: { fileName: `${report}.html` },
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  tempDirName: ".cache/mutants/sandbox",
  ignorePatterns: ["dist", ".cache", ".readme", ".astro", "tests/site"],
  disableTypeChecks: false,
  allowEmpty: false,
}).runMutationTest();
