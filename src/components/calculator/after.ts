import type { Catalogue } from "../../lib/catalogue.ts";

/** What may be done with the answer of one calculator beyond what all of them can: `src/components/after/<id>.ts`. */
export interface AfterProps {
  readonly instance: string;
  readonly values: unknown;
  readonly outputs: Readonly<Record<string, unknown>>;
  readonly catalogue: Catalogue;
  /** Path the site is published under, without a slash at its end. */
  readonly root: string;
}
