import type { Catalogue } from "../lib/catalogue.ts";
import { checkFiles, type NamedCheckFile } from "./files.ts";
import { type Outcome, runCheck, type Tally, tally } from "./run.ts";

export interface CheckedFile extends NamedCheckFile {
  readonly outcomes: readonly Outcome[];
  readonly counts: Tally;
}

/** Every file of published checks with what comes out of it, the one that proves most first. */
export function checkedFiles(catalogue: Catalogue): CheckedFile[] {
  return checkFiles
    .map((file) => {
      const outcomes = file.checks.map((check) => runCheck(check, catalogue));
      return { ...file, outcomes, counts: tally(outcomes) };
    })
    .sort((one, other) => other.counts.proof - one.counts.proof);
}
