import type { Catalogue } from "../catalogue.ts";
import { jointSpacing } from "../joining/spot-spacing.ts";
import { weldPair } from "../joining/weld-pair.ts";
import { mm, say } from "../quantity/phrase.ts";
import { rivetDistances } from "../stock/rivet-spacing.ts";
import { type Check, check, practice, shopRule } from "./check.ts";
import type { FlatLayout, FlatTab } from "./flatten.ts";

/** Distance from the middle of a joint to the nearest edge of its tab, and between neighbours [mm]. */
function distances(tab: FlatTab): { readonly edge: number; readonly pitch: number | undefined } {
  const along = tab.axis === "x" ? "y" : "x";
  const places = tab.joints.map(({ tab: at }) => at[along]).toSorted((a, b) => a - b);
  const [first] = tab.joints;
  const ends = places.length === 0 ? [] : [(places[0] as number) - tab.span.from, tab.span.to - (places.at(-1) as number)];
  const side = first ? Math.abs(tab.end - first.tab[tab.axis]) : 0;
  const gaps = places.slice(1).map((place, index) => place - (places[index] as number));
  return { edge: Math.min(side, ...ends), pitch: gaps.length > 0 ? Math.min(...gaps) : undefined };
}

/** Tabs that are welded or riveted: whether the metal takes it, the machine reaches, and the joints have metal around them. */
export function jointChecks(layout: FlatLayout, catalogue: Catalogue): readonly Check[] {
  const { part, tabs } = layout;
  const [tab] = tabs;
  if (!tab) return [];
  const { welder } = catalogue.shop;
  const spots = tab.joint === "spots";
  const rivet = tab.rivet ?? 0;
  const limits = spots
    ? jointSpacing(part.thickness)
    : { edge: rivetDistances.edge * rivet, pitch: rivetDistances.spacing * rivet };
  const edge = Math.min(...tabs.map((each) => distances(each).edge));
  const pitches = tabs.flatMap((each) => distances(each).pitch ?? []);
  const checks: Check[] = [
    check({
      rule: spots ? "spot-lap" : "rivet-edge",
      label: spots ? "Spots on the tabs: distance to the edge" : "Rivets on the tabs: distance to the edge",
      value: edge,
      limit: limits.edge,
      side: "least",
      quantity: "length",
      why: spots
        ? say`Nearer to the edge the metal is squeezed out from between the tips. Make the tabs wider or the sides higher.`
        : say`Nearer to the edge the rivet tears out. Make the tabs wider or the sides higher.`,
      ...practice,
    }),
    ...(pitches.length === 0
      ? []
      : [
          check({
            rule: spots ? "spot-pitch" : "rivet-pitch",
            label: spots ? "Spots on the tabs: pitch" : "Rivets on the tabs: pitch",
            value: Math.min(...pitches),
            limit: limits.pitch,
            side: "least",
            quantity: "length" as const,
            why: spots
              ? say`A spot too near the last one lets its current escape through it.`
              : say`Rivets too near each other weaken the sheet between them.`,
            ...practice,
          }),
        ]),
  ];
  if (!spots) return checks;
  const { verdict, reasons } = weldPair(part.material, part.material);
  checks.push(
    check({
      rule: "weldability",
      label: `Metals in the joint that a small welder joins`,
      value: verdict === "no" ? 0 : 1,
      limit: 1,
      side: "least",
      quantity: "count",
      why: say`${part.material.name}: ${reasons[0]?.text ?? "it welds to itself."}${verdict === "no" ? " Rivet the tabs." : ""}`,
      source: reasons[0]?.source ?? "common-practice",
      seen: reasons[0] ? "read" : "practice",
    }),
  );
  checks.push(
    check({
      rule: "welder-thickest",
      label: "Thickness at the spot welder",
      value: part.thickness,
      limit: welder.thickest,
      side: "most",
      quantity: "length",
      why: say`${welder.name} welds mild steel from ${mm(welder.thinnest)} to ${mm(welder.thickest)}, each of two sheets.`,
      ...shopRule,
    }),
    check({
      rule: "welder-thinnest",
      label: "Thickness at the spot welder",
      value: part.thickness,
      limit: welder.thinnest,
      side: "least",
      quantity: "length",
      why: say`${welder.name} welds mild steel from ${mm(welder.thinnest)} to ${mm(welder.thickest)}, each of two sheets.`,
      ...shopRule,
    }),
    check({
      rule: "welder-throat",
      label: "Spots from the rim of the part",
      value: Math.max(...tabs.flatMap((each) => each.joints.map(() => each.span.to - each.span.from))),
      limit: welder.throat,
      side: "most",
      quantity: "length",
      why: say`The arms of ${welder.name} must reach the spot from the open side.`,
      ...shopRule,
    }),
  );
  return checks;
}
