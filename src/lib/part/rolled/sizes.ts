import type { Catalogue } from "../../catalogue.ts";
import { radiusLeft } from "../../rolling/loaded-radius.ts";
import { materialThicknessTolerance } from "../../stock/thickness-tolerance.ts";
import { noseSetting, rectangular, stockWidth } from "../uncertainty.ts";
import type { RolledSheet } from "./model.ts";
import { type RollSettings, stripOf } from "./setting.ts";

/** A finished size of a rolled part and how far it may be off, k = 2. */
export interface RolledSize {
  readonly what: string;
  /** [mm] */
  readonly size: number;
  /** ± [mm], k = 2; null where the strongest sheet of the grade would come back flat or nearly so */
  readonly plusMinus: number | null;
  /** Shares of it, each ± [mm], k = 2, before they are combined. */
  readonly from: { readonly marking: number; readonly seam: number; readonly springback: number; readonly thickness: number };
}

interface Standard {
  readonly marking?: number;
  readonly seam?: number;
  readonly springback?: number | null;
  readonly thickness?: number;
}

function sized(what: string, size: number, { marking = 0, seam = 0, springback = 0, thickness = 0 }: Standard): RolledSize {
  return {
    what,
    size,
    plusMinus: springback === null ? null : 2 * Math.hypot(marking, seam, springback, thickness),
    from: { marking: 2 * marking, seam: 2 * seam, springback: 2 * (springback ?? 0), thickness: 2 * thickness },
  };
}

/** Finished sizes that follow from what is drawn on a cone's blank: two radii, and the two steps along the outer arc. */
function coneSizes(outer: number, inner: number, stepA: number, stepB: number) {
  const half = (step: number) => 2 * Math.asin(Math.min(1, step / (2 * outer)));
  const turn = half(stepA) + half(stepB);
  const [large, small] = [(turn * outer) / Math.PI, (turn * inner) / Math.PI];
  return { large, small, height: Math.sqrt(Math.max(0, (outer - inner) ** 2 - ((large - small) / 2) ** 2)) };
}

/**
 * Finished sizes with their expanded uncertainty.
 *
 * @returns diameters as the mean all round, which a tape round the part shows; lengths along the axis
 * @remarks Combined after JCGM 100 (GUM). A closed part is as large as its blank is long, so scribed lines and the seam decide; the sheet's
 *   thickness lies between the middle line and the face that is measured. Part of a tube is as round as the rolls leave it: there the
 *   spread of the yield strength of its grade decides, until trial pieces are rolled.
 */
export function rolledSizes(sheet: RolledSheet, rolling: RollSettings, catalogue: Catalogue): readonly RolledSize[] {
  const { part, seam } = sheet;
  const line = (catalogue.markingMethods[part.marking]?.error ?? 0) / 2;
  const thickness = (materialThicknessTolerance(catalogue, part.material, part.thickness, stockWidth) ?? 0) / rectangular;
  // The other edge is set to its line by eye, as the nose of the fingers is.
  const closing = seam.kind === "butt" ? 0 : Math.hypot(seam.kind === "lap" ? noseSetting / 2 : 0, seam.doubt / rectangular);

  if (part.kind === "tube") {
    const length = sized("Length along the axis", part.length, { marking: line });
    if (part.arc === 360)
      return [
        sized(`Diameter ${part.measured}`, part.diameter, {
          marking: line / Math.PI,
          seam: closing / Math.PI,
          thickness,
        }),
        length,
      ];
    const inside = part.diameter / 2 - (part.measured === "outside" ? part.thickness : 0);
    return [
      sized(`Radius ${part.measured}, at the first setting`, part.diameter / 2, {
        springback: springbackSpread(sheet, rolling, inside),
        thickness: part.measured === "outside" ? thickness : 0,
      }),
      sized("Length round, at mid-thickness", sheet.around, { marking: line }),
      length,
    ];
  }

  const { sector, ends } = sheet;
  if (!sector) return [];
  const drawn = [sector.outerRadius, sector.innerRadius, sector.halfChord, sector.halfChord] as const;
  const step = 1e-3;
  type Key = keyof ReturnType<typeof coneSizes>;
  const marked = (key: Key) =>
    line *
    Math.hypot(
      ...drawn.map((_, index) => {
        const by = (move: number) => {
          const [a, b, c, d] = drawn.map((value, at) => (at === index ? value + move : value)) as [
            number,
            number,
            number,
            number,
          ];
          return coneSizes(a, b, c, d)[key];
        };
        return (by(step) - by(-step)) / (2 * step);
      }),
    );
  const lean = part.height / sector.slant;
  const diameter = (key: "large" | "small", size: number) =>
    sized(`${key === "large" ? "Large" : "Small"} end outside`, size, {
      marking: marked(key),
      seam: closing / Math.PI,
      thickness: thickness * lean,
    });
  const [large, small] = ends;
  return [
    ...(large ? [diameter("large", large.outside)] : []),
    ...(small ? [diameter("small", small.outside)] : []),
    sized("Height, at mid-thickness", part.height, { marking: marked("height") }),
  ];
}

/** Standard uncertainty of a radius by the spread of the yield strength within the grade [mm]; null where the strongest comes back flat or nearly so. */
function springbackSpread({ part }: RolledSheet, { settings }: RollSettings, wanted: number): number | null {
  const [setting] = settings;
  if (!setting) return null;
  const { low, high, value } = part.material.yield;
  const left = [low ?? value, high ?? value].map((strength) => {
    const radius = radiusLeft({ ...stripOf(part), yield: strength }, setting.loadedRadius);
    return radius === undefined ? null : Math.abs(radius - wanted);
  });
  const most = Math.max(...left.map((off) => off ?? Number.POSITIVE_INFINITY));
  // A doubt as large as the radius says no more than flat.
  return most < wanted ? most / rectangular : null;
}
