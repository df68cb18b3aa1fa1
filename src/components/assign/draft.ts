import { assignmentParts } from "../../lib/assign/address.ts";
import { assignOwner } from "../../lib/assign/assign-owner.ts";
import type { Assignment, Question } from "../../lib/assign/definition.ts";

/** An assignment in the making. Questions have names of their own, because their places change. */
export interface Draft {
  readonly assignment: Assignment;
  /** In the order of the questions. */
  readonly names: readonly number[];
}

export const emptyAssignment: Assignment = { title: "", course: "", questions: [] };

export const isEmpty = ({ title, course, intro, questions }: Assignment): boolean =>
  title === "" && course === "" && !intro && questions.length === 0;

/** What an address has to hold for it, without the name of the owner: nothing for one in which nothing was entered. */
export function draftParts(assignment: Assignment): [string, string][] {
  if (isEmpty(assignment)) return [];
  return assignmentParts(assignment).map(([name, text]): [string, string] => [name.slice(assignOwner.length + 1), text]);
}

const nextName = ({ names }: Draft) => Math.max(0, ...names) + 1;

/** A draft of an assignment that comes from elsewhere. @param after - no name up to this one is given again */
export function draftOf(assignment: Assignment, after = 0): Draft {
  return { assignment, names: assignment.questions.map((_, index) => after + index + 1) };
}

function withQuestions(draft: Draft, questions: readonly Question[], names: readonly number[]): Draft {
  return { assignment: { ...draft.assignment, questions }, names };
}

export function withQuestion(draft: Draft, at: number, change: (before: Question) => Question): Draft {
  const { questions } = draft.assignment;
  return withQuestions(
    draft,
    questions.map((question, index) => (index === at ? change(question) : question)),
    draft.names,
  );
}

/** Puts a question in at a place; `name` brings back one that was there before. */
export function withInserted(draft: Draft, at: number, question: Question, name = nextName(draft)): Draft {
  return withQuestions(draft, draft.assignment.questions.toSpliced(at, 0, question), draft.names.toSpliced(at, 0, name));
}

export function withoutQuestion(draft: Draft, at: number): Draft {
  return withQuestions(draft, draft.assignment.questions.toSpliced(at, 1), draft.names.toSpliced(at, 1));
}

/** Swaps a question with the one before it. */
export function withMovedUp(draft: Draft, at: number): Draft {
  const up = <T>(list: readonly T[]): T[] => {
    const moved = list[at];
    return at < 1 || moved === undefined ? [...list] : list.toSpliced(at, 1).toSpliced(at - 1, 0, moved);
  };
  return withQuestions(draft, up(draft.assignment.questions), up(draft.names));
}
