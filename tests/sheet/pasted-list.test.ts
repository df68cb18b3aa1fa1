import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { sheetRequest } from "../../src/lib/sheet/form.ts";
import { readPieces } from "../../src/lib/sheet/pasted-list.ts";
import { junk } from "../worksheets/arbitrary.ts";

const catalogue = loadCatalogue();
const read = (text: string, room?: number) => readPieces(text, catalogue, room);
const row = (name: string, width: string, length: string, count: string, grain = "free") => ({
  name,
  width,
  length,
  count,
  grain,
});
/** As the form reads the rows. */
const pieces = (text: string) =>
  sheetRequest({ pieces: read(text).rows }, catalogue).request?.job.pieces.map(({ name, width, length, count, grain }) => [
    name,
    // Inches come with the rounding of binary arithmetic.
    Number(width.toFixed(6)),
    Number(length.toFixed(6)),
    count,
    grain,
  ]);

describe("a pasted list of pieces", () => {
  test.each([
    ["tabs, as a spreadsheet copies", "tray\t226\t276\t30\talong"],
    ["semicolons", "tray;226;276;30;along"],
    ["commas", "tray,226,276,30,along"],
    ["quotes round a cell", '"tray";"226";276;30;"along"'],
    ["a heading in the usual order", "Name;Width;Length;Number;Grain\ntray;226;276;30;along"],
    ["a heading in another order", "Qty,Length,Width,Rolling direction,Part\n30,276,226,lengthwise,tray"],
    ["a column that is not known", "Part,Colour,W,L,Qty,Grain\ntray,blue,226,276,30,along"],
    ["units in the heading", "part;width (cm);length [cm];qty;grain\ntray;22,6;27,6;30;along"],
    ["units beside the numbers", "tray;22.6 cm;276 mm;30;along"],
    ["empty lines and other line ends", "\r\n\r\ntray;226;276;30;along\r\n"],
  ])("%s", (_, text) => {
    expect(read(text).problems).toEqual([]);
    expect(read(text).left).toBe("");
    expect(pieces(text)).toEqual([["tray", 226, 276, 30, "along"]]);
  });

  test("decimal commas, inches and fractions", () => {
    expect(pieces("lid;182,4;9 1/2 in;2")).toEqual([["lid", 182.4, 241.3, 2, "free"]]);
    expect(pieces('lid,"182,4",9.5in,2')).toEqual([["lid", 182.4, 241.3, 2, "free"]]);
  });

  test("sizes alone need no names", () => {
    expect(read("226;276;30").rows).toEqual([row("", "226", "276", "30")]);
  });

  test("a number may be left out, for one sheet that is filled", () => {
    expect(read("tray;226;276").rows).toEqual([row("tray", "226", "276", "")]);
  });

  test("each bad line has its message and stays, with the heading", () => {
    const text = "name;width;length;count;grain\ntray;226;276;30;along\nlid;wide;232;2;\nbase;100;200;0;\nside;50;60;1;diagonal";
    const { rows, problems, left } = read(text);
    expect(rows.map(({ name }) => name)).toEqual(["tray"]);
    expect(problems.map(({ field, message }) => [field, message])).toEqual([
      ["lines.2", expect.stringMatching(/^Line 3: Width: /)],
      ["lines.3", expect.stringMatching(/^Line 4: Number must be from 1 to 9999; it is 0/)],
      ["lines.4", expect.stringMatching(/^Line 5: Rolling direction must be one of free, along, across; it is “diagonal”/)],
    ]);
    expect(left).toBe("name;width;length;count;grain\nlid;wide;232;2;\nbase;100;200;0;\nside;50;60;1;diagonal");
  });

  test("a decimal comma between commas is not guessed at", () => {
    const { rows, problems } = read("tray,182,4,276,30,along,,");
    expect(rows).toEqual([]);
    expect(problems[0]?.message).toMatch(/8 cells, and there are 6 columns.*semicolons/);
  });

  test("no more lines than there is room for", () => {
    const { rows, problems, left } = read("a;10;10;1\nb;10;10;1\nc;10;10;1", 2);
    expect(rows).toHaveLength(2);
    expect(problems).toHaveLength(1);
    expect(left).toBe("c;10;10;1");
  });

  test("whatever is pasted, every line is a row or a problem, and rows can be read by the form", () => {
    const cell = fc.oneof(junk, fc.integer({ min: 1, max: 3000 }).map(String));
    const line = fc
      .tuple(fc.array(cell, { maxLength: 7 }), fc.constantFrom(";", ",", "\t"))
      .map(([cells, mark]) => cells.join(mark));
    fc.assert(
      fc.property(fc.array(line, { maxLength: 8 }), (lines) => {
        const text = lines.join("\n");
        const { rows, problems, left } = read(text);
        const filled = text.split(/\r\n|\r|\n/).filter((each) => each.trim() !== "").length;
        expect([filled, filled - 1]).toContain(rows.length + problems.length);
        expect(left === "").toBe(problems.length === 0);
        const bad = sheetRequest({ pieces: rows }, catalogue).problems.filter(
          ({ message }) => !/larger|grain|not entered|1 to|worth/i.test(message),
        );
        expect(bad.map(({ message }) => message)).toEqual([]);
      }),
      { numRuns: 300, seed: 41 },
    );
  });
});
