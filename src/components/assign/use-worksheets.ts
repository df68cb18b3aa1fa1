import { useEffect, useState } from "preact/hooks";
import type { WorksheetOf } from "../../lib/assign/own-question.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import { loadSheet } from "../task/load-sheets.ts";

export interface Worksheets {
  readonly worksheetOf: WorksheetOf;
  /** Some are still on their way. */
  readonly waiting: boolean;
}

/** The calculators that an assignment asks with, fetched as they are needed. */
export function useWorksheets(ids: readonly string[]): Worksheets {
  const [found, setFound] = useState<ReadonlyMap<string, Worksheet | undefined>>(new Map());
  const missing = [...new Set(ids)].filter((id) => !found.has(id));
  const wanted = missing.join("\n");
  useEffect(() => {
    if (wanted === "") return;
    for (const id of wanted.split("\n"))
      loadSheet(id).then((loaded) => setFound((before) => new Map(before).set(id, loaded?.sheet)));
  }, [wanted]);
  return { worksheetOf: (id) => found.get(id), waiting: missing.length > 0 };
}
