import type { Element, Root } from "hast";
import { visit } from "unist-util-visit";

/** Puts the path the site is published under before links and pictures written in Markdown, which cannot call `url()`. */
export function rehypeBase(base: string) {
  const prefix = base.replace(/\/$/, "");
  return () => (tree: Root) => {
    visit(tree, "element", (node: Element) => {
      for (const name of ["href", "src"]) {
        const value = node.properties[name];
        if (typeof value === "string" && /^\/(?!\/)/.test(value)) node.properties[name] = prefix + value;
      }
    });
  };
}
