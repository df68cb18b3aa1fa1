import { measuredWhen } from "../bending/measured-bends.ts";
import { publishedAllowances } from "../bending/methods.ts";
import { bendDeduction, setback } from "../bending/setback.ts";
import { usualLegEnd } from "../bending/symbols.ts";
import type { Catalogue } from "../catalogue.ts";
import { listed, mm, type Phrase, say } from "../quantity/phrase.ts";
import { materialThicknessTolerance } from "../stock/thickness-tolerance.ts";
import { bendsOf, type FlatBend, type FlatLayout, panelName } from "./flatten.ts";

/** A finished size and how far it may be off, k = 2. */
export interface FinishedSize {
  readonly panel: string;
  readonly what: string;
  /** [mm] */
  readonly size: number;
  /** ± [mm], k = 2 */
  readonly plusMinus: number;
  /** Shares of it, each ± [mm], k = 2, before they are combined. */
  readonly from: { readonly marking: number; readonly setting: number; readonly bendData: number; readonly thickness: number };
}

/** How well the nose is set to the sight line by eye [mm], two standard deviations; common practice, no source. */
export const noseSetting = 0.25;

/** A half-width a within which every value is equally likely has the standard deviation a/√3 (JCGM 100, 4.3.7). */
export const rectangular = Math.sqrt(3);

/** Width of sheet for which the thickness tolerance is looked up: common stock width [mm]. */
export const stockWidth = 1250;

/** Standard uncertainty of one bend's deduction [mm], and where it comes from. */
export function bendUncertainty(layout: FlatLayout, bend: FlatBend): { readonly standard: number; readonly measured: boolean } {
  const { measured } = layout.part.bendData;
  if (measured?.uncertainty !== undefined) return { standard: measured.uncertainty / 2, measured: true };
  const size = { angle: bend.angle, radius: bend.radius, thickness: layout.part.thickness };
  const sb = setback({ ...size, legTo: usualLegEnd(bend.angle) });
  const deductions = publishedAllowances(size)
    .map(({ allowance }) => allowance)
    .filter((allowance) => typeof allowance === "number")
    .map((allowance) => bendDeduction({ setback: sb, allowance }));
  const halfWidth = (Math.max(...deductions) - Math.min(...deductions)) / 2;
  return { standard: halfWidth / rectangular, measured: false };
}

/**
 * Expanded uncertainty of every finished size along the chains.
 *
 * @returns one size a panel, ± with k = 2
 * @remarks Combined after JCGM 100 (GUM): scribed lines and nose settings are independent and add as squares; the bend deduction and the
 *   sheet's thickness are the same error at both ends of a panel and add as they are. Half of a deduction's error falls on each leg.
 *   Without a measured deduction its half-width is that of the published methods.
 */
export function finishedSizes(layout: FlatLayout, catalogue: Catalogue): readonly FinishedSize[] {
  const { part } = layout;
  const line = (catalogue.markingMethods[part.marking]?.error ?? 0) / 2;
  const sheet = (materialThicknessTolerance(catalogue, part.material, part.thickness, stockWidth) ?? 0) / rectangular;
  return layout.chains.flatMap((chain) =>
    chain.panels.map((panel, index) => {
      const ends = [chain.bends[index - 1], chain.bends[index]].filter((bend) => bend !== undefined);
      // The datum edge itself is where settings start; the far edge is one more marked line.
      const farEdge = index === chain.panels.length - 1 ? 1 : 0;
      const marking = line * Math.sqrt(ends.length + farEdge);
      const setting = (noseSetting / 2) * Math.sqrt(ends.length);
      const bendData = ends.reduce((sum, bend) => sum + bendUncertainty(layout, bend).standard / 2, 0);
      const reach = (bend: FlatBend) => (bend.angle <= 90 ? Math.tan((bend.angle * Math.PI) / 360) : 1);
      const perThickness = part.measured === "outside" ? ends.reduce((sum, bend) => sum + reach(bend), 0) : 0;
      const thickness = sheet * perThickness;
      const across = chain.axis === "y" ? "south to north" : "west to east";
      const name = panel.id === "base" && layout.chains.length > 1 ? `Base ${across}` : panelName(panel.id);
      return {
        panel: panel.id,
        what: `${name}, ${part.measured}`,
        size: panel.length,
        plusMinus: 2 * Math.hypot(marking, setting, bendData, thickness),
        from: { marking: 2 * marking, setting: 2 * setting, bendData: 2 * bendData, thickness: 2 * thickness },
      };
    }),
  );
}

/** Sets of practice pieces that are named as not fitting; more would bury what matters. */
const mostNamed = 3;

/** What the bend data rest on, in words, with what does not fit the part. */
export function bendDataRemarks(layout: FlatLayout): readonly { readonly level: "note" | "caution"; readonly phrase: Phrase }[] {
  const { part } = layout;
  const { measured, measuredHere } = part.bendData;
  const bends = bendsOf(layout);
  if (bends.length === 0) return [];
  const [best] = measuredHere;
  const fitting = best?.misfits.length === 0 ? best.bend : undefined;
  if (!measured)
    return [
      {
        level: "caution",
        phrase: fitting
          ? say`The bend deduction is from a handbook, and this shop has measured this bend: ${mm(fitting.deduction)} ± ${mm(fitting.uncertainty)}, ${measuredWhen(fitting)}. Choose the bend data “Measured in this shop”.`
          : say`The bend deduction is from a handbook, not from this brake and this sheet. Published methods differ, and the ± of the finished sizes says by how much. Bend practice pieces first.`,
      },
    ];
  const remarks: { level: "note" | "caution"; phrase: Phrase }[] = [];
  if (measured.fromShop)
    remarks.push({
      level: "note",
      phrase: say`The bend deduction ${mm(measured.deduction)} ± ${mm(measured.fromShop.uncertainty)} was measured in this shop: ${measuredWhen(measured.fromShop)}${measured.fromShop.brake ? say`, on ${measured.fromShop.brake}` : ""}.`,
    });
  const passedOver = measuredHere.filter(({ bend, misfits }) => misfits.length > 0 && bend !== measured.fromShop);
  if (measured.fromShop && passedOver.length > 0)
    remarks.push({
      level: "note",
      phrase: say`Other bends measured in this metal do not fit this part: ${listed(passedOver.slice(0, mostNamed).map(({ bend, misfits }) => say`${bend.date} (${listed(misfits)})`))}.`,
    });
  if (measured.uncertainty === undefined)
    remarks.push({
      level: "caution",
      phrase: say`The ± of the measured deduction is not entered, so the spread of the published methods is used for it.`,
    });
  if (Math.abs(measured.thickness - part.thickness) > 0.05 * part.thickness)
    remarks.push({
      level: "caution",
      phrase: say`The deduction was measured on ${mm(measured.thickness)}, the part is ${mm(part.thickness)} thick: its K-factor, ${measured.kFactor.toFixed(2)}, is carried over, and the deduction with it is only an estimate.`,
    });
  for (const bend of bends) {
    const otherRadius = Math.abs(bend.radius - measured.radius) > Math.max(0.05 * bend.radius, 0.05);
    const otherAngle = Math.abs(bend.angle - measured.angle) > 1;
    if (otherRadius || otherAngle)
      remarks.push({
        level: "caution",
        phrase: say`Bend ${bend.id} has ${otherRadius && otherAngle ? "another radius and angle" : otherRadius ? "another radius" : "another angle"} than the practice pieces; its deduction comes from their K-factor, ${measured.kFactor.toFixed(2)}. Bend practice pieces for it too.`,
      });
  }
  return remarks;
}
