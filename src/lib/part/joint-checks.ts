import type { Catalogue } from "../catalogue.ts";
import { leastJoints } from "../joining/joint-row.ts";
import { jointSpacing } from "../joining/spot-spacing.ts";
import { weldPair } from "../joining/weld-pair.ts";
import { mm, say } from "../quantity/phrase.ts";
import { rivetDistances } from "../stock/rivet-spacing.ts";
import { type Check, check, practice, shopRule } from "./check.ts";
import type { FlatLayout, FlatTab } from "./flatten.ts";

/** Distance from the middle of a joint to the nearest edge of its tab [mm]. */
function edgeOf(tab: FlatTab): number {
  const along = tab.axis === "x" ? "y" : "x";
  return Math.min(
    ...tab.joints.flatMap(({ tab: at }) => [
      Math.abs(tab.end - at[tab.axis]),
      at[along] - tab.span.from,
      tab.span.to - at[along],
    ]),
  );
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
  const edge = Math.min(...tabs.map(edgeOf));
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
    check({
      rule: spots ? "spot-count" : "rivet-count",
      label: spots ? "Spots on the shortest tab" : "Rivets on the shortest tab",
      value: Math.min(...tabs.map(({ joints }) => joints.length)),
      limit: leastJoints,
      side: "least",
      quantity: "count",
      why: spots
        ? say`A single spot lets the tab turn. Two take ${mm(limits.pitch)} between them, or the current of one escapes through the other, and ${mm(limits.edge)} to each end: make the sides higher.`
        : say`A single rivet lets the tab turn. Two take ${mm(limits.pitch)} between them and ${mm(limits.edge)} to each end: make the sides higher.`,
      ...practice,
    }),
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
