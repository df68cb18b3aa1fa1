import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { fieldText, formatNumber, formatQuantity, lengthViews, showQuantity, unitOfView } from "../../src/lib/quantity/format.ts";
import { nearestFraction } from "../../src/lib/quantity/fraction.ts";
import { ParseError, parseQuantity } from "../../src/lib/quantity/parse.ts";
import { fromBase, kindOf, type Quantity, quantityKinds, toBase, unitOf } from "../../src/lib/quantity/units.ts";
import { gaugeReader } from "../../src/lib/stock/gauge.ts";
import { junk } from "../worksheets/arbitrary.ts";

const kinds = Object.keys(quantityKinds) as Quantity[];
const gauge = gaugeReader(loadCatalogue(), "steel-cr");
const length = (text: string) => parseQuantity(text, "length", { gauge }).value;

describe("reading a length", () => {
  test.each([
    ["1.2", 1.2],
    ["1.2 mm", 1.2],
    ["1,2mm", 1.2],
    [".5 mm", 0.5],
    ["12.", 12],
    ["2 cm", 20],
    ["0.5 m", 500],
    ["1e2 mm", 100],
    ["0.048in", 0.048 * 25.4],
    ['3/64"', 1.190625],
    ["3/64 in", 1.190625],
    ["2 1/16 in", 52.3875],
    ["2-1/16 in", 52.3875],
    ["2½ in", 63.5],
    ["½″", 12.7],
    ["1' 6-1/2\"", 469.9],
    ["1 ft 6 in", 457.2],
    ["2ft", 609.6],
    ["-3 mm", -3],
    ["−3 mm", -3],
    ["  4\u00a0mm ", 4],
    ["1.2 MM", 1.2],
    ["18 ga", 0.0478 * 25.4],
    ["18 gauge", 0.0478 * 25.4],
    ["#18", 0.0478 * 25.4],
  ])("%s is %s mm", (text, value) => {
    expect(length(text)).toBeCloseTo(value, 12);
  });

  test.each([
    ["", "Nothing is entered."],
    ["   ", "Nothing is entered."],
    ["thin", "“thin” is not a length."],
    ["NaN", "is not a length"],
    ["1e999", "is not a number that can be worked with"],
    ["1/0 in", "is not a number that can be worked with"],
    ["1 2 mm", "is not one number"],
    ["1,2,3 mm", "is not one number"],
    ["1.200,5", "is not one number"],
    ["5 kN", "has the unit “kN”, which is not a unit of length here"],
    ["5 parsec", "has the unit “parsec”"],
    ["99 ga", "has no number 99"],
    ["9".repeat(300), "is not a length"],
  ])("%s is refused with what was typed and what would do", (text, message) => {
    const read = () => parseQuantity(text, "length", { gauge });
    expect(read).toThrow(ParseError);
    expect(read).toThrow(message);
  });

  test.each([
    ["", "angle", "Nothing is entered. Write an angle like"],
    ["x", "energy", "“x” is not an energy."],
    ["", "force", "Write a force like"],
  ] as const)("“%s” for an %s is refused in good English", (text, quantity, message) => {
    expect(() => parseQuantity(text, quantity)).toThrow(message);
  });

  test("a gauge number needs a metal", () => {
    expect(() => parseQuantity("18 ga", "length")).toThrow("has no meaning here without a metal");
  });

  test("a bare number is in the unit asked for", () => {
    expect(parseQuantity("2", "length", { unit: "in" }).value).toBe(50.8);
  });
});

test.each([
  ["90°", "angle", 90],
  ["1.5 rad", "angle", (1.5 * 180) / Math.PI],
  ["45 ksi", "stress", 310.264],
  ["210 GPa", "stress", 210_000],
  ["280 MPa", "stress", 280],
  ["12 kN", "force", 12_000],
  ["100 lbf", "force", 444.822],
  ["8 cycles", "time", 8 / 60],
  ["10 cycles@50", "time", 0.2],
  ["1200 °F", "temperature", 648.889],
  ["8000 A", "current", 8],
  ["0.2836 lb/in³", "density", 7850.0],
  ["50 %", "percent", 50],
] as const)("%s is a quantity of the kind %s", (text, quantity, value) => {
  expect(parseQuantity(text, quantity).value).toBeCloseTo(value, quantity === "density" ? 0 : 3);
});

describe("whatever is typed", () => {
  test("a text is read or refused in a sentence, never anything else", () => {
    fc.assert(
      fc.property(junk, fc.constantFrom(...kinds), (text, quantity) => {
        try {
          expect(Number.isFinite(parseQuantity(text, quantity, { gauge }).value)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(ParseError);
        }
      }),
      { numRuns: 500 },
    );
  });

  const typed = fc.constantFrom(...kinds).chain((quantity) =>
    fc
      .tuple(
        fc.constantFrom(...Object.keys(kindOf(quantity).units)),
        fc.oneof(
          fc.double({ min: 0, max: 1e6, noNaN: true }).map(String),
          fc.integer({ min: 0, max: 99_999 }).map(String),
          fc
            .tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 63 }))
            .map(([whole, part]) => `${whole} ${part}/64`),
          fc.integer({ min: 0, max: 999 }).map((n) => `${n},5`),
        ),
      )
      .map(([unit, digits]) => ({ quantity, text: `${digits} ${unit}` })),
  );

  test("the kept form reads back to the same value and stays as it is", () => {
    fc.assert(
      fc.property(typed, ({ quantity, text }) => {
        const first = parseQuantity(text, quantity);
        const again = parseQuantity(first.text, quantity);
        expect(again.value).toBe(first.value);
        expect(again.text).toBe(first.text);
        expect(again.digits).toBe(first.digits);
      }),
    );
  });

  const lengths = typed.filter(({ quantity }) => quantity === "length");

  test("looking at a length in other units never changes what is kept, and the own unit shows the same digits", () => {
    fc.assert(
      fc.property(lengths, fc.array(fc.constantFrom(...lengthViews), { maxLength: 6 }), ({ text }, views) => {
        const kept = parseQuantity(text, "length");
        for (const view of views) fieldText(kept.text, "length", view);
        expect(parseQuantity(kept.text, "length").value).toBe(kept.value);
        if (kept.unit === "mm") expect(fieldText(kept.text, "length", "mm")).toBe(kept.digits);
        if (kept.unit === "in")
          expect(fieldText(kept.text, "length", kept.digits.includes("/") ? "fraction" : "inch")).toBe(kept.digits);
      }),
    );
  });

  test("what a field shows in a view reads back, in that view, to nearly the same length", () => {
    fc.assert(
      fc.property(lengths, fc.constantFrom(...lengthViews), ({ text }, view) => {
        const kept = parseQuantity(text, "length");
        const shown = fieldText(kept.text, "length", view);
        const unit = unitOfView("length", view);
        const read = parseQuantity(shown, "length", { unit }).value;
        expect(Math.abs(read - kept.value)).toBeLessThanOrEqual(view === "fraction" ? 25.4 / 128 + 1e-6 : 0.0013);
      }),
    );
  });

  test("what cannot be read stays in the field", () => {
    fc.assert(
      fc.property(junk, fc.constantFrom(...lengthViews), (text, view) => {
        const shown = fieldText(text, "length", view);
        expect(shown === text || Number.isFinite(parseQuantity(text, "length").value)).toBe(true);
      }),
    );
  });
});

describe("units", () => {
  test("there and back is the same but for the last digit", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.nat(),
        (quantity, value, pick) => {
          const keys = Object.keys(kindOf(quantity).units);
          const key = keys[pick % keys.length] as string;
          expect(toBase(fromBase(value, quantity, key), quantity, key)).toBeCloseTo(value, 6);
        },
      ),
    );
  });

  test("the factors are the definitions", () => {
    expect(toBase(1, "length", "in")).toBe(25.4);
    expect(toBase(1, "length", "ft")).toBeCloseTo(304.8, 12);
    expect(toBase(1, "mass", "lb")).toBe(0.45359237);
    expect(toBase(1, "force", "lbf")).toBeCloseTo(4.4482216152605, 12);
    expect(toBase(1, "stress", "ksi")).toBeCloseTo(6.894757293168361, 12);
    expect(toBase(32, "temperature", "°F")).toBeCloseTo(0, 12);
    expect(toBase(212, "temperature", "°F")).toBeCloseTo(100, 12);
    expect(toBase(1, "moment", "lbf·ft")).toBeCloseTo(1.3558179483314, 10);
  });

  test("an unknown unit is named with those there are", () => {
    expect(() => unitOf("length", "ell")).toThrow('No unit "ell" for length. Units: mm, cm, m, in, ft');
  });

  test("the example in every message is one that is accepted", () => {
    for (const quantity of kinds) {
      const [first = ""] = kindOf(quantity).example.split(/, | or /);
      expect(Number.isFinite(parseQuantity(first, quantity).value), `${quantity}: ${first}`).toBe(true);
    }
  });
});

describe("showing", () => {
  test.each([
    [0, 1, "0.0"],
    [-0.04, 1, "0.0"],
    [-0.06, 1, "−0.1"],
    [12_345.678, 2, "12\u202f345.68"],
    [9999.9, 0, "10\u202f000"],
    [1234.5, 1, "1234.5"],
  ])("%s with %s decimals is %s", (value, decimals, text) => {
    expect(formatNumber(value, decimals)).toBe(text);
  });

  test("small and large values change their unit, not their size", () => {
    expect(formatQuantity(12_000, "force")).toBe("12.0 kN");
    expect(formatQuantity(0.25, "mass")).toBe("250 g");
    expect(formatQuantity(90, "angle")).toBe("90.0°");
    expect(formatQuantity(52.3875, "length", "fraction")).toBe("2-1/16 in");
    expect(formatQuantity(1.2, "length", "inch")).toBe("0.047 in");
    expect(showQuantity(1.2, "length", "fraction")).toEqual({ number: "3/64", unit: "in", error: "−0.01 mm" });
  });

  test("a shown length is within half of its last digit", () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), (value) => {
        const read = (text: string) => Number(text.replace("−", "-").replaceAll("\u202f", ""));
        expect(Math.abs(read(showQuantity(value, "length").number) - value)).toBeLessThanOrEqual(0.05 + 1e-9);
        expect(Math.abs(read(showQuantity(value, "length", "mm", "setting").number) - value)).toBeLessThanOrEqual(0.005 + 1e-9);
        expect(Math.abs(read(showQuantity(value, "length", "inch").number) * 25.4 - value)).toBeLessThanOrEqual(0.0127 + 1e-9);
      }),
    );
  });
});

describe("the nearest fraction", () => {
  test("is in lowest terms, within half a division, and says its error", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3000, max: 3000, noNaN: true }),
        fc.constantFrom(2, 4, 8, 16, 32, 64, 128),
        (value, division) => {
          const { negative, whole, numerator, denominator, error, text } = nearestFraction(value, division);
          const inches = (negative ? -1 : 1) * (whole + numerator / denominator);
          expect(inches * 25.4 - value).toBeCloseTo(error, 9);
          expect(Math.abs(error)).toBeLessThanOrEqual(25.4 / division / 2 + 1e-9);
          expect(division % denominator).toBe(0);
          expect(numerator).toBeLessThan(denominator);
          if (numerator > 0) expect(numerator % 2).toBe(1);
          expect(parseQuantity(text.replace("−", "-"), "length", { unit: "in" }).value).toBeCloseTo(inches * 25.4, 9);
        },
      ),
    );
  });

  test("no mark at all for a length of less than half a division", () => {
    expect(nearestFraction(0.1).text).toBe("0");
    expect(nearestFraction(-0.1)).toMatchObject({ negative: false, text: "0" });
  });

  test.each([
    [Number.NaN, 64],
    [Number.POSITIVE_INFINITY, 64],
    [1, 0],
    [1, 129],
    [1, 1.5],
  ])("refuses %s in 1/%s", (value, division) => {
    expect(() => nearestFraction(value, division)).toThrow(RangeError);
  });
});
