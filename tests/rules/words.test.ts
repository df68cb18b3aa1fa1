import ts from "typescript";
import { describe, expect, test } from "vitest";
import { filesIn, parse, textOf } from "./source-files.ts";

/**
 * Words that a reader sees stand in src/texts, one place for each language. This looks for such words in components,
 * layouts and pages: text between tags, and texts of properties that are shown or read out.
 */

/** Whole sentences in code that are no words of the interface. */
const samples = ["src/components/assign/example.ts", "src/components/plan/starting-points.ts"];

/** Name of the handbook, addresses, and what is the same in every language: symbols, letters of a formula, units. */
const names = /^(?:(?:… · )?Flat to Formed|±|(?:\d )?[A-Z]{1,3}\d?(?: − [A-Z])?|Rm|Ri → R|mm|in|kN|Σ.*|\/[\w/-]*)$/;

const shownProperties = new Set(
  "aria-label ariaLabel aria-valuetext title alt placeholder label lines text name caption description summary data-label head heads note".split(
    " ",
  ),
);

/** What is between these is written in no language. */
const verbatim = new Set(["code", "pre"]);
const isVerbatim = (node: ts.Node) => ts.isJsxElement(node) && verbatim.has(node.openingElement.tagName.getText());

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
      if (!/^[!=<>]|^in/.test(node.operatorToken.getText())) {
        inExpression(node.left);
        inExpression(node.right);
      }
    } else if (ts.isArrayLiteralExpression(node)) node.elements.forEach(inExpression);
    else if (ts.isParenthesizedExpression(node)) inExpression(node.expression);
  };
  const keepSeveral = (node: ts.Node): void => {
    if (ts.isArrayLiteralExpression(node)) node.elements.forEach(keepSeveral);
    else if (ts.isStringLiteral(node) && /\p{L} \p{L}/u.test(node.text)) keep(node.text);
  };
  const visit = (node: ts.Node): void => {
    if (isVerbatim(node)) return;
    if (ts.isJsxText(node)) keep(node.text);
    if (ts.isJsxExpression(node) && node.expression && !ts.isJsxAttribute(node.parent)) inExpression(node.expression);
    if (ts.isJsxAttribute(node) && shownProperties.has(node.name.getText()) && node.initializer) {
      const { parent } = node.parent;
      // An input's or a slot's name is no text.
      const isName = node.name.getText() === "name" && !/^[A-Z]/.test(parent.tagName.getText());
      if (!isName) inExpression(ts.isJsxExpression(node.initializer) ? (node.initializer.expression ?? node) : node.initializer);
    }
    // Data that a component goes through: one word may be a key, several are words.
    if (ts.isPropertyAssignment(node) && shownProperties.has(node.name.getText())) keepSeveral(node.initializer);
    ts.forEachChild(node, visit);
  };
  visit(parse(path.replace(/\.astro$/, ".tsx"), text));
  return found;
}

/** A capital, and at least one word after it. */
const sentence = /^\P{L}*\p{Lu}[\p{L}’']*[,:;.]? (?:… )?\p{L}/u;

/** Sentences anywhere in code, but for what an error says to whoever works on the project. */
function sentencesOf(path: string, text = markupOf(path)): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (isVerbatim(node) || (ts.isNewExpression(node) && /Error$/.test(node.expression.getText()))) return;
    if (ts.isCallExpression(node) && node.expression.getText().startsWith("console.")) return;
    const words =
      ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)
        ? node.text
        : ts.isTemplateExpression(node)
          ? [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join("…")
          : "";
    if (sentence.test(words) && !names.test(words)) found.push(words);
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
const written = [...shown, ...["components", "layouts", "pages", "offline"].flatMap((each) => filesIn(`src/${each}`, /\.ts$/))]
  // Tables are content, with the sources of their numbers; only what stands around them is interface.
  .filter((path) => !path.startsWith("src/components/tables/data/") && !samples.includes(path));

/** Files that name the English texts themselves, and why. */
const takesEnglish: Readonly<Record<string, string>> = {
  "src/layouts/site-map.ts": "titles of pages are translated by their English, as the library's words are",
  "src/pages/device.astro": "as there",
  "src/pages/manifest.webmanifest.ts": "there is one manifest for all languages",
  "src/components/tables/table.ts": "tables and their files are in English only",
  "src/components/tables/table-lines.ts": "as there",
};

/** Uses of English texts that do not go through the language of the page. */
function takenPastLanguage(path: string, text = markupOf(path)): string[] {
  const source = parse(path.replace(/\.astro$/, ".tsx"), text);
  const names = new Set<string>();
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) {
      const { importClause, moduleSpecifier } = node;
      const named = importClause?.namedBindings;
      const isText = ts.isStringLiteral(moduleSpecifier) && /\/texts\/en\//.test(moduleSpecifier.text);
      if (isText && !importClause?.isTypeOnly && named && ts.isNamedImports(named))
        for (const { name, isTypeOnly } of named.elements) if (!isTypeOnly) names.add(name.text);
      return;
    }
    const { parent } = node;
    if (ts.isIdentifier(node) && names.has(node.text)) {
      const isName =
        (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
        ((ts.isPropertyAssignment(parent) || ts.isJsxAttribute(parent) || ts.isBindingElement(parent)) && parent.name === node) ||
        (ts.isBindingElement(parent) && parent.propertyName === node);
      const isType = ts.isTypeQueryNode(parent) || ts.isQualifiedName(parent);
      const isAsked =
        ts.isCallExpression(parent) && /^(?:useTexts|textsOf|pageTexts|(?:.*\.)?texts)$/.test(parent.expression.getText());
      if (!isName && !isType && !isAsked) found.push(parent.getText().slice(0, 80));
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

describe("texts are taken in the language of the page", () => {
  test.each(written.filter((path) => !(path in takesEnglish)).map((path) => ({ path })))("$path", ({ path }) => {
    expect(takenPastLanguage(path)).toEqual([]);
  });

  test.each(Object.keys(takesEnglish).map((path) => ({ path })))("$path still takes the English itself", ({ path }) => {
    expect(takenPastLanguage(path).length).toBeGreaterThan(0);
  });

  test.each([
    ["const a = <p>{sheet.title}</p>;", 1],
    ["const say = (texts = sheet) => texts.title;", 1],
    ["const texts = useTexts(sheet);", 0],
    ["const { title } = textsOf(Astro.url, sheet);", 0],
    ["const words = language.texts(sheet).title;", 0],
    ["const say = (texts: typeof sheet) => texts.title;", 0],
    ["const a = <p>{plan.sheet}</p>;", 0],
  ])("%s has %i of its own", (code, count) => {
    const text = `import { sheet } from "../../texts/en/sheet.ts";\n${code}`;
    expect(takenPastLanguage("src/components/x.tsx", text)).toHaveLength(count);
  });
});

describe("words that a reader sees stand in src/texts", () => {
  test.each(shown.map((path) => ({ path })))("$path", ({ path }) => {
    expect(wordsOf(path)).toEqual([]);
  });

  test.each(written.map((path) => ({ path })))("no sentence in the code of $path", ({ path }) => {
    expect(sentencesOf(path)).toEqual([]);
  });

  test.each(samples.map((path) => ({ path })))("$path still has words of its own", ({ path }) => {
    expect(sentencesOf(path).length).toBeGreaterThan(0);
  });

  test.each([
    ["text between tags", "const a = <p>Hello there</p>;"],
    ["a text in braces", 'const a = <p>{"Hello there"}</p>;'],
    ["one of two texts", 'const a = <p>{x ? "Hello there" : y}</p>;'],
    ["a text with values in it", `const a = <p>{\`Hello \${name}\`}</p>;`],
    ["a text that is read out", 'const a = <svg aria-label="Hello there" />;'],
    ["lines of a drawing", 'const a = <Text lines={["Hello", x]} />;'],
    ["words in data", 'const cells = [{ name: ["Hello there", ""], angle: 1 }];'],
    ["heads of a table", 'const a = <Table heads={["Hello", x]} />;'],
  ])("notices %s", (_, text) => {
    expect(wordsOf("src/components/x.tsx", text)).toHaveLength(1);
  });

  test.each([
    ["a comparison", 'const a = <p>{kind === "closed" && x}</p>;'],
    ["a key in data", 'const cells = [{ name: "hello", angle: 1 }];'],
    ["a class", 'const a = <p class="some words">{x}</p>;'],
    ["the name of a field", 'const a = <input name="units" />;'],
    ["what is to be typed as it is", "const a = <code>npm start</code>;"],
    ["an address", "const a = <a href={b}>/embed/{c}/</a>;"],
    ["whether there is something", 'const a = <p>{"rating" in machine && x}</p>;'],
  ])("passes over %s", (_, text) => {
    expect(wordsOf("src/components/x.tsx", text)).toEqual([]);
  });

  test.each([
    ['say("The file is too long.");', ["The file is too long."]],
    [`say(\`Line \${line} of \${file}\`);`, ["Line … of …"]],
    ['const report = { words: "Kept here" };', ["Kept here"]],
    ['throw new Error("There is no such caution");', []],
    ['const name = "Flat to Formed";', []],
    ['const look = "piece chosen";', []],
  ])("finds the sentences of %s", (text, sentences) => {
    expect(sentencesOf("src/components/x.ts", text)).toEqual(sentences);
  });
});
