import type { Catalogue, Welder } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { rivetLength, rivetSizeFor } from "../joining/rivets.ts";
import { type SpotConditions, spotConditions, zincConditions } from "../joining/spot-conditions.ts";
import { scheduledSpot } from "../joining/trade-schedules.ts";
import { buttonFactors, weldButton } from "../joining/weld-button.ts";
import { type WeldPair, weldPair } from "../joining/weld-pair.ts";
import type { FlatLayout } from "./flatten.ts";
import type { Part } from "./model.ts";

/** Where joints of one kind are, and how many. */
export interface Joints {
  /** All tabs, or the whole lap, together. */
  readonly count: number;
  /** Tabs they are on, each with how many. */
  readonly tabs: readonly { readonly id: string; readonly onto: string; readonly count: number }[];
}

/** Spot welds of the tabs: where to start at the welder. */
export interface SpotSettings extends Joints {
  readonly kind: "spots";
  readonly verdict: WeldPair["verdict"];
  readonly reason?: WeldPair["reasons"][number];
  /** None where the metal is not to be spot welded, or its thickness is in no schedule. */
  readonly start?: SpotConditions & {
    /** Smallest button a peel test may pull [mm]. */
    readonly button: number;
    readonly source: string;
    /** What of it this shop's welder does not reach. */
    readonly beyond: readonly ("force" | "current")[];
  };
}

/** Rivets of the tabs. Lengths in mm. */
export interface RivetSettings extends Joints {
  readonly kind: "rivets";
  readonly diameter: number;
  /** `1/8 in` */
  readonly inches: string;
  readonly hole: number;
  readonly grip: number;
  /** Of a solid rivet before it is driven. */
  readonly length: number;
}

export type JointSettings = SpotSettings | RivetSettings;

function beyondOf({ largestForce, largestCurrent }: Welder, { forceMin, currentMin }: SpotConditions) {
  return [
    ...(forceMin > largestForce ? (["force"] as const) : []),
    ...(currentMin > largestCurrent ? (["current"] as const) : []),
  ];
}

/** Longer times suit a small machine. */
const regime = "medium-force";

function startOf({ material, thickness }: Sheet, welder: Welder): SpotSettings["start"] {
  try {
    const stainless = material.family === "stainless";
    const conditions = stainless
      ? scheduledSpot("stainless", { governing: thickness, tensile: material.tensileStrength.value })
      : spotConditions({ governing: thickness, regime });
    const { tipFace, forceMin, forceMax, timeMin, timeMax, currentMin, currentMax } = material.coated
      ? zincConditions(conditions)
      : conditions;
    const start = { tipFace, forceMin, forceMax, timeMin, timeMax, currentMin, currentMax };
    return {
      ...start,
      button: weldButton({ governing: thickness, factor: buttonFactors.least }),
      source: stainless ? "stainless-schedule-reprint" : material.coated ? "twi-coated-steels" : "iso-14373-table",
      beyond: beyondOf(welder, start),
    };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return undefined;
  }
}

type Sheet = Pick<Part, "material" | "thickness">;

/**
 * Settings for joints between two layers of one sheet: of the spot welder, or rivets and their drill.
 * @remarks Both layers are of one sheet, so its thickness governs. Sources: as the functions that give each value.
 */
export function settingsFor(
  kind: JointSettings["kind"],
  sheet: Sheet,
  joints: Joints,
  catalogue: Pick<Catalogue, "shop">,
): JointSettings {
  const { thickness, material } = sheet;
  if (kind === "rivets") {
    const { diameter, inches, hole } = rivetSizeFor(thickness);
    const grip = 2 * thickness;
    return { kind, ...joints, diameter, inches, hole, grip, length: rivetLength({ grip, diameter }) };
  }
  const { verdict, reasons } = weldPair(material, material);
  const start = verdict === "no" ? undefined : startOf(sheet, catalogue.shop.welder);
  const [reason] = reasons;
  return { kind, ...joints, verdict, ...(reason && { reason }), ...(start && { start }) };
}

/** Settings to join the tabs of a folded part with. Undefined for a part without tabs. */
export function jointSettings(layout: FlatLayout, catalogue: Pick<Catalogue, "shop">): JointSettings | undefined {
  const { tabs, part } = layout;
  const [first] = tabs;
  if (!first) return undefined;
  const joints: Joints = {
    count: tabs.reduce((sum, tab) => sum + tab.joints.length, 0),
    tabs: tabs.map(({ id, onto, joints: places }) => ({ id, onto, count: places.length })),
  };
  return settingsFor(first.joint, part, joints, catalogue);
}
