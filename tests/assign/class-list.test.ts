import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readClassList } from "../../src/lib/assign/class-list.ts";

const ids = (text: string, column?: number) => readClassList(text, column).students.map(({ id }) => id);

describe("a class list", () => {
  test("is one id a line, with or without more", () => {
    const { students, problems, columns } = readClassList(
      's1\n\n s2 \r\ns3\tDoe, Jo\ns4;Roe;Al\n"s,5",Poe\ns6,"Moe ""M"""\n"s7"',
    );
    expect(problems).toEqual([]);
    expect(columns).toBe(3);
    expect(students).toEqual([
      { id: "s1", note: "" },
      { id: "s2", note: "" },
      { id: "s3", note: "Doe, Jo" },
      { id: "s4", note: "Roe Al" },
      { id: "s,5", note: "Poe" },
      { id: "s6", note: 'Moe "M"' },
      { id: "s7", note: "" },
    ]);
  });

  // What spreadsheets and course pages write: RFC 4180, a byte order mark, headings (from memory).
  test("as a spreadsheet saves it, with a byte order mark, CRLF and headings", () => {
    const { students, problems, heading } = readClassList('\uFEFF"Student ID";"Name"\r\n"zoë öz";"Öz, Zoë"\r\n"ÅSA 2";Berg\r\n');
    expect(problems).toEqual([]);
    expect(heading).toContain("Student ID");
    expect(students).toEqual([
      { id: "zoë öz", note: "Öz, Zoë" },
      { id: "ÅSA 2", note: "Berg" },
    ]);
  });

  test("with the ids in another column", () => {
    const text = "First name,Last name,ID\nAl,Roe,77\nJo,Doe,78\nMo,Moe";
    expect(ids(text, 2)).toEqual(["77", "78"]);
    expect(readClassList(text, 2)).toMatchObject({
      heading: "First name,Last name,ID",
      problems: [{ field: "students.3", message: expect.stringContaining("column 3") }],
      students: [{ note: "Al Roe" }, { note: "Jo Doe" }],
    });
  });

  test("a word that heads a column is an id where it stands alone or later", () => {
    expect(ids("Name")).toEqual(["Name"]);
    expect(ids("s1\nName\ns2")).toEqual(["s1", "Name", "s2"]);
    expect(ids("Name\ns1")).toEqual(["s1"]);
  });

  test("takes one student written in two ways for one", () => {
    // “é” as one sign and as two.
    const { students, problems } = readClassList("Ren\u00e9 Roe\nren\u0065\u0301  ROE\nRene Roe");
    expect(students.map(({ id }) => id)).toEqual(["Ren\u00e9 Roe", "Rene Roe"]);
    expect(problems.map(({ field }) => field)).toEqual(["students.1"]);
  });

  test("names lines that cannot be used", () => {
    const { students, problems } = readClassList(`s1\nS1 \n,nobody\n${"x".repeat(61)}`);
    expect(students).toHaveLength(1);
    expect(problems.map(({ field, message }) => [field, message])).toEqual([
      ["students.1", expect.stringContaining("line 1 already")],
      ["students.2", expect.stringContaining("id is missing")],
      ["students.3", expect.stringContaining("61 characters")],
    ]);
  });

  test("takes any text", () => {
    fc.assert(
      fc.property(fc.string(), fc.nat(3), (text, column) => {
        const { students, problems, heading } = readClassList(text, column);
        const lines = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== "");
        expect(students.length + problems.length + (heading === undefined ? 0 : 1)).toBe(lines.length);
      }),
    );
  });
});
