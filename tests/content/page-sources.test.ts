import { expect, test } from "vitest";
import { pageSources } from "../../src/site/page-sources.ts";

test("sources come in the order in which they are cited, each once", () => {
  const text = 'A <Cite id="b" />, then <Cite id="a" where="p. 3" />, and again <Cite\n  where="p. 4" id="b" />.';
  expect(pageSources(text, [])).toEqual(["b", "a"]);
});

test("the front matter adds what the text does not cite", () => {
  expect(pageSources('<Cite id="a" />', ["c"])).toEqual(["a", "c"]);
});

test("a source kept in two places is refused by name", () => {
  expect(() => pageSources('<Cite id="a" />', ["a"])).toThrow("cites a in its text");
});
