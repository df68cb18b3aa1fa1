import type { Marks } from "./lighthouse.ts";
import { fileKinds, type Load } from "./measure.ts";

/** All that was measured on one page. */
export interface Measured {
  readonly path: string;
  readonly load: Load;
  readonly keptText: number;
  /** Lighthouse's, where it was asked. */
  readonly marks: readonly Marks[];
  readonly faults: readonly string[];
}

export function totalKb({ kb }: Load): number {
  return fileKinds.reduce((sum, kind) => sum + kb[kind], 0);
}
