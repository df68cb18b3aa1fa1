import { checkAssignment } from "../../lib/assign/check-assignment.ts";
import type { Assignment, Question } from "../../lib/assign/definition.ts";
import type { WorksheetOf } from "../../lib/assign/own-question.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { InputError } from "../../lib/input-error.ts";
import { runWorksheet } from "../../lib/worksheet.ts";
import { firstRaw } from "./question-form.ts";

/** What checking one question may take [ms], and how many sets of numbers it is tried with at most and at least. */
const budget = 600;
const mostTries = 200;
const leastTries = 12;

/** Sets of numbers that a question can be tried with in a short time: a calculator that searches takes longer than a formula. */
function triesFor(question: Question, worksheetOf: WorksheetOf, catalogue: Catalogue): number {
  const sheet = worksheetOf(question.calculator);
  if (!sheet) return mostTries;
  const raw = firstRaw(sheet.inputs, question);
  // The first run also makes the browser ready for it, and any may be held up by something else.
  const runs = [1, 2, 3].map(() => {
    const before = performance.now();
    runWorksheet(sheet, raw, catalogue);
    return performance.now() - before;
  });
  const took = Math.min(...runs);
  return Math.round(Math.min(mostTries, Math.max(leastTries, budget / Math.max(took, 0.1))));
}

/** A fault of an assignment, with the question it is in. */
export interface Fault {
  /** From 0; undefined for one of the assignment itself. */
  readonly question?: number;
  /** Within the question, `varied.thickness.to`, or `title` and the like. */
  readonly place: string;
  readonly problem: InputError;
}

export interface Found {
  readonly faults: readonly Fault[];
  readonly tried: readonly { readonly combinations: number; readonly tried: number }[];
}

const placed = (problem: InputError): Fault => {
  const [, number, place = ""] = /^questions\.(\d+)(?:\.(.+))?$/.exec(problem.field) ?? [];
  return number === undefined ? { place: problem.field, problem } : { question: Number(number), place, problem };
};

interface Checked {
  readonly index: number;
  readonly worksheet: unknown;
  readonly catalogue: Catalogue;
  readonly found: Found;
}

/**
 * Checks an assignment. A question that has not changed since the last time is not worked through again: in a long
 * assignment a stroke in one question would otherwise wait for all the others.
 */
export function assignmentFaults(): (assignment: Assignment, worksheetOf: WorksheetOf, catalogue: Catalogue) => Found {
  const known = new WeakMap<Question, Checked>();
  return (assignment, worksheetOf, catalogue) => {
    const frame = checkAssignment({ ...assignment, questions: [] }, worksheetOf, catalogue).problems;
    const own = frame.filter(({ field }) => field !== "questions").map(placed);
    const { questions } = assignment;
    const parts = questions.map((question, index): Found => {
      const worksheet = worksheetOf(question.calculator);
      const last = known.get(question);
      if (last?.index === index && last.worksheet === worksheet && last.catalogue === catalogue) return last.found;
      const tries = triesFor(question, worksheetOf, catalogue);
      // The others are left out, but each keeps its number.
      const alone = Array.from({ length: index + 1 }, (_, place) => (place === index ? question : skipped));
      const checked = checkAssignment({ title: "T", course: "C", questions: alone }, worksheetOf, catalogue, tries);
      const faults = checked.problems.map(placed).filter((fault) => fault.question === index);
      const found = { faults, tried: checked.tried.slice(index, index + 1) };
      known.set(question, { index, worksheet, catalogue, found });
      return found;
    });
    const count = checkAssignment(
      { title: "T", course: "C", questions: questions.map(() => skipped) },
      () => undefined,
      catalogue,
    );
    return {
      faults: [
        ...own,
        ...count.problems.filter(({ field }) => field === "questions").map(placed),
        ...parts.flatMap(({ faults }) => faults),
      ],
      tried: parts.flatMap(({ tried }) => tried),
    };
  };
}

/** Takes no time to check: there is no such calculator. */
const skipped: Question = { calculator: "", fixed: {}, varied: {}, asked: [] };
