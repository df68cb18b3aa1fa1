/** A node of a file as the tests read it: names, attributes and text, entities resolved. */
export interface Node {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Node[];
  /** All text below, in order. */
  readonly text: string;
}

const named: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

function resolved(text: string): string {
  if (/(?![\t\r\n])\p{Cc}|[<\ufffe\uffff]|\p{Surrogate}/u.test(text)) throw new Error(`not XML: ${JSON.stringify(text)}`);
  return text.replace(/&(?:(\w+);|)/g, (whole, name: string | undefined) => {
    const sign = name === undefined ? undefined : named[name];
    if (sign === undefined) throw new Error(`not an entity: ${whole}`);
    return sign;
  });
}

/**
 * Reads the part of XML 1.0 that the exports use, strictly, and shares no code with what writes it.
 * @throws Error for anything that is not well-formed
 */
export function readXml(file: string): Node {
  let at = 0;
  const take = (pattern: RegExp): RegExpExecArray | undefined => {
    const found = new RegExp(pattern.source, `${pattern.flags}y`);
    found.lastIndex = at;
    const match = found.exec(file);
    if (match) at = found.lastIndex;
    return match ?? undefined;
  };
  const need = (pattern: RegExp): RegExpExecArray => {
    const match = take(pattern);
    if (!match) throw new Error(`at ${at}, ${pattern} is missing: ${JSON.stringify(file.slice(at, at + 60))}`);
    return match;
  };
  const node = (): Node => {
    const [, name = ""] = need(/<([A-Za-z_][\w.:-]*)/);
    const attributes: Record<string, string> = {};
    for (let found = take(/\s+([A-Za-z_][\w.:-]*)="([^"<]*)"/); found; found = take(/\s+([A-Za-z_][\w.:-]*)="([^"<]*)"/)) {
      const [, key = "", text = ""] = found;
      if (Object.hasOwn(attributes, key)) throw new Error(`${key} stands twice in ${name}`);
      attributes[key] = resolved(text);
    }
    if (take(/\/>/)) return { name, attributes, children: [], text: "" };
    need(/>/);
    const children: Node[] = [];
    let text = "";
    while (!take(new RegExp(`</${name}>`))) {
      const [plain = ""] = take(/[^<]+/) ?? [];
      text += resolved(plain);
      if (plain === "") {
        const child = node();
        children.push(child);
        text += child.text;
      }
    }
    return { name, attributes, children, text };
  };
  need(/<\?xml version="1\.0" encoding="UTF-8"\?>\n/);
  const root = node();
  need(/\s*$/);
  return root;
}

/** Every node below and itself. */
export function* everyNode(node: Node): Generator<Node> {
  yield node;
  for (const child of node.children) yield* everyNode(child);
}
