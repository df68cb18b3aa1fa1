import type { LengthView } from "../quantity/format.ts";
import type { KeyRow } from "./answer-key.ts";
import { taskLines } from "./bank.ts";
import type { Assignment } from "./definition.ts";
import { type Given, viewOf } from "./own-question.ts";
import { answerText, toleranceText } from "./tolerance.ts";

export interface PrintedQuestion {
  readonly number: number;
  /** Title of the calculator, and the page that explains it. */
  readonly title: string;
  readonly page: string;
  readonly intro: string;
  readonly given: readonly Given[];
  readonly asked: readonly { readonly label: string; readonly symbol?: string; readonly tolerance: string }[];
}

/** What is printed for one student: a sheet to work on, without answers. */
export interface PrintedSheet {
  readonly title: string;
  readonly course: string;
  readonly student: string;
  readonly note: string;
  readonly intro?: string;
  readonly questions: readonly PrintedQuestion[];
}

export interface PrintedKey {
  readonly title: string;
  readonly course: string;
  /** A student's own numbers and answers, question by question. */
  readonly rows: readonly {
    readonly student: string;
    readonly note: string;
    readonly questions: readonly {
      readonly number: number;
      readonly own: readonly Given[];
      readonly answers: readonly { readonly label: string; readonly text: string; readonly tolerance: string }[];
    }[];
    readonly problem?: string;
  }[];
}

/** The sheets of a class, and the key on a sheet of its own. */
export function printedSheets(
  assignment: Assignment,
  rows: readonly KeyRow[],
  view: LengthView = "mm",
): { readonly sheets: readonly PrintedSheet[]; readonly key: PrintedKey } {
  const { title, course, intro } = assignment;
  const sheets = rows
    .filter(({ problem }) => !problem)
    .map(
      ({ student, questions }): PrintedSheet => ({
        title,
        course,
        student: student.id,
        note: student.note,
        ...(intro === undefined ? {} : { intro }),
        questions: questions.map((own) => ({
          number: own.number,
          title: own.sheet.title,
          page: own.sheet.page,
          intro: taskLines(own).intro,
          given: own.given,
          asked: own.asked.map(({ output, right, tolerance }) => ({
            label: output.label,
            ...(output.symbol === undefined ? {} : { symbol: output.symbol }),
            // How a force or a mass is rounded follows its size, which a sheet must not give away.
            tolerance:
              tolerance.kind === "rounding" && output.quantity !== "length"
                ? "to the last figure that the handbook shows"
                : toleranceText(tolerance, right, output, viewOf(own.question, view)),
          })),
        })),
      }),
    );
  const key: PrintedKey = {
    title,
    course,
    rows: rows.map(({ student, questions, problem }) => ({
      student: student.id,
      note: student.note,
      questions: questions.map(({ number, question, given, asked }) => ({
        number,
        own: given.filter(({ own }) => own),
        answers: asked.map(({ output, right, tolerance }) => ({
          label: output.label,
          text: answerText(output, right, viewOf(question, view)),
          tolerance: toleranceText(tolerance, right, output, viewOf(question, view)),
        })),
      })),
      ...(problem ? { problem: problem.message } : {}),
    })),
  };
  return { sheets, key };
}
