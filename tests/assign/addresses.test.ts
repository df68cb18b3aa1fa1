import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { sharedQuery, unfolded } from "../../src/components/packed.ts";
import { assignmentFromAddress, assignmentQuery } from "../../src/lib/assign/address.ts";
import { assignOwner } from "../../src/lib/assign/assign-owner.ts";
import { checkAssignment } from "../../src/lib/assign/check-assignment.ts";
import type { Assignment } from "../../src/lib/assign/definition.ts";
import { ownTexts } from "../../src/lib/assign/own-numbers.ts";
import { readResultCode, resultCode } from "../../src/lib/assign/result-code.ts";
import { bracket, catalogue, worksheetById } from "./shared.ts";

/**
 * Addresses of assignments that are out in the world. They are never edited: what they open, the numbers of a student and
 * the codes already handed in never change. The assignment beside each was written down by hand when it was frozen; the
 * numbers and the code are what the handbook gave on that day.
 */
interface Frozen {
  readonly since: string;
  readonly query: string;
  readonly assignment: Assignment;
  readonly student: string;
  readonly numbers: readonly Readonly<Record<string, string>>[];
  readonly allRight: string;
}
const frozen: readonly Frozen[] = JSON.parse(readFileSync("tests/assign/frozen-addresses.json", "utf8"));

const opened = async (query: string) =>
  assignmentFromAddress(new URLSearchParams((await unfolded(assignOwner, `?${query}`)) ?? query));

describe("addresses that were given away keep opening the same assignment", () => {
  test.each(frozen)("$query", async ({ query, assignment, student, numbers, allRight }) => {
    const read = await opened(query);
    expect(read).toEqual(assignment);
    expect(checkAssignment(assignment, worksheetById, catalogue).problems.map(({ message }) => message)).toEqual([]);
    const own = assignment.questions.map((question, index) =>
      ownTexts(worksheetById(question.calculator)?.inputs ?? {}, question, index, { course: assignment.course, student }),
    );
    expect(own).toEqual(numbers);
    const results = assignment.questions.map(() => "right" as const);
    expect(resultCode(assignment, student, results)).toBe(allRight);
    expect(readResultCode(assignment, allRight)).toMatchObject({ results });
  });
});

test("a long assignment is packed for sharing, beside whatever else the address holds", async () => {
  const long: Assignment = { ...bracket, questions: Array.from({ length: 6 }, () => bracket.questions).flat() };
  const shared = await sharedQuery(assignOwner, assignmentQuery(long));
  expect(shared).toMatch(/^assign\.packed=1\.[\w-]+$/);
  expect(shared.length).toBeLessThan(assignmentQuery(long).length / 4);
  expect(await opened(`${shared}&student=s-1001`)).toEqual(long);
});
