import { expect, test } from "vitest";
import { countReport, suiteOf, summary } from "../../scripts/test/results.ts";

function file(name: string, ...statuses: string[]) {
  return { name, assertionResults: statuses.map((status, index) => ({ status, fullName: `test ${index}` })) };
}

test("tests are counted by the folder they lie in", () => {
  const report = {
    testResults: [
      file("/x/tests/a/1.test.ts", "passed", "passed"),
      file("/x/tests/a/2.test.ts", "failed"),
      file("/x/tests/b/1.test.ts", "passed"),
    ],
  };
  expect(countReport(report, [], 1, 2)).toEqual([
    { name: "a", passed: 2, failed: 1, seconds: 2, remarks: [] },
    { name: "b", passed: 1, failed: 0, seconds: 0, remarks: [] },
  ]);
  expect(suiteOf("C:\\x\\tests\\lone.test.ts")).toBe("lone");
});

test.each(["pending", "skipped", "todo"])("a test that is %s counts as failed", (status) => {
  const [outcome] = countReport({ testResults: [file("/tests/a/1.test.ts", "passed", status)] }, [], 0, 1);
  expect(outcome).toMatchObject({ passed: 1, failed: 1, remarks: [`${status}, not run: test 1`] });
});

test("a file without tests, a missing suite, a missing report and a bad end count as failed", () => {
  expect(countReport({ testResults: [file("/tests/a/1.test.ts")] }, [], 0, 1)[0]).toMatchObject({ passed: 0, failed: 1 });
  expect(countReport({ testResults: [file("/tests/a/1.test.ts", "passed")] }, ["b"], 0, 1)[1]).toMatchObject({
    name: "b",
    failed: 1,
  });
  expect(countReport(undefined, ["a"], 0, 1)).toMatchObject([{ name: "a", failed: 1 }]);
  expect(countReport({ testResults: [file("/tests/a/1.test.ts", "passed")] }, [], 1, 1)[1]).toMatchObject({
    name: "vitest",
    failed: 1,
  });
});

test("the summary ends with the plain line that counts everything", () => {
  const outcome = { passed: 2, failed: 0, seconds: 1, remarks: [] };
  const text = summary([
    { ...outcome, name: "a" },
    { ...outcome, name: "b", failed: 3, remarks: ["why"] },
  ]);
  expect(text.split("\n").at(-1)).toBe("4 passed, 3 failed");
  expect(text).toContain("b: why");
});
