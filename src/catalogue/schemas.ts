import { z } from "zod";
import {
  type MaterialId,
  materialFamilies,
  materialIds,
  type ToleranceClass,
  toleranceClasses,
  trades,
} from "../lib/catalogue.ts";
import { ParseError, parseQuantity } from "../lib/quantity/parse.ts";
import { toBase } from "../lib/quantity/units.ts";

/** A group of named values in which every name must be known; the message lists the names that are. */
function group<const S extends z.core.$ZodLooseShape>(shape: S) {
  const names = Object.keys(shape).join(", ");
  return z.strictObject(shape, {
    error: (issue) => (issue.code === "unrecognized_keys" ? `is not a name that is known here; known are ${names}` : undefined),
  });
}

function entries<S extends z.ZodType>(entry: S) {
  return z.record(z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/), entry);
}

const words = z.string().trim().min(1);
const seen = z.enum(["read", "memory", "practice"]);
const cited = { source: words, seen, note: words.optional() };

function number(min: number, max: number, unit = "") {
  const show = (value: number) => (unit === "" ? `${value}` : `${value} ${unit}`);
  return z.number().refine((value) => value >= min && value <= max, {
    error: ({ input }) => outside(show(Number(input)), show(min), show(max)),
  });
}

const outside = (given: string, min: string, max: string) => `${given}; allowed is ${min} to ${max}`;
/** `none` stands for "the standard gives no value", so that an empty cell is still a mistake. */
const none = z.literal("none").transform(() => null);

const increasing = (values: readonly (number | null)[]) =>
  values.every((value, i) => i === 0 || (values[i - 1] ?? Number.POSITIVE_INFINITY) < (value ?? Number.POSITIVE_INFINITY));
const edges = <S extends z.ZodType<number | null>>(edge: S) =>
  z.array(edge).min(1).refine(increasing, { error: "must grow from each entry to the next" });

// ---- sources, cautions ----

export const sourcesSchema = entries(
  group({
    title: words,
    edition: words.optional(),
    where: words.optional(),
    address: z.url({ protocol: /^https?$/, error: "must be a web address" }).optional(),
    seen,
    note: words.optional(),
  }),
);

export const cautionsSchema = entries(
  group({
    title: words,
    text: words,
    ask: words.optional(),
    appliesTo: z.array(z.enum([...trades, "all"])).min(1),
    source: words,
    seen,
  }),
);

// ---- materials ----

function mustLieInBand(value: number, low: number, high: number, check: z.core.$RefinementCtx, path: string): void {
  if (low > value || high < value)
    check.addIssue({ code: "custom", path: [path], message: `${value}; must lie in its band, ${low} to ${high}` });
}

function property(min: number, max: number, unit: string) {
  return group({
    value: number(min, max, unit),
    low: number(min, max, unit).optional(),
    high: number(min, max, unit).optional(),
    basis: words,
    printed: words.optional(),
    ...cited,
  }).superRefine(({ value, low = value, high = value }, check) => mustLieInBand(value, low, high, check, "value"));
}

const smallestRadius = z.discriminatedUnion(
  "by",
  [
    group({ by: z.literal("tensile-class") }),
    group({ by: z.literal("alloy-table"), row: words }),
    group({ by: z.literal("ratio-band"), use: number(0, 20), low: number(0, 20), high: number(0, 20), ...cited }).superRefine(
      ({ use, low, high }, check) => mustLieInBand(use, low, high, check, "use"),
    ),
  ],
  { error: "must be tensile-class, alloy-table or ratio-band" },
);

const material = group({
  name: words,
  family: z.enum(materialFamilies),
  coated: z.boolean().optional(),
  gaugeSystem: words.optional(),
  thicknessTolerance: words.optional(),
  density: property(1000, 25000, "kg/m³"),
  elasticModulus: property(10000, 500000, "N/mm²"),
  yield: property(10, 3000, "N/mm²"),
  tensileStrength: property(20, 4000, "N/mm²"),
  shearStrength: property(10, 3000, "N/mm²"),
  areaReduction: property(1, 95, "%").optional(),
  smallestRadius,
}).refine((each) => each.yield.value < each.tensileStrength.value, {
  path: ["yield", "value"],
  error: "must be below the tensile strength",
});

export const materialsSchema = group(
  Object.fromEntries(materialIds.map((id) => [id, material])) as Record<MaterialId, typeof material>,
);

// ---- gauges ----

const gaugeNumber = z
  .union([z.number(), z.string()])
  .transform(String)
  .refine((text) => /^(\d{1,2}|\d\/0)$/.test(text), { error: "must be a number like 16 or 2/0" });
const thinnestFirst = (gauge: string) => (gauge.endsWith("/0") ? 1 - Number(gauge.slice(0, -2)) : Number(gauge));

export const gaugesSchema = entries(
  group({
    name: words,
    for: words,
    rule: words.optional(),
    ...cited,
    rows: z
      .array(
        z.union([z.tuple([gaugeNumber, number(0.001, 1, "in")]), z.tuple([gaugeNumber, number(0.001, 1, "in"), seen])], {
          error: "must be [number, inches] or [number, inches, seen] with inches from 0.001 to 1",
        }),
      )
      .min(1)
      .superRefine((rows, check) => {
        rows.forEach(([gauge, inches], i) => {
          const before = rows[i - 1];
          if (before && !(thinnestFirst(gauge) > thinnestFirst(before[0]) && inches < before[1]))
            check.addIssue({
              code: "custom",
              path: [i],
              message: `[${gauge}, ${inches}] must have a higher number and be thinner than [${before[0]}, ${before[1]}] before it`,
            });
        });
      }),
  }).transform(({ seen: usual, ...system }) => ({
    ...system,
    rows: system.rows.map(([gauge, inches, own]) => ({ gauge, inches, seen: own ?? usual })),
  })),
);

// ---- tables ----

const band = { above: number(0, 1000), upTo: number(0, 1000) };
const contiguous = (
  bands: readonly { readonly above: number; readonly upTo: number }[],
  check: z.core.$RefinementCtx,
  path: PropertyKey,
) => {
  bands.forEach(({ above, upTo }, i) => {
    const before = bands[i - 1];
    if (above >= upTo) check.addIssue({ code: "custom", path: [path, i], message: `above ${above} is not below upTo ${upTo}` });
    if (before && before.upTo !== above)
      check.addIssue({
        code: "custom",
        path: [path, i],
        message: `begins at ${above}, but the band before ends at ${before.upTo}`,
      });
  });
};
const sameLength = (
  cells: readonly unknown[],
  columns: readonly unknown[],
  check: z.core.$RefinementCtx,
  path: PropertyKey[],
) => {
  if (cells.length !== columns.length)
    check.addIssue({ code: "custom", path, message: `has ${cells.length} cells; the table has ${columns.length} columns` });
};

export const thicknessTolerancesSchema = entries(
  group({
    name: words,
    ...cited,
    edge: z.enum(["upper", "lower"]),
    widthEdge: z.enum(["upper", "lower"]).default("upper"),
    widths: edges(z.union([number(100, 4000, "mm"), none])),
    bands: z.array(group({ ...band, tolerance: z.array(number(0.005, 1, "mm")) })).min(1),
  }).superRefine(({ widths, bands }, check) => {
    contiguous(bands, check, "bands");
    for (const [i, { tolerance }] of bands.entries()) sameLength(tolerance, widths, check, ["bands", i, "tolerance"]);
  }),
);

const inchFraction = words.transform((text, check) => {
  try {
    return parseQuantity(text, "ratio").value;
  } catch (error) {
    if (!(error instanceof ParseError)) throw error;
    check.addIssue({ code: "custom", message: error.message });
    return z.NEVER;
  }
});

export const smallestRadiiSchema = group({
  strength: group({
    ...cited,
    thickness: edges(number(0.1, 50, "mm")),
    classes: z.array(group({ ...band, radius: z.array(number(0, 200, "mm")) })).min(1),
  }).superRefine(({ thickness, classes }, check) => {
    contiguous(classes, check, "classes");
    for (const [i, { radius }] of classes.entries()) sameLength(radius, thickness, check, ["classes", i, "radius"]);
  }),
  alloy: group({
    ...cited,
    inches: edges(inchFraction),
    rows: z.record(z.string().regex(/^\d{4}-(O|[HT]\d+)$/), z.array(number(0, 20))),
  }).superRefine(({ inches: columns, rows }, check) => {
    for (const [alloy, ratios] of Object.entries(rows)) sameLength(ratios, columns, check, ["rows", alloy]);
  }),
}).transform(({ strength, alloy }) => ({
  radiusByStrength: strength,
  radiusByAlloy: { ...alloy, thickness: alloy.inches.map((inches) => toBase(inches, "length", "in")) },
}));

const byClass = <S extends z.ZodType>(cells: S) =>
  group(Object.fromEntries(toleranceClasses.map((name) => [name, cells])) as Record<(typeof toleranceClasses)[number], S>);

export const generalTolerancesSchema = group({
  linear: group({
    ...cited,
    above: number(0, 10, "mm"),
    upTo: edges(number(0, 10000, "mm")),
    classes: byClass(z.array(z.union([number(0.01, 20, "mm"), none]))),
  }).superRefine(({ upTo, classes }, check) => {
    for (const name of toleranceClasses) sameLength(classes[name], upTo, check, ["classes", name]);
  }),
  angular: group({
    ...cited,
    upTo: edges(z.union([number(0, 10000, "mm"), none])),
    minutes: byClass(z.array(number(1, 600, "minutes"))),
  }).superRefine(({ upTo, minutes }, check) => {
    for (const name of toleranceClasses) sameLength(minutes[name], upTo, check, ["minutes", name]);
  }),
}).transform(({ linear, angular: { minutes, ...angular } }) => {
  const degrees = (name: ToleranceClass) => minutes[name].map((each) => each / 60);
  return { linear, angular: { ...angular, classes: { f: degrees("f"), m: degrees("m"), c: degrees("c"), v: degrees("v") } } };
});

export const markingSchema = entries(
  group({
    name: words,
    error: number(0.005, 5, "mm"),
    reach: number(10, 10_000, "mm").optional(),
    basis: words,
    ...cited,
  }),
);
