import { strToU8, zipSync } from "fflate";
import type { BankQuestion } from "../../lib/assign/bank.ts";
import type { Assignment } from "../../lib/assign/definition.ts";
import { qtiFiles } from "../../lib/assign/qti.ts";
import type { LengthView } from "../../lib/quantity/format.ts";

/** Every file of a package bears this day, the first that the format knows, so that the same bank is the same file. */
const sameDay = new Date(1980, 0, 1);

/** A question bank as a package of QTI files: one zip file with the manifest at its root. */
export function qtiPackage(
  assignment: Assignment,
  bank: readonly (readonly BankQuestion[])[],
  view: LengthView,
): Uint8Array<ArrayBuffer> {
  const files = qtiFiles(assignment, bank, view).map(({ path, text }) => [path, strToU8(text)] as const);
  return zipSync(Object.fromEntries(files), { level: 9, mtime: sameDay }) as Uint8Array<ArrayBuffer>;
}
