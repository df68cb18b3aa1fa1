import type { Catalogue } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { type RawRow, readInputs } from "../inputs.ts";
import { cellsOf, dividerOf } from "../list-cells.ts";
import { say } from "../quantity/phrase.ts";
import { sheetInputs } from "./form.ts";
import { mostRows } from "./model.ts";

type Column = keyof typeof sheetInputs.pieces.columns;

/** Words that head a column, whatever stands around them. */
const heads: Readonly<Record<Column, RegExp>> = {
  name: /^(name|part|piece|item|label|description|what)s?$/,
  width: /^(width|w|wide|b)$/,
  length: /^(length|l|long|height|depth)$/,
  count: /^(count|quantity|qty|number|no|n|pcs|pieces|off|amount)$/,
  grain: /^(grain|rolling direction|rolling|direction)$/,
  value: /^(value|worth|price)$/,
};

/** The order of columns where no line heads them. */
const usualOrder: readonly Column[] = ["name", "width", "length", "count", "grain", "value"];

const grainWords: readonly (readonly [RegExp, string])[] = [
  [/^(|free|either|either way|any|both|no|none|-)$/, "free"],
  [/^(along|length|lengthwise|long|along its length|l)$/, "along"],
  [/^(across|width|widthwise|crosswise|across, along its width|along its width|w)$/, "across"],
];

interface Head {
  readonly columns: readonly (Column | undefined)[];
  /** Unit that stands in the head of a column, for cells without one. */
  readonly units: readonly string[];
}

/** A unit in brackets or after the word: `Width (mm)`, `length [in]`, `W / mm`. */
function headCell(cell: string): readonly [Column | undefined, string] {
  const [, words = "", unit = ""] = /^(.*?)[\s_]*(?:[([/]\s*([a-z"]+)\s*[)\]]?)?$/.exec(cell.trim().toLowerCase()) ?? [];
  const column = (Object.keys(heads) as Column[]).find((key) => heads[key].test(words.replace(/[.:#]/g, "").trim()));
  return [column, unit];
}

function headOf(cells: readonly string[]): Head | undefined {
  const read = cells.map(headCell);
  const columns = read.map(([column]) => column);
  if (!columns.includes("width") || !columns.includes("length")) return undefined;
  return { columns, units: read.map(([, unit]) => unit) };
}

export interface PastedPieces {
  /** The lines that can be used, as rows of the form. */
  readonly rows: readonly RawRow[];
  /** One for each line that cannot, `lines.3` for the fourth. */
  readonly problems: readonly InputError[];
  /** The text without the lines that were used: the head, if there is one, and what cannot be used. */
  readonly left: string;
}

const startsWithNumber = (text: string) => /^[\d.,½¼¾⅛⅜⅝⅞]/.test(text);

/**
 * Reads a pasted list of pieces, one a line: name, width, length, number, rolling direction, worth; or in any order below a
 * line that heads the columns. Cells between tabs, semicolons or commas; units and decimal commas as anywhere else.
 *
 * @param room - rows the form still has room for
 */
export function readPieces(text: string, catalogue: Catalogue, room: number = mostRows): PastedPieces {
  const lines = text.split(/\r\n|\r|\n/);
  const divider = dividerOf(text);
  const rows: RawRow[] = [];
  const problems: InputError[] = [];
  const left: string[] = [];
  let head: Head | undefined;
  let first = true;

  lines.forEach((line, index) => {
    if (line.trim() === "") return;
    const cells = cellsOf(line, divider);
    if (first) {
      first = false;
      head = headOf(cells);
      if (head) {
        left.push(line);
        return;
      }
    }
    const refuse = (why: string) => {
      problems.push(new InputError(`lines.${index}`, line, say`Line ${index + 1}: ${why}`));
      left.push(line);
    };
    const columns = head?.columns ?? (startsWithNumber(cells[0] ?? "") ? usualOrder.slice(1) : usualOrder);
    if (cells.length > columns.length) {
      const hint = divider === "," ? " A decimal comma needs semicolons between the cells, or quotes round the number." : "";
      refuse(`it has ${cells.length} cells, and there are ${columns.length} columns.${hint}`);
      return;
    }
    const row: Record<string, string> = { name: "", width: "", length: "", count: "", grain: "free" };
    columns.forEach((column, at) => {
      const cell = cells[at] ?? "";
      if (column === undefined) return;
      const unit = head?.units[at];
      if (column === "grain") row.grain = grainWords.find(([words]) => words.test(cell.toLowerCase()))?.[1] ?? cell;
      else if ((column === "width" || column === "length") && unit && /^[\d.,\s/]+$/.test(cell)) row[column] = `${cell} ${unit}`;
      else if (column !== "value" || cell !== "") row[column] = cell;
    });
    const [problem] = readInputs({ pieces: sheetInputs.pieces }, { pieces: [row] }, catalogue).problems;
    if (problem) refuse(problem.message);
    else if (rows.length >= room) refuse(`there is no room for it; up to ${mostRows} different pieces are planned together.`);
    else rows.push(row);
  });
  return { rows, problems, left: problems.length > 0 ? left.join("\n") : "" };
}
