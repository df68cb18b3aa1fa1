/** What one check came to: a suite counts its tests, any other check counts as one. */
export interface Outcome {
  readonly name: string;
  readonly passed: number;
  readonly failed: number;
  readonly seconds: number;
  /** Why something failed that no test says. */
  readonly remarks: readonly string[];
}

/** The part of Vitest's JSON report that is read here. */
export interface Report {
  readonly testResults: readonly {
    readonly name: string;
    readonly message?: string;
    readonly assertionResults: readonly { readonly status: string; readonly fullName: string }[];
  }[];
}

/** First folder below `tests/`, or the file when it lies there directly. */
export function suiteOf(file: string): string {
  return /tests[\\/]([^\\/]+)/.exec(file)?.[1]?.replace(/\.test\.tsx?$/, "") ?? file;
}

/**
 * Counts a Vitest run, suite by suite. Nothing passes by being skipped: a test that did not run counts as failed, and so
 * does a file without tests, a suite that has to be there and is not, and a run that ended badly with every test passed.
 *
 * @param required - suites that must have tests
 * @param exitCode - of Vitest
 */
export function countReport(
  report: Report | undefined,
  required: readonly string[],
  exitCode: number,
  seconds: number,
): Outcome[] {
  const suites = new Map<string, { passed: number; failed: number; remarks: string[] }>();
  const suite = (name: string) => {
    const found = suites.get(name) ?? { passed: 0, failed: 0, remarks: [] };
    suites.set(name, found);
    return found;
  };
  for (const { name, message, assertionResults } of report?.testResults ?? []) {
    const counts = suite(suiteOf(name));
    if (assertionResults.length === 0) {
      counts.failed++;
      counts.remarks.push(`${name} has no test that ran${message ? `: ${message.split("\n")[0]}` : ""}`);
    }
    for (const { status, fullName } of assertionResults) {
      if (status === "passed") counts.passed++;
      else counts.failed++;
      if (status !== "passed" && status !== "failed") counts.remarks.push(`${status}, not run: ${fullName}`);
    }
  }
  for (const name of required)
    if (!suites.has(name)) {
      suite(name).failed++;
      suite(name).remarks.push(`tests/${name} has no tests`);
    }
  const outcomes = [...suites].map(([name, counts]) => ({ name, ...counts, seconds: 0 }));
  const anyFailed = outcomes.some(({ failed }) => failed > 0);
  if (exitCode !== 0 && !anyFailed)
    outcomes.push({ name: "vitest", passed: 0, failed: 1, remarks: [`ended with exit code ${exitCode}`], seconds: 0 });
  return outcomes
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .map((outcome, index) => (index === 0 ? { ...outcome, seconds } : outcome));
}

/** The closing table, and the plain line that counts everything. */
export function summary(outcomes: readonly Outcome[]): string {
  const width = Math.max(...outcomes.map(({ name }) => name.length));
  const rows = outcomes.map(({ name, passed, failed, seconds }) => {
    const verdict = failed === 0 ? "ok    " : "FAILED";
    const time = seconds > 0 ? `${seconds.toFixed(1)} s` : "";
    return `  ${name.padEnd(width)}  ${verdict}  ${String(passed).padStart(6)} passed  ${String(failed).padStart(4)} failed  ${time.padStart(7)}`.trimEnd();
  });
  const remarks = outcomes.flatMap((outcome) => outcome.remarks.map((remark) => `  ${outcome.name}: ${remark}`));
  const total = (key: "passed" | "failed") => outcomes.reduce((sum, outcome) => sum + outcome[key], 0);
  return [
    ...rows,
    ...(remarks.length > 0 ? ["", ...remarks] : []),
    "",
    `${total("passed")} passed, ${total("failed")} failed`,
  ].join("\n");
}
