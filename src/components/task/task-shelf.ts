import { assignmentQuery } from "../../lib/assign/address.ts";
import type { Assignment } from "../../lib/assign/definition.ts";
import { plainId } from "../../lib/assign/own-numbers.ts";
import { fnv1a64 } from "../../lib/assign/random.ts";
import { type LengthView, lengthViews } from "../../lib/quantity/format.ts";
import { type Found, find, isGroup, keep, type Store, shelfVersion } from "../shop/shelf.ts";

/** What this device keeps of a student's work: for each task and id what was typed, so that a reload loses nothing. */

export const taskShelf = "flat-to-formed.tasks";

/** A text with the units its bare numbers were typed in: a switch of units must not turn 82 mm into 82 in. */
export interface TypedText {
  readonly text: string;
  readonly view: LengthView;
}

export interface KeptAnswer {
  /** As it stands in the field. */
  readonly typed: TypedText;
  readonly predicted?: TypedText;
  /** What was checked last, where it could be read. */
  readonly checked?: TypedText;
  /** How many different answers were checked. */
  readonly tries: number;
}

export interface KeptTask {
  /** Of the assignment, every word and value of it. */
  readonly mark: string;
  readonly student: string;
  /** By number of the question and key of the output: `1.blank`. */
  readonly answers: Readonly<Record<string, KeptAnswer>>;
}

interface KeptTasks {
  readonly version: typeof shelfVersion;
  readonly tasks: readonly KeptTask[];
}

const isTyped = (value: unknown): value is TypedText =>
  isGroup(value) && typeof value.text === "string" && lengthViews.some((view) => view === value.view);

const isAnswer = (value: unknown): value is KeptAnswer =>
  isGroup(value) &&
  isTyped(value.typed) &&
  Number.isInteger(value.tries) &&
  [value.predicted, value.checked].every((each) => each === undefined || isTyped(each));

const isTask = (value: unknown): value is KeptTask =>
  isGroup(value) &&
  typeof value.mark === "string" &&
  typeof value.student === "string" &&
  isGroup(value.answers) &&
  Object.values(value.answers).every(isAnswer);

/** Mark of an assignment, for this device alone. */
export const taskMark = (assignment: Assignment): string => fnv1a64(assignmentQuery(assignment)).toString(36);

/** All that is kept, the last worked on first. */
export function findTasks(store: Store | undefined): Found<KeptTasks> {
  return find(store, taskShelf, ({ tasks }) => Array.isArray(tasks) && tasks.every(isTask));
}

const same = (one: KeptTask, mark: string, student: string) => one.mark === mark && plainId(one.student) === plainId(student);

/** The work of one student on one task. */
export function taskOf(tasks: readonly KeptTask[], mark: string, student: string): KeptTask {
  return tasks.find((each) => same(each, mark, student)) ?? { mark, student, answers: {} };
}

/** Keeps the work of one student, other work beside it. @returns false where storage is off, full, or holds what newer pages kept */
export function keepTask(store: Store | undefined, task: KeptTask): boolean {
  const { kept, trouble } = findTasks(store);
  if (trouble && trouble.why !== "unreadable") return false;
  const others = (kept?.tasks ?? []).filter((each) => !same(each, task.mark, task.student));
  return keep(store, taskShelf, { version: shelfVersion, tasks: [task, ...others] } satisfies KeptTasks);
}

/** Removes the work of one student on one task from this device. */
export function forgetTask(store: Store | undefined, { mark, student }: KeptTask): boolean {
  const { kept, trouble } = findTasks(store);
  if (trouble && trouble.why !== "unreadable") return false;
  const others = (kept?.tasks ?? []).filter((each) => !same(each, mark, student));
  return keep(store, taskShelf, others.length === 0 ? undefined : ({ version: shelfVersion, tasks: others } satisfies KeptTasks));
}
