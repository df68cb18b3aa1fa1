import { z } from "zod";
import { mostFingers } from "../lib/bending/finger-set.ts";
import { setback } from "../lib/bending/setback.ts";
import {
  type MaterialId,
  materialFamilies,
  materialIds,
  type ToleranceClass,
  toleranceClasses,
  trades,
  weldTimers,
} from "../lib/catalogue.ts";
import { outlinePlay } from "../lib/punching/shop-punches.ts";
import { type GaugeReader, ParseError, parseQuantity } from "../lib/quantity/parse.ts";
import { kindOf, type Quantity, toBase } from "../lib/quantity/units.ts";

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

function whole(min: number, max: number) {
  return z.number().refine((value) => Number.isInteger(value) && value >= min && value <= max, {
    error: ({ input }) => `${input}; allowed is a whole number from ${min} to ${max}`,
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

// ---- this shop ----

/** A quantity written with its unit. Gauge numbers are left as text when there is no gauge reader yet. */
function readTyped(text: string, quantity: Quantity, min: number, max: number, gauge?: GaugeReader): number | string {
  const { base, units, example } = kindOf(quantity);
  if (/^[\s\d.,/+-]*$/.test(text)) return `${text} has no unit; write it like ${example}`;
  try {
    const { value } = parseQuantity(text, quantity, { gauge });
    const show = (limit: number) => `${limit}${base === "deg" ? "" : " "}${units[base]?.text}`;
    return value >= min && value <= max ? value : outside(text, show(min), show(max));
  } catch (error) {
    if (error instanceof ParseError) return error.message;
    throw error;
  }
}

/** Numbers are let in as text so that `1.2` gets the message that its unit is missing. */
const typedText = z.union([z.string(), z.number().transform(String)], {
  error: (issue) => (issue.input == null ? undefined : "must be a quantity like 1.2 mm"),
});

function typed(quantity: Quantity, min: number, max: number) {
  return typedText.transform((text, check) => {
    const value = readTyped(text, quantity, min, max);
    if (typeof value === "number") return value;
    check.addIssue({ code: "custom", message: value });
    return z.NEVER;
  });
}

const length = (min: number, max: number) => typed("length", min, max);

/** A punch, or the opening of a die, with whatever else its line has. */
function outline<const S extends z.core.$ZodLooseShape>(rest: S) {
  const side = length(1, 150);
  return z.discriminatedUnion(
    "shape",
    [
      group({ shape: z.literal("round"), diameter: side, ...rest }),
      group({ shape: z.literal("square"), width: side, ...rest }),
      group({ shape: z.literal("rectangle"), width: side, height: side, ...rest }),
    ],
    { error: "must be round, square or rectangle" },
  );
}

const dieLetter = z.string().regex(/^[A-Z]{1,2}$/, { error: "must be one or two capital letters" });

/** Most that a die may be larger than its punch: beyond it the sheet is drawn in, not cut. */
const largestPlay = 2;

const punchSet = group({
  name: words,
  force: typed("force", 500, 2_000_000),
  throat: length(20, 2000),
  punches: z.array(outline({ die: dieLetter })).min(1),
  dies: z.array(outline({ letter: dieLetter })).min(1),
}).superRefine(({ punches, dies }, check) => {
  const fault = (path: PropertyKey[], message: string) => void check.addIssue({ code: "custom", path, message });
  dies.forEach(({ letter }, i) => {
    if (dies.findIndex((die) => die.letter === letter) < i) fault(["dies", i, "letter"], `${letter} is there twice`);
  });
  for (const [i, punch] of punches.entries()) {
    const die = dies.find(({ letter }) => letter === punch.die);
    const plays = die && outlinePlay(punch, die);
    const path = ["punches", i, "die"];
    if (!die) fault(path, `${punch.die} is not among the dies; known are ${dies.map(({ letter }) => letter).join(", ")}`);
    else if (!plays) fault(path, `${punch.die} is ${die.shape}, the punch is ${punch.shape}`);
    else if (!plays.every((play) => play > 0 && play <= largestPlay))
      fault(path, `${punch.die} must be larger than its punch, by ${largestPlay} mm at most`);
  }
});

/** The legs of a bend beyond this angle may have been measured in two ways, so its deduction cannot be judged. */
const largestJudged = 90;

/** Catches a slip of the decimal point: the bend uses up an arc between the inside and the outside face of the sheet. */
function checkDeduction(
  bend: { thickness: number; radius: number; angle: number; deduction: number },
  check: z.core.$RefinementCtx,
): void {
  const { thickness, radius, angle, deduction } = bend;
  if (angle > largestJudged) return;
  const legs = 2 * setback({ radius, thickness, angle, legTo: "apex" });
  const turned = (angle * Math.PI) / 180;
  const [least, most] = [legs - turned * (radius + thickness), legs - turned * radius];
  if (deduction >= least && deduction <= most) return;
  const limits = outside(`${deduction} mm`, `${least.toFixed(2)} mm`, `${most.toFixed(2)} mm`);
  check.addIssue({ code: "custom", path: ["deduction"], message: `${limits} for a bend of this thickness, radius and angle` });
}

/** The only file whose thicknesses may be gauge numbers, each in the system of the material on its line. */
export function shopSchema(gaugeOf: (material: MaterialId) => GaugeReader) {
  const inMaterial = <S extends z.core.$ZodLooseShape>(shape: S) =>
    group({ material: z.enum(materialIds), thickness: typedText, ...shape }).transform((row, check) => {
      const { material, thickness, ...rest } = row as unknown as { material: MaterialId; thickness: string } & z.output<
        z.ZodObject<S>
      >;
      const value = readTyped(thickness, "length", 0.3, 6, gaugeOf(material));
      if (typeof value === "number") return { material, thickness: value, ...rest };
      check.addIssue({ code: "custom", path: ["thickness"], message: value });
      return z.NEVER;
    });

  return group({
    name: words,
    brake: group({
      name: words,
      rating: inMaterial({ length: length(100, 6000) }),
      fingers: z.array(length(5, 2000)).min(1).max(mostFingers),
      fingerHeight: length(10, 500),
      noseRadius: length(0, 20),
      shortestLeg: length(1, 100),
      longestLeg: length(10, 5000),
      largestSwing: typed("angle", 45, 180),
    }).refine(({ shortestLeg, longestLeg }) => shortestLeg < longestLeg, {
      path: ["shortestLeg"],
      error: "must be less than longestLeg",
    }),
    shear: group({
      name: words,
      rating: inMaterial({ length: length(100, 6000) }),
      rake: typed("angle", 0, 10),
      cuttingLength: length(100, 6000),
      shortestStop: length(0, 1000),
      longestStop: length(10, 3000),
      shortestPiece: length(1, 500),
      guardOpening: length(1, 120),
      guardDistance: length(1, 1000),
    }).refine(({ shortestStop, longestStop }) => shortestStop < longestStop, {
      path: ["shortestStop"],
      error: "must be less than longestStop",
    }),
    cornerCutter: group({ name: words, rating: inMaterial({}), largestSide: length(10, 500) }),
    bandSaw: group({
      name: words,
      throat: length(50, 2000),
      bands: z.array(group({ teeth: whole(3, 40), width: length(1, 50) })).min(1),
      slowest: typed("speed", 1, 1500),
      fastest: typed("speed", 5, 1500),
      coolant: z.enum(["yes", "no"]),
    }).refine(({ slowest, fastest }) => slowest <= fastest, { path: ["slowest"], error: "must not be above fastest" }),
    punch: punchSet,
    rolls: group({
      name: words,
      rating: inMaterial({ length: length(100, 6000) }),
      width: length(100, 6000),
      frontRoll: length(5, 500),
      rearRoll: length(5, 500),
      spacing: length(5, 1000),
      screwPitch: length(0.2, 20),
      smallestDiameter: length(5, 2000),
      risePerPass: length(0.5, 50),
    }),
    welder: group({
      name: words,
      power: typed("power", 0.5, 500),
      largestForce: typed("force", 100, 50_000),
      largestCurrent: typed("current", 1, 100),
      tipFace: length(2, 20),
      throat: length(20, 2000),
      thinnest: length(0.2, 6),
      thickest: length(0.3, 6),
      time: z.enum(weldTimers),
    }).refine(({ thinnest, thickest }) => thinnest < thickest, { path: ["thinnest"], error: "must be less than thickest" }),
    furnaces: z.array(
      group({
        name: words,
        hottest: typed("temperature", 100, 1800),
        control: number(0.1, 100, "°C"),
        width: length(20, 5000),
        height: length(20, 5000),
        depth: length(20, 5000),
      }),
    ),
    stock: z.array(inMaterial({ width: length(50, 3000), length: length(50, 6000) })).min(1),
    bends: z.array(
      inMaterial({
        radius: length(0, 100),
        angle: typed("angle", 1, 180),
        deduction: length(-50, 100),
        uncertainty: length(0.001, 5),
        pieces: whole(1, 1000),
        date: z.iso.date({ error: "must be a date like 2026-09-14" }),
      }).superRefine(checkDeduction),
    ),
  });
}
