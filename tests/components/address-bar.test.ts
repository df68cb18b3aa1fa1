import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mergedQuery } from "../../src/components/calculator/address-bar.ts";
import { startingAt } from "../../src/components/calculator/Calculator.tsx";
import { addressParts, queryText, rawFromAddress } from "../../src/lib/address.ts";
import { anyRaw, everySheet } from "../worksheets/arbitrary.ts";
import { asTyped } from "./as-typed.ts";

const words = fc.stringMatching(/^[a-z]{1,8}$/);
const others = fc.array(fc.tuple(words, fc.string({ maxLength: 12 })), { maxLength: 3 });

describe("everything typed comes back from the address", () => {
  test.each(everySheet)("$id", ({ id, sheet }) => {
    fc.assert(
      fc.property(anyRaw(sheet.inputs), anyRaw(sheet.inputs), (typed, preset) => {
        const start = asTyped(sheet.inputs, preset);
        const inputs = startingAt(sheet.inputs, start);
        const raw = { ...start, ...asTyped(inputs, typed) };
        const search = `?${mergedQuery("", new Map([[id, addressParts(inputs, raw)]]))}`;
        const back = { ...start, ...rawFromAddress(id, inputs, new URLSearchParams(search)) };
        expect(addressParts(inputs, back)).toEqual(addressParts(inputs, raw));
        for (const [key, value] of Object.entries(raw))
          if (back[key] !== undefined) expect(back[key], key).toEqual(value);
          else expect(addressParts(inputs, { [key]: value }), key).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});

describe("one calculator leaves the rest of the address alone", () => {
  test("values of others and unknown ones stay, in their order", () => {
    fc.assert(
      fc.property(others, others, (own, foreign) => {
        const strange: [string, string][] = foreign.map(([name, text]) => [`other.${name}`, text]);
        const before = `?${queryText([...strange, ["mine.old", "1"], ["q", "x y"]])}`;
        const after = [...new URLSearchParams(mergedQuery(before, new Map([["mine", own]])))];
        const clean = (text: string) => text.toWellFormed();
        expect(after).toEqual([
          ...strange.map(([name, text]) => [name, clean(text)]),
          ["q", "x y"],
          ...own.map(([key, text]) => [`mine.${key}`, clean(text)]),
        ]);
      }),
    );
  });

  test("a calculator whose name begins like another's is another", () => {
    expect(mergedQuery("?bend.a=1&bend-length.a=2", new Map([["bend", []]]))).toBe("bend-length.a=2");
  });

  test("stays readable", () => {
    expect(mergedQuery("", new Map([["bend-length", [["thickness", "3/64in"] as const, ["legs", "60mm;25mm"] as const]]]))).toBe(
      "bend-length.thickness=3/64in&bend-length.legs=60mm;25mm",
    );
  });
});
