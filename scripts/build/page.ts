import { createHash } from "node:crypto";
import { type DefaultTreeAdapterTypes, parse } from "parse5";
import { policy } from "./policy.ts";

type Node = DefaultTreeAdapterTypes.ChildNode | DefaultTreeAdapterTypes.Document | DefaultTreeAdapterTypes.DocumentFragment;
type Element = DefaultTreeAdapterTypes.Element;

/** A piece of the page's text to be replaced. Replacing pieces leaves everything else byte for byte as Astro wrote it. */
interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface Page {
  /** Style declarations that became classes, such as `height:0.6833em`. */
  readonly declarations: ReadonlySet<string>;
  /** What the content security policy would block, in words. */
  readonly problems: readonly string[];
  readonly hasSearchText: boolean;
  /** @param sheet - address of the style sheet of the declarations */
  rewrite(sheet: string): string;
}

/** Script elements of these types hold data, which no policy blocks. */
const dataTypes = new Set(["application/json", "application/ld+json"]);

/** Name of the class that stands for one declaration: the same in every build, so that cached pages and sheets agree. */
export function className(declaration: string): string {
  const hash = createHash("sha256").update(declaration).digest();
  return `k${hash.readUIntBE(0, 6).toString(36).padStart(10, "0").slice(-5)}`;
}

/** @throws Error when two declarations would share a class */
export function styleSheet(declarations: Iterable<string>): string {
  const rules = new Map<string, string>();
  for (const declaration of [...declarations].sort()) {
    const name = className(declaration);
    if (rules.has(name)) throw new Error(`Two declarations share the class ${name}: lengthen it in scripts/build/page.ts`);
    // A style attribute outranks every selector; so must the class that replaces it.
    rules.set(name, `.${name}{${declaration}!important}`);
  }
  return [...rules.values()].join("\n");
}

function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find((attr) => attr.name === name)?.value;
}

function hasClass(element: Element, name: string): boolean {
  return (attribute(element, "class") ?? "").split(/\s+/).includes(name);
}

function describe(element: Element): string {
  const own = ["id", "class"].flatMap((name) => {
    const value = attribute(element, name);
    return value ? [` ${name}="${value}"`] : [];
  });
  return `<${element.tagName}${own.join("")}>`;
}

function splitDeclarations(style: string): string[] {
  return style
    .split(";")
    .map((declaration) => declaration.trim())
    .filter((declaration) => declaration !== "");
}

/** @param edits - must not overlap */
function applyEdits(text: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let done = 0;
  for (const { start, end, text: put } of [...edits].sort((a, b) => a.start - b.start)) {
    pieces.push(text.slice(done, start), put);
    done = end;
  }
  return pieces.join("") + text.slice(done);
}

/** Reads one built page, so that it can be given its policy and classes in place of KaTeX's style attributes. */
export function readPage(html: string): Page {
  const edits: Edit[] = [];
  const problems: string[] = [];
  const declarations = new Set<string>();
  let headStart: number | undefined;
  let charsetEnd: number | undefined;
  let hasSearchText = false;

  function replaceStyle(element: Element, style: string): void {
    const places = element.sourceCodeLocation?.attrs ?? {};
    const place = places.style;
    if (!place) return;
    const found = splitDeclarations(style);
    for (const declaration of found) declarations.add(declaration);
    const names = found.map(className).join(" ");
    const classes = attribute(element, "class");
    const classPlace = places.class;
    if (classes !== undefined && classPlace) {
      edits.push({ start: classPlace.startOffset, end: classPlace.endOffset, text: `class="${classes} ${names}"` });
      edits.push({ start: html.slice(0, place.startOffset).trimEnd().length, end: place.endOffset, text: "" });
    } else edits.push({ start: place.startOffset, end: place.endOffset, text: `class="${names}"` });
  }

  function readElement(element: Element, inEquation: boolean): void {
    const { tagName } = element;
    const place = element.sourceCodeLocation;
    if (tagName === "head") headStart = place?.startTag?.endOffset;
    if (tagName === "meta" && attribute(element, "charset") !== undefined) charsetEnd = place?.endOffset;
    if (tagName === "annotation" && place) edits.push({ start: place.startOffset, end: place.endOffset, text: "" });
    if (tagName === "style") problems.push(`inline style sheet ${describe(element)}`);
    if (tagName === "script" && attribute(element, "src") === undefined && !dataTypes.has(attribute(element, "type") ?? ""))
      problems.push(`inline script ${describe(element)}`);
    for (const { name, value } of element.attrs) {
      if (name === "data-pagefind-body") hasSearchText = true;
      if (/^on/.test(name)) problems.push(`${name} attribute on ${describe(element)}`);
      if (/^\s*javascript:/i.test(value)) problems.push(`${name}="${value}" on ${describe(element)}`);
      if (name !== "style") continue;
      if (inEquation) replaceStyle(element, value);
      else problems.push(`style="${value}" on ${describe(element)}`);
    }
  }

  function walk(node: Node, inEquation: boolean): void {
    if ("tagName" in node) readElement(node, inEquation);
    const within = inEquation || ("tagName" in node && hasClass(node, "katex"));
    if ("content" in node) walk(node.content, within);
    // What is left out is left out with all that is in it: edits must not overlap.
    if ("childNodes" in node && node.nodeName !== "annotation") for (const child of node.childNodes) walk(child, within);
  }

  // Without scripting, the parser also looks into noscript elements.
  walk(parse(html, { sourceCodeLocationInfo: true, scriptingEnabled: false }), false);
  const headPlace = charsetEnd ?? headStart;
  if (headPlace === undefined) problems.push("no head element");

  return {
    declarations,
    problems,
    hasSearchText,
    rewrite(sheet) {
      const meta = `<meta http-equiv="Content-Security-Policy" content="${policy}">`;
      const link = declarations.size > 0 ? `<link rel="stylesheet" href="${sheet}">` : "";
      return applyEdits(html, [...edits, { start: headPlace ?? 0, end: headPlace ?? 0, text: meta + link }]);
    },
  };
}
