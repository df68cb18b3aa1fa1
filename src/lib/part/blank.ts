import type { FlatCorner, FlatLayout } from "./flatten.ts";
import { area } from "./geometry.ts";
import type { Hole, Part } from "./model.ts";

export interface Blank {
  /** West to east [mm] */
  readonly width: number;
  /** South to north [mm] */
  readonly depth: number;
  /** Of one finished part, notches and holes out [kg] */
  readonly mass: number;
}

/** A sheet cut to its outline and pierced, whatever is done to it afterwards. */
export type CutSheet = Pick<FlatLayout, "chains" | "corners" | "depth" | "holes" | "outline" | "width"> & {
  readonly part: Pick<Part, "holes" | "material" | "thickness">;
};

/** Area of a hole [mm²]. */
function holeArea({ shape, width, height }: Hole): number {
  if (shape === "square" || shape === "rectangle") return width * height;
  const narrow = Math.min(width, height);
  return (Math.PI / 4) * narrow ** 2 + narrow * Math.abs(width - height);
}

/** What a relief hole takes out of the metal beside its notch [mm²]: the circle less the part of it that lies in the notch. */
function reliefArea({ x, y, notch, relief }: FlatCorner): number {
  if (relief?.kind !== "hole") return 0;
  const r = relief.size / 2;
  const [across, along] = [Math.abs(notch.x - x), Math.abs(notch.y - y)];
  const circle = Math.PI * r ** 2;
  if (Math.hypot(across, along) >= r) return circle;
  const under = (at: number) => (at * Math.sqrt(Math.max(0, r ** 2 - at ** 2)) + r ** 2 * Math.asin(Math.min(1, at / r))) / 2;
  const far = Math.sqrt(r ** 2 - along ** 2);
  return circle - (under(far) - under(across) - along * (far - across));
}

/**
 * Size and mass of the blank.
 * @returns width, depth [mm]; mass [kg] = (area of the outline − holes − reliefs) · T · ρ
 */
export function blankSize({ part, width, depth, outline, corners }: CutSheet): Blank {
  const out =
    part.holes.reduce((sum, hole) => sum + holeArea(hole), 0) + corners.reduce((sum, corner) => sum + reliefArea(corner), 0);
  const cubicMetres = ((area(outline) - out) * part.thickness) / 1e9;
  return { width, depth, mass: cubicMetres * part.material.density.value };
}
