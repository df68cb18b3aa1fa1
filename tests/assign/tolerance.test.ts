import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { outputText } from "../../src/components/calculator/texts.ts";
import { allowed, answerText, isWithin, readTolerance, shownStep, toleranceText } from "../../src/lib/assign/tolerance.ts";
import { lengthViews } from "../../src/lib/quantity/format.ts";
import { worksheets } from "../../src/lib/registry.ts";
import type { QuantityOutput } from "../../src/lib/worksheet.ts";

const length: QuantityOutput = { kind: "quantity", label: "Size", quantity: "length" };
const setting: QuantityOutput = { ...length, fineness: "setting" };
const heat: QuantityOutput = { kind: "quantity", label: "Heat", quantity: "temperature" };
const count: QuantityOutput = { kind: "quantity", label: "Number", quantity: "count" };
const outputs = worksheets.flatMap((sheet) =>
  Object.values(sheet.outputs).filter((output): output is QuantityOutput => output.kind === "quantity"),
);

describe("reading a tolerance", () => {
  test.each([
    [length, "0.5mm", { kind: "absolute", amount: 0.5 }],
    [length, "0.5", { kind: "absolute", amount: 0.5 }],
    [length, "1/64 in", { kind: "absolute", amount: 25.4 / 64 }],
    // 9 °F of difference are 5 °C of difference.
    [heat, "9 °F", { kind: "absolute", amount: expect.closeTo(5, 9) }],
    [count, "0", { kind: "absolute", amount: 0 }],
    [length, "2 %", { kind: "percent", percent: 2 }],
    [length, "2,5%", { kind: "percent", percent: 2.5 }],
    [length, " rounding ", { kind: "rounding" }],
  ] as const)("of %o: %s", (output, text, tolerance) => expect(readTolerance("f", text, output)).toEqual(tolerance));

  test.each(["", "-1mm", "0%", "51%", "-2%", "5 kg", "near enough", "16 ga"])("refuses “%s”", (text) => {
    expect(() => readTolerance("f", text, length)).toThrow(expect.objectContaining({ field: "f" }));
  });
});

describe("the shop's rounding", () => {
  test.each([
    [length, 52.37, "mm", 0.1],
    [setting, 52.37, "mm", 0.01],
    [setting, 52.37, "inch", 0.0254],
    [length, 52.37, "fraction", 0.396875],
    [count, 4, "mm", 0],
    [{ ...length, quantity: "force" }, 800, "mm", 1],
    [{ ...length, quantity: "force" }, 12_300, "mm", 100],
    [{ ...length, quantity: "ratio", asPercent: true }, 0.63, "mm", 0.01],
  ] as const)("%o of %d in %s steps by %d", (output, value, view, step) =>
    expect(shownStep(output as QuantityOutput, value, view)).toBeCloseTo(step, 12),
  );

  test("half a step either way is right, and no more", () => {
    const most = allowed({ kind: "rounding" }, 52.35, length, "mm");
    expect([52.3, 52.4, 52.4001, 52.2999].map((given) => isWithin(given, 52.35, most))).toEqual([true, true, false, false]);
  });

  test("whatever is shown, the value shown is right and is shown as the calculators show it", () => {
    const value = fc.double({ min: 0.001, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...outputs), value, fc.constantFrom(...lengthViews), (output, right, view) => {
        const shown = answerText(output, right, view);
        expect(outputText(output, right, view).startsWith(shown)).toBe(true);
        expect(toleranceText({ kind: "rounding" }, right, output, view)).not.toMatch(/NaN|Infinity|e[-+]\d/);
      }),
    );
  });
});

test("tolerances in words", () => {
  expect(toleranceText({ kind: "absolute", amount: 0.5 }, 52, length, "mm")).toBe("± 0.5 mm");
  expect(toleranceText({ kind: "absolute", amount: 0.508 }, 52, length, "inch")).toBe("± 0.02 in");
  expect(toleranceText({ kind: "percent", percent: 2 }, 52, length, "mm")).toBe("± 2 %");
  expect(toleranceText({ kind: "rounding" }, 12_300, { ...length, quantity: "force" }, "mm")).toBe("± 0.05 kN");
  expect(toleranceText({ kind: "rounding" }, 4, count, "mm")).toBe("exactly");
});
