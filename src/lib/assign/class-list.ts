import { InputError } from "../input-error.ts";
import { say } from "../quantity/phrase.ts";
import { type Assignment, limits } from "./definition.ts";
import { plainId } from "./own-numbers.ts";
import { type QuestionResult, readResultCode } from "./result-code.ts";

export interface Student {
  readonly id: string;
  /** What stands beside the id in the list, such as a name; it decides nothing. */
  readonly note: string;
}

/** Cells of one line, divided by tabs, semicolons or commas, whichever comes first in that order; quotes as in CSV. */
function cellsOf(line: string): string[] {
  const mark = ["\t", ";", ","].find((each) => line.includes(each));
  if (mark === undefined) return [line.trim()];
  const cells: string[] = [];
  let cell = "";
  let quoted = false;
  for (let at = 0; at < line.length; at++) {
    const sign = line[at] as string;
    if (quoted && sign === '"' && line[at + 1] === '"') {
      cell += '"';
      at++;
    } else if (sign === '"') quoted = !quoted;
    else if (sign === mark && !quoted) {
      cells.push(cell.trim());
      cell = "";
    } else cell += sign;
  }
  return [...cells, cell.trim()];
}

/**
 * Reads a pasted class list: one student a line, the id first.
 * @returns the students, and a problem for each line that cannot be used, `students.3` for the fourth line
 */
export function readClassList(text: string): { readonly students: readonly Student[]; readonly problems: readonly InputError[] } {
  const students: Student[] = [];
  const problems: InputError[] = [];
  const seen = new Map<string, number>();
  text.split(/\r\n|\r|\n/).forEach((line, index) => {
    const [id = "", ...rest] = cellsOf(line);
    if (line.trim() === "") return;
    const field = `students.${index}`;
    const plain = plainId(id);
    const before = seen.get(plain);
    const refuse = (why: string) => problems.push(new InputError(field, line, say`Line ${index + 1}: ${why}`));
    if (plain === "") refuse("the id is missing. It comes first in the line.");
    else if (plain.length > limits.student) refuse(`the id has ${plain.length} characters; up to ${limits.student} are allowed.`);
    else if (before !== undefined) refuse(`the id “${id}” is in line ${before + 1} already.`);
    else if (students.length >= limits.students) refuse(`the list is full; up to ${limits.students} students are taken.`);
    else {
      seen.set(plain, index);
      students.push({ id, note: rest.filter((cell) => cell !== "").join(" ") });
    }
  });
  return { students, problems };
}

export interface HandedIn {
  readonly student: string;
  readonly results: readonly QuestionResult[];
}

const worth = (results: readonly QuestionResult[]) =>
  results.reduce((sum, result) => sum + (result === "right" ? limits.questions + 1 : result === "tried" ? 1 : 0), 0);

/** The code at the end of a line that may begin with a name: the shortest ending that can be read. */
function codeIn(assignment: Assignment, line: string): ReturnType<typeof readResultCode> {
  const words = line.trim().split(/[\s,;:]+/);
  let problem: unknown;
  for (let count = 1; count <= Math.min(words.length, 4); count++) {
    try {
      return readResultCode(assignment, words.slice(-count).join(""));
    } catch (error) {
      problem ??= error;
    }
  }
  // An ending of one word tells more about what is wrong with it than a longer one.
  throw problem;
}

/**
 * Reads pasted result codes, one a line, with or without words before them, and tells who is done.
 *
 * @returns for each student with a code the best of their codes, in the order of the list; the ids without one; and a
 * problem for each line that cannot be used, `codes.3` for the fourth line
 */
export function readCodes(
  assignment: Assignment,
  students: readonly Student[],
  text: string,
): { readonly handedIn: readonly HandedIn[]; readonly missing: readonly string[]; readonly problems: readonly InputError[] } {
  const best = new Map<string, readonly QuestionResult[]>();
  const problems: InputError[] = [];
  text.split(/\r\n|\r|\n/).forEach((line, index) => {
    if (line.trim() === "") return;
    const refuse = (why: string) => problems.push(new InputError(`codes.${index}`, line, say`Line ${index + 1}: ${why}`));
    try {
      const { results, isOf } = codeIn(assignment, line);
      const owners = students.filter(({ id }) => isOf(id));
      const [owner] = owners;
      if (!owner) refuse("the code is of a student who is not in the list.");
      // One in a million pairs of ids shares a mark.
      else if (owners.length > 1) refuse(`the code may be of ${owners.map(({ id }) => id).join(" or ")}.`);
      else if (worth(results) >= worth(best.get(owner.id) ?? [])) best.set(owner.id, results);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      refuse(error.message);
    }
  });
  const handedIn = students.flatMap(({ id }) => {
    const results = best.get(id);
    return results ? [{ student: id, results }] : [];
  });
  return { handedIn, missing: students.filter(({ id }) => !best.has(id)).map(({ id }) => id), problems };
}
