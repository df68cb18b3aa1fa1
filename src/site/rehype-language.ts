import type { Element, Root } from "hast";
import { visit } from "unist-util-visit";
import type { LanguageCode } from "../texts/language.ts";
import { pathIn } from "../texts/paths.ts";

interface Options {
  /** The language of a page by the path of its file. */
  readonly codeOf: (file: string | undefined) => LanguageCode;
  /** English paths of the pages that there are in a language. */
  readonly pagesIn: (code: LanguageCode) => ReadonlySet<string>;
  /** What stands behind a link that leads to an English page, by the language of the page it stands on. */
  readonly inEnglish: (code: LanguageCode) => string;
}

/**
 * Links in Markdown are written with the English paths. On a page in another language they lead to the page in that language
 * where there is one; elsewhere they say that they lead to an English page.
 */
export function rehypeLanguage({ codeOf, pagesIn, inEnglish }: Options) {
  return () => (tree: Root, file: { readonly path?: string }) => {
    const code = codeOf(file.path);
    if (code === "en") return;
    const there = pagesIn(code);
    visit(tree, "element", (node: Element) => {
      const { href } = node.properties;
      if (node.tagName !== "a" || typeof href !== "string" || !/^\/(?!\/)/.test(href)) return;
      const [, path = "", rest = ""] = /^([^?#]*)(.*)$/.exec(href) ?? [];
      if (there.has(path)) {
        node.properties.href = pathIn(code, path) + rest;
        return;
      }
      node.properties.hrefLang = "en";
      node.children.push({ type: "text", value: ` ${inEnglish(code)}` });
    });
  };
}
