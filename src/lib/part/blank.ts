import type { FlatLayout } from "./flatten.ts";

export interface Blank {
  /** West to east [mm] */
  readonly width: number;
  /** South to north [mm] */
  readonly depth: number;
  /** Of one finished part, holes out [kg] */
  readonly mass: number;
}

/**
 * Size and mass of the blank.
 * @returns width, depth [mm]; mass [kg] = (width · depth − holes) · T · ρ
 */
export function blankSize(layout: FlatLayout): Blank {
  const { part, along } = layout;
  const width = part.axis === "y" ? part.width : along;
  const depth = part.axis === "y" ? along : part.width;
  const holes = part.holes.reduce((sum, { diameter }) => sum + (Math.PI / 4) * diameter ** 2, 0);
  const cubicMetres = ((width * depth - holes) * part.thickness) / 1e9;
  return { width, depth, mass: cubicMetres * part.material.density.value };
}
