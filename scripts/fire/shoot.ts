import type { Catalogue } from "../../src/lib/catalogue.ts";
import { InputError } from "../../src/lib/input-error.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { runWorksheet, type Worksheet } from "../../src/lib/worksheet.ts";
import { drawFrom } from "./draw.ts";
import { faultsOf, type Knowledge } from "./faults.ts";
import { anyForm, type Manner } from "./forms.ts";
import { startsOf } from "./starts.ts";

export interface Report {
  readonly id: string;
  readonly calls: number;
  readonly answered: number;
  /** Of the processor in the calculator alone [ms]. */
  readonly time: number;
  /** The slowest call [ms], and what it was given. */
  readonly slowest: number;
  readonly slowestForm: Raw;
  /** One of each kind, with the first form that shows it and how often it came up. */
  readonly faults: readonly { readonly what: string; readonly raw: Raw; readonly times: number }[];
}

const manners: readonly Manner[] = ["near", "near", "inside", "inside", "slip", "wild"];

/** Processor time of this thread [ms]; what others do on the machine does not count. */
function busy(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

/** Fires so many forms at one calculator. */
export function shoot(sheet: Worksheet, calls: number, seed: number, catalogue: Catalogue, knows: Knowledge): Report {
  const draw = drawFrom(seed);
  const faults = new Map<string, { what: string; raw: Raw; times: number }>();
  const note = (what: string, raw: Raw) => {
    // The same fault with other numbers in it is the same.
    const kind = what.replace(/-?\d+(\.\d+)?(e[-+]?\d+)?/g, "#").slice(0, 120);
    const known = faults.get(kind);
    if (known) known.times++;
    else faults.set(kind, { what, raw, times: 1 });
  };
  let [answered, time, slowest] = [0, 0, 0];
  let slowestForm: Raw = {};
  for (let call = 0; call < calls; call++) {
    let raw: Raw = {};
    try {
      raw = anyForm(sheet.inputs, draw.of(manners), draw, startsOf(sheet));
      const start = busy();
      const result = runWorksheet(sheet, raw, catalogue);
      const took = busy() - start;
      time += took;
      // The first calls are slow because the engine still learns the code.
      if (took > slowest && call >= 20) [slowest, slowestForm] = [took, raw];
      if (result.answer) answered++;
      for (const what of faultsOf(sheet, raw, result, knows)) note(what, raw);
    } catch (error) {
      note(error instanceof InputError ? `not caught: ${error.message}` : `threw ${String(error)}`, raw);
    }
  }
  return { id: sheet.id, calls, answered, time, slowest, slowestForm, faults: [...faults.values()] };
}
