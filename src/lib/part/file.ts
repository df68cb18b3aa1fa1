import { InputError } from "../input-error.ts";
import type { Raw, RawRow } from "../inputs.ts";
import { type Json, jsonShape } from "../json-shape.ts";
import { say } from "../quantity/phrase.ts";
import { type PartKind, partInputs, partKinds, type Side, sideNames } from "./form.ts";

/**
 * The part file: JSON that a person can write and read.
 * Reading turns it into the form's raw texts, so that every value is checked by the same rules as typed ones.
 */

const commonKeys = ["version", "kind", "name", "material", "thickness", "holes", "marking", "quantity"] as const;

/** What the file of each kind of part may hold beside these. */
const kindKeys: Readonly<Record<PartKind, readonly string[]>> = {
  folded: ["radius", "measured", "base", "sides", "edges", "corners", "spots", "bendData", "kFactor", "hardness", "measuredBend"],
  tube: ["measured", "tube"],
  cone: ["cone"],
};

const rolledKeys = {
  tube: ["diameter", "length", "arc"],
  cone: ["largeDiameter", "smallDiameter", "height"],
} as const;

/** Keys of `seam`, in a tube or a cone, and the inputs they fill. */
const seamKeys = { kind: "seam", width: "seamWidth", joint: "seamJoint" } as const;

const measuredKeys = {
  deduction: "measuredDeduction",
  uncertainty: "measuredUncertainty",
  pieces: "measuredPieces",
  thickness: "measuredThickness",
  radius: "measuredRadius",
  angle: "measuredAngle",
  legTo: "measuredLegTo",
} as const;

const fileVersion = 1;

const { refuse, object, list, text } = jsonShape({
  the: "The part file",
  one: "a part file",
  text: "a text such as “1.2mm”, or a number in mm or degrees",
});

function cells(value: Json, field: string, keys: readonly string[]): RawRow {
  return Object.fromEntries(
    keys.filter((key) => value[key] !== undefined).map((key) => [key, text(value[key], `${field}.${key}`)]),
  );
}

const edgeKeys = ["kind", "width", "gap", "way"] as const;
const legKeys = ["leg", "angle", "way", "radius"] as const;
const holeKeys = ["panel", "x", "y", "diameter"] as const;
const cutoutKeys = ["panel", "shape", "x", "y", "width", "height", "turn"] as const;
const spotKeys = ["panel", "x", "y", "metal", "thickness"] as const;
/** A hole circle is told by the diameter of its circle. */
const circleKeys = ["panel", "x", "y", "circle", "count", "start", "diameter"] as const;

/** Keys of `corners` and the inputs they fill. */
const cornerKeys = {
  gap: "cornerGap",
  relief: "relief",
  tabs: "tabs",
  tabWidth: "tabWidth",
  tabJoint: "tabJoint",
} as const;

/**
 * The form's raw texts from a part file.
 * @param json - the text of the file
 * @throws InputError when it is not JSON or not a part file; values themselves are checked when the form is read
 */
export function rawFromPartFile(json: string): Raw {
  let parsed: unknown;
  try {
    parsed = JSON.parse(json);
  } catch (error) {
    throw new InputError(
      "",
      json.slice(0, 60),
      say`The part file is not JSON: ${error instanceof Error ? error.message : ""}. Check quotes, commas and brackets.`,
    );
  }
  return rawFromPart(parsed);
}

/** The same from a parsed file. @throws InputError as `rawFromPartFile` */
export function rawFromPart(parsed: unknown): Raw {
  const { kind, file } = ofKind(parsed);
  if (file.version !== undefined && file.version !== fileVersion) throw refuse("version", file.version, `${fileVersion}`);
  const raw: Record<string, string | RawRow[]> = {};
  for (const key of [
    "kind",
    "name",
    "material",
    "thickness",
    "radius",
    "measured",
    "bendData",
    "kFactor",
    "hardness",
    "marking",
    "quantity",
  ] as const)
    if (file[key] !== undefined) raw[key] = text(file[key], key);

  if (kind !== "folded") readRolled(kind, file, raw);

  const base = object(file.base ?? {}, "base", ["width", "depth"]);
  for (const key of ["width", "depth"] as const) if (base[key] !== undefined) raw[key] = text(base[key], `base.${key}`);

  const edges: RawRow[] = [];
  const sides = object(file.sides ?? {}, "sides", sideNames);
  for (const side of sideNames) {
    if (sides[side] === undefined) continue;
    const legs = list(sides[side], `sides.${side}`);
    raw[side] = legs.map((value, index) => {
      const field = `sides.${side}.${index}`;
      const leg = object(value, field, [...legKeys, "edge"]);
      if (leg.edge !== undefined) {
        if (index !== legs.length - 1)
          throw new InputError(
            `${field}.edge`,
            leg.edge,
            say`A folded edge can be only on the outermost leg of a side; leg ${index + 1} of ${legs.length} on ${side} has one.`,
          );
        edges.push({ side, ...cells(object(leg.edge, `${field}.edge`, edgeKeys), `${field}.edge`, edgeKeys) });
      }
      return cells(leg, field, legKeys);
    });
  }
  const baseEdges = object(file.edges ?? {}, "edges", sideNames);
  for (const side of sideNames)
    if (baseEdges[side] !== undefined)
      edges.push({ side, ...cells(object(baseEdges[side], `edges.${side}`, edgeKeys), `edges.${side}`, edgeKeys) });
  if (edges.length > 0) raw.edges = edges;

  if (file.corners !== undefined) {
    const corners = object(file.corners, "corners", Object.keys(cornerKeys));
    for (const [key, input] of Object.entries(cornerKeys))
      if (corners[key] !== undefined) raw[input] = text(corners[key], `corners.${key}`);
  }
  if (file.spots !== undefined)
    raw.attachments = list(file.spots, "spots").map((spot, index) =>
      cells(object(spot, `spots.${index}`, spotKeys), `spots.${index}`, spotKeys),
    );
  if (file.holes !== undefined) readHoles(list(file.holes, "holes"), raw);

  if (file.measuredBend !== undefined) {
    const measured = object(file.measuredBend, "measuredBend", Object.keys(measuredKeys));
    for (const [key, input] of Object.entries(measuredKeys))
      if (measured[key] !== undefined) raw[input] = text(measured[key], `measuredBend.${key}`);
  }
  return raw;
}

/** The kind of part a file is of, with every key it may hold. @throws InputError for a key that belongs to another kind */
function ofKind(parsed: unknown): { readonly kind: PartKind; readonly file: Json } {
  const any = object(parsed, "", [...new Set([...commonKeys, ...Object.values(kindKeys).flat()])]);
  const given = any.kind ?? partInputs.kind.default;
  if (typeof given !== "string" || !Object.hasOwn(partKinds, given))
    throw refuse("kind", any.kind, `one of ${Object.keys(partKinds).join(", ")}`);
  const kind = given as PartKind;
  const keys = [...commonKeys, ...kindKeys[kind]];
  for (const key of Object.keys(any))
    if (!keys.includes(key))
      throw new InputError(
        key,
        any[key],
        say`There is no “${key}” in the part file of a ${kind} part${any.kind === undefined ? ", which it is without a “kind”" : ""}. Its keys are ${keys.join(", ")}.`,
      );
  return { kind, file: any };
}

/** Sizes and seam of a tube or a cone. */
function readRolled(kind: "tube" | "cone", file: Json, raw: Record<string, string | RawRow[]>): void {
  const keys = rolledKeys[kind];
  const body = object(file[kind] ?? {}, kind, [...keys, "seam"]);
  for (const key of keys) if (body[key] !== undefined) raw[key] = text(body[key], `${kind}.${key}`);
  const seam = object(body.seam ?? {}, `${kind}.seam`, Object.keys(seamKeys));
  for (const [key, input] of Object.entries(seamKeys))
    if (seam[key] !== undefined) raw[input] = text(seam[key], `${kind}.seam.${key}`);
}

/** Round holes, other shapes and hole circles, each into the list of its kind. */
function readHoles(holes: readonly unknown[], raw: Record<string, string | RawRow[]>): void {
  const rows: Record<"holes" | "cutouts" | "circles", RawRow[]> = { holes: [], cutouts: [], circles: [] };
  holes.forEach((value, index) => {
    const field = `holes.${index}`;
    const any = object(value, field, [...new Set([...holeKeys, ...cutoutKeys, ...circleKeys])]);
    if (any.circle !== undefined) {
      const { circle, ...rest } = cells(object(value, field, circleKeys), field, circleKeys);
      rows.circles.push({ ...rest, around: circle ?? "" });
    } else if (any.shape !== undefined && any.shape !== "round")
      rows.cutouts.push(cells(object(value, field, cutoutKeys), field, cutoutKeys));
    else {
      const { shape: _, ...round } = object(value, field, [...holeKeys, "shape"]);
      rows.holes.push(cells(round, field, holeKeys));
    }
  });
  for (const [key, list] of Object.entries(rows)) if (list.length > 0) raw[key] = list;
}

/** The part file of a form, with everything that was entered and nothing that was not. */
export function partFileFrom(raw: Raw): Json {
  const given = (key: keyof typeof partInputs): string | undefined => {
    const value = raw[key];
    const input = partInputs[key];
    if (typeof value === "string" && value !== "") return value;
    return input.kind !== "list" && "default" in input ? input.default : undefined;
  };
  const rows = (key: keyof typeof partInputs): readonly RawRow[] => {
    const value = raw[key];
    return Array.isArray(value) ? (value as readonly RawRow[]) : [];
  };
  const filled = (row: RawRow, keys: readonly string[]) =>
    Object.fromEntries(keys.filter((key) => row[key]).map((key) => [key, row[key]]));
  const edgeOf = (side: Side) => {
    const row = rows("edges").find((edge) => (edge.side ?? "north") === side);
    return row && filled(row, edgeKeys);
  };
  const sides = Object.fromEntries(
    sideNames
      .filter((side) => rows(side).length > 0)
      .map((side) => {
        const legs = rows(side);
        return [
          side,
          legs.map((leg, index) => {
            const edge = index === legs.length - 1 ? edgeOf(side) : undefined;
            return { ...filled(leg, legKeys), ...(edge && { edge }) };
          }),
        ];
      }),
  );
  const baseEdges = Object.fromEntries(
    sideNames.filter((side) => rows(side).length === 0 && edgeOf(side)).map((side) => [side, edgeOf(side)]),
  );
  const measured = Object.fromEntries(
    Object.entries(measuredKeys)
      .map(([key, input]) => [key, raw[input]] as const)
      .filter(([, value]) => typeof value === "string" && value !== ""),
  );
  const holes = [
    ...rows("holes").map((hole) => filled(hole, holeKeys)),
    ...rows("cutouts").map((hole) => ({ shape: partInputs.cutouts.columns.shape.default, ...filled(hole, cutoutKeys) })),
    ...rows("circles").map(({ around, ...hole }) => filled({ ...hole, circle: around ?? "" }, circleKeys)),
  ];
  const corners = Object.fromEntries(
    Object.entries(cornerKeys)
      .map(([key, input]) => [key, raw[input]] as const)
      .filter(([, value]) => typeof value === "string" && value !== ""),
  );
  const simple = (key: keyof typeof partInputs) => ({ [key]: given(key) });
  const kind = given("kind");
  if (kind === "tube" || kind === "cone") {
    const seam = {
      kind: given("seam"),
      ...(given("seam") !== "butt" && { width: given("seamWidth") }),
      ...(given("seam") === "lap" && { joint: given("seamJoint") }),
    };
    return {
      version: fileVersion,
      kind,
      ...simple("name"),
      ...simple("material"),
      ...simple("thickness"),
      ...(kind === "tube" && simple("measured")),
      [kind]: { ...Object.fromEntries(rolledKeys[kind].map((key) => [key, given(key)])), seam },
      ...(holes.length > 0 && { holes }),
      ...simple("marking"),
      ...simple("quantity"),
    };
  }
  return {
    version: fileVersion,
    ...simple("name"),
    ...simple("material"),
    ...simple("thickness"),
    ...simple("radius"),
    ...simple("measured"),
    base: { width: given("width"), depth: given("depth") },
    sides,
    ...(Object.keys(baseEdges).length > 0 && { edges: baseEdges }),
    ...(Object.keys(corners).length > 0 && { corners }),
    ...(rows("attachments").length > 0 && { spots: rows("attachments").map((spot) => filled(spot, spotKeys)) }),
    ...(holes.length > 0 && { holes }),
    ...simple("bendData"),
    ...(given("bendData") === "neutral-line" && simple("kFactor")),
    ...(given("bendData") === "soft-medium-hard" && simple("hardness")),
    ...(Object.keys(measured).length > 0 && { measuredBend: measured }),
    ...simple("marking"),
    ...simple("quantity"),
  };
}
