/** Attributes in the order given; one that is undefined is left out. */
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** XML that is ready to be written, as opposed to text that has to be escaped. */
export interface Xml {
  readonly xml: string;
}

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&apos;" };

/** Characters that XML 1.0 allows nowhere, escaped or not, or discourages (section 2.2 of the recommendation). */
const forbidden = /(?![\t\n])\p{Cc}|[\ufffe\uffff]|\p{Surrogate}/gu;

/** Text as it stands between tags or in an attribute; what XML cannot hold becomes the replacement character. */
export function escapeXml(text: string): string {
  // A reader of the file would take every line end for \n.
  return text
    .replace(/\r\n?/g, "\n")
    .replace(forbidden, "\ufffd")
    .replace(/[&<>"']/g, (sign) => entities[sign] as string);
}

/** An attribute's text: line ends and tabs are spaces there, as a reader of the file would make them. */
const attributeText = (text: string) => escapeXml(text.replace(/[\t\r\n]+/g, " "));

/** An element. Children that are strings are escaped; names are the caller's own and are not. */
export function element(name: string, attributes: Attributes = {}, children: readonly (Xml | string)[] = []): Xml {
  const listed = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${attributeText(String(value))}"`)
    .join("");
  const inner = children.map((child) => (typeof child === "string" ? escapeXml(child) : child.xml)).join("");
  return { xml: inner === "" ? `<${name}${listed}/>` : `<${name}${listed}>${inner}</${name}>` };
}

/** A whole file. */
export const xmlFile = (root: Xml): string => `<?xml version="1.0" encoding="UTF-8"?>\n${root.xml}\n`;
