import type { Catalogue, Material } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { largestThicknessRatio } from "../joining/governing-thickness.ts";
import { jointSpacing } from "../joining/spot-spacing.ts";
import { otherJoints, weldPair } from "../joining/weld-pair.ts";
import { atMost, mm, say } from "../quantity/phrase.ts";
import { type Check, check, practice, shopRule } from "./check.ts";
import type { FlatAttachment, FlatLayout } from "./flatten.ts";
import { depthIn } from "./geometry.ts";

const numbersOf = (spots: readonly FlatAttachment[]) =>
  spots.length === 1 ? `Spot ${spots[0]?.number}` : `Spots ${spots.map(({ number }) => number).join(", ")}`;

/** Spots of the same metal and thickness are one weld to set, and one to judge. */
function grouped(spots: readonly FlatAttachment[]): readonly (readonly [FlatAttachment, ...FlatAttachment[]])[] {
  const groups = new Map<string, [FlatAttachment, ...FlatAttachment[]]>();
  for (const spot of spots) {
    const key = `${spot.material.id} ${spot.thickness}`;
    const group = groups.get(key);
    if (group) group.push(spot);
    else groups.set(key, [spot]);
  }
  return [...groups.values()];
}

function pairCheck(own: Material, spots: readonly [FlatAttachment, ...FlatAttachment[]]): Check {
  const other = spots[0].material;
  const { verdict, reasons, instead } = weldPair(own, other);
  const [reason] = reasons;
  return check({
    rule: "weldability",
    label: `${numbersOf(spots)}: metals that a small welder joins`,
    value: verdict === "no" ? 0 : 1,
    limit: 1,
    side: "least",
    quantity: "count",
    why: say`${own.name} to ${other.name}: ${reason?.text ?? "they weld to each other."}${verdict === "no" ? ` Use ${instead.map((joint) => otherJoints[joint]).join(" or ")} instead.` : ""}`,
    source: reason?.source ?? "common-practice",
    seen: reason ? "read" : "practice",
  });
}

/** Spacing of spots by the thinner sheet, or undefined where no rule covers it. */
function spacingFor(thickness: number) {
  try {
    return jointSpacing(thickness);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return undefined;
  }
}

/** Pieces spot-welded to the part: metals, thicknesses, the welder, and the metal around each spot. */
export function attachmentChecks(layout: FlatLayout, catalogue: Catalogue): readonly Check[] {
  const { part, attachments: spots, outline } = layout;
  const { welder } = catalogue.shop;
  const checks: Check[] = [];
  for (const group of grouped(spots)) {
    const [{ thickness: other }] = group;
    const [thin, thick] = [Math.min(part.thickness, other), Math.max(part.thickness, other)];
    checks.push(
      pairCheck(part.material, group),
      check({
        rule: "weld-thickness-ratio",
        label: `${numbersOf(group)}: thicker sheet by the thinner`,
        value: thick / thin,
        limit: largestThicknessRatio,
        side: "most",
        quantity: "ratio",
        why: say`${mm(part.thickness)} to ${mm(other)}. Beyond that ratio the heat does not form where the sheets meet.`,
        source: "iso-14373-scope",
        seen: "read",
      }),
      check({
        rule: "welder-thickest",
        label: `${numbersOf(group)}: thickness at the spot welder`,
        value: thick,
        limit: welder.thickest,
        side: "most",
        quantity: "length",
        why: say`${welder.name} welds mild steel from ${mm(welder.thinnest)} to ${atMost(welder.thickest)}, each of two sheets.`,
        ...shopRule,
      }),
    );
    const spacing = spacingFor(thin);
    if (!spacing) continue;
    checks.push(
      check({
        rule: "spot-lap",
        label: `${numbersOf(group)}: distance to the edge`,
        value: Math.min(...group.map(({ flatX, flatY }) => depthIn(outline, { x: flatX, y: flatY }))),
        limit: spacing.edge,
        side: "least",
        quantity: "length",
        why: say`Nearer to the edge the metal is squeezed out from between the tips.`,
        ...practice,
      }),
    );
    const pitches = group.flatMap((a, index) =>
      group.slice(index + 1).map((b) => Math.hypot(a.flatX - b.flatX, a.flatY - b.flatY)),
    );
    if (pitches.length > 0)
      checks.push(
        check({
          rule: "spot-pitch",
          label: `${numbersOf(group)}: pitch`,
          value: Math.min(...pitches),
          limit: spacing.pitch,
          side: "least",
          quantity: "length",
          why: say`A spot too near the last one lets its current escape through it.`,
          ...practice,
        }),
      );
  }
  if (spots.length > 0)
    checks.push(
      check({
        rule: "welder-throat",
        label: "Spots from the nearest edge of the blank",
        value: Math.max(...spots.map(({ flatX, flatY }) => Math.min(flatX, layout.width - flatX, flatY, layout.depth - flatY))),
        limit: welder.throat,
        side: "most",
        quantity: "length",
        why: say`The arms of ${welder.name} reach no further in from an edge; formed sides may be in their way too.`,
        ...shopRule,
      }),
    );
  return checks;
}
