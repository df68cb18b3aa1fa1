import type { Catalogue } from "../catalogue.ts";
import { safeCsv } from "../csv.ts";
import { InputError } from "../input-error.ts";
import { type LengthView, unitOfView } from "../quantity/format.ts";
import { kindOf } from "../quantity/units.ts";
import type { QuantityOutput } from "../worksheet.ts";
import { plainAnswer } from "./check-answer.ts";
import type { Student } from "./class-list.ts";
import type { Assignment } from "./definition.ts";
import { type OwnQuestion, ownQuestions, viewOf, type WorksheetOf } from "./own-question.ts";
import { shownStep } from "./tolerance.ts";

/** One student's questions, or why they cannot be worked out. */
export interface KeyRow {
  readonly student: Student;
  readonly questions: readonly OwnQuestion[];
  readonly problem?: InputError;
}

/** The numbers and answers of every student of a list. */
export function answerKey(
  assignment: Assignment,
  students: readonly Student[],
  worksheetOf: WorksheetOf,
  catalogue: Catalogue,
): KeyRow[] {
  return students.map((student) => {
    try {
      return { student, questions: ownQuestions(assignment, student.id, worksheetOf, catalogue) };
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return { student, questions: [], problem: error };
    }
  });
}

/** The unit in which a bare number is read as an answer, as it is printed. */
export function answerUnit(output: QuantityOutput, view: LengthView): string {
  if (output.asPercent) return "%";
  return kindOf(output.quantity).units[unitOfView(output.quantity, view)]?.text ?? "";
}

/** A right answer as a plain number in that unit, with one figure more than the handbook shows, so that it can be checked. */
export function answerFigures(output: QuantityOutput, right: number, view: LengthView): string {
  const value = plainAnswer(output, right, view);
  if (output.quantity === "count") return String(value);
  // A share is counted per cent; a fraction of an inch is written as decimal inches.
  const shown = output.asPercent ? 1 : plainAnswer(output, shownStep(output, right, view === "fraction" ? "inch" : view), view);
  const decimals = Math.max(0, Math.round(-Math.log10(shown))) + 1;
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace("-", "") : text;
}

const headed = (number: number, label: string, unit = "") => `${number}. ${label}${unit === "" ? "" : ` [${unit}]`}`;

/**
 * The answer key as a table for a spreadsheet: student, what stands beside the id, then for each question the numbers that
 * are the student's own and the answers, each with its unit in the head of its column.
 */
export function answerKeyCsv(rows: readonly KeyRow[], view: LengthView = "mm"): string {
  const model = rows.find(({ problem }) => !problem)?.questions ?? [];
  const head = model.flatMap(({ number, question, given, asked }) => [
    ...given.filter(({ own }) => own).map(({ label }) => headed(number, label)),
    ...asked.map(({ output }) => headed(number, output.label, answerUnit(output, viewOf(question, view)))),
  ]);
  const lines = rows.map(({ student, questions, problem }) => [
    student.id,
    student.note,
    ...(problem ? [problem.message] : []),
    ...questions.flatMap(({ question, given, asked }) => [
      ...given.filter(({ own }) => own).map(({ text }) => text),
      ...asked.map(({ output, right }) => answerFigures(output, right, viewOf(question, view))),
    ]),
  ]);
  return safeCsv([["Student", "Note", ...head], ...lines]);
}
