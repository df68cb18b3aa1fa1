/** A piece of an excerpt; `marked`: it is what was searched for. */
export interface Piece {
  readonly text: string;
  readonly marked: boolean;
}

const entities: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'", nbsp: "\u00a0" };

function decode(text: string): string {
  return text.replace(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (whole, hex?: string, decimal?: string, name?: string) => {
    if (name !== undefined) return entities[name] ?? whole;
    const code = hex !== undefined ? Number.parseInt(hex, 16) : Number(decimal);
    return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}

/** Takes an excerpt of the search index, in which `<mark>` is the only element, apart into plain text. */
export function excerptPieces(excerpt: string): Piece[] {
  return excerpt
    .split(/(<mark>.*?<\/mark>)/s)
    .filter((part) => part !== "")
    .map((part) => {
      const marked = part.startsWith("<mark>");
      return { text: decode(marked ? part.slice("<mark>".length, -"</mark>".length) : part), marked };
    });
}

/** The part of what Pagefind gives for a hit that is used here. */
export interface Found {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: Readonly<Record<string, string | undefined>>;
  readonly sub_results: readonly Place[];
}

interface Place {
  readonly title: string;
  readonly url: string;
  readonly excerpt: string;
  readonly weighted_locations: readonly { readonly balanced_score: number }[];
}

export interface Hit {
  readonly title: string;
  /** Heading on the page, where the hit is below one. */
  readonly section?: string;
  readonly address: string;
  readonly excerpt: readonly Piece[];
}

function weight(place: Place): number {
  return place.weighted_locations.reduce((sum, { balanced_score }) => sum + balanced_score, 0);
}

/** Leads to the part of the page that fits best, not only to its top. */
export function toHit({ url, excerpt, meta, sub_results }: Found): Hit {
  const title = meta.title ?? url;
  const best = sub_results.reduce<Place | undefined>((a, b) => (a && weight(a) >= weight(b) ? a : b), undefined);
  if (!best?.url.includes("#")) return { title, address: url, excerpt: excerptPieces(excerpt) };
  return { title, section: best.title, address: best.url, excerpt: excerptPieces(best.excerpt) };
}
