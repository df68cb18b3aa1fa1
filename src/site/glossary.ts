import { readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { projectFolder } from "../catalogue/load.ts";
import { DataError, type Fault, readYaml } from "../catalogue/read-yaml.ts";
import { type Trade, trades } from "../lib/catalogue.ts";

/** A word of the trade. What its fields are for stands at the head of the file. */
export interface Term {
  readonly id: string;
  readonly term: string;
  readonly also: readonly string[];
  readonly names: readonly string[];
  readonly meaning: string;
  readonly drawing: string;
  readonly trade: Trade | "metal";
  readonly within?: readonly Trade[];
  readonly unlinked: boolean;
}

const file = "src/content/glossary.yaml";
const words = z.string().trim().min(2);

const schema = z.record(
  z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  z.strictObject({
    term: words,
    also: z.array(words).default([]),
    names: z.array(words).default([]),
    meaning: z
      .string()
      .trim()
      .regex(/^[A-Z][^.!?]+\.$/, { error: "must be one sentence with its full stop" }),
    drawing: z.string().regex(/^[a-z]+\.[a-zA-Z]+$/, { error: "must be family and part of a drawing, like bend.apex" }),
    trade: z.enum([...trades, "metal"]),
    within: z.array(z.enum(trades)).min(1).optional(),
    unlinked: z.boolean().default(false),
  }),
);

/** Everything a page may write for a term, in small letters. */
export const phrasesOf = ({ term, also, names }: Term) => [term, ...also, ...names].map((phrase) => phrase.toLowerCase());

/**
 * The terms from the text of their file, in the order of the alphabet.
 * @throws DataError listing every mistake, with its line
 */
export function readGlossary(text: string): Term[] {
  const faults: Fault[] = [];
  const { data, fault } = readYaml(file, text, schema, faults);
  const terms = Object.entries(data ?? {}).map(([id, entry]) => ({ id, ...entry }));
  const owners = new Map<string, string>();
  for (const term of terms)
    for (const phrase of new Set(phrasesOf(term))) {
      const owner = owners.get(phrase);
      if (owner) fault([term.id], `“${phrase}” is a word for ${owner} already`);
      owners.set(phrase, term.id);
    }
  if (faults.length > 0) throw new DataError(faults);
  return terms.sort((one, other) => one.term.localeCompare(other.term, "en"));
}

let loaded: Term[] | undefined;

/** The glossary of this site, read once. @throws DataError listing every mistake in its file */
export function loadGlossary(): readonly Term[] {
  loaded ??= readGlossary(readFileSync(join(projectFolder(), file), "utf8"));
  return loaded;
}
