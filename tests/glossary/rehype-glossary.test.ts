import type { Element, ElementContent, Root } from "hast";
import { describe, expect, test } from "vitest";
import type { Term } from "../../src/site/glossary.ts";
import { rehypeBase } from "../../src/site/rehype-base.ts";
import { rehypeGlossary } from "../../src/site/rehype-glossary.ts";

const term = (id: string, more: Partial<Term> = {}): Term => ({
  id,
  term: id.replaceAll("-", " "),
  also: [],
  names: [],
  meaning: "A word.",
  drawing: "bend.apex",
  trade: "bending",
  unlinked: false,
  ...more,
});

const terms = [
  term("bend-line", { also: ["bend lines"] }),
  term("punch", { also: ["punches"], within: ["punching"] }),
  term("centre-punch"),
  term("k-factor", { term: "K-factor" }),
  term("folded-edge", { names: ["hem"] }),
  term("box", { unlinked: true }),
];

type Child = ElementContent | string;
const h = (tagName: string, ...children: Child[]): Element => ({
  type: "element",
  tagName,
  properties: {},
  children: children.map((child) => (typeof child === "string" ? { type: "text", value: child } : child)),
});
const component = (name: string, ...children: Child[]) =>
  ({ ...h("x", ...children), type: "mdxJsxFlowElement", name, tagName: undefined }) as unknown as Element;

/** The text of a tree, with links as [words](address). */
function shown(node: Root | ElementContent): string {
  if (node.type === "text") return node.value;
  const inner = "children" in node ? (node.children as ElementContent[]).map(shown).join("") : "";
  return node.type === "element" && node.tagName === "a" ? `[${inner}](${node.properties.href ?? ""})` : inner;
}

function linked(children: Element[], path = "src/content/techniques/bending/index.mdx"): string {
  const tree: Root = { type: "root", children };
  rehypeGlossary(terms)()(tree, { path });
  return shown(tree);
}

describe("the first use of a term becomes a link", () => {
  test.each([
    [
      "once on a page",
      [h("p", "A bend line. A bend line."), h("p", "Bend line")],
      "A [bend line](/glossary/#bend-line). A bend line.Bend line",
    ],
    ["in its plural", [h("p", "Two bend lines meet.")], "Two [bend lines](/glossary/#bend-line) meet."],
    ["by another name", [h("p", "This is a hem.")], "This is a [hem](/glossary/#folded-edge)."],
    [
      "whatever its letters",
      [h("p", "Bend Line here, k-factor there")],
      "[Bend Line](/glossary/#bend-line) here, [k-factor](/glossary/#k-factor) there",
    ],
    ["across a line break", [h("p", "the bend\nline")], "the [bend\nline](/glossary/#bend-line)"],
    ["in bold and in a list", [h("ul", h("li", "the ", h("strong", "bend line")))], "the [bend line](/glossary/#bend-line)"],
    [
      "in the steps of a page",
      [component("Steps", h("ol", h("li", "Mark the bend line.")))],
      "Mark the [bend line](/glossary/#bend-line).",
    ],
  ])("%s", (_, children, expected) => {
    expect(linked(children)).toBe(expected);
  });
});

describe("no link is made", () => {
  test.each([
    ["in a heading", [h("h2", "Bend line")]],
    ["in a link", [h("p", h("a", "bend line"))]],
    ["in code", [h("p", h("code", "bend line")), h("pre", h("code", "bend line"))]],
    ["in a table", [h("table", h("tr", h("td", "bend line")))]],
    ["in an equation", [h("p", h("span", "bend line"))]],
    ["in a figure or a calculator", [component("Figure", h("p", "bend line")), component("Calculator", h("p", "bend line"))]],
    ["inside a longer word", [h("p", "bend liner, unbend line, K-factory, hem-stitch")]],
    ["of a block that is nothing but the word", [h("ul", h("li", "bend line"))]],
    ["of a word in its everyday sense", [h("p", "a box of screws")]],
    ["of a word that means something else on this page", [h("p", "a punch in the shoulder")]],
  ])("%s", (_, children) => {
    const before = shown({ type: "root", children: structuredClone(children) });
    expect(linked(children).replaceAll("[bend line]()", "bend line")).toBe(before.replaceAll("[bend line]()", "bend line"));
  });
});

test("the longest term wins", () => {
  const punching = "src/content/techniques/punching/index.mdx";
  expect(linked([h("p", "Strike the centre punch, then set the punch.")], punching)).toBe(
    "Strike the [centre punch](/glossary/#centre-punch), then set the [punch](/glossary/#punch).",
  );
});

test("the link is marked, and begins below the path of the site", () => {
  const tree: Root = { type: "root", children: [h("p", "A bend line.")] };
  rehypeGlossary(terms)()(tree, {});
  rehypeBase("/shop/")()(tree);
  const link = (tree.children[0] as Element).children[1] as Element;
  expect(link.properties).toEqual({ className: ["term"], href: "/shop/glossary/#bend-line" });
});

test("no terms, no change", () => {
  const tree: Root = { type: "root", children: [h("p", "A bend line.")] };
  rehypeGlossary([])()(tree, {});
  expect(shown(tree)).toBe("A bend line.");
});
