/**
 * What the handbook knows that is data, not formula: materials, gauges, published tables, this shop.
 * It is read from `src/content/*.yaml` outside this library and handed in, so the library itself reads no files.
 */

/** `read`: seen in the source named. `memory`: recalled, to be confirmed. `practice`: usual in the trade, no source. */
export type Seen = "read" | "memory" | "practice";

export interface Source {
  readonly id: string;
  readonly title: string;
  readonly edition?: string;
  readonly where?: string;
  readonly address?: string;
  readonly seen: Seen;
  readonly note?: string;
}

/** A property of a material: the value used, the band it lies in, and where it comes from. */
export interface Property {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly basis: string;
  readonly source: string;
  readonly seen: Seen;
  /** The value as the source prints it, where that is another unit: `13 ksi`. */
  readonly printed?: string;
  readonly note?: string;
}

export const materialIds = [
  "steel-cr",
  "steel-dc04",
  "steel-s235",
  "steel-galv",
  "stainless-304",
  "stainless-316",
  "stainless-430",
  "al-1100-o",
  "al-1100-h14",
  "al-3003-h14",
  "al-5052-h32",
  "al-6061-o",
  "al-6061-t4",
  "al-6061-t6",
  "al-2024-o",
  "al-2024-t3",
  "copper-soft",
  "copper-half-hard",
  "brass-half-hard",
  "titanium-2",
] as const;
export type MaterialId = (typeof materialIds)[number];

export const materialFamilies = ["carbon-steel", "stainless", "aluminium", "copper-alloy", "titanium"] as const;
export type MaterialFamily = (typeof materialFamilies)[number];

/** How a material's smallest bend radius is found. */
export type RadiusRule =
  | { readonly by: "tensile-class" }
  | { readonly by: "alloy-table"; readonly row: string }
  | {
      readonly by: "ratio-band";
      /** R/T used for stock in the usual temper; the trade's choice, inside the band. */
      readonly use: number;
      /** R/T */
      readonly low: number;
      readonly high: number;
      readonly source: string;
      readonly seen: Seen;
      readonly note?: string;
    };

export interface Material {
  readonly id: MaterialId;
  readonly name: string;
  readonly family: MaterialFamily;
  readonly coated?: boolean;
  /** Left out for a metal sold by decimals only. */
  readonly gaugeSystem?: string;
  /** Left out when no table that covers it was read. */
  readonly thicknessTolerance?: string;
  /** kg/m³ */
  readonly density: Property;
  /** N/mm² */
  readonly elasticModulus: Property;
  /** N/mm² */
  readonly yield: Property;
  /** N/mm² */
  readonly tensileStrength: Property;
  /** N/mm² */
  readonly shearStrength: Property;
  /** % reduction of area at fracture */
  readonly areaReduction?: Property;
  readonly smallestRadius: RadiusRule;
}

export interface GaugeRow {
  /** `16`, `2/0` */
  readonly gauge: string;
  /** inches, as printed */
  readonly inches: number;
  readonly seen: Seen;
}

/** One gauge system. A number has no meaning outside its system; tables that disagree are separate systems. */
export interface GaugeSystem {
  readonly id: string;
  readonly name: string;
  readonly for: string;
  readonly source: string;
  /** How the numbers come about, where there is a rule. */
  readonly rule?: string;
  readonly note?: string;
  /** From thick to thin. */
  readonly rows: readonly GaugeRow[];
}

/** Smallest inside radius by tensile strength class and thickness, after DIN 6935. */
export interface RadiusByStrength {
  readonly source: string;
  readonly seen: Seen;
  readonly note?: string;
  /** upper edge of each thickness column [mm] */
  readonly thickness: readonly number[];
  readonly classes: readonly { readonly above: number; readonly upTo: number; readonly radius: readonly number[] }[];
}

/** Smallest inside radius over thickness by alloy and thickness, 90° bends. */
export interface RadiusByAlloy {
  readonly source: string;
  readonly seen: Seen;
  readonly note?: string;
  /** thickness of each column as printed [in] */
  readonly inches: readonly number[];
  /** thickness of each column [mm] */
  readonly thickness: readonly number[];
  readonly rows: Readonly<Record<string, readonly number[]>>;
}

/** Thickness tolerance ± [mm] by thickness band and sheet width. */
export interface ThicknessTolerance {
  readonly id: string;
  readonly name: string;
  readonly source: string;
  readonly seen: Seen;
  readonly note?: string;
  /** `upper`: a band holds its upper edge. `lower`: it holds its lower edge. */
  readonly edge: "upper" | "lower";
  /** The same for the width columns. */
  readonly widthEdge: "upper" | "lower";
  /** upper edge of each width column [mm]; `null`: no edge */
  readonly widths: readonly (number | null)[];
  readonly bands: readonly { readonly above: number; readonly upTo: number; readonly tolerance: readonly number[] }[];
}

export const toleranceClasses = ["f", "m", "c", "v"] as const;
export type ToleranceClass = (typeof toleranceClasses)[number];

/** What ± a size has when the drawing names only a class: fine, medium, coarse or very coarse. */
export interface GeneralTolerances {
  readonly linear: {
    readonly source: string;
    readonly seen: Seen;
    /** lower edge of the first column [mm] */
    readonly above: number;
    /** upper edge of each column, which holds it [mm] */
    readonly upTo: readonly number[];
    /** ± [mm]; `null`: the standard gives none */
    readonly classes: Readonly<Record<ToleranceClass, readonly (number | null)[]>>;
  };
  readonly angular: {
    readonly source: string;
    readonly seen: Seen;
    /** upper edge of each column by the shorter side [mm]; `null`: no edge */
    readonly upTo: readonly (number | null)[];
    /** ± [degrees] */
    readonly classes: Readonly<Record<ToleranceClass, readonly number[]>>;
  };
}

export const trades = ["marking", "cutting", "punching", "bending", "rolling", "joining", "furnace"] as const;
export type Trade = (typeof trades)[number];

/** A standing caution, worded once and shown wherever it is named. */
export interface Caution {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  /** What a student is asked before starting; a good answer has what the text says. */
  readonly ask?: string;
  readonly appliesTo: readonly (Trade | "all")[];
  readonly source: string;
  readonly seen: Seen;
}

export interface Rating {
  readonly material: MaterialId;
  /** mm */
  readonly thickness: number;
  /** mm, full length of the rating */
  readonly length: number;
}

/** A hand folding brake with removable fingers. Lengths in mm. */
export interface Brake {
  readonly name: string;
  readonly rating: Rating;
  readonly fingers: readonly number[];
  readonly fingerHeight: number;
  /** degrees the front of a finger leans back from upright */
  readonly fingerLean: number;
  /** Of the foot of a finger, from nose to heel. */
  readonly fingerDepth: number;
  /** From the nose straight back to the back of a finger at its top. */
  readonly fingerTop: number;
  readonly noseRadius: number;
  readonly shortestLeg: number;
  readonly longestLeg: number;
  /** degrees the leaf can swing */
  readonly largestSwing: number;
  /** From the nose straight back to the front of the clamp beam. */
  readonly beamSetback: number;
  readonly beamDepth: number;
  readonly beamHeight: number;
  /** From the hinge line to the back. */
  readonly bedDepth: number;
  readonly bedHeight: number;
  /** Height of the front edge of the bed, from which its underside slopes down to the back. */
  readonly bedNose: number;
  /** Of the bar of the leaf, from the hinge line to its outer edge. */
  readonly leafWidth: number;
  readonly leafThickness: number;
  /** How far the fingers lift from the bed. */
  readonly clampOpening: number;
  /** What a bent part should keep from every tool. */
  readonly clearance: number;
  /** Shortest flat strip the fingers hold, from the nose back. */
  readonly shortestHold: number;
  /** How much of a bend may stick out beyond the last finger. */
  readonly bareEnd: number;
}

/** A shear with a foot treadle. Lengths in mm. */
export interface Shear {
  readonly name: string;
  readonly rating: Rating;
  /** degrees; 0 for parallel blades */
  readonly rake: number;
  /** Between the side frames. */
  readonly cuttingLength: number;
  /** From the lower blade to the back stop, at its nearest and its farthest. */
  readonly shortestStop: number;
  readonly longestStop: number;
  /** Shortest piece, from the blade towards the operator, that the hold-downs grip. */
  readonly shortestPiece: number;
  /** Height of the gap below the guard, and how far that gap is from the blade. */
  readonly guardOpening: number;
  readonly guardDistance: number;
}

export interface SawBand {
  /** an inch */
  readonly teeth: number;
  /** mm */
  readonly width: number;
}

/** A vertical band saw for metal. */
export interface BandSaw {
  readonly name: string;
  /** mm, from the blade to the frame */
  readonly throat: number;
  readonly bands: readonly SawBand[];
  /** m/min */
  readonly slowest: number;
  /** m/min */
  readonly fastest: number;
  readonly coolant: "yes" | "no";
}

/** A cutter that takes a square corner off a sheet in one stroke. Lengths in mm. */
export interface CornerCutter {
  readonly name: string;
  readonly rating: { readonly material: MaterialId; readonly thickness: number };
  /** Longest side of the corner. */
  readonly largestSide: number;
}

/** Outline of a punch, or of the opening of a die. Lengths in mm. */
export type Outline =
  | { readonly shape: "round"; readonly diameter: number }
  | { readonly shape: "square"; readonly width: number }
  | { readonly shape: "rectangle"; readonly width: number; readonly height: number };

export type Punch = Outline & {
  /** Letter of the die that belongs to it. */
  readonly die: string;
};
export type Die = Outline & { readonly letter: string };

/** A hand-worked punch with a set of punches and dies. */
export interface PunchSet {
  readonly name: string;
  /** N, from the plate */
  readonly force: number;
  /** mm, from the middle of the punch to the frame: how far from an edge a hole can be */
  readonly throat: number;
  readonly punches: readonly Punch[];
  readonly dies: readonly Die[];
}

/** Slip rolls: two front rolls that pinch the sheet and a rear roll that curves it. Lengths in mm. */
export interface Rolls {
  readonly name: string;
  readonly rating: Rating;
  readonly width: number;
  /** Diameters. */
  readonly frontRoll: number;
  readonly rearRoll: number;
  /** Level, from the pinch line to the centre of the rear roll. */
  readonly spacing: number;
  readonly screwPitch: number;
  /** Smallest inside diameter by the plate or the manual. */
  readonly smallestDiameter: number;
  /** Most that the rear roll is raised between two passes. */
  readonly risePerPass: number;
}

export const weldTimers = ["finger-switch", "timer"] as const;

/** A spot welder. Lengths in mm. */
export interface Welder {
  readonly name: string;
  /** kVA on the plate, at a duty of 50 % */
  readonly power: number;
  /** N, between the tips */
  readonly largestForce: number;
  /** kA */
  readonly largestCurrent: number;
  /** Diameter. */
  readonly tipFace: number;
  /** From the tips to the frame: how far from an edge a spot can be. */
  readonly throat: number;
  /** Each of two mild steel sheets. */
  readonly thinnest: number;
  readonly thickest: number;
  /** What ends the weld: the finger that lets go, or a timer. */
  readonly time: (typeof weldTimers)[number];
}

/** A furnace for annealing. Lengths in mm. */
export interface Furnace {
  readonly name: string;
  /** °C */
  readonly hottest: number;
  /** ± °C, how well it holds what was set */
  readonly control: number;
  /** Clear inside. */
  readonly width: number;
  readonly height: number;
  readonly depth: number;
}

/** A bend measured in this shop. Lengths in mm. */
export interface MeasuredBend {
  readonly material: MaterialId;
  readonly thickness: number;
  readonly radius: number;
  readonly angle: number;
  readonly deduction: number;
  /** ± [mm], k = 2 */
  readonly uncertainty: number;
  readonly pieces: number;
  readonly date: string;
  /** Lot of the sheet it was measured on. */
  readonly lot?: string;
  /** Name of the brake, where it is not the shop's own. */
  readonly brake?: string;
  /** Kept on the reader's own device, not in the shop's file. */
  readonly onDevice?: boolean;
}

export interface StockSheet {
  readonly material: MaterialId;
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
}

export interface MarkingMethod {
  readonly id: string;
  readonly name: string;
  /** ± one line [mm], two standard deviations */
  readonly error: number;
  /** How far from the edge the usual tool gets [mm]. */
  readonly reach?: number;
  readonly basis: string;
  readonly source: string;
  readonly seen: Seen;
}

export interface Shop {
  readonly name: string;
  readonly brake: Brake;
  readonly shear: Shear;
  readonly cornerCutter: CornerCutter;
  readonly bandSaw: BandSaw;
  readonly punch: PunchSet;
  readonly rolls: Rolls;
  readonly welder: Welder;
  readonly furnaces: readonly Furnace[];
  readonly stock: readonly StockSheet[];
  readonly bends: readonly MeasuredBend[];
}

export interface Catalogue {
  readonly materials: Readonly<Record<MaterialId, Material>>;
  readonly gaugeSystems: Readonly<Record<string, GaugeSystem>>;
  readonly thicknessTolerances: Readonly<Record<string, ThicknessTolerance>>;
  readonly radiusByStrength: RadiusByStrength;
  readonly radiusByAlloy: RadiusByAlloy;
  readonly generalTolerances: GeneralTolerances;
  readonly markingMethods: Readonly<Record<string, MarkingMethod>>;
  readonly cautions: Readonly<Record<string, Caution>>;
  readonly sources: Readonly<Record<string, Source>>;
  readonly shop: Shop;
}
