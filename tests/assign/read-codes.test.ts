import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readClassList } from "../../src/lib/assign/class-list.ts";
import { readCodes } from "../../src/lib/assign/read-codes.ts";
import { resultCode } from "../../src/lib/assign/result-code.ts";
import { resultsCsv } from "../../src/lib/assign/results-csv.ts";
import { bracket } from "./shared.ts";

const { students } = readClassList("s-1001;Roe\nDana Öz;\nZoë B;\ns-4");
type Given = "right" | "tried" | "untried";
const code = (student: string, ...given: Given[]) => resultCode(bracket, student, given);
const read = (text: string) => readCodes(bracket, students, text);
const done = (text: string) => read(text).handedIn.map(({ student }) => student);

describe("codes handed in", () => {
  test("tell who is done; the best code of a student counts", () => {
    const text = [
      code("Zoë B", "tried", "untried"),
      `Roe, Al: ${code("s-1001", "right", "tried")}`,
      code("s-1001", "tried", "tried").replaceAll("-", " "),
      "",
      `dana öz ${code("Dana Öz", "right", "right").toLowerCase()}`,
    ].join("\n");
    expect(read(text)).toEqual({
      handedIn: [
        { student: "s-1001", results: ["right", "tried"], times: 2 },
        { student: "Dana Öz", results: ["right", "right"], times: 1 },
        { student: "Zoë B", results: ["tried", "untried"], times: 1 },
      ],
      missing: ["s-4"],
      problems: [],
      withoutCode: 0,
    });
  });

  test("are found in the messages around them, in any order and several to a line", () => {
    const [one, two, three] = [
      code("s-1001", "right", "right"),
      code("Dana Öz", "right", "right"),
      code("Zoë B", "right", "right"),
    ];
    const text = `\uFEFFHello, on 2026-11-30 at 10:15 I got it done!\r
Here is my code: ${three}. Call 0171-2345-6789 if it does not work.\r
> (${two}), and Al says ${one.replaceAll("-", "")}\r
Message-ID: <550e8400-e29b-41d4-a716-446655440000> state-of-the-art work this will have been\r
`;
    const { problems, withoutCode } = read(text);
    expect(problems).toEqual([]);
    expect(withoutCode).toBe(2);
    expect(done(text)).toEqual(["s-1001", "Dana Öz", "Zoë B"]);
  });

  test.each([
    ["long dashes", (text: string) => text.replaceAll("-", "–")],
    ["hyphens that do not break", (text: string) => text.replaceAll("-", "\u2011")],
    ["signs of no width", (text: string) => [...text].join("\u200b")],
    ["wide letters", (text: string) => text.replace(/[0-9A-Z]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) + 0xfee0))],
    ["O for 0 and l for 1", (text: string) => text.replaceAll("0", "O").replaceAll("1", "l")],
    ["brackets and a full stop", (text: string) => `[${text}].`],
  ])("are read with %s", (_, change) => expect(done(`code ${change(code("s-4", "right", "right"))}`)).toEqual(["s-4"]));

  test.each([
    ["of nobody in the list", code("s-9", "right", "right"), /not in the list/],
    [
      "with a wrong letter",
      code("s-4", "right", "right").replace(/.$/, (sign) => (sign === "A" ? "B" : "A")),
      /not copied right/,
    ],
    ["with a letter missing", code("s-4", "right", "right").slice(0, -1), /12 letters and figures; here are 11/],
    ["with a letter too much", `${code("s-4", "right", "right")}7`, /here are 13/],
    [
      "of another assignment",
      resultCode({ ...bracket, title: "Another" }, "s-4", ["right", "right"]),
      /belongs to another assignment, or to this one before it was changed/,
    ],
    ["sent in by somebody else", `s-1001: ${code("s-4", "right", "right")}`, /code of s-4, but the line names s-1001/],
  ])("do not count when %s, and say so with their line", (_, typed, words) => {
    const { handedIn, missing, problems } = read(`From the group:\n${typed}`);
    expect(handedIn).toEqual([]);
    expect(missing).toHaveLength(4);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ field: "codes.1", message: expect.stringMatching(/^Line 2: /) });
    expect(problems[0]?.message).toMatch(words);
  });

  test("with a wrong letter and spaces are told from ordinary words", () => {
    const typed = "006G H1TR BQWX";
    expect(read(`my code is ${typed} thank you`).problems.map(({ value }) => value)).toEqual([typed]);
    expect(read("this will have been done by room 1204 and 1205").problems).toEqual([]);
  });

  test("any text can be pasted", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        expect(read(text).handedIn).toEqual([]);
      }),
    );
  });

  test("any words may stand around them", () => {
    const words = fc.stringMatching(/^[a-z ,.:;!?()]{0,40}$/);
    fc.assert(
      fc.property(words, words, (before, after) => {
        expect(done(`${before} ${code("s-4", "right", "right")}; ${after}`)).toEqual(["s-4"]);
      }),
    );
  });

  test("of a class of a thousand are read in seconds", () => {
    const many = Array.from({ length: 1000 }, (_, index) => ({ id: `student ${index}`, note: "" }));
    const text = many.map(({ id }) => `${id}: ${code(id, "right", "right")}`).join("\n");
    const before = performance.now();
    expect(readCodes(bracket, many, text).handedIn).toHaveLength(1000);
    expect(performance.now() - before).toBeLessThan(4000);
  });
});

describe("the table of who is done", () => {
  test("has a line for each student of the list", () => {
    const text = [code("s-1001", "right", "right"), code("Zoë B", "right", "tried")].join("\n");
    expect(resultsCsv(bracket, students, read(text))).toBe(
      "\uFEFFStudent,Note,Code,Questions right,1,2\r\ns-1001,Roe,done,2,right,right\r\nDana Öz,,no code,,,\r\nZoë B,,in part,1,right,tried\r\ns-4,,no code,,,\r\n",
    );
  });
});
