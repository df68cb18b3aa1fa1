import type { Catalogue } from "../catalogue.ts";
import { safeCsv } from "../csv.ts";
import { InputError } from "../input-error.ts";
import { type LengthView, unitOfView } from "../quantity/format.ts";
import { kindOf } from "../quantity/units.ts";
import type { QuantityOutput } from "../worksheet.ts";
import { plainAnswer } from "./check-answer.ts";
import type { Student } from "./class-list.ts";
import type { Assignment } from "./definition.ts";
import { type AskedAnswer, type Given, type OwnQuestion, ownQuestions, viewOf, type WorksheetOf } from "./own-question.ts";
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

/** One column of a key: an own number or an answer, of one question. */
export interface KeyColumn {
  /** Of the question, from 0. */
  readonly index: number;
  readonly label: string;
  /** The question it belongs to, as one student has it. */
  readonly own: OwnQuestion;
  /** Path of a number of one's own; otherwise `asked` is the place of an answer. */
  readonly path?: string;
  readonly asked?: number;
}

/**
 * The columns of a key, question by question. A number that only some students are given, because another of theirs hides
 * its input, has its column too.
 */
export function keyColumns(rows: readonly KeyRow[]): KeyColumn[] {
  const good = rows.filter(({ problem }) => !problem);
  const [model] = good;
  return (model?.questions ?? []).flatMap((own, index): KeyColumn[] => {
    const numbers = new Map<string, KeyColumn>();
    for (const { questions } of good)
      for (const { path, label, own: isOwn } of questions[index]?.given ?? [])
        if (isOwn && !numbers.has(path)) numbers.set(path, { index, label, own, path });
    return [...numbers.values(), ...own.asked.map(({ output }, asked) => ({ index, label: output.label, own, asked }))];
  });
}

/** What a student has at a column: the text of an own number, or the answer; undefined where they have none. */
export function keyCell(row: KeyRow, { index, path, asked }: KeyColumn): Given | AskedAnswer | undefined {
  const question = row.questions[index];
  return asked === undefined ? question?.given.find((each) => each.path === path) : question?.asked[asked];
}

const isAnswer = (cell: Given | AskedAnswer): cell is AskedAnswer => "right" in cell;

/** The cells of an answer key, each column with its unit in its head. */
export function answerKeyCells(rows: readonly KeyRow[], view: LengthView = "mm"): string[][] {
  const columns = keyColumns(rows);
  const viewAt = ({ own }: KeyColumn) => viewOf(own.question, view);
  const head = columns.map((column) => {
    const asked = column.asked === undefined ? undefined : column.own.asked[column.asked];
    const unit = asked ? answerUnit(asked.output, viewAt(column)) : "";
    return `${column.own.number}. ${column.label}${unit === "" ? "" : ` [${unit}]`}`;
  });
  const lines = rows.map((row) => [
    row.student.id,
    row.student.note,
    ...(row.problem
      ? [row.problem.message]
      : columns.map((column) => {
          const cell = keyCell(row, column);
          if (!cell) return "";
          return isAnswer(cell) ? answerFigures(cell.output, cell.right, viewAt(column)) : cell.text;
        })),
  ]);
  return [["Student", "Note", ...head], ...lines];
}

/** The answer key as a table for a spreadsheet: student, what stands beside the id, then own numbers and answers. */
export const answerKeyCsv = (rows: readonly KeyRow[], view: LengthView = "mm"): string => safeCsv(answerKeyCells(rows, view));
