import type { Page } from "playwright-core";
import { faces, sizes } from "../../src/equations/faces.ts";
import { builtPages } from "./built.ts";
import { expect, test } from "./harness.ts";

const withEquations = (await builtPages()).filter(({ html }) => html.includes('class="katex"')).map(({ path }) => path);

/** In none of KaTeX's faces as shipped either: the browser takes them from the next font, which is meant. */
const inNoFace = "²³\u00a0\u202f\u200b ";

test("there are pages with equations", () => {
  expect(withEquations).not.toEqual([]);
});

/** Letters by face, sizes, and fonts that did not load, of all equations of a page. */
function usedOn(page: Page) {
  return page.evaluate(async () => {
    const letters = new Map<string, string>();
    // The working of a calculator is folded away until somebody wants to see it.
    for (const fold of document.querySelectorAll("details")) fold.open = true;
    for (const html of document.querySelectorAll(".katex-html")) {
      // An equation that is not in use yet has its numbers put in before it is shown.
      if (!html.checkVisibility()) continue;
      const texts = document.createTreeWalker(html, NodeFilter.SHOW_TEXT);
      while (texts.nextNode()) {
        const { fontFamily, fontStyle, fontWeight } = getComputedStyle(texts.currentNode.parentElement as Element);
        const family = fontFamily.split(",")[0]?.replace(/"|KaTeX_/g, "");
        const style = (Number(fontWeight) > 500 ? "Bold" : "") + (fontStyle === "italic" ? "Italic" : "");
        const face = `${family}-${style || "Regular"}`;
        letters.set(face, (letters.get(face) ?? "") + texts.currentNode.textContent);
      }
    }
    const inUse = [...document.querySelectorAll(".katex")].some((equation) => !equation.closest("[hidden]"));
    const sized = [...document.querySelectorAll(".katex-sizing, .fontsize-ensurer")];
    await document.fonts.ready;
    const unloaded = [...document.fonts].filter(({ family, status }) => /KaTeX/.test(family) && status === "error");
    return {
      inUse,
      letters: [...letters],
      sizes: sized.flatMap((element) => element.className.match(/(?<=\b(?:reset-)?size)\d+/g) ?? []).map(Number),
      unloaded: unloaded.map(({ family }) => family),
    };
  });
}

test.for(withEquations)(
  "%s: its equations have every letter and size in the fonts and sheet cut down for them",
  async (path, { open }) => {
    const used = await usedOn(await open(path));
    // A calculator whose usual answer is looked up has formulas that are not in use yet.
    expect(used.letters.length > 0).toBe(used.inUse);
    const missing = used.letters.flatMap(([face, text]) =>
      [...new Set(text)]
        .filter((letter) => !inNoFace.includes(letter) && !faces[face]?.includes(letter))
        .map((letter) => `${face}: ${letter}`),
    );
    expect(missing).toEqual([]);
    expect([...new Set(used.sizes)].filter((size) => !sizes.includes(size))).toEqual([]);
    expect(used.unloaded).toEqual([]);
  },
);
