import { kFromAllowance } from "../bending/bend-allowance.ts";
import { foldedEdge } from "../bending/folded-edge.ts";
import { type BendFit, measuredBends } from "../bending/measured-bends.ts";
import { allowanceBy, type BendMethod, type MethodChoice } from "../bending/methods.ts";
import { type FoldedEdgeKind, type LegEnd, usualLegEnd } from "../bending/symbols.ts";
import type { Catalogue, Material, MaterialId, MeasuredBend } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { exactly } from "../inputs.ts";
import { holeCircle } from "../marking/hole-circle.ts";
import { listed, mm, say } from "../quantity/phrase.ts";
import { materialWith } from "../stock/material.ts";
import { type attachedMetals, type PartValues, type ReliefKind, type Side, sideNames, type Way } from "./form.ts";

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
  readonly id: string;
  readonly side: Side;
  readonly kind: FoldedEdgeKind;
  readonly way: Way;
  readonly width: number;
  readonly gap: number;
  /** What it adds to the flat beyond the finished edge [mm]. */
  readonly allowance: number;
  /** Distances of its bend lines from the raw edge [mm], in the order they are folded. */
  readonly lines: readonly number[];
}

export type HoleShape = "round" | "square" | "rectangle" | "slot";

export interface Hole {
  /** 1 for the first of the part. */
  readonly number: number;
  /** Form field of its row, for messages. */
  readonly field: string;
  readonly panel: string;
  readonly shape: HoleShape;
  /** Middle, along and outwards on its panel [mm]. */
  readonly x: number;
  readonly y: number;
  /** Along and outwards before it is turned [mm]; both the diameter of a round hole. */
  readonly width: number;
  readonly height: number;
  /** [deg], anticlockwise */
  readonly turn: number;
}

/** One spot of a piece welded to the part. */
export interface Attachment {
  /** 1 for the first of the part. */
  readonly number: number;
  readonly field: string;
  readonly panel: string;
  readonly x: number;
  readonly y: number;
  readonly material: Material;
  /** [mm] */
  readonly thickness: number;
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
    /** Where it was measured in this shop, not entered with the part. */
    readonly fromShop: MeasuredBend | undefined;
  };
  /** Every bend of this metal measured in this shop, the best for this part first. */
  readonly measuredHere: readonly BendFit[];
}

/** Panels in a row, bent about parallel lines; the base is one of them. */
export interface Chain {
  /** Direction in which the panels follow each other: `y` from south to north, `x` from west to east. */
  readonly axis: "x" | "y";
  readonly panels: readonly Panel[];
  readonly bends: readonly Bend[];
  /** Folded edge before the first and after the last panel. */
  readonly startEdge?: Edge;
  readonly endEdge?: Edge;
}

export interface Corners {
  /** Between the end of a side and the inside face of its neighbour [mm]. */
  readonly gap: number;
  readonly relief: ReliefKind;
  readonly tabs?: { readonly on: Axis; readonly width: number; readonly joint: "spots" | "rivets" };
}

export interface Part {
  readonly name: string;
  readonly material: Material;
  readonly thickness: number;
  /** R [mm], inside, of bends that have none of their own */
  readonly radius: number;
  readonly measured: "outside" | "inside";
  /** Finished size of the base by the direction it is measured in [mm]. */
  readonly base: Readonly<Record<Axis, number>>;
  /** One, or two that cross at the base: south to north first. */
  readonly chains: readonly Chain[];
  readonly corners: Corners;
  readonly holes: readonly Hole[];
  readonly attachments: readonly Attachment[];
  readonly bendData: BendData;
  readonly marking: PartValues["marking"];
  readonly quantity: number;
}

export type Axis = "x" | "y";

/** The metal that stands for each kind of piece welded on. */
const metalOf: Readonly<Record<keyof typeof attachedMetals, MaterialId>> = {
  steel: "steel-cr",
  galvanised: "steel-galv",
  stainless: "stainless-304",
  aluminium: "al-1100-h14",
  copper: "copper-soft",
};

/** The sides at the start and the end of a chain. */
export const chainEnds = { y: { start: "south", end: "north" }, x: { start: "west", end: "east" } } as const;

function measuredHere({ material, thickness, radius, ...values }: PartValues, catalogue: Catalogue): BendFit[] {
  const nearAngle = sideNames.flatMap((side) => values[side])[0]?.angle ?? 90;
  return measuredBends(catalogue.shop.bends, { material, thickness, radius, nearAngle });
}

function measuredData(values: PartValues, catalogue: Catalogue, best: BendFit | undefined): NonNullable<BendData["measured"]> {
  const own = values.measuredDeduction;
  const shop = own === undefined && best?.misfits.length === 0 ? best.bend : undefined;
  if (own === undefined && !shop)
    throw new InputError(
      "measuredDeduction",
      "",
      say`Measured bend deduction is not entered, and this shop has no measured bend for ${catalogue.materials[values.material].name}, ${mm(values.thickness)} thick, at a radius of ${mm(values.radius)}${best ? say`; the nearest has ${listed(best.misfits)}` : ""}. Bend practice pieces, or choose another kind of bend data.`,
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
    fromShop: shop,
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
    return {
      id: `${side}.edge`,
      side,
      kind: row.kind,
      way: row.way,
      width: row.width,
      gap: row.gap ?? 0,
      allowance,
      lines: turns.map((turn) => turn.line),
    };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(`edges.${index}.${error.field}`, error.value, error.phrase);
  }
}

/** The chain along one direction; undefined when nothing is bent about lines across it. */
function chainOf(values: PartValues, axis: Axis): Chain | undefined {
  const { start, end } = chainEnds[axis];
  const before = values[start].map((leg, index) => ({ leg, index })).reverse();
  const after = values[end].map((leg, index) => ({ leg, index }));
  const startEdge = edgeOf(values, start);
  const endEdge = edgeOf(values, end);
  if (before.length + after.length === 0 && !startEdge && !endEdge) return undefined;
  const panelOf = (side: Side, { leg, index }: (typeof before)[number]): Panel => ({
    id: `${side}.${index + 1}`,
    length: leg.leg,
    field: `${side}.${index}.leg`,
  });
  const bendOf = (side: Side, baseBefore: boolean, { leg, index }: (typeof before)[number]): Bend => ({
    id: `${side}.${index + 1}`,
    side,
    angle: leg.angle,
    way: leg.way,
    radius: leg.radius ?? values.radius,
    baseBefore,
  });
  return {
    axis,
    panels: [...before.map((each) => panelOf(start, each)), basePanel(values, axis), ...after.map((each) => panelOf(end, each))],
    bends: [...before.map((each) => bendOf(start, false, each)), ...after.map((each) => bendOf(end, true, each))],
    ...(startEdge && { startEdge }),
    ...(endEdge && { endEdge }),
  };
}

const basePanel = (values: PartValues, axis: Axis): Panel =>
  axis === "y" ? { id: "base", length: values.depth, field: "depth" } : { id: "base", length: values.width, field: "width" };

/** Every hole of a form, numbered; those of hole circles one by one. @throws InputError for a square one that is not square */
export function holesOf(values: Pick<PartValues, "holes" | "cutouts" | "circles">): Hole[] {
  const round = values.holes.map(({ panel, x, y, diameter }, index) => ({
    field: `holes.${index}`,
    panel,
    shape: "round" as const,
    x,
    y,
    width: diameter,
    height: diameter,
    turn: 0,
  }));
  const cut = values.cutouts.map(({ panel, shape, x, y, width, height, turn }, index) => {
    if (shape === "square" && height !== undefined && height !== width)
      throw new InputError(
        `cutouts.${index}.height`,
        height,
        say`Height of a square hole must be its width, ${mm(width)}, or left empty; it is ${exactly(height, "length")}.`,
      );
    return { field: `cutouts.${index}`, panel, shape, x, y, width, height: height ?? width, turn };
  });
  const around = values.circles.flatMap(({ panel, x, y, around: diameter, count, start, diameter: hole }, index) =>
    holeCircle({ diameter, count, startAngle: start, centreX: x, centreY: y }).map((centre) => ({
      field: `circles.${index}`,
      panel,
      shape: "round" as const,
      x: centre.x,
      y: centre.y,
      width: hole,
      height: hole,
      turn: 0,
    })),
  );
  return [...round, ...cut, ...around].map((hole, index) => ({ number: index + 1, ...hole }));
}

/**
 * The part as chains of panels and bends.
 *
 * @param values - the form, read
 * @returns the part
 * @throws InputError naming the form field: two folded edges on one side, bend data that are missing, a hole that is not square
 */
export function partFrom(values: PartValues, catalogue: Catalogue): Part {
  for (const side of sideNames)
    if (values.edges.filter((edge) => edge.side === side).length > 1)
      throw new InputError("edges", values.edges.length, say`Each side may have one folded edge; the ${side} side has more.`);

  const here = measuredHere(values, catalogue);
  const measured = values.bendData === "measured" ? measuredData(values, catalogue, here[0]) : undefined;
  const choice: MethodChoice = measured
    ? { method: "neutral-line", kFactor: measured.kFactor, hardness: values.hardness }
    : { method: values.bendData, kFactor: values.kFactor, hardness: values.hardness };

  const bent = (["y", "x"] as const).flatMap((axis) => chainOf(values, axis) ?? []);
  const flat: Chain = { axis: "y", panels: [basePanel(values, "y")], bends: [] };
  return {
    name: values.name,
    material: materialWith(catalogue, values.material, {}),
    thickness: values.thickness,
    radius: values.radius,
    measured: values.measured,
    base: { x: values.width, y: values.depth },
    chains: bent.length > 0 ? bent : [flat],
    corners: {
      gap: values.cornerGap,
      relief: values.relief,
      ...(values.tabs !== "none" && {
        tabs: {
          on: values.tabs === "north-south" ? ("y" as const) : ("x" as const),
          width: values.tabWidth,
          joint: values.tabJoint,
        },
      }),
    },
    holes: holesOf(values),
    attachments: values.attachments.map(({ panel, x, y, metal, thickness }, index) => ({
      number: index + 1,
      field: `attachments.${index}`,
      panel,
      x,
      y,
      material: materialWith(catalogue, metal === undefined ? values.material : metalOf[metal], {}),
      thickness: thickness ?? values.thickness,
    })),
    bendData: { method: values.bendData, choice, ...(measured && { measured }), measuredHere: here },
    marking: values.marking,
    quantity: values.quantity,
  };
}
