import type { Material } from "../../catalogue.ts";
import { InputError } from "../../input-error.ts";
import { say } from "../../quantity/phrase.ts";
import type { MeasuredFace } from "../../rolling/rolled-blank.ts";
import type { CutSheet } from "../blank.ts";
import type { PartValues } from "../form.ts";
import type { Hole } from "../model.ts";
import type { Seam } from "./seam.ts";

/** What every rolled part has. Lengths in mm. */
interface Rolled {
  readonly name: string;
  readonly material: Material;
  readonly thickness: number;
  /** On the unrolled surface: x along the middle of the thickness from the seam, y along the axis. */
  readonly holes: readonly Hole[];
  readonly marking: PartValues["marking"];
  readonly quantity: number;
}

/** A rolled tube, or part of one. */
export interface TubePart extends Rolled {
  readonly kind: "tube";
  readonly diameter: number;
  readonly measured: MeasuredFace;
  /** Along the axis. */
  readonly length: number;
  /** [deg], 360 for a full tube */
  readonly arc: number;
}

/** A rolled cone or frustum; diameters at mid-thickness, height along the axis between them. */
export interface ConePart extends Rolled {
  readonly kind: "cone";
  readonly largeDiameter: number;
  /** 0: it ends in a point */
  readonly smallDiameter: number;
  readonly height: number;
}

export type RolledPart = TubePart | ConePart;

/** One end of a finished rolled part: where its curve is measured. */
export interface RolledEnd {
  readonly name: "large end" | "small end" | "whole length";
  /** Of the caliper [mm] */
  readonly outside: number;
  readonly inside: number;
  /** Inside radius that the rolls have to leave, square to the lines that lie along the rolls [mm]. */
  readonly radius: number;
}

/** A rolled part as it lies flat: x from the west edge, y from the south edge, the face up that becomes the inside. */
export interface RolledSheet extends CutSheet {
  readonly part: RolledPart;
  readonly seam: Seam;
  /** Round the part along the middle of the thickness, seam left out; of a cone at its large end [mm]. */
  readonly around: number;
  /** Along the rolls [mm]: the length of a tube, the slant of a cone. */
  readonly alongRolls: number;
  /** One of a tube, two of a cone: the large one first. */
  readonly ends: readonly RolledEnd[];
  /** Joints of a lap, in pairs that come to lie over each other: on side A and on side B. */
  readonly joints: readonly { readonly a: Place; readonly b: Place }[];
  /** Metal between each hole and the seam on either side, by number [mm]. */
  readonly toSeam: ReadonlyMap<number, number>;
  /** How the sector of a cone is drawn. */
  readonly sector?: Sector;
}

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The sector of a ring that a cone is cut as, its middle line upright, the large end to the south. Lengths in mm. */
export interface Sector {
  /** Of both arcs, on the middle line; beyond the sheet where its y is more than the depth. */
  readonly centre: Place;
  readonly outerRadius: number;
  readonly innerRadius: number;
  readonly slant: number;
  /** [deg], between the seam lines */
  readonly angle: number;
  /** Between the outer ends of the seam lines. */
  readonly chord: number;
  /** From the middle of the outer arc to the outer end of a seam line. */
  readonly halfChord: number;
  /** Outer and inner ends of the seam lines A (west) and B (east). */
  readonly seamLines: readonly { readonly side: "A" | "B"; readonly outer: Place; readonly inner: Place }[];
}

/** Holes of a rolled part name no panel: it has one surface. @throws InputError for one that names another */
export function onOneSurface(holes: readonly Hole[]): void {
  for (const hole of holes)
    if (hole.panel !== "base")
      throw new InputError(
        `${hole.field}.panel`,
        hole.panel,
        say`Hole ${hole.number} must be on “base”: a rolled part has one surface, and no legs; it is on “${hole.panel}”.`,
      );
}
