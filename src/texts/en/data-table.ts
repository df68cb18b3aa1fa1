/** What stands around a table of the handbook, and what its tools say; the tables themselves are content. */
export const dataTable = {
  show: "Show",
  every: (group: string) => `every ${group}, side by side`,
  find: "Only rows with",
  copy: "Copy",
  save: "Save as CSV",
  saveShown: (shown: number) => `Save ${shown} rows as CSV`,
  rows: (all: number) => `${all} rows`,
  someRows: (shown: number, all: number) => `${shown} of ${all} rows`,
  copied: (rows: string) => `Copied ${rows}`,
  copiedHoles: (holes: number) => `Copied ${holes} holes`,
  selected: "Selected: copy with Ctrl+C",
  source: "Source",
  sourceOf: "Source:",
  sources: "Sources of this table",
  /** Before the letter of a mark, for ears. */
  mark: "source",
  seen: { read: "read", memory: "from memory", practice: "no document" },
  /** Behind the letter of a mark: short, since it stands under a number of a narrow column. */
  markSeen: { read: "", memory: ", memory", practice: ", no document" },
};
