import type { Element, ElementContent, Root, Text } from "hast";
import { phrasesOf, type Term } from "./glossary.ts";

/** Blocks whose words are explained. */
const blocks = new Set(["p", "li"]);

/** What may stand around those blocks, and around words in them; the words in all else are left alone. */
const passable = new Set(["ul", "ol", "blockquote", "div", "section", "strong", "em", "b", "i"]);

/** Components of a page whose children are prose. */
const proseComponents = new Set(["Steps"]);

/** A node of the tree of an MDX page: of HTML, or a component. */
interface Node {
  readonly type: string;
  readonly tagName?: string;
  readonly name?: string | null;
  children?: Node[];
}

interface Finder {
  readonly pattern: RegExp;
  readonly termOf: ReadonlyMap<string, Term>;
}

const escaped = (phrase: string) => phrase.replace(/[.*+?^${}()|[\]\\]/g, "\\$&").replace(/ /g, "\\s+");

/** Finds the words of the terms, the longest first, so that a “centre punch” is not taken for a punch. */
function finder(terms: readonly Term[]): Finder | undefined {
  const termOf = new Map(terms.flatMap((term) => phrasesOf(term).map((phrase) => [phrase, term] as const)));
  if (termOf.size === 0) return undefined;
  const phrases = [...termOf.keys()].sort((one, other) => other.length - one.length);
  // A hyphen joins words: the “lap” of “lap-welded” is another word.
  return { pattern: new RegExp(`(?<![\\p{L}\\d-])(?:${phrases.map(escaped).join("|")})(?![\\p{L}\\d-])`, "giu"), termOf };
}

function textOf(node: Node): string {
  if (node.type === "text") return (node as Text).value;
  return (node.children ?? []).map(textOf).join("");
}

/** Technique that a page belongs to, from the path of its file. */
function techniqueOf(path: string | undefined): string | undefined {
  return /[\\/]techniques[\\/]([a-z]+)[\\/.]/.exec(path ?? "")?.[1];
}

/**
 * Makes the first use of each term on a page a link to the glossary: in paragraphs and list items, not in headings, links,
 * code, figures or calculators. The links begin at the root of the site; rehype-base puts the path of the site before them.
 *
 * @param terms - of the whole glossary; a term that is not linked, or means something else on this page, still keeps its
 *   words from being taken for a shorter term
 */
export function rehypeGlossary(terms: readonly Term[]) {
  const found = finder(terms);
  return () => (tree: Root, page: { readonly path?: string }) => {
    // The glossary is in English, and so are the words that lead to it.
    if (!found || /[\\/]techniques-\w+[\\/]/.test(page.path ?? "")) return;
    const { pattern, termOf } = found;
    const technique = techniqueOf(page.path);
    const isMeant = ({ unlinked, within }: Term) => !unlinked && (!within || within.some((each) => each === technique));
    const linked = new Set<Term>();

    function pieces(text: string, alone: string): ElementContent[] {
      const made: ElementContent[] = [];
      let end = 0;
      for (const match of text.matchAll(pattern)) {
        const [word] = match;
        const term = termOf.get(word.toLowerCase().replace(/\s+/g, " "));
        // A block that is nothing but the word would be a link too small for a finger.
        if (!term || !isMeant(term) || linked.has(term) || word === alone) continue;
        linked.add(term);
        if (match.index > end) made.push({ type: "text", value: text.slice(end, match.index) });
        made.push({
          type: "element",
          tagName: "a",
          properties: { className: ["term"], href: `/glossary/#${term.id}` },
          children: [{ type: "text", value: word }],
        });
        end = match.index + word.length;
      }
      if (end === 0) return [];
      if (end < text.length) made.push({ type: "text", value: text.slice(end) });
      return made;
    }

    function visit(node: Node, inBlock: boolean, alone: string): void {
      if (!node.children) return;
      node.children = node.children.flatMap((child): Node[] => {
        if (child.type === "text") {
          const made = inBlock ? pieces((child as Text).value, alone) : [];
          return made.length > 0 ? (made as Node[]) : [child];
        }
        const { tagName } = child as Partial<Element>;
        if (tagName !== undefined && blocks.has(tagName)) visit(child, true, textOf(child).trim());
        else if (tagName !== undefined && passable.has(tagName))
          visit(child, inBlock && !/^[uo]l$|^blockquote$/.test(tagName), alone);
        else if (child.type === "mdxJsxFlowElement" && proseComponents.has(child.name ?? "")) visit(child, false, alone);
        return [child];
      });
    }
    visit(tree as Node, false, "");
  };
}
