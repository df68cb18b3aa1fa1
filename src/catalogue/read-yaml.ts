import { type Document, isMap, isScalar, isSeq, LineCounter, type ParsedNode, parseDocument, visit } from "yaml";
import type { z } from "zod";

type Path = readonly PropertyKey[];

/** One mistake in a data file. */
export interface Fault {
  readonly file: string;
  readonly line: number;
  /** `brake.rating.thickness`; empty when the file could not be read at all */
  readonly path: string;
  readonly message: string;
}

export function faultText({ file, line, path, message }: Fault): string {
  return `${file}:${line} ${path === "" ? "" : `${path}: `}${message}`;
}

/** Every mistake found in the data files at once, one a line. */
export class DataError extends Error {
  override name = "DataError";
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(faults.map(faultText).join("\n"));
    this.faults = faults;
  }
}

/** A data file that was parsed: its value, and the means to say where in it something is wrong. */
export interface DataFile<T> {
  /** Missing when a fault was reported. */
  readonly data?: T;
  fault(path: Path, message: string): void;
}

const shownWords = (value: unknown) => {
  const text = typeof value === "string" ? value : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
};

const kindNames: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  boolean: "true or false",
  object: "a group of `name: value` lines",
  record: "a group of `name: value` lines",
  array: "a list",
  tuple: "a list",
};

/** Words for the mistakes zod finds that our own schemas have not worded. */
function wording(issue: z.core.$ZodRawIssue): string | undefined {
  if (issue.input === undefined && issue.code !== "unrecognized_keys") return "is missing";
  if (issue.input === null && issue.code !== "custom") return "is empty";
  switch (issue.code) {
    case "invalid_type":
      return `${shownWords(issue.input)}; it must be ${kindNames[issue.expected] ?? issue.expected}`;
    case "invalid_value":
      return `${shownWords(issue.input)}; allowed is ${issue.values.join(", ")}`;
    case "unrecognized_keys":
      return "is not a name that is known here";
    case "too_small":
    case "too_big":
      if (issue.origin === "array" && Array.isArray(issue.input))
        return `has ${issue.input.length} entries; allowed is ${issue.code === "too_small" ? `${issue.minimum} or more` : `up to ${issue.maximum}`}`;
      if (issue.origin === "string") return "is empty";
      return undefined;
    case "invalid_key":
      return "this name is not allowed; use lower-case letters, digits and hyphens";
    default:
      return undefined;
  }
}

/** Line of the entry at a path, or of the nearest thing around it when it is missing. */
function lineOf(doc: Document.Parsed, lines: LineCounter, path: Path): number {
  let node: ParsedNode | null = doc.contents;
  let offset = node?.range[0] ?? 0;
  for (const part of path) {
    if (isMap(node)) {
      const pair: { key: unknown; value: unknown } | undefined = node.items.find(
        ({ key }) => isScalar(key) && String(key.value) === String(part),
      );
      if (!pair) break;
      offset = (pair.key as ParsedNode).range[0];
      node = pair.value as ParsedNode | null;
    } else if (isSeq(node)) {
      const item: ParsedNode | undefined = node.items[Number(part)];
      if (!item) break;
      offset = item.range[0];
      node = item;
    } else break;
  }
  return lines.linePos(offset).line;
}

const pathText = (path: Path) => path.map(String).join(".");

const syntaxMessages: Readonly<Record<string, (word: string, message: string) => string>> = {
  DUPLICATE_KEY: (word) => `“${word}” is there twice`,
  TAB_AS_INDENT: () => "the line is indented with a tab; use spaces",
  BAD_INDENT: () => "the indentation does not fit the lines around it, or a closing bracket is missing",
  BLOCK_AS_IMPLICIT_KEY: () =>
    "the line has a colon too many, or an opening bracket or quote is missing; put text with a colon in quotes",
  MULTILINE_IMPLICIT_KEY: () => "the colon after the name is missing",
  MISSING_CHAR: (_, message) =>
    message.includes("quote") ? "a closing quote is missing in this line or one above it" : "the colon after the name is missing",
};

/** A data file whose syntax is right. */
export interface ParsedFile {
  readonly value: unknown;
  fault(path: Path, message: string): void;
}

/**
 * Parses one data file. Mistakes of syntax are added to `faults`; there is no value then.
 *
 * @param file - name to show in messages
 * @param text - contents
 * @param faults - list that mistakes are added to, also those that are found in the value later
 */
export function parseYaml(file: string, text: string, faults: Fault[]): Partial<ParsedFile> & Pick<ParsedFile, "fault"> {
  const lines = new LineCounter();
  const doc = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const fault = (path: Path, message: string) =>
    void faults.push({ file, line: lineOf(doc, lines, path), path: pathText(path), message });

  const broken = [...doc.errors, ...doc.warnings];
  if (broken.length === 0) {
    let alias: number | undefined;
    visit(doc, {
      Alias(_, node) {
        alias = node.range?.[0];
        return visit.BREAK;
      },
    });
    if (alias === undefined) return { value: doc.toJS() ?? null, fault };
    // These files have no use for references to other lines, and one to nowhere cannot be read.
    faults.push({
      file,
      line: lines.linePos(alias).line,
      path: "",
      message: "an asterisk stands before a word; put it in quotes",
    });
    return { fault };
  }
  const twice = broken.filter(({ code }) => code === "DUPLICATE_KEY");
  // One syntax error makes the parser stumble over many lines below it: only the first says something.
  const first = broken.find(({ code }) => code !== "DUPLICATE_KEY");
  for (const { code, message, pos } of first ? [...twice, first] : twice) {
    const word = /^[^\s:,{}[\]]+/.exec(text.slice(pos[0]))?.[0] ?? "";
    const words = syntaxMessages[code]?.(word, message) ?? message;
    faults.push({ file, line: lines.linePos(pos[0]).line, path: "", message: words });
  }
  return { fault };
}

/** Parses one data file and checks it against its schema. Mistakes are added to `faults`, all of them at once. */
export function readYaml<T>(file: string, text: string, schema: z.ZodType<T>, faults: Fault[]): DataFile<T> {
  const { value, fault } = parseYaml(file, text, faults);
  if (value === undefined) return { fault };
  const result = schema.safeParse(value, { error: wording });
  if (result.success) return { data: result.data, fault };
  for (const issue of result.error.issues) {
    if (issue.code === "unrecognized_keys") for (const key of issue.keys) fault([...issue.path, key], issue.message);
    else fault(issue.path, issue.message);
  }
  return { fault };
}
