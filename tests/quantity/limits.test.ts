import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { InputError } from "../../src/lib/input-error.ts";
import { checkRange, exactly } from "../../src/lib/inputs.ts";
import { type LengthView, lengthViews } from "../../src/lib/quantity/format.ts";
import { parseQuantity } from "../../src/lib/quantity/parse.ts";
import { atLeast, atMost, phraseText, say } from "../../src/lib/quantity/phrase.ts";
import { worksheetById } from "../../src/lib/registry.ts";
import { runWorksheet } from "../../src/lib/worksheet.ts";

const catalogue = loadCatalogue();
const millimetres = (text: string) => parseQuantity(text, "length", {}).value;
const view = fc.constantFrom<LengthView>(...lengthViews);
/** A hair of binary arithmetic on the way from millimetres to inches and back. */
const hair = 1e-5;

describe("a limit and the value it refuses", () => {
  test.each([
    // The limit rounds to the value typed: 2.834 mm would be read as 2.83.
    [say`at least ${atLeast(2.834)}; it is ${exactly(2.83, "length")}`, "mm", "at least 2.84 mm; it is 2.83 mm"],
    // The value rounds to the limit.
    [say`at most ${atMost(25)}; it is ${exactly(25.004, "length")}`, "mm", "at most 25.00 mm; it is 25.004 mm"],
    [say`at most ${atMost(25)}; it is ${exactly(25.0000004, "length")}`, "mm", "at most 25.00 mm; it is 25.0000004 mm"],
    // 25 mm are 0.98425 in, and 63/64 in are 25.003 mm.
    [say`at most ${atMost(25)}; it is ${exactly(25.003125, "length")}`, "inch", "at most 0.984 in; it is 0.984375 in"],
    [say`at most ${atMost(25)}; it is ${exactly(25.003125, "length")}`, "fraction", "at most 31/32 in; it is 63/64 in"],
  ] as const)("%#: are not read as the same number", (phrase, view, text) => {
    expect(phraseText(phrase, view)).toBe(text);
  });

  test("are never read as the same number, and the limit can be typed as it is read", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 5000, noNaN: true }),
        fc.double({ min: 1e-4, max: 3, noNaN: true }),
        view,
        (limit, by, shown) => {
          const least = phraseText([atLeast(limit)], shown);
          const most = phraseText([atMost(limit)], shown);
          expect(phraseText(exactly(limit - by, "length"), shown)).not.toBe(least);
          expect(phraseText(exactly(limit + by, "length"), shown)).not.toBe(most);
          expect(millimetres(least)).toBeGreaterThanOrEqual(limit - hair);
          expect(millimetres(most)).toBeLessThanOrEqual(limit + hair);
        },
      ),
    );
  });
});

test("a range in inches ends inside itself", () => {
  const thickness = { label: "Thickness", quantity: "length", min: 0.1, max: 13 } as const;
  const refusal = (value: number) => {
    try {
      checkRange("thickness", thickness, value);
    } catch (error) {
      if (error instanceof InputError) return phraseText(error.phrase, "inch");
      throw error;
    }
    throw new Error(`${value} was not refused`);
  };
  // 0.512 in are 13.005 mm, more than allowed; 13 mm are 0.5118 in.
  expect(refusal(0.512 * 25.4)).toBe("Thickness must be from 0.004 in to 0.511 in; it is 0.512 in.");
});

describe("calculators that refuse a value a hair beyond its limit", () => {
  test.each([
    // Round part of an open edge: g/2 + T = 1 + 0.8.
    ["folded-edge", { kind: "open", thickness: "0.8mm", gap: "2mm", width: "1.799mm" }, "1.80 mm", "1.799 mm"],
    // Three times unlike: 1 mm goes with 3 mm at most, 0.5 mm with 1.5 mm.
    ["spot-joint", { thickness: "0.5mm", otherThickness: "1.504mm" }, "1.50 mm", "1.504 mm"],
    // Twice the thickness.
    ["rolled-blank", { measured: "outside", diameter: "4.002mm", thickness: "2.004mm" }, "4.01 mm", "4.002 mm"],
    // No wider than the other end.
    ["cone-blank", { largeDiameter: "100mm", smallDiameter: "100.004mm" }, "100.00 mm", "100.004 mm"],
  ] as const)("%s tells the two apart", (id, raw, limit, given) => {
    const sheet = worksheetById(id);
    if (!sheet) throw new Error(`no worksheet ${id}`);
    const texts = runWorksheet(sheet, raw, catalogue).problems.map(({ phrase }) => phraseText(phrase));
    expect(texts.join()).toContain(limit);
    expect(texts.join()).toContain(`it is ${given}`);
  });
});
