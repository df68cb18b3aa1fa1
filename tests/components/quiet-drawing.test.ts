import { describe, expect, test } from "vitest";
import { quietTexts } from "../../src/components/task/quiet-drawing.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";
import { catalogue, stated } from "../assign/shared.ts";

type View = "mm" | "inch" | "fraction";
const quiet = (calculator: string, output: string, fixed: Record<string, string>, view: View = "mm") => {
  const own = stated(calculator, output, fixed, "rounding");
  const { values } = runWorksheet(own.sheet, own.raw, catalogue);
  return (text: string, ...others: string[]) => quietTexts(own, values, view, [text, ...others])[0];
};

describe("a drawing of a question", () => {
  const strip = quiet("bend-length", "blank", { thickness: "1.25mm", radius: "2.5mm", angle: "90deg", legs: "60mm;30mm" });

  test.each([
    ["60", "60"],
    ["30", "30"],
    ["90°", "90°"],
    ["from flat", "from flat"],
    ["sizes in mm", "sizes in mm"],
    ["R 2.5", "R 2.5"],
    ["87.61", "?"],
    ["bend 4.71", "bend ?"],
    ["L 87.6 mm", "L ? mm"],
    // The same figures with another unit are another thing.
    ["60 %", "? %"],
    ["60°", "?°"],
    ["90", "?"],
    ["63 % of 120", "? % of ?"],
  ])("“%s” becomes “%s”", (text, said) => expect(strip(text)).toBe(said));

  test("shows what is given in the units of the reader", () => {
    const inches = quiet("bend-length", "blank", { thickness: "1.25mm", radius: "2.5mm", legs: "60mm;1in" }, "inch");
    expect(inches("2.362")).toBe("2.362");
    expect(inches("1.000")).toBe("1.000");
    expect(inches("3.301")).toBe("?");
    const fractions = quiet("bend-length", "blank", { thickness: "1.25mm", legs: "60mm;2 1/4in" }, "fraction");
    expect(fractions("2-1/4")).toBe("2-1/4");
    expect(fractions("3-17/64")).toBe("?");
  });

  test("hides a force with the figures of a size that the calculator holds and the question does not state", () => {
    const punch = quiet("punch-load", "force", { shape: "round", diameter: "5mm", thickness: "1.2mm" });
    expect(punch("F 5.0 kN")).toBe("F ? kN");
    expect(punch("d 5")).toBe("d 5");
  });

  test("keeps the numbers of holes, but nothing beside them and no count that is asked for", () => {
    const rivets = quiet("rivet-joint", "count", {});
    const count = stated("rivet-joint", "count", {}, "rounding").asked[0]?.right ?? 0;
    const numbers = Array.from({ length: count + 2 }, (_, index) => String(index + 1));
    expect(rivets(String(count), ...numbers)).toBe("?");
    expect(rivets(String(count + 1), ...numbers)).toBe(String(count + 1));
    expect(rivets(String(count + 5), ...numbers)).toBe("?");
  });
});
