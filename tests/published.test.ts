import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../src/catalogue/load.ts";
import { checkFiles } from "../src/checked/files.ts";
import { runCheck, tally } from "../src/checked/run.ts";
import type { Check } from "../src/checked/schema.ts";

const catalogue = loadCatalogue();
const all = checkFiles.flatMap((file) => file.checks.map((check) => ({ file: file.name, check })));
const counted = all.filter(({ check }) => check.kind !== "disputed");

function origin({ kind, seen, source, where }: Check): string {
  const title = catalogue.sources[source]?.title ?? source;
  return `${kind}${seen === "memory" ? ", from memory" : ""}; ${title}${where === undefined ? "" : `, ${where}`}`;
}

describe("published values", () => {
  test.each(counted.map(({ file, check }) => ({ check, name: `${file}: ${check.id} (${origin(check)})` })))(
    "$name",
    ({ check }) => {
      const { comparisons } = runCheck(check, catalogue);
      expect(comparisons.length).toBeGreaterThan(0);
      for (const { output, expected, ours, unit, tolerance, agrees } of comparisons)
        expect(agrees, `${output}: source ${expected} ${unit}, ours ${ours} ${unit}, allowed ±${tolerance}`).toBe(true);
    },
  );
});

describe("the files of published values", () => {
  test("ids are unique, so that a row of the page can be linked to", () => {
    const ids = all.map(({ check }) => check.id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test("every source is in the bibliography, and what counts as read was read there", () => {
    for (const { check } of all) {
      const source = catalogue.sources[check.source];
      expect(source, `${check.id}: ${check.source}`).toBeDefined();
      if (check.seen === "read") expect(source?.seen, `${check.id}: ${check.source}`).toBe("read");
    }
  });

  test("at least 120 are proof: exact, or read in a source", () => {
    expect(tally(all.map(({ check }) => runCheck(check, catalogue))).proof).toBeGreaterThanOrEqual(120);
  });

  test("disputed cells run but are counted neither as agreement nor as proof", () => {
    const outcomes = all.filter(({ check }) => check.kind === "disputed").map(({ check }) => runCheck(check, catalogue));
    expect(outcomes.length).toBeGreaterThan(0);
    expect(tally(outcomes)).toMatchObject({ agree: 0, differ: 0, proof: 0, memory: 0, disputed: outcomes.length });
  });
});

describe("running a check", () => {
  const right: Check = {
    id: "right",
    of: "setback",
    kind: "printed-value",
    seen: "read",
    source: "faa-h-8083-31-setback",
    inputs: {
      angle: { value: 90, unit: "deg" },
      radius: { value: 0.16, unit: "in" },
      thickness: { value: 1.016, unit: "mm" },
    },
    expected: { setback: { value: 0.2, unit: "in" } },
    tolerance: 1e-9,
  };

  test("compares in the unit of the source, whatever units the inputs have", () => {
    const [row] = runCheck(right, catalogue).comparisons;
    expect(row?.ours).toBeCloseTo(0.2, 12);
    expect(row?.unit).toBe("in");
  });

  test("notices a number that is off by a little more than its tolerance", () => {
    const off = { ...right, expected: { setback: { value: 0.2 + 2e-9, unit: "in" } } };
    expect(runCheck(off, catalogue)).toMatchObject({ verdict: "differs" });
    expect(tally([runCheck(off, catalogue)])).toMatchObject({ agree: 0, differ: 1, proof: 0 });
  });

  test("a misprint fails when ours is the misprinted number", () => {
    const misprint = { ...right, kind: "misprint" as const, tolerance: 0.01, printed: { setback: { value: 0.205, unit: "in" } } };
    expect(runCheck(misprint, catalogue).verdict).toBe("differs");
    const apart = { ...misprint, printed: { setback: { value: 0.25, unit: "in" } } };
    expect(runCheck(apart, catalogue).verdict).toBe("agrees");
  });

  test("what is from memory agrees, but is no proof", () => {
    const remembered = runCheck({ ...right, seen: "memory" }, catalogue);
    expect(remembered).toMatchObject({ verdict: "agrees", proves: false });
    expect(tally([remembered])).toMatchObject({ proof: 0, memory: 1 });
  });

  test("a name, an input or an output that does not exist stops the run", () => {
    expect(() => runCheck({ ...right, of: "setbak" }, catalogue)).toThrow("nothing to check is called “setbak”");
    expect(() => runCheck({ ...right, inputs: {} }, catalogue)).toThrow("right gives no “angle”");
    expect(() => runCheck({ ...right, expected: { set: { value: 1, unit: "mm" } } }, catalogue)).toThrow(
      "setback has no output “set”",
    );
    expect(() => runCheck({ ...right, expected: { setback: { value: 1, unit: "furlong" } } }, catalogue)).toThrow("furlong");
  });

  test("a calculator is run on what is typed, and an input it refuses stops the run", () => {
    const typed: Check = {
      ...right,
      of: "length-reader",
      inputs: { value: "3/64 in" },
      expected: { fraction: "3/64" },
      tolerance: 0,
    };
    expect(runCheck(typed, catalogue).verdict).toBe("agrees");
    expect(() => runCheck({ ...typed, inputs: { value: "three" } }, catalogue)).toThrow("“three” is not a length");
  });
});
