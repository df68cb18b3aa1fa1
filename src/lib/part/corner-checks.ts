import { mm, say } from "../quantity/phrase.ts";
import { type Check, check, practice } from "./check.ts";
import { collision } from "./clear.ts";
import { type FlatLayout, panelName } from "./flatten.ts";
import { narrowest, overlaps } from "./geometry.ts";

/** Panels that meet no deeper than this only touch [mm]. */
const touching = 1e-3;

/** Strips narrower than this many thicknesses cannot be cut or bent; common practice. */
const sliver = 2;

/** Metal at the corners: bent both ways, lying over itself, or hardly there. */
export function cornerChecks(layout: FlatLayout): Check[] {
  const { part, corners, outline } = layout;
  const crossings = overlaps(outline);
  const thin = narrowest(outline);
  const met = layout.chains.some(({ bends }) => bends.length > 1) || layout.chains.length > 1 ? collision(layout) : undefined;
  return [
    ...corners
      .filter(({ meets, relief }) => meets || relief)
      .map(({ id, bentTwice, relief }) =>
        check({
          rule: "corner-relief",
          label: `Corner ${id}: reach of the relief`,
          value: relief === undefined ? 0 : relief.size / 2,
          limit: relief?.kind === "notch" ? bentTwice / Math.SQRT2 : bentTwice,
          side: "least",
          quantity: "length",
          why: say`Within this distance of where the two bends cross the metal would have to be bent both ways, and it tears.`,
          source: "geometry",
          seen: "read",
        }),
      ),
    ...(corners.length > 0 || crossings.length > 0
      ? [
          check({
            rule: "overlap",
            label: "Places where the flat part would lie over itself",
            value: crossings.length,
            limit: 0,
            side: "most",
            quantity: "count",
            why:
              crossings.length === 0
                ? say`One sheet holds the whole part.`
                : say`The first is at ${mm(crossings[0]?.x ?? 0)} from the west and ${mm(crossings[0]?.y ?? 0)} from the south edge. Shorten a leg there, or make the part of two pieces.`,
            source: "geometry",
            seen: "read",
          }),
        ]
      : []),
    ...(layout.chains.some(({ bends }) => bends.length > 1) || layout.chains.length > 1
      ? [
          check({
            rule: "part-clear",
            label: "Depth to which the finished part runs into itself",
            value: met && met.depth > touching ? met.depth : 0,
            limit: 0,
            side: "most",
            quantity: "length",
            why: met
              ? say`${panelName(met.panels[0])} and ${panelName(met.panels[1]).toLowerCase()} would be in the same place. Shorten one, or bend it by less.`
              : say`No panel of the finished part is in the way of another.`,
            source: "geometry",
            seen: "read",
          }),
        ]
      : []),
    ...(thin && crossings.length === 0
      ? [
          check({
            rule: "sliver",
            label: "Narrowest strip of the outline",
            value: thin.width,
            limit: sliver * part.thickness,
            side: "least",
            quantity: "length",
            why: say`At ${mm(thin.at.x)} from the west and ${mm(thin.at.y)} from the south edge. A narrower strip curls or tears off.`,
            ...practice,
          }),
        ]
      : []),
  ];
}
