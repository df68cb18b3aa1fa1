import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { drawings } from "../../src/components/glossary/drawings.ts";
import { paper } from "../../src/components/glossary/sketch.tsx";
import { TermDrawing } from "../../src/components/glossary/TermDrawing.tsx";
import { loadGlossary, readGlossary } from "../../src/site/glossary.ts";

const terms = loadGlossary();

test("the glossary is there, in the order of the alphabet", () => {
  expect(terms.length).toBeGreaterThan(100);
  const names = terms.map(({ term }) => term);
  expect(names).toEqual([...names].sort((a, b) => a.localeCompare(b, "en")));
});

test("every drawing is of one term", () => {
  const used = terms.map(({ drawing }) => drawing).sort();
  expect(used).toEqual(Object.keys(drawings).sort());
});

describe.each(terms.map((term) => [term.term, term] as const))("%s", (_, term) => {
  const svg = renderToString(<TermDrawing term={term} />);

  test("is drawn with numbers, marks something and says what it shows", () => {
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(svg).not.toMatch(/\bstyle=/);
    expect(svg).toContain('class="lit"');
    expect(svg).toMatch(/^<svg[^>]* role="img" aria-label="[A-Z][^"]{20,} Marked: [^"]+\."/);
    expect(svg).toContain(`Marked: ${term.term.toLowerCase()}.`);
  });

  test("stays on its paper", () => {
    // Absolute places only; short relative strokes start from one of them.
    const places = [...svg.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    expect(places.length).toBeGreaterThan(0);
    for (const [x, y] of places) {
      expect(x).toBeGreaterThanOrEqual(-1);
      expect(x).toBeLessThanOrEqual(paper.width + 1);
      expect(y).toBeGreaterThanOrEqual(-1);
      expect(y).toBeLessThanOrEqual(paper.height + 1);
    }
  });

  test("is explained in one short sentence", () => {
    expect(term.meaning.split(" ").length).toBeLessThanOrEqual(32);
  });
});

describe("mistakes in its file are named with their line", () => {
  const entry = (more = "") => `apex:
  term: Apex
  meaning: A point outside the metal.
  drawing: bend.apex
  trade: bending
${more}`;

  test.each([
    [
      "a meaning of two sentences",
      entry().replace("metal.", "metal. It is."),
      /glossary\.yaml:3 apex\.meaning: must be one sentence/,
    ],
    ["a field that is not known", entry("  colour: red\n"), /glossary\.yaml:6 apex\.colour: is not a name that is known/],
    [
      "a technique that is not known",
      entry().replace("trade: bending", "trade: knitting"),
      /glossary\.yaml:5 apex\.trade: knitting; allowed is/,
    ],
    [
      "a drawing without its part",
      entry().replace("bend.apex", "apex"),
      /glossary\.yaml:4 apex\.drawing: must be family and part/,
    ],
    [
      "a word that two terms claim",
      entry("tip:\n  term: Tip\n  names: [apex]\n  meaning: A tip.\n  drawing: bend.apex\n  trade: bending\n"),
      /glossary\.yaml:6 tip: “apex” is a word for apex already/,
    ],
  ])("%s", (_, text, message) => {
    expect(() => readGlossary(text)).toThrow(message);
  });

  test("and a right one is read", () => {
    expect(readGlossary(entry("  also: [apexes]\n"))).toEqual([
      {
        id: "apex",
        term: "Apex",
        also: ["apexes"],
        names: [],
        meaning: "A point outside the metal.",
        drawing: "bend.apex",
        trade: "bending",
        unlinked: false,
      },
    ]);
  });
});

test("a term whose drawing is missing stops the build", () => {
  expect(() => renderToString(<TermDrawing term={{ term: "Apex", drawing: "bend.nothing" }} />)).toThrow(
    /no drawing “bend\.nothing” for Apex/,
  );
});
