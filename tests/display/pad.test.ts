import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { denominators, keyOfKeyboard, longestText, type PadKey, press } from "../../src/components/display/pad.ts";
import { parseQuantity } from "../../src/lib/quantity/parse.ts";

/** `d5`: a digit; `/16`: a denominator; other words are the kinds of keys. */
function key(word: string): PadKey {
  if (/^d\d$/.test(word)) return { kind: "digit", digit: word.slice(1) };
  if (word.startsWith("/")) return { kind: "over", denominator: Number(word.slice(1)) };
  if (word === "mm" || word === "in" || word === "ga") return { kind: "unit", unit: word };
  return { kind: word as "point" | "and" | "back" | "clear" };
}

const typed = (words: string, before = "") => words.split(" ").map(key).reduce(press, { text: before, fresh: true }).text;

describe("keys of the pad, one after the other", () => {
  test.each([
    ["d1 point d2", "1.2"],
    ["point d5", "0.5"],
    ["d1 point point d2 point", "1.2"],
    // Two and five sixteenths.
    ["d2 and d5 /16", "2 5/16"],
    ["d2 and and d5 /16", "2 5/16"],
    ["d2 and /4", "2 1/4"],
    ["/8", "1/8"],
    ["d3 /32 /64", "3/64"],
    ["d3 /64 in", "3/64 in"],
    ["d1 point d5 /2", "1.5"],
    ["d1 d8 ga", "18 ga"],
    ["d1 d8 ga mm", "18 mm"],
    ["d1 d8 mm d5", "185"],
    ["d1 d8 mm back", "18"],
    ["d1 d2 back back back", ""],
    ["d2 and d5 /16 back back back back", "2"],
    ["d1 d2 clear d7", "7"],
    ["in", ""],
  ])("%s: %s", (words, expected) => {
    expect(typed(words)).toBe(expected);
  });

  test("the first key in a chosen field begins anew, but a unit or the back key goes on with what is there", () => {
    expect(typed("d7", "1.2")).toBe("7");
    expect(typed("/16", "1.2")).toBe("1/16");
    expect(typed("in", "1.2")).toBe("1.2 in");
    expect(typed("back", "1.2")).toBe("1.");
  });

  test("takes no more than fits", () => {
    expect(typed(Array(40).fill("d9").join(" "))).toBe("9".repeat(longestText));
  });

  test("a denominator does not begin with nought", () => {
    expect(typed("/4 back d0")).toBe("1/");
    expect(typed("/4 back d0 d8")).toBe("1/8");
  });

  test("what it types with digits, points, fractions and units can be read as a length, or is on its way to it", () => {
    const words = ["d0", "d4", "d9", "point", "and", "mm", "in", "back", ...denominators.map((each) => `/${each}`)];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...words), { minLength: 1, maxLength: 12 }), (keys) => {
        const text = typed(keys.join(" "));
        const whole = text.replace(/[/.\s]+$/, "");
        if (whole === "" || /\s\d+$/.test(whole)) return;
        expect(parseQuantity(whole, "length").value).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test("a real keyboard has the same keys", () => {
    expect(["7", ",", "Backspace", "Delete", "a", "F5", "Enter"].map(keyOfKeyboard)).toEqual([
      { kind: "digit", digit: "7" },
      { kind: "point" },
      { kind: "back" },
      { kind: "clear" },
      undefined,
      undefined,
      undefined,
    ]);
  });
});
