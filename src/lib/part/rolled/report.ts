import type { Catalogue } from "../../catalogue.ts";
import { phraseText } from "../../quantity/phrase.ts";
import type { RolledPlan } from "./plan.ts";

/** The plan of a rolled part as plain JSON, lengths in mm at full precision: what the command line prints. */
export function rolledReport(plan: RolledPlan, catalogue: Catalogue) {
  const { part, sheet, rolling } = plan;
  const { seam, sector } = sheet;
  return {
    kind: part.kind,
    name: part.name,
    material: part.material.id,
    thickness: part.thickness,
    ...(part.kind === "tube" && { measured: part.measured }),
    quantity: part.quantity,
    datums: ["west", "south"],
    blank: plan.blank,
    outline: sheet.outline.map(({ x, y }) => [x, y]),
    ...(sector && { sector }),
    around: sheet.around,
    seam,
    joints: sheet.joints,
    ends: sheet.ends,
    cuts: plan.cuts,
    punching: plan.punching,
    ...(plan.joints && { joining: plan.joints }),
    scribe: plan.scribe,
    holes: sheet.holes.map(({ flatX, flatY, flatTurn, shape, width, height }) => ({
      x: flatX,
      y: flatY,
      ...(shape === "round" ? { diameter: width } : { width, height, turn: flatTurn }),
      shape,
    })),
    rolls: {
      settings: rolling.settings,
      refused: rolling.refused.map(({ because, ...rest }) => ({ ...rest, because: phraseText(because) })),
      smallestDiameter: rolling.smallestDiameter ?? null,
    },
    checks: plan.checks.map(({ why, ...check }) => ({ ...check, why: phraseText(why) })),
    practice: plan.practice,
    uncertainty: plan.sizes,
    steps: plan.steps.map((step) => phraseText(step)),
    remarks: plan.remarks.map(({ level, phrase }) => ({ level, text: phraseText(phrase) })),
    cautions: plan.cautions.map((id) => catalogue.cautions[id]?.text ?? id),
  };
}
