import { kFromAllowance } from "../bending/bend-allowance.ts";
import { foldedEdge } from "../bending/folded-edge.ts";
import { allowanceBy, type BendMethod, type MethodChoice } from "../bending/methods.ts";
import { type FoldedEdgeKind, type LegEnd, usualLegEnd } from "../bending/symbols.ts";
import type { Catalogue, Material, MeasuredBend } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { mm, say } from "../quantity/phrase.ts";
import { materialWith } from "../stock/material.ts";
import { type PartValues, type Side, sideNames, type Way } from "./form.ts";

/** Flat part of the finished piece between two bends, or between a bend and an edge. */
export interface Panel {
  /** `base`, `north.1`, counted from the base outwards. */
  readonly id: string;
  /** Finished length along the chain [mm], measured as the part is measured. */
  readonly length: number;
  /** Form field that holds the length, for messages. */
  readonly field: string;
}

export interface Bend {
  /** The panel beyond it, seen from the base. */
  readonly id: string;
  readonly side: Side;
  /** A [deg], turned through */
  readonly angle: number;
  readonly way: Way;
  /** R [mm], inside */
  readonly radius: number;
  /** The base lies before this bend along the chain. */
  readonly baseBefore: boolean;
}

export interface Edge {
  readonly kind: FoldedEdgeKind;
  readonly width: number;
  readonly gap: number;
  /** What it adds to the flat beyond the finished edge [mm]. */
  readonly allowance: number;
  /** Distances of its bend lines from the raw edge [mm], in the order they are folded. */
  readonly lines: readonly number[];
}

export interface Hole {
  readonly panel: string;
  readonly x: number;
  readonly y: number;
  readonly diameter: number;
  readonly index: number;
}

/** How bends are worked out for this part, and how well that is known. */
export interface BendData {
  readonly method: BendMethod;
  readonly choice: MethodChoice;
  /** K-factor that stands for a measured deduction; used for angles and radii it was not measured at. */
  readonly measured?: {
    readonly deduction: number;
    /** ± [mm], k = 2; undefined when not known */
    readonly uncertainty: number | undefined;
    readonly pieces: number | undefined;
    readonly thickness: number;
    readonly radius: number;
    readonly angle: number;
    readonly legTo: LegEnd;
    readonly kFactor: number;
    /** From the shop's file, not entered with the part. */
    readonly fromShop: boolean;
  };
}

/** A part bent about parallel lines: panels in a row with a bend between each two. */
export interface Part {
  readonly name: string;
  readonly material: Material;
  readonly thickness: number;
  readonly measured: "outside" | "inside";
  /** Direction in which the panels follow each other: `y` from south to north, `x` from west to east. */
  readonly axis: "x" | "y";
  /** Size across the chain, along every bend line [mm]. */
  readonly width: number;
  readonly panels: readonly Panel[];
  readonly bends: readonly Bend[];
  /** Folded edge before the first and after the last panel. */
  readonly startEdge?: Edge;
  readonly endEdge?: Edge;
  readonly holes: readonly Hole[];
  readonly bendData: BendData;
  readonly marking: PartValues["marking"];
  readonly quantity: number;
}

/** The sides at the start and the end of a chain. */
export const chainEnds = { y: { start: "south", end: "north" }, x: { start: "west", end: "east" } } as const;

/** A measured bend is taken as fitting a sheet or radius that differs by no more than this. */
export const fitShare = 0.05;

function fits(measured: MeasuredBend, part: PartValues): boolean {
  return (
    measured.material === part.material &&
    Math.abs(measured.thickness - part.thickness) <= fitShare * part.thickness &&
    Math.abs(measured.radius - part.radius) <= Math.max(fitShare * part.radius, 0.05)
  );
}

function measuredData(values: PartValues, catalogue: Catalogue): NonNullable<BendData["measured"]> {
  const own = values.measuredDeduction;
  const shop = own === undefined ? catalogue.shop.bends.find((bend) => fits(bend, values)) : undefined;
  if (own === undefined && !shop)
    throw new InputError(
      "measuredDeduction",
      "",
      say`Measured bend deduction is not entered, and this shop's file has no measured bend for ${catalogue.materials[values.material].name}, ${mm(values.thickness)} thick, at a radius of ${mm(values.radius)}. Bend practice pieces, or choose another kind of bend data.`,
    );
  const deduction = own ?? (shop as MeasuredBend).deduction;
  const thickness = shop?.thickness ?? values.measuredThickness ?? values.thickness;
  const radius = shop?.radius ?? values.measuredRadius ?? values.radius;
  const angle = shop?.angle ?? values.measuredAngle ?? 90;
  const legTo = (shop ? undefined : values.measuredLegTo) ?? usualLegEnd(angle);
  const bend = { angle, radius, thickness };
  let allowance: number;
  try {
    allowance = allowanceBy({ method: "measured", kFactor: 0, hardness: "soft", deduction }, bend, legTo).allowance;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const field = { deduction: "measuredDeduction", legTo: "measuredLegTo" }[error.field] ?? error.field;
    throw new InputError(field, error.value, error.phrase);
  }
  const kFactor = kFromAllowance({ allowance, ...bend });
  if (kFactor < 0 || kFactor > 1)
    throw new InputError(
      "measuredDeduction",
      deduction,
      say`Measured bend deduction ${mm(deduction)} would put the neutral line outside the sheet (K = ${kFactor.toFixed(2)}; allowed is 0 to 1). Check the legs, the radius and what they were measured to.`,
    );
  return {
    deduction,
    uncertainty: shop?.uncertainty ?? values.measuredUncertainty,
    pieces: shop?.pieces ?? values.measuredPieces,
    thickness,
    radius,
    angle,
    legTo,
    kFactor,
    fromShop: shop !== undefined,
  };
}

function edgeOf(values: PartValues, side: Side): Edge | undefined {
  const index = values.edges.findIndex((edge) => edge.side === side);
  const row = values.edges[index];
  if (!row) return undefined;
  try {
    const { allowance, turns } = foldedEdge({
      kind: row.kind,
      thickness: values.thickness,
      width: row.width,
      gap: row.gap ?? 0,
    });
    return { kind: row.kind, width: row.width, gap: row.gap ?? 0, allowance, lines: turns.map((turn) => turn.line) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(`edges.${index}.${error.field}`, error.value, error.phrase);
  }
}

/**
 * The part as a chain of panels and bends.
 *
 * @param values - the form, read
 * @returns the part; its bends are all about parallel lines
 * @throws InputError naming the form field: legs on neighbouring sides, two folded edges on one side, bend data that are missing
 */
export function partFrom(values: PartValues, catalogue: Catalogue): Part {
  const alongX =
    values.east.length + values.west.length > 0 || values.edges.some(({ side }) => side === "east" || side === "west");
  const alongY =
    values.north.length + values.south.length > 0 || values.edges.some(({ side }) => side === "north" || side === "south");
  if (alongX && alongY) {
    const field = values.east.length > 0 ? "east" : values.west.length > 0 ? "west" : "edges";
    throw new InputError(
      field,
      "",
      say`All bends must run the same way: legs and folded edges on north and south, or on east and west, not on both. Parts with corners are not planned yet.`,
    );
  }
  const axis = alongX ? "x" : "y";
  const { start, end } = chainEnds[axis];
  for (const side of sideNames)
    if (values.edges.filter((edge) => edge.side === side).length > 1)
      throw new InputError("edges", values.edges.length, say`Each side may have one folded edge; the ${side} side has more.`);

  const before = values[start].map((leg, index) => ({ leg, index })).reverse();
  const after = values[end].map((leg, index) => ({ leg, index }));
  const panels: Panel[] = [
    ...before.map(({ leg, index }) => ({ id: `${start}.${index + 1}`, length: leg.leg, field: `${start}.${index}.leg` })),
    { id: "base", length: axis === "y" ? values.depth : values.width, field: axis === "y" ? "depth" : "width" },
    ...after.map(({ leg, index }) => ({ id: `${end}.${index + 1}`, length: leg.leg, field: `${end}.${index}.leg` })),
  ];
  const bendOf = (side: Side, baseBefore: boolean, { leg, index }: (typeof before)[number]): Bend => ({
    id: `${side}.${index + 1}`,
    side,
    angle: leg.angle,
    way: leg.way,
    radius: leg.radius ?? values.radius,
    baseBefore,
  });
  const bends = [...before.map((each) => bendOf(start, false, each)), ...after.map((each) => bendOf(end, true, each))];

  const measured = values.bendData === "measured" ? measuredData(values, catalogue) : undefined;
  const choice: MethodChoice = measured
    ? { method: "neutral-line", kFactor: measured.kFactor, hardness: values.hardness }
    : { method: values.bendData, kFactor: values.kFactor, hardness: values.hardness };

  const startEdge = edgeOf(values, start);
  const endEdge = edgeOf(values, end);
  return {
    name: values.name,
    material: materialWith(catalogue, values.material, {}),
    thickness: values.thickness,
    measured: values.measured,
    axis,
    width: axis === "y" ? values.width : values.depth,
    panels,
    bends,
    ...(startEdge && { startEdge }),
    ...(endEdge && { endEdge }),
    holes: values.holes.map((hole, index) => ({ ...hole, index })),
    bendData: { method: values.bendData, choice, ...(measured && { measured }) },
    marking: values.marking,
    quantity: values.quantity,
  };
}
