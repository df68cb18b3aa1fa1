import type { Catalogue } from "../lib/catalogue.ts";
import { fromBase, type Quantity, quantityKinds, toBase } from "../lib/quantity/units.ts";
import type { Check } from "./schema.ts";
import type { Given } from "./subject.ts";
import { subjectOf } from "./subjects.ts";

/** One value of a check beside ours, both in the unit of the source. */
export interface Comparison {
  readonly output: string;
  readonly unit: string;
  readonly expected: number | string;
  readonly ours: number | string | null;
  /** ours − expected */
  readonly difference: number | null;
  readonly tolerance: number;
  readonly agrees: boolean;
  /** What the source prints, where that is known to be wrong. */
  readonly misprint?: number;
}

export interface Outcome {
  readonly check: Check;
  readonly comparisons: readonly Comparison[];
  readonly verdict: "agrees" | "differs" | "disputed";
  /** Agreement with it is evidence: read in a source, or exact. What is from memory proves nothing alone. */
  readonly proves: boolean;
}

/** The quantity whose table has this unit. @throws Error for a unit that no quantity has */
export function quantityOf(unit: string): Quantity {
  if (unit === "1") return "ratio";
  for (const [name, kind] of Object.entries(quantityKinds)) if (Object.hasOwn(kind.units, unit)) return name as Quantity;
  throw new Error(`no quantity is measured in “${unit}”`);
}

export const unitKey = (unit: string) => (unit === "1" ? "" : unit);

function givenOf(check: Check): Given {
  const input = (key: string) => {
    const value = check.inputs[key];
    if (value === undefined) throw new Error(`${check.id} gives no “${key}”`);
    return value;
  };
  return {
    number(key) {
      const value = input(key);
      if (typeof value === "string" || Array.isArray(value)) throw new Error(`${check.id}: “${key}” is not a number with a unit`);
      return toBase(value.value, quantityOf(value.unit), unitKey(value.unit));
    },
    word(key) {
      const value = input(key);
      if (typeof value !== "string") throw new Error(`${check.id}: “${key}” is not a word`);
      return value;
    },
    typed() {
      return Object.entries(check.inputs).map(([key, value]) => [
        key,
        typeof value === "string" || Array.isArray(value) ? value : `${value.value}${unitKey(value.unit)}`,
      ]);
    },
  };
}

function compare(check: Check, output: string, ours: number | string | null): Comparison {
  const expected = check.expected[output];
  if (expected === undefined) throw new Error(`${check.id} expects no “${output}”`);
  const tolerance = typeof check.tolerance === "number" ? check.tolerance : (check.tolerance[output] ?? 0);
  if (typeof expected === "string")
    return { output, unit: "", expected, ours, difference: null, tolerance: 0, agrees: ours === expected };
  const { unit, value } = expected;
  if (typeof ours !== "number") return { output, unit, expected: value, ours, difference: null, tolerance, agrees: false };
  const inUnit = fromBase(ours, quantityOf(unit), unitKey(unit));
  const difference = inUnit - value;
  // Converting units back and forth costs the last digits of a double; no check is meant to be finer than that.
  const rounding = 1e-12 * Math.max(1, Math.abs(value));
  const right = Math.abs(difference) <= tolerance + rounding;
  const misprint = check.printed?.[output]?.value;
  const notWrong = misprint === undefined || Math.abs(inUnit - misprint) > tolerance;
  const common = { output, unit, expected: value, ours: inUnit, difference, tolerance, agrees: right && notWrong };
  return misprint === undefined ? common : { ...common, misprint };
}

/** One output of an answer; `turns.0.line` is a cell of a list. Undefined for one that does not exist. */
function outputAt(values: unknown, path: string): number | string | null | undefined {
  let found = values;
  for (const key of path.split(".")) {
    if (typeof found !== "object" || found === null) return undefined;
    found = Reflect.get(found, key);
  }
  return typeof found === "number" || typeof found === "string" || found === null ? found : undefined;
}

/** Runs one check. @throws Error when it names a subject, an input or an output that does not exist */
export function runCheck(check: Check, catalogue: Catalogue): Outcome {
  const outputs = subjectOf(check.of)(givenOf(check), catalogue);
  const comparisons = Object.keys(check.expected).map((output) => {
    const ours = outputAt(outputs, output);
    if (ours === undefined) throw new Error(`${check.id}: ${check.of} has no output “${output}”`);
    return compare(check, output, ours);
  });
  const disputed = check.kind === "disputed";
  return {
    check,
    comparisons,
    verdict: disputed ? "disputed" : comparisons.every(({ agrees }) => agrees) ? "agrees" : "differs",
    proves: !disputed && (check.kind === "exact" || check.seen === "read"),
  };
}

/** How many checks there are of each sort. */
export interface Tally {
  readonly run: number;
  readonly agree: number;
  readonly differ: number;
  /** Agree and are read or exact. */
  readonly proof: number;
  /** Agree but are from memory. */
  readonly memory: number;
  readonly disputed: number;
}

export function tally(outcomes: readonly Outcome[]): Tally {
  const count = (test: (outcome: Outcome) => boolean) => outcomes.filter(test).length;
  return {
    run: outcomes.length,
    agree: count(({ verdict }) => verdict === "agrees"),
    differ: count(({ verdict }) => verdict === "differs"),
    proof: count(({ verdict, proves }) => verdict === "agrees" && proves),
    memory: count(({ verdict, proves }) => verdict === "agrees" && !proves),
    disputed: count(({ verdict }) => verdict === "disputed"),
  };
}
