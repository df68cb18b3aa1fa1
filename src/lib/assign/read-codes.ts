import { InputError } from "../input-error.ts";
import { say } from "../quantity/phrase.ts";
import type { Student } from "./class-list.ts";
import { type Assignment, limits } from "./definition.ts";
import { plainId } from "./own-numbers.ts";
import { mayBeCode, type QuestionResult, type ReadCode, readResultCode, studentMark } from "./result-code.ts";

/** Finds result codes in whatever they were sent in, and tells who is done. */

export interface HandedIn {
  /** The id as it stands in the list. */
  readonly student: string;
  /** Of the best code. */
  readonly results: readonly QuestionResult[];
  /** How often a code of this student was found, the same one or others. */
  readonly times: number;
}

export interface CodesRead {
  /** In the order of the list. */
  readonly handedIn: readonly HandedIn[];
  /** Ids without a code. */
  readonly missing: readonly string[];
  /** A problem for each code that does not count, `codes.3` for one in the fourth line. */
  readonly problems: readonly InputError[];
  /** Lines that hold words and no code. */
  readonly withoutCode: number;
}

/** A code may be sent in as many pieces, with spaces between. */
const mostPieces = 4;

interface Piece {
  readonly text: string;
  /** Where it begins in its line. */
  readonly at: number;
}

const joined = (pieces: readonly Piece[]) => pieces.map(({ text }) => text.replaceAll("-", "")).join("");

const typedIn = (pieces: readonly Piece[]) => pieces.map(({ text }) => text).join(" ");

/** Signs that mail and word processors put in, and all dashes made one. */
const plainLine = (line: string) =>
  line
    .normalize("NFKC")
    .replace(/[\u00ad\u200b-\u200f\u2060\ufeff]/g, "")
    .replace(/[‐‑‒–—−]/g, "-");

/** Whether somebody meant it for a code: an ordinary word, a date or a telephone number is none. */
function looksLikeCode(pieces: readonly Piece[]): boolean {
  const letters = joined(pieces);
  if (!/\d/.test(letters) || !/[a-z]/i.test(letters) || letters.length < 10 || letters.length > 18) return false;
  const groups = pieces.flatMap(({ text }) => text.split("-"));
  if (groups.length === 1) return letters.length >= 12 && letters.length <= 16;
  // With spaces between, ordinary words must not be taken together.
  if (pieces.length > 1 && !groups.every((group) => /\d|^[A-Z]+$/.test(group) && group.length <= 4)) return false;
  return (
    groups.length >= 3 && groups.every((group, index) => group.length <= 5 && (group.length >= 3 || index === groups.length - 1))
  );
}

interface FoundCode {
  readonly typed: string;
  readonly at: number;
  readonly read?: ReadCode;
  readonly problem?: InputError;
}

function codesIn(assignment: Assignment, line: string): FoundCode[] {
  const pieces: Piece[] = [...line.matchAll(/[\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)*/gu)].map((match) => ({
    text: match[0],
    at: match.index,
  }));
  const found: FoundCode[] = [];
  const used = new Set<Piece>();
  /** Every run of pieces that is about as long as a code, the longer ones first at each place. */
  const runs = function* () {
    for (let from = 0; from < pieces.length; from++)
      for (let count = mostPieces; count >= 1; count--) {
        const some = pieces.slice(from, from + count);
        const { length } = joined(some);
        if (some.length === count && length >= 10 && length <= 18 && !some.some((piece) => used.has(piece))) yield some;
      }
  };
  const take = (some: readonly Piece[], read: ReadCode | undefined, problem?: InputError) => {
    for (const piece of some) used.add(piece);
    found.push({ typed: typedIn(some), at: some[0]?.at ?? 0, ...(read ? { read } : {}), ...(problem ? { problem } : {}) });
  };
  // What can be read goes first, so that a code with a fault in it does not run on into one without.
  for (const goodOnes of [true, false])
    for (const some of runs()) {
      if (goodOnes ? !mayBeCode(assignment, joined(some)) : !looksLikeCode(some)) continue;
      try {
        const read = readResultCode(assignment, typedIn(some));
        if (goodOnes) take(some, read);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        if (!goodOnes) take(some, undefined, error);
      }
    }
  return found.sort((one, other) => one.at - other.at);
}

const worth = (results: readonly QuestionResult[]) =>
  results.reduce((sum, result) => sum + (result === "right" ? limits.questions + 1 : result === "tried" ? 1 : 0), 0);

/** Whether a text names somebody: their id with nothing of a word before or behind it. */
function names(text: string, id: string): boolean {
  for (let at = text.indexOf(id); at >= 0; at = text.indexOf(id, at + 1))
    if (!/[\p{L}\p{N}]/u.test(text[at - 1] ?? "") && !/[\p{L}\p{N}]/u.test(text[at + id.length] ?? "")) return true;
  return false;
}

/** Ids so short may stand in a text by chance. */
const shortestNamed = 3;

/**
 * Reads result codes out of a pasted text, in any order, with the messages around them.
 *
 * A code counts when it is of this assignment and of a student of the list. Where its line begins with the id of another
 * student it does not: then somebody has sent in a code that is not their own.
 */
export function readCodes(assignment: Assignment, students: readonly Student[], text: string): CodesRead {
  const best = new Map<string, { results: readonly QuestionResult[]; times: number }>();
  const problems: InputError[] = [];
  let withoutCode = 0;
  const plain = students.map(({ id }) => ({ id, plain: plainId(id) }));
  const byMark = Map.groupBy(students, ({ id }) => studentMark(assignment, id));
  text.split(/\r\n|\r|\n/).forEach((written, index) => {
    const line = plainLine(written);
    if (line.trim() === "") return;
    const codes = codesIn(assignment, line);
    if (codes.length === 0) withoutCode++;
    for (const { typed, at, read, problem } of codes) {
      const refuse = (why: Parameters<typeof say>[1]) =>
        problems.push(new InputError(`codes.${index}`, typed, say`Line ${index + 1}: ${why}`));
      if (!read) {
        refuse(problem?.phrase ?? "the code cannot be read.");
        continue;
      }
      const marked = byMark.get(read.mark) ?? [];
      const before = plainId(line.slice(0, at));
      const named = plain.filter((each) => each.plain.length >= shortestNamed && names(before, each.plain));
      // Where two students share a mark, the line may say whose it is.
      const meant = marked.filter(({ id }) => named.some((each) => each.id === id));
      const owners = marked.length > 1 && meant.length > 0 ? meant : marked;
      const [owner] = owners;
      if (!owner) refuse(`“${typed}” is of a student who is not in the list.`);
      else if (owners.length > 1) refuse(`“${typed}” may be of ${owners.map(({ id }) => id).join(" or ")}.`);
      else if (named.length > 0 && !named.some(({ id }) => id === owner.id))
        refuse(`“${typed}” is the code of ${owner.id}, but the line names ${named.map(({ id }) => id).join(" and ")}.`);
      else {
        const held = best.get(owner.id);
        const results = !held || worth(read.results) >= worth(held.results) ? read.results : held.results;
        best.set(owner.id, { results, times: (held?.times ?? 0) + 1 });
      }
    }
  });
  const handedIn = students.flatMap(({ id }) => {
    const held = best.get(id);
    return held ? [{ student: id, ...held }] : [];
  });
  return { handedIn, missing: students.filter(({ id }) => !best.has(id)).map(({ id }) => id), problems, withoutCode };
}
