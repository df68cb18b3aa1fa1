import { describe, expect, test } from "vitest";
import { tabText } from "../../src/components/tables/lines.ts";
import { safeCsv } from "../../src/lib/csv.ts";

describe("comma-separated text, by the rules of RFC 4180", () => {
  test.each([
    ["a field with a comma is quoted", [["1,5", "b"]], '"1,5",b\r\n'],
    ["a quote in a field is doubled", [['3/64"']], '"3/64"""\r\n'],
    ["a line break stays inside quotes", [["a\nb", "c"]], '"a\nb",c\r\n'],
    ["an empty field stays a field", [["", "b", ""]], ",b,\r\n"],
    [
      "every line ends with both signs",
      [
        ["a", "b"],
        ["1", "2"],
      ],
      "a,b\r\n1,2\r\n",
    ],
  ])("%s", (_, lines, expected) => {
    expect(safeCsv(lines)).toBe(`\uFEFF${expected}`);
  });
});

test("tab-separated text has one line a row, whatever is in a field", () => {
  expect(
    tabText([
      ["a\tb", "c"],
      ["d\ne", "f"],
    ]),
  ).toBe("a b\tc\nd e\tf");
});
