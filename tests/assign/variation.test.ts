import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rangeSteps } from "../../src/lib/assign/variation.ts";
import { InputError } from "../../src/lib/input-error.ts";
import { parseQuantity } from "../../src/lib/quantity/parse.ts";
import type { Quantity } from "../../src/lib/quantity/units.ts";

const all = (from: string, to: string, step: string, quantity: Quantity = "length") => {
  const steps = rangeSteps("f", "Size", { from, to, step }, quantity);
  return Array.from({ length: steps.count }, (_, index) => steps.text(index));
};

describe("steps of a range are exact texts", () => {
  test.each<[string, string, string, string[], Quantity?]>([
    ["1mm", "2mm", "0.25mm", ["1mm", "1.25mm", "1.5mm", "1.75mm", "2mm"]],
    ["0.1", "0.5", "0.1", ["0.1mm", "0.2mm", "0.3mm", "0.4mm", "0.5mm"]],
    // The upper end need not be a step.
    ["1mm", "2mm", "0.4mm", ["1mm", "1.4mm", "1.8mm"]],
    ["1/16in", "1/4in", "1/16in", ["1/16in", "1/8in", "3/16in", "1/4in"]],
    ["1 1/2 in", "2 in", "1/8 in", ["1-1/2in", "1-5/8in", "1-3/4in", "1-7/8in", "2in"]],
    ["0.5in", "1in", "1/4in", ["1/2in", "3/4in", "1in"]],
    ["-1deg", "1deg", "0.5deg", ["-1deg", "-0.5deg", "0deg", "0.5deg", "1deg"], "angle"],
    ["1,5 kN", "2 kN", "0,25 kN", ["1.5kN", "1.75kN", "2kN"], "force"],
    ["4", "6", "1", ["4", "5", "6"], "count"],
  ])("%s to %s by %s", (from, to, step, texts, quantity) => expect(all(from, to, step, quantity)).toEqual(texts));

  test.each([
    ["1mm", "2in", "0.1mm", "f.to", "same unit"],
    ["1mm", "2mm", "0mm", "f.step", "above 0"],
    ["1mm", "2mm", "-0.1mm", "f.step", "above 0"],
    ["2mm", "1mm", "0.1mm", "f.to", "at least one step"],
    ["1mm", "1mm", "0.1mm", "f.to", "at least one step"],
    ["wide", "2mm", "0.1mm", "f.from", "wide"],
    ["", "2mm", "0.1mm", "f.from", "Nothing is entered"],
    ["1e3mm", "2000mm", "1mm", "f.from", "plain numbers"],
    ["1ft 2in", "20in", "1in", "f.from", "plain numbers"],
    ["0.0000001mm", "2mm", "1mm", "f.from", "six decimals"],
    ["0mm", "100000mm", "0.001mm", "f.step", "10000 values"],
    ["9007199254740993mm", "9007199254740999mm", "0.5mm", "f.from", "more digits"],
  ])("refuses %s to %s by %s", (from, to, step, field, words) => {
    const attempt = () => all(from, to, step);
    expect(attempt).toThrow(InputError);
    expect(attempt).toThrow(expect.objectContaining({ field, message: expect.stringContaining(words) }));
  });

  test("gauge numbers are for choices", () => {
    const steps = () => rangeSteps("f", "Size", { from: "16ga", to: "20ga", step: "1ga" }, "length");
    expect(steps).toThrow(expect.objectContaining({ field: "f.from" }));
  });

  test("texts read back to evenly spaced values", () => {
    const tenths = fc.integer({ min: -5000, max: 5000 });
    fc.assert(
      fc.property(tenths, fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 40 }), (start, step, count) => {
        const text = (parts: number) => `${(parts / 100).toFixed(2)}mm`;
        const texts = all(text(start), text(start + step * count), text(step));
        expect(texts).toHaveLength(count + 1);
        texts.forEach((each, index) => {
          expect(parseQuantity(each, "length").value).toBeCloseTo((start + index * step) / 100, 9);
        });
      }),
    );
  });
});
