/** Every check of the project, one after the other; a check that fails does not keep the rest from running. */
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join, resolve } from "node:path";
import { countReport, type Outcome, type Report, summary } from "./results.ts";
import { siteUnderTest } from "./site.ts";

/** Folders of tests/ that must not go missing unnoticed. */
const requiredSuites = [
  "calc",
  "catalogue",
  "display",
  "equations",
  "fuzz",
  "glossary",
  "part",
  "published",
  "quantity",
  "rules",
  "scripts",
  "tables",
  "worksheets",
];

const reports = resolve(".cache/test");
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

const builtSite = {
  BASE_PATH: siteUnderTest.base,
  SITE_URL: siteUnderTest.address,
  OUT_DIR: siteUnderTest.folder,
  NODE_ENV: "production",
};
const tools = {
  lint: "node_modules/@biomejs/biome/bin/biome",
  astro: "node_modules/astro/bin/astro.mjs",
  vitest: "node_modules/vitest/vitest.mjs",
};

/** Runs a script with this Node. */
function run(args: readonly string[], more: NodeJS.ProcessEnv = {}): { exitCode: number; seconds: number } {
  const start = performance.now();
  const { status } = spawnSync(process.execPath, args, { stdio: "inherit", env: { ...process.env, ...more } });
  return { exitCode: status ?? 1, seconds: (performance.now() - start) / 1000 };
}

function title(name: string): void {
  console.log(`\n── ${name} ${"─".repeat(Math.max(0, 70 - name.length))}`);
}

function check(name: string, args: readonly string[], more?: NodeJS.ProcessEnv): Outcome {
  title(name);
  const { exitCode, seconds } = run(args, more);
  return { name, passed: exitCode === 0 ? 1 : 0, failed: exitCode === 0 ? 0 : 1, seconds, remarks: [] };
}

function readReport(file: string): Report | undefined {
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch {
    return undefined;
  }
}

function vitest(name: string, args: readonly string[], required: readonly string[], more?: NodeJS.ProcessEnv): Outcome[] {
  title(name);
  const file = join(reports, `${name}.json`);
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${file}`];
  const { exitCode, seconds } = run([tools.vitest, "run", ...reporters, ...args], more);
  return countReport(readReport(file), required, exitCode, seconds);
}

/** What cannot be tried because the site could not be built. */
function untried(name: string): Outcome {
  return { name, passed: 0, failed: 1, seconds: 0, remarks: ["not tried: there is no site"] };
}

const outcomes = [
  check("lint", [tools.lint, "check", "--error-on-warnings", "."]),
  check("types", [tools.astro, "check"]),
  ...vitest("tests", [], requiredSuites),
];
const build = check("build", ["scripts/build.ts"], builtSite);
outcomes.push(build);
if (build.failed > 0) outcomes.push(untried("site"), untried("budget"));
else {
  outcomes.push(...vitest("site", ["--config", "tests/site/vitest.config.ts"], ["site"], { SITE_BUILT: "yes" }));
  outcomes.push(check("budget", ["scripts/budget.ts", "--busy-machine"], builtSite));
}

title("summary");
console.log(summary(outcomes));
process.exitCode = outcomes.some(({ failed }) => failed > 0) ? 1 : 0;
