import { faces, sizes } from "../../src/equations/faces.ts";
import { builtPages } from "./built.ts";
import { expect, test } from "./harness.ts";

const withEquations = (await builtPages()).filter(({ html }) => html.includes('class="katex"')).map(({ path }) => path);

/** In none of KaTeX's faces as shipped either: the browser takes them from the next font, which is meant. */
const inNoFace = "²³\u00a0\u202f\u200b ";

test("there are pages with equations", () => {
  expect(withEquations).not.toEqual([]);
});

test.for(withEquations)("%s: every letter of every equation is in the font that was cut down for it", async (path, { open }) => {
  const page = await open(path);
  const used = await page.evaluate(() => {
    const found = new Map<string, string>();
    for (const html of document.querySelectorAll(".katex-html")) {
      const texts = document.createTreeWalker(html, NodeFilter.SHOW_TEXT);
      while (texts.nextNode()) {
        const { fontFamily, fontStyle, fontWeight } = getComputedStyle(texts.currentNode.parentElement as Element);
        const family = fontFamily.split(",")[0]?.replace(/"|KaTeX_/g, "");
        const face = `${family}-${Number(fontWeight) > 500 ? "Bold" : ""}${fontStyle === "italic" ? "Italic" : ""}` || family;
        const key = face?.replace(/-$/, "-Regular") ?? "";
        found.set(key, (found.get(key) ?? "") + texts.currentNode.textContent);
      }
    }
    return [...found];
  });
  expect(used).not.toEqual([]);
  const missing = used.flatMap(([face, text]) =>
    [...new Set(text)]
      .filter((letter) => !inNoFace.includes(letter) && !faces[face]?.includes(letter))
      .map((letter) => `${face}: ${letter}`),
  );
  expect(missing).toEqual([]);
});

test.for(withEquations)("%s: equations use only the sizes that are in the style sheet", async (path, { open }) => {
  const page = await open(path);
  const used = await page.evaluate(() =>
    [...document.querySelectorAll(".katex-sizing, .fontsize-ensurer")].flatMap(
      (element) => element.className.match(/(?<=\b(?:reset-)?size)\d+/g) ?? [],
    ),
  );
  expect([...new Set(used.map(Number))].filter((size) => !sizes.includes(size))).toEqual([]);
});

test.for(withEquations)("%s: the fonts of its equations load", async (path, { open }) => {
  const page = await open(path);
  const unloaded = await page.evaluate(async () => {
    await document.fonts.ready;
    return [...document.fonts]
      .filter(({ family, status }) => /KaTeX/.test(family) && status === "error")
      .map(({ family }) => family);
  });
  expect(unloaded).toEqual([]);
});
