import { InputError } from "../input-error.ts";
import { cellsOf } from "../list-cells.ts";
import { say } from "../quantity/phrase.ts";
import { limits } from "./definition.ts";
import { plainId } from "./own-numbers.ts";

export interface Student {
  readonly id: string;
  /** What stands beside the id in the list, such as a name; it decides nothing. */
  readonly note: string;
}

/** Words that head a column of ids. */
const headings =
  /^(?:(?:student|pupil|person|user|login|matriculation)?[\s_-]*(?:id|no\.?|nr\.?|number|name)|student|user|login|e-?mail(?:[\s_-]*address)?)$/i;

export interface ClassList {
  readonly students: readonly Student[];
  /** A problem for each line that cannot be used, `students.3` for the fourth line. */
  readonly problems: readonly InputError[];
  /** The first line, where it heads the columns and names nobody. */
  readonly heading?: string;
  /** How many columns the longest line has. */
  readonly columns: number;
  /** Cells of the first student's line, to tell the columns apart. */
  readonly firstCells: readonly string[];
}

/**
 * Reads a pasted class list: one student a line. A byte order mark, any kind of line end and a line of headings are no
 * trouble.
 *
 * @param column - which column holds the ids, from 0; the others become the note
 */
export function readClassList(text: string, column = 0): ClassList {
  const students: Student[] = [];
  const problems: InputError[] = [];
  const seen = new Map<string, number>();
  const lines = text.split(/\r\n|\r|\n/).map((line, index) => ({ line: line.trim(), index, cells: cellsOf(line) }));
  const written = lines.filter(({ line }) => line !== "");
  const [first] = written;
  const heading = first && written.length > 1 && headings.test(first.cells[column] ?? "") ? first : undefined;
  for (const each of written) {
    if (each === heading) continue;
    // Something else was pasted: nobody reads more lines about it, and each takes its time.
    if (problems.length >= limits.students) break;
    const { line, index, cells } = each;
    const id = cells[column] ?? "";
    const plain = plainId(id);
    const before = seen.get(plain);
    const refuse = (why: string) => problems.push(new InputError(`students.${index}`, line, say`Line ${index + 1}: ${why}`));
    if (plain === "")
      refuse(`the id is missing. ${column === 0 ? "It comes first in the line." : `It is looked for in column ${column + 1}.`}`);
    else if (plain.length > limits.student) refuse(`the id has ${plain.length} characters; up to ${limits.student} are allowed.`);
    else if (before !== undefined) refuse(`the id “${id}” is in line ${before + 1} already.`);
    else if (students.length >= limits.students) {
      refuse(`the list is full; up to ${limits.students} students are taken. This line and those after it are left out.`);
      break;
    } else {
      seen.set(plain, index);
      students.push({ id, note: cells.filter((cell, at) => at !== column && cell !== "").join(" ") });
    }
  }
  const columns = written.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  const firstCells = written.find((each) => each !== heading)?.cells ?? [];
  return { students, problems, columns, firstCells, ...(heading ? { heading: heading.line } : {}) };
}
