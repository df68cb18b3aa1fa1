import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Assignment } from "../../src/lib/assign/definition.ts";
import { questionResults, readResultCode, resultCode } from "../../src/lib/assign/result-code.ts";
import { bracket } from "./shared.ts";

const letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const long = (count: number): Assignment => ({
  ...bracket,
  questions: Array.from({ length: count }, () => bracket.questions[0] as never),
});
const results = fc.array(fc.constantFrom(...questionResults), { minLength: 1, maxLength: 20 });

describe("a result code", () => {
  // Frozen, so that codes written down last week can be read next year. Worked out with a program in another language.
  test("is this one, for good", () => {
    expect(resultCode(bracket, "s-1001", ["right", "tried"])).toBe("006G-H1TR-BQWW");
  });

  test("has 12 to 16 letters and says what was put in", () => {
    fc.assert(
      fc.property(results, fc.stringMatching(/^[a-z0-9]{1,20}$/), (given, student) => {
        const assignment = long(given.length);
        const code = resultCode(assignment, student, given);
        expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}(-[0-9A-HJKMNP-TV-Z]{1,4}){2,3}$/);
        expect(code.replaceAll("-", "").length).toBeGreaterThanOrEqual(12);
        expect(code.replaceAll("-", "").length).toBeLessThanOrEqual(16);
        const read = readResultCode(assignment, code);
        expect(read.results).toEqual(given);
        expect(read.isOf(student)).toBe(true);
        expect(read.isOf(`${student}x`)).toBe(false);
      }),
    );
  });

  test("may be written down carelessly", () => {
    const code = resultCode(bracket, "s-1001", ["right", "right"]);
    const typed = ` ${code.toLowerCase().replaceAll("0", "o").replaceAll("1", "l").replaceAll("-", " ")} `;
    expect(readResultCode(bracket, typed).results).toEqual(["right", "right"]);
  });

  test("tells one wrong letter and two swapped ones, wherever they are", () => {
    const code = resultCode(
      long(20),
      "s-1001",
      Array.from({ length: 20 }, () => "right" as const),
    ).replaceAll("-", "");
    expect(code).toHaveLength(16);
    const signs = [...code];
    let tried = 0;
    const refused = (typed: readonly string[]) => {
      tried++;
      expect(() => readResultCode(long(20), typed.join(""))).toThrow("was not copied right");
    };
    signs.forEach((sign, index) => {
      for (const letter of letters) if (letter !== sign) refused(signs.with(index, letter));
      for (let other = index + 1; other < signs.length; other++)
        if (signs[other] !== sign) refused(signs.with(index, signs[other] as string).with(other, sign));
    });
    expect(tried).toBeGreaterThan(16 * 31);
  });

  test("looks different for students with the same results, and for the same student in another assignment", () => {
    const done = ["right", "right"] as const;
    const codes = ["a", "b", "c"].map((student) => resultCode(bracket, student, done));
    expect(new Set([...codes, resultCode({ ...bracket, title: "Other" }, "a", done)]).size).toBe(4);
  });

  test.each([
    ["", "here are 0"],
    ["ABCD", "here are 4"],
    ["????-????-????", "signs that no code has"],
    ["UUUU-UUUU-UUUU", "signs that no code has"],
  ])("“%s” is none", (typed, words) => expect(() => readResultCode(bracket, typed)).toThrow(words));

  test("of an assignment that was changed since says so", () => {
    const code = resultCode(bracket, "s", ["right", "right"]);
    const [first, second] = bracket.questions;
    const changed = {
      ...bracket,
      questions: [{ ...first, asked: [{ output: "blank", tolerance: "0.3mm" }] }, second],
    } as Assignment;
    expect(() => readResultCode(changed, code)).toThrow("before it was changed");
    expect(() => readResultCode(long(20), code)).toThrow("16 letters");
  });

  test("needs a student and one result for each question", () => {
    expect(() => resultCode(bracket, " ", ["right", "right"])).toThrow(expect.objectContaining({ field: "student" }));
    expect(() => resultCode(bracket, "s", ["right"])).toThrow("cannot hold");
  });
});
