import { readFile } from "node:fs/promises";
import { expect, test } from "vitest";
import { trimSheet } from "../../src/equations/assets.ts";
import { faces } from "../../src/equations/faces.ts";

const whole = await readFile("node_modules/katex/dist/katex.min.css", "utf8");
const trimmed = trimSheet(whole);

test("the style sheet names the faces that are made, as woff2 alone", () => {
  const named = [...trimmed.matchAll(/url\(\.\/fonts\/([\w-]+)\.(\w+)\)/g)].map(([, face, type]) => `${face} ${type}`);
  expect(named).toEqual(Object.keys(faces).map((face) => `${face} woff2`));
});

test("rules for faces and sizes that are not there are left out, all others kept", () => {
  expect(trimmed).not.toMatch(/KaTeX_(?:AMS|Fraktur|Script|Typewriter)/);
  expect(trimmed).toContain(".katex .katex-sizing.reset-size6.size3{");
  expect(trimmed).not.toMatch(/\.reset-size6\.size2\b/);
  for (const rule of [".katex .mfrac>span>span{text-align:center}", ".katex .vlist-r{display:table-row}"]) {
    expect(whole).toContain(rule);
    expect(trimmed).toContain(rule);
  }
});
