import { expect, test } from "vitest";
import { excerptPieces, type Found, toHit } from "../../src/components/search-results.ts";

test("an excerpt is taken apart into plain text", () => {
  expect(excerptPieces("the <mark>bend</mark> of 1.2 &lt;b&gt; &amp; &#956;m &#x3bc; &unknown;")).toEqual([
    { text: "the ", marked: false },
    { text: "bend", marked: true },
    { text: " of 1.2 <b> & μm μ &unknown;", marked: false },
  ]);
  expect(excerptPieces("")).toEqual([]);
  expect(excerptPieces("&#9999999999; <mark>a")).toEqual([{ text: "&#9999999999; <mark>a", marked: false }]);
});

function place(url: string, ...scores: number[]) {
  return { title: `at ${url}`, url, excerpt: url, weighted_locations: scores.map((balanced_score) => ({ balanced_score })) };
}
const found: Found = { url: "/p/", excerpt: "page", meta: { title: "Page" }, sub_results: [] };

test("a hit leads to the heading under which most was found", () => {
  const sub_results = [place("/p/", 1), place("/p/#a", 2, 2), place("/p/#b", 3)];
  expect(toHit({ ...found, sub_results })).toMatchObject({ title: "Page", section: "at /p/#a", address: "/p/#a" });
});

test("a hit above the first heading, or on a page without any, leads to the page", () => {
  const whole = { title: "Page", address: "/p/", excerpt: [{ text: "page", marked: false }] };
  expect(toHit({ ...found, sub_results: [place("/p/", 5), place("/p/#a", 2)] })).toEqual(whole);
  expect(toHit(found)).toEqual(whole);
});
