import type { Catalogue } from "../catalogue.ts";
import { type Check, check, percent, shopRule } from "../part/check.ts";
import { mm, type Phrase, say } from "../quantity/phrase.ts";
import { carriedRatings } from "../shop/carry-over.ts";
import { oneLifter, sheetMass } from "../stock/sheet-mass.ts";
import type { CutPlan } from "./cut-plan.ts";
import type { SheetRequest } from "./form.ts";

export interface PlanRemark {
  readonly level: "note" | "caution";
  readonly phrase: Phrase;
}

const times = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

/** Mass of a plate of the job’s metal [kg]; undefined where its thickness is not given. */
export function massOf(
  size: { readonly width: number; readonly length: number },
  { material, thickness }: SheetRequest["values"],
  { materials }: Pick<Catalogue, "materials">,
): number | undefined {
  if (thickness === undefined) return undefined;
  return sheetMass({ width: size.width, length: size.length, thickness, density: materials[material].density.value });
}

/** A plan held against this shop’s shear and the people who lift the sheets. */
export function shearChecks(plan: CutPlan, { job, values }: SheetRequest, catalogue: Catalogue): Check[] {
  const { shear } = catalogue.shop;
  const cuts = plan.sheets.flatMap((each) => each.cuts.cuts);
  const checks: Check[] = [];
  if (cuts.length > 0) {
    const long = cuts.filter(({ faults }) => faults.includes("longer-than-shear")).length;
    checks.push(
      check({
        rule: "shear-length",
        label: "Longest cut",
        value: Math.max(...cuts.map(({ cutLength }) => cutLength)),
        limit: shear.cuttingLength,
        side: "most",
        quantity: "length",
        why:
          long > 0
            ? say`${times(long, "stroke is", "strokes are")} longer than ${shear.name}: have the sheet cut down first, or take a saw or a nibbler for these.`
            : say`${shear.name} cuts no longer in one stroke.`,
        ...shopRule,
      }),
    );
    const held = cuts.map((cut) => (cut.across === "width" ? cut.held.width : cut.held.length));
    const small = cuts.filter(({ faults }) => faults.includes("too-small-to-hold")).length;
    checks.push(
      check({
        rule: "shear-hold",
        label: "Shortest part held",
        value: Math.min(...held),
        limit: shear.shortestPiece,
        side: "least",
        quantity: "length",
        why:
          small > 0
            ? say`${times(small, "stroke leaves", "strokes leave")} less than the hold-downs of ${shear.name} grip. Never hold such a part by hand: cut it with snips.`
            : say`The hold-downs of ${shear.name} grip nothing shorter, measured from the blade towards you.`,
        ...shopRule,
      }),
    );
  }
  const carried = carriedRatings(catalogue).find(({ material }) => material === values.material);
  if (values.thickness !== undefined && carried)
    checks.push(
      check({
        rule: "shear-rating",
        label: "Thickness on the shear",
        value: values.thickness,
        limit: carried.shear,
        side: "most",
        quantity: "length",
        why: say`${percent(values.thickness / carried.shear)} of the thickness that ${shear.name} takes in ${catalogue.materials[values.material].name}, carried over from ${mm(shear.rating.thickness)} of ${catalogue.materials[shear.rating.material].name} by shear strength.`,
        ...shopRule,
      }),
    );
  const masses = plan.sheets.flatMap(({ sheet }) => {
    const stock = job.sheets[sheet];
    const mass = stock && massOf(stock, values, catalogue);
    return mass === undefined ? [] : [mass];
  });
  if (masses.length > 0)
    checks.push(
      check({
        rule: "sheet-mass",
        label: "Heaviest sheet",
        value: Math.max(...masses),
        limit: oneLifter,
        side: "most",
        quantity: "mass",
        why: say`More than one person lifts when everything is ideal; a large sheet is never ideal. Carry and feed it with two, and use a stand.`,
        source: "niosh-lifting",
        seen: "read",
      }),
    );
  return checks;
}

/** What one should know about a plan besides its checks. */
export function planRemarks(plan: CutPlan, { job }: SheetRequest, { shop: { shear } }: Catalogue): PlanRemark[] {
  const remarks: PlanRemark[] = [];
  const cuts = plan.sheets.flatMap((each) => each.cuts.cuts);
  const scribed = cuts.filter(({ stop }) => stop === undefined).length;
  if (scribed > 0)
    remarks.push({
      level: "note",
      phrase: say`${times(scribed, "stroke goes", "strokes go")} to a scribed line, since the back stop of ${shear.name} only reaches from ${mm(shear.shortestStop)} to ${mm(shear.longestStop)}.`,
    });
  if (job.pieces.every(({ grain }) => grain === "free"))
    remarks.push({
      level: "note",
      phrase: say`Pieces may lie either way. If one has a sharp bend, say which way its rolling direction has to run: a bend across the rolling direction cracks later.`,
    });
  return remarks;
}
