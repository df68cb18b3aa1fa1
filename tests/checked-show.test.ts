import { expect, test } from "vitest";
import type { Check } from "../src/checked/schema.ts";
import { digitsFor, inputsText, withUnit } from "../src/checked/show.ts";

test.each([
  [0.43663, 0.4366, 0.00012, "0.43663"],
  [3.7581, 3.74, 0.01, "3.758"],
  [27.6, 28, 1, "27.6"],
  [5770.4, 5700, 100, "5770"],
  [52.38749999, 52.3875, 1e-9, "52.3875"],
  [-0.5, 0, 0, "−1"],
])("%s beside %s, allowed ±%s, is shown as %s", (value, expected, tolerance, text) => {
  expect(digitsFor(value, expected, tolerance)).toBe(text);
});

test("a unit stands as it is printed, and a plain number has none", () => {
  expect(withUnit("90", "deg")).toBe("90°");
  expect(withUnit("200", "N/mm2")).toBe("200\u00a0N/mm²");
  expect(withUnit("0.33", "1")).toBe("0.33");
});

test("the inputs of a check stand in one line", () => {
  const check = {
    inputs: {
      tensileStrength: { value: 390, unit: "N/mm2" },
      material: "steel-cr",
      legs: ["1in", "2in"],
      pieces: [{ flat: "100mm", legA: "50mm" }],
    },
  } as unknown as Check;
  expect(inputsText(check)).toBe("tensile strength 390\u00a0N/mm²; material steel-cr; legs 1in, 2in; pieces 100mm : 50mm");
});
