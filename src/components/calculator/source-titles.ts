import type { Source } from "../../lib/catalogue.ts";

/** Names of sources, by id, as they stand at a row or a remark: the title up to its first comma or colon. */
export type SourceTitles = Readonly<Record<string, string>>;

/** @param wanted - ids; those that are no source are passed over */
export function shortTitles(sources: Readonly<Record<string, Source>>, wanted: Iterable<string>): SourceTitles {
  return Object.fromEntries(
    [...wanted].flatMap((id) => {
      const title = sources[id]?.title.split(/[,:;]/)[0];
      return title === undefined ? [] : [[id, title]];
    }),
  );
}
