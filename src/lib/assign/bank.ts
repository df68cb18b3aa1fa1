import type { Catalogue } from "../catalogue.ts";
import { safeCsv } from "../csv.ts";
import type { LengthView } from "../quantity/format.ts";
import { answerFigures, answerUnit } from "./answer-key.ts";
import { plainAnswer } from "./check-answer.ts";
import type { Assignment } from "./definition.ts";
import { type AskedAnswer, type OwnQuestion, ownQuestion, viewOf, type WorksheetOf } from "./own-question.ts";
import { taskText } from "./task-text.ts";
import { allowed, answerText, toleranceText } from "./tolerance.ts";

/** A question of a bank: one of several sets of numbers for the same task. */
export interface BankQuestion extends OwnQuestion {
  /** Counted from 1. */
  readonly variant: number;
  /** `q2-v07`: question 2, seventh set of numbers. */
  readonly id: string;
}

/** How many sets of numbers a bank may hold for one question. */
export const mostVariants = 100;

/** The student whose numbers a set of a bank has, so that a sheet on paper can be checked like any other. */
export const bankStudent = (set: number): string => `bank ${set}`;

const twoFigures = (number: number) => String(number).padStart(2, "0");

/**
 * The questions of an assignment with several sets of numbers each, drawn as for students `bank 1`, `bank 2` …, so that the
 * same assignment always gives the same bank. Sets that turn out alike are kept once.
 *
 * @param variants - sets of numbers for each question, 1 to 100; a question in which nothing varies gets one
 * @throws InputError when a calculator refuses a set; `checkAssignment` finds out beforehand
 */
export function bankQuestions(
  assignment: Assignment,
  variants: number,
  worksheetOf: WorksheetOf,
  catalogue: Catalogue,
): readonly (readonly BankQuestion[])[] {
  if (!Number.isInteger(variants) || variants < 1 || variants > mostVariants)
    throw new RangeError(`variants must be a whole number from 1 to ${mostVariants}; it is ${variants}`);
  return assignment.questions.map((_, index) => {
    const seen = new Set<string>();
    const found: BankQuestion[] = [];
    for (let draw = 1; draw <= variants; draw++) {
      const own = ownQuestion(assignment, index, bankStudent(draw), worksheetOf, catalogue);
      const numbers = JSON.stringify(own.raw);
      if (seen.has(numbers)) continue;
      seen.add(numbers);
      const variant = found.length + 1;
      found.push({ ...own, variant, id: `q${own.number}-v${twoFigures(variant)}` });
    }
    return found;
  });
}

/** The task of a question in plain lines: its text, what is given, what is asked. */
export function taskLines(own: OwnQuestion): { readonly intro: string; readonly given: readonly string[] } {
  return { intro: taskText(own.sheet, own.question), given: own.given.map(({ label, text }) => `${label}: ${text}`) };
}

/** What an answer is called, with the unit in which it is entered as a plain number. */
export function askedLabel({ output }: AskedAnswer, view: LengthView): string {
  const unit = answerUnit(output, view);
  const symbol = output.symbol ? ` ${output.symbol}` : "";
  return `${output.label}${symbol}${unit === "" ? "" : `, in ${unit}`}`;
}

/** The bank as a table: one line for each answer asked for. */
export function bankCsv(bank: readonly (readonly BankQuestion[])[], view: LengthView = "mm"): string {
  const lines = bank.flat().flatMap((own) => {
    const shown = viewOf(own.question, view);
    const { intro, given } = taskLines(own);
    return own.asked.map((asked) => {
      const { output, right, tolerance } = asked;
      const most = plainAnswer(output, allowed(tolerance, right, output, shown), shown);
      return [
        own.id,
        own.sheet.id,
        intro,
        given.join("; "),
        output.label,
        answerUnit(output, shown),
        answerFigures(output, right, shown),
        Number(most.toPrecision(6)),
        answerText(output, right, shown),
        toleranceText(tolerance, right, output, shown),
      ];
    });
  });
  const head = ["Id", "Calculator", "Task", "Given", "Asked", "Unit", "Answer", "Either way", "As shown", "Tolerance"];
  return safeCsv([head, ...lines]);
}
