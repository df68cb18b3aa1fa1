import { z } from "zod";

/**
 * One file of `tests/published/`: numbers from outside this project, each beside where it comes from.
 * The tests and the page `/checked/` read the same files. Nothing our own code produced belongs in them.
 */

const amount = z.strictObject({
  value: z.number(),
  /** Unit key of the quantity table, `1` for a plain number. */
  unit: z.string(),
});

/** A value in the unit of its source, a word, or the rows of a list as they would be typed. */
const given = z.union([amount, z.string(), z.array(z.union([z.string(), z.record(z.string(), z.string())]))]);

/** What kind of evidence a check is; the words stand on the page. */
export const checkKinds = {
  "printed-value": "the number stands in the source",
  "printed-formula": "the formula stands in the source, the number was worked out from it apart from our code",
  exact: "follows from geometry or a definition alone",
  misprint: "the source prints a number known to be wrong or cut; ours has to be the right one",
  disputed: "remembered and formula disagree; shown, not counted",
} as const;
export type CheckKind = keyof typeof checkKinds;

const check = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9-]+$/),
    /** A name in `subjects.ts`, or the id of a calculator, which is then run on the inputs as typed. */
    of: z.string(),
    kind: z.enum(Object.keys(checkKinds) as [CheckKind, ...CheckKind[]]),
    /** Left out for `exact`, which has no document. */
    seen: z.enum(["read", "memory"]).optional(),
    /** Id in sources.yaml. */
    source: z.string(),
    where: z.string().optional(),
    inputs: z.record(z.string(), given),
    /** By output; a cell of a list is `turns.0.line`. */
    expected: z.record(z.string(), z.union([amount, z.string()])),
    /** In the unit of the expected value; one for all, or by output. */
    tolerance: z.union([z.number().min(0), z.record(z.string(), z.number().min(0))]),
    /** Only for `misprint`: what the source prints. */
    printed: z.record(z.string(), amount).optional(),
    /** Why the tolerance is what it is, and what else to know. */
    note: z.string().optional(),
  })
  .superRefine((each, context) => {
    const fault = (message: string) => context.addIssue({ code: "custom", message: `${each.id}: ${message}` });
    if ((each.kind === "misprint") !== (each.printed !== undefined)) fault("`printed` goes with the kind misprint");
    if ((each.kind === "exact") === (each.seen !== undefined)) fault("`seen` goes with every kind but exact");
    for (const [key, value] of Object.entries(each.expected))
      if (typeof value !== "string" && typeof each.tolerance !== "number" && each.tolerance[key] === undefined)
        fault(`no tolerance for ${key}`);
  });

export const checkFileSchema = z.strictObject({
  /** Heading of the table on the page. */
  title: z.string(),
  about: z.string(),
  checks: z.array(check).min(1),
});

export type Check = z.infer<typeof check>;
export type CheckFile = z.infer<typeof checkFileSchema>;
