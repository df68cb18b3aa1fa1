import type { Term } from "../../site/glossary.ts";
import { useTexts } from "../../texts/context.ts";
import { glossaryDrawings } from "../../texts/en/glossary-drawings.ts";
import { reference } from "../../texts/en/reference.ts";
import { drawings } from "./drawings.ts";
import { Sketch } from "./sketch.tsx";

/** The drawing of a term, with the part marked that the word stands for. */
export function TermDrawing({ term: { term, drawing } }: { term: Pick<Term, "term" | "drawing"> }) {
  const texts = useTexts(reference).glossary;
  const words = useTexts(glossaryDrawings);
  const kind = drawings[drawing];
  if (!kind) throw new Error(`There is no drawing “${drawing}” for ${term}. There are ${Object.keys(drawings).join(", ")}.`);
  return <Sketch label={texts.marked(words.about[kind.about], term)}>{kind.draw(words.labels)}</Sketch>;
}
