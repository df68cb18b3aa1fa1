import { expect, test } from "vitest";
import { renderEquation, renderTex } from "../../src/equations/render.ts";
import type { Formula } from "../../src/lib/formula.ts";

const length = { quantity: "length", label: "a length" } as const;
const formula: Formula = {
  id: "trial",
  name: "Trial",
  result: "out",
  expression: String.raw`\frac{\v{radius} + 2\cdot\v{gap}}{\v{radius}^2}`,
  symbols: {
    out: { ...length, symbol: "L", tex: "L" },
    radius: { ...length, symbol: "R", tex: "R" },
    gap: { ...length, symbol: "g", tex: "g" },
  },
};

function slots(html: string): string[] {
  return [...html.matchAll(/<(span|mn)[^>]* data-v="(\w+)">([^<]*)</g)].map(([, tag, key, text]) => `${tag} ${key} ${text}`);
}

test("a formula in letters has its symbols and no slot", () => {
  const html = renderEquation(formula, "letters");
  expect(slots(html)).toEqual([]);
  expect(html).toContain("<mi>L</mi><mo>=</mo><mfrac><mrow><mi>R</mi>");
});

test("a formula in numbers has a slot for every use of a symbol, once for the eye and once in the MathML", () => {
  const html = renderEquation(formula, "numbers", { out: "2.73 mm", radius: "1.20", gap: "0.04" });
  const expected = ["radius 1.20", "radius 1.20", "gap 0.04", "out 2.73 mm"];
  // KaTeX writes what is below the fraction line before what is above it, but not in the MathML.
  const seen = slots(html);
  for (const tag of ["span", "mn"])
    expect(seen.filter((slot) => slot.startsWith(`${tag} `)).sort()).toEqual(expected.map((slot) => `${tag} ${slot}`).sort());
  expect(seen).toHaveLength(8);
  expect(html).not.toContain("77700");
});

test("a slot shows its symbol until it gets a number, and its text is no markup", () => {
  expect(slots(renderEquation(formula, "numbers"))).toContain("span gap g");
  expect(renderEquation(formula, "numbers", { out: "<b>", radius: "1", gap: "2" })).toContain("&#60;b&#62;");
});

test("the TeX itself is not in the page", () => {
  expect(renderTex(String.raw`\frac{a}{b}`)).not.toMatch(/annotation|frac\{/);
});

test("a formula that cannot be set stops the build", () => {
  expect(() => renderTex(String.raw`\frac{a`)).toThrow();
  expect(() => renderTex("a ≠ “b”")).toThrow();
  expect(() => renderEquation({ ...formula, expression: String.raw`2\v{gap}` }, "numbers")).toThrow(/gap.*0 times/);
  expect(() => renderEquation(formula, "numbers", { out: "1" })).toThrow(/no text for “radius”/);
});
