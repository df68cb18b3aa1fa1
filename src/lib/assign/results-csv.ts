import { safeCsv } from "../csv.ts";
import type { Student } from "./class-list.ts";
import type { Assignment } from "./definition.ts";
import type { CodesRead } from "./read-codes.ts";
import type { QuestionResult } from "./result-code.ts";

/** Who is done, as a table for a spreadsheet: student, note, how many questions are right, and each question. */
export function resultsCsv(assignment: Assignment, students: readonly Student[], { handedIn }: CodesRead): string {
  const results = new Map<string, readonly QuestionResult[]>(handedIn.map((each) => [each.student, each.results]));
  const numbers = assignment.questions.map((_, index) => String(index + 1));
  const lines = students.map(({ id, note }) => {
    const own = results.get(id);
    if (!own) return [id, note, "no code", "", ...numbers.map(() => "")];
    const right = own.filter((each) => each === "right").length;
    return [id, note, right === own.length ? "done" : "in part", right, ...own];
  });
  return safeCsv([["Student", "Note", "Code", "Questions right", ...numbers], ...lines]);
}
