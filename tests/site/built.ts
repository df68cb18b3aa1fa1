import { readFileSync } from "node:fs";
import { glob } from "node:fs/promises";
import { join } from "node:path";
import { type DefaultTreeAdapterTypes, parse } from "parse5";
import { inject } from "vitest";

type Node = DefaultTreeAdapterTypes.ChildNode | DefaultTreeAdapterTypes.Document | DefaultTreeAdapterTypes.DocumentFragment;
export type Element = DefaultTreeAdapterTypes.Element;

export interface Built {
  /** As in an address: `/bending/`, `/404.html`. */
  readonly path: string;
  readonly html: string;
}

/** Every page of the built site. */
export async function builtPages(): Promise<Built[]> {
  const folder = inject("folder");
  const files: string[] = [];
  for await (const file of glob("**/*.html", { cwd: folder })) files.push(file.replaceAll("\\", "/"));
  return files.sort().map((file) => ({
    path: `/${file.replace(/(?:^|(?<=\/))index\.html$/, "")}`,
    html: readFileSync(join(folder, file), "utf8"),
  }));
}

/** All elements of a page, in order. */
export function elements(html: string): Element[] {
  const found: Element[] = [];
  const visit = (node: Node): void => {
    if ("tagName" in node) found.push(node);
    if ("content" in node) visit(node.content);
    if ("childNodes" in node) node.childNodes.forEach(visit);
  };
  visit(parse(html, { scriptingEnabled: false }));
  return found;
}

export function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find((attr) => attr.name === name)?.value;
}
