import ts from "typescript";
import { describe, expect, test } from "vitest";
import { filesIn, parse, textOf } from "./source-files.ts";

/**
 * Words that a reader sees stand in src/texts, one place for each language. This looks for such words in components,
 * layouts and pages: text between tags, and texts of properties that are shown or read out.
 */

/** Places whose words are not moved yet. A place that has none left must be taken out, and none may be put in. */
const notMoved = [
  "src/components/drawings/",
  "src/components/figures/",
  "src/components/glossary/",
  "src/components/shop/",
  "src/pages/shop/",
  "src/pages/tables/",
];

/** Name of the handbook, and what is the same in every language. */
const names = /^(?:Flat to Formed|±|[A-Z]{1,3}\d?|mm|in|kN|Σ.*)$/;

const shownProperties = new Set(
  "aria-label ariaLabel title alt placeholder label lines text name caption description summary data-label".split(" "),
);

/** The markup of an Astro file as TSX: what is between the fences is code, and what is in style and script is no markup. */
function markupOf(path: string): string {
  const text = textOf(path);
  if (!path.endsWith(".astro")) return text;
  const [, code = "", markup = ""] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? ["", "", text];
  const plain = markup
    .replace(/<!doctype html>/i, "")
    .replace(/<(style|script)\b[^>]*>[\s\S]*?<\/\1>/g, "")
    .replace(/<!--[\s\S]*?-->/g, "");
  return `${code}\n;export default <>${plain}</>;`;
}

const hasWords = (text: string) => /\p{L}{2}/u.test(text) && !names.test(text.trim());

function wordsOf(path: string, text = markupOf(path)): string[] {
  const found: string[] = [];
  const keep = (words: string) => {
    const tidy = words.replace(/\s+/g, " ").trim();
    if (hasWords(tidy)) found.push(tidy);
  };
  /** Texts that an expression between tags or in a shown property may come to. */
  const inExpression = (node: ts.Node): void => {
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) keep(node.text);
    else if (ts.isTemplateExpression(node)) {
      keep([node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join(" "));
      for (const { expression } of node.templateSpans) inExpression(expression);
    } else if (ts.isConditionalExpression(node)) {
      inExpression(node.whenTrue);
      inExpression(node.whenFalse);
    } else if (ts.isBinaryExpression(node)) {
      if (!/^[!=<>]/.test(node.operatorToken.getText())) {
        inExpression(node.left);
        inExpression(node.right);
      }
    } else if (ts.isArrayLiteralExpression(node)) node.elements.forEach(inExpression);
    else if (ts.isParenthesizedExpression(node)) inExpression(node.expression);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isJsxText(node)) keep(node.text);
    if (ts.isJsxExpression(node) && node.expression && !ts.isJsxAttribute(node.parent)) inExpression(node.expression);
    if (ts.isJsxAttribute(node) && shownProperties.has(node.name.getText()) && node.initializer) {
      const { parent } = node.parent;
      // An input's or a slot's name is no text.
      const isName = node.name.getText() === "name" && !/^[A-Z]/.test(parent.tagName.getText());
      if (!isName) inExpression(ts.isJsxExpression(node.initializer) ? (node.initializer.expression ?? node) : node.initializer);
    }
    ts.forEachChild(node, visit);
  };
  visit(parse(path.replace(/\.astro$/, ".tsx"), text));
  return found;
}

const shown = [
  ...filesIn("src/components", /\.(tsx|astro)$/),
  ...filesIn("src/layouts", /\.astro$/),
  ...filesIn("src/pages", /\.astro$/),
  ...filesIn("src/offline", /\.astro$/),
];
const placeOf = (path: string) => notMoved.find((place) => path === place || (place.endsWith("/") && path.startsWith(place)));

describe("words that a reader sees stand in src/texts", () => {
  test.each(shown.filter((path) => !placeOf(path)).map((path) => ({ path })))("$path", ({ path }) => {
    expect(wordsOf(path)).toEqual([]);
  });

  test.each(notMoved.map((place) => ({ place })))("$place still has words of its own", ({ place }) => {
    expect(shown.filter((path) => placeOf(path) === place).flatMap((path) => wordsOf(path)).length).toBeGreaterThan(0);
  });

  test.each([
    ["text between tags", "const a = <p>Hello there</p>;"],
    ["a text in braces", 'const a = <p>{"Hello there"}</p>;'],
    ["one of two texts", 'const a = <p>{x ? "Hello there" : y}</p>;'],
    ["a text with values in it", `const a = <p>{\`Hello \${name}\`}</p>;`],
    ["a text that is read out", 'const a = <svg aria-label="Hello there" />;'],
    ["lines of a drawing", 'const a = <Text lines={["Hello", x]} />;'],
  ])("notices %s", (_, text) => {
    expect(wordsOf("src/components/x.tsx", text)).toHaveLength(1);
  });

  test.each([
    ["a comparison", 'const a = <p>{kind === "closed" && x}</p>;'],
    ["a class", 'const a = <p class="some words">{x}</p>;'],
    ["the name of a field", 'const a = <input name="units" />;'],
  ])("passes over %s", (_, text) => {
    expect(wordsOf("src/components/x.tsx", text)).toEqual([]);
  });
});
