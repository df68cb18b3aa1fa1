import { describe, expect, test } from "vitest";
import { checkId, ownTexts, plainId } from "../../src/lib/assign/own-numbers.ts";
import { ownQuestion } from "../../src/lib/assign/own-question.ts";
import { bracket, catalogue, question, worksheetById } from "./shared.ts";

const sheet = worksheetById("bend-length");
if (!sheet) throw new Error("bend-length is missing");
const { inputs } = sheet;
const [first] = bracket.questions;
if (!first) throw new Error("the bracket has no question");
const draw = (student: string, course = bracket.course, asked = first, index = 0) =>
  ownTexts(inputs, asked, index, { course, student });

describe("own numbers", () => {
  // Frozen: printed sheets and handed-in codes rely on them. A change here breaks every assignment that is out.
  // Worked out with a program in another language, from the published descriptions of hash and generator.
  test("are these, for good", () => {
    expect(draw("s-1001")).toEqual({ thickness: "1.25mm", radius: "3.5mm", "legs.1.leg": "20mm" });
    expect(draw("s-1002")).toEqual({ thickness: "1.25mm", radius: "2mm", "legs.1.leg": "26mm" });
    expect(draw("Åsa Ñúñez")).toEqual({ thickness: "1.75mm", radius: "3.5mm", "legs.1.leg": "38mm" });
  });

  test("do not depend on how the id is written down", () => {
    expect(draw("  S-1001 ")).toEqual(draw("s-1001"));
    expect(draw("a  b")).toEqual(draw("A b"));
    // One sign, and a letter with its accent behind it.
    expect(draw("\u00e5sa")).toEqual(draw("a\u030asa"));
    expect(plainId(" A\tB ")).toBe("a b");
  });

  test("depend on student, course and question, each by itself", () => {
    const many = (texts: (index: number) => object) =>
      new Set(Array.from({ length: 40 }, (_, index) => JSON.stringify(texts(index)))).size;
    expect(many((index) => draw(`s${index}`))).toBeGreaterThan(30);
    expect(many((index) => draw("s", `course ${index}`))).toBeGreaterThan(30);
    expect(many((index) => draw("s", "course", first, index))).toBeGreaterThan(30);
    // Nothing is gained by moving letters from the course to the student.
    expect(draw("bc", "a")).not.toEqual(draw("c", "ab"));
  });

  test("stay when another input is varied as well", () => {
    const more = { ...first, varied: { angle: { from: "60deg", to: "120deg", step: "5deg" }, ...first.varied } };
    expect(draw("s-1001", bracket.course, more)).toMatchObject(draw("s-1001"));
  });

  test("come up equally often", () => {
    const asked = question("bend-length", { varied: { thickness: { from: "1mm", to: "2mm", step: "0.1mm" } } });
    const counts = new Map<string, number>();
    const students = 11_000;
    for (let index = 0; index < students; index++) {
      const { thickness = "" } = draw(`student ${index}`, "c", asked);
      counts.set(thickness, (counts.get(thickness) ?? 0) + 1);
    }
    expect(counts.size).toBe(11);
    const expected = students / 11;
    const chiSquare = [...counts.values()].reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
    // 99.9 % point of chi-square with 10 degrees of freedom, printed tables.
    expect(chiSquare).toBeLessThan(29.59);
  });

  test("reach the calculator and the statement of the question", () => {
    const own = ownQuestion(bracket, 0, "s-1001", worksheetById, catalogue);
    const drawn = draw("s-1001");
    const lines = Object.fromEntries(own.given.map(({ path, text }) => [path, text]));
    expect(lines.thickness).toBe(drawn.thickness?.replace("mm", " mm"));
    expect(
      own.given
        .filter((line) => line.own)
        .map(({ path }) => path)
        .sort(),
    ).toEqual(["legs.1.leg", "radius", "thickness"]);
    // By hand: BD = 2(R + T) − π/2 (R + 0.4 T), L = 60 + leg − BD.
    const [t = 0, r = 0, leg = 0] = [drawn.thickness, drawn.radius, drawn["legs.1.leg"]].map((text) =>
      Number.parseFloat(text ?? ""),
    );
    const deduction = 2 * (r + t) - (Math.PI / 2) * (r + 0.4 * t);
    expect(own.asked.map(({ right }) => right)).toEqual([expect.closeTo(60 + leg - deduction, 9), expect.closeTo(deduction, 9)]);
  });

  test.each([
    ["student", ""],
    ["student", "   "],
    ["course", "x".repeat(61)],
  ] as const)("an id must be there and not endless: %s “%s”", (field, typed) => {
    expect(() => checkId(field, typed)).toThrow(expect.objectContaining({ field }));
  });
});
