import { InputError } from "../input-error.ts";
import { say } from "../quantity/phrase.ts";
import { assignmentQuery } from "./address.ts";
import { type Assignment, limits } from "./definition.ts";
import { checkId, plainId } from "./own-numbers.ts";
import { fnv1a64, splitMix64 } from "./random.ts";

/**
 * A result code: what a student hands in, short enough to be written down.
 *
 * It holds a mark of the assignment, a mark of the student and, for each question, whether it was tried and whether it is
 * right. What it shows: it was made for this very assignment (a changed assignment has another mark), it bears this
 * student's id, and it was copied without error: one wrong letter, or two swapped, is always noticed.
 * What it cannot show: that this student did the work, or that anyone did. It is made on the student's own device by code
 * that everybody can read, and it holds no secret; whoever wants to can make a code that says what they like. It serves
 * to see who is done. A mark that counts needs the work itself, or a test under supervision.
 *
 * Letters: base 32 after D. Crockford, without I, L, O and U; capitals or not. The check letter is that of a Reed-Solomon
 * code over 32 values, polynomial x⁵ + x² + 1.
 */

export const questionResults = ["untried", "tried", "right"] as const;
export type QuestionResult = (typeof questionResults)[number];

const letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const markBits = 20n;
const markSize = 1n << markBits;
/** Letters before the check letter, at least: codes of few questions are no shorter than others. */
const fewest = 11;

const markOf = (text: string): bigint => splitMix64(fnv1a64(text))() % markSize;

/** Mark of an assignment: of every word, value and tolerance in it. */
const assignmentMark = (assignment: Assignment): bigint => markOf(`assignment\0${assignmentQuery(assignment)}`);

/** Mark of a student in a course. One in a million pairs of students shares one. */
export const studentMark = ({ course }: Pick<Assignment, "course">, student: string): bigint =>
  markOf(["student", plainId(course), plainId(student)].join("\0"));

/** Turns the results so that two students with the same ones have different codes. */
const turnBy = (assignment: bigint, student: bigint, size: bigint): bigint =>
  splitMix64((assignment << markBits) | student)() % size;

function letterCount(questions: number): number {
  const largest = (1n << (2n * markBits)) * 3n ** BigInt(questions) - 1n;
  return Math.max(fewest, Math.ceil(largest.toString(2).length / 5));
}

/** Product of two values of the field of 32. */
function times(a: number, b: number): number {
  let product = 0;
  for (let bit = 0; bit < 5; bit++) if ((b >> bit) & 1) product ^= a << bit;
  for (let bit = 9; bit >= 5; bit--) if ((product >> bit) & 1) product ^= 0b100101 << (bit - 5);
  return product;
}

/** Each letter counts with another power of x, so that neither a wrong letter nor two swapped ones cancel out. */
function checkValue(values: readonly number[]): number {
  return values.reduce((sum, value) => times(sum ^ value, 2), 0);
}

const grouped = (text: string) => text.replace(/(.{4})(?=.)/g, "$1-");

/**
 * The code a student hands in.
 *
 * @param results - one for each question of the assignment
 * @returns 12 to 16 letters in groups of four
 * @throws InputError for a student id that is empty or too long
 */
export function resultCode(assignment: Assignment, student: string, results: readonly QuestionResult[]): string {
  checkId("student", student);
  const count = assignment.questions.length;
  if (results.length !== count || count === 0 || count > limits.questions)
    throw new Error(`A code for ${count} questions cannot hold ${results.length} results`);
  const size = 3n ** BigInt(count);
  const marks = [assignmentMark(assignment), studentMark(assignment, student)] as const;
  const held = results.reduce((sum, result) => sum * 3n + BigInt(questionResults.indexOf(result)), 0n);
  let rest = ((marks[0] << markBits) | marks[1]) * size + ((held + turnBy(...marks, size)) % size);
  const values: number[] = [];
  for (let place = 0; place < letterCount(count); place++) {
    values.unshift(Number(rest % 32n));
    rest /= 32n;
  }
  return grouped([...values, checkValue(values)].map((value) => letters[value]).join(""));
}

export interface ReadCode {
  readonly results: readonly QuestionResult[];
  /** Mark of the student whose it is. */
  readonly mark: bigint;
  /** Whether it bears the mark of this student. */
  isOf(student: string): boolean;
}

/** Values of the letters of a code as typed; -1 for a sign that no code has. */
const valuesOf = (typed: string): number[] =>
  [
    ...typed
      .toUpperCase()
      .replace(/[\s\-–—]/g, "")
      .replaceAll("O", "0")
      .replace(/[IL]/g, "1"),
  ].map((letter) => letters.indexOf(letter));

const lettersOf = ({ questions }: Assignment): number => letterCount(questions.length) + 1;

const isCopiedRight = (values: readonly number[]): boolean => checkValue(values.slice(0, -1)) === values.at(-1);

/** Whether a text is worth reading as a code of an assignment: quick, for texts full of other words. */
export function mayBeCode(assignment: Assignment, typed: string): boolean {
  const wanted = lettersOf(assignment);
  if (typed.length < wanted) return false;
  const values = valuesOf(typed);
  return values.length === wanted && !values.includes(-1) && isCopiedRight(values);
}

/**
 * Reads a result code. Spaces, dashes and small letters do not matter; O is read as 0, I and L as 1.
 * @throws InputError when it is no code, was miscopied, or belongs to another assignment or another state of this one
 */
export function readResultCode(assignment: Assignment, typed: string): ReadCode {
  const refuse = (why: string) => new InputError("code", typed, say`“${typed.trim().slice(0, 40)}” ${why}`);
  const count = assignment.questions.length;
  const wanted = lettersOf(assignment);
  const values = valuesOf(typed);
  if (values.includes(-1)) throw refuse("is not a result code: it holds signs that no code has.");
  if (values.length !== wanted)
    throw refuse(`is not a code of this assignment: such a code has ${wanted} letters and figures; here are ${values.length}.`);
  if (!isCopiedRight(values)) throw refuse("was not copied right: the check letter does not fit.");

  const size = 3n ** BigInt(count);
  const number = values.slice(0, -1).reduce((sum, value) => sum * 32n + BigInt(value), 0n);
  const mark = number / size;
  if (mark >= markSize * markSize) throw refuse("is not a result code.");
  const [own, student] = [mark >> markBits, mark % markSize];
  if (own !== assignmentMark(assignment)) throw refuse("belongs to another assignment, or to this one before it was changed.");
  let held = ((number % size) - turnBy(own, student, size) + size) % size;
  const results: QuestionResult[] = [];
  for (let place = 0; place < count; place++) {
    results.unshift(questionResults[Number(held % 3n)] ?? "untried");
    held /= 3n;
  }
  return { results, mark: student, isOf: (id) => studentMark(assignment, id) === student };
}
