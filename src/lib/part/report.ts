import type { Catalogue } from "../catalogue.ts";
import { phraseText } from "../quantity/phrase.ts";
import { datumEdges } from "./datum.ts";
import type { BendOrder } from "./order/order.ts";
import type { Plan } from "./plan.ts";

/** The plan as plain JSON, lengths in mm at full precision: what the command line prints. */
export function planReport(plan: Plan, catalogue: Catalogue) {
  const { part } = plan;
  return {
    name: part.name,
    material: part.material.id,
    thickness: part.thickness,
    measured: part.measured,
    quantity: part.quantity,
    datums: datumEdges(plan.layout),
    blank: plan.blank,
    outline: plan.outline,
    bends: plan.bends,
    scribe: plan.scribe,
    holes: plan.holes.map(({ punch, ...hole }) => ({ ...hole, punch: punch ?? null })),
    corners: plan.corners,
    tabs: plan.tabs,
    spots: plan.layout.attachments.map(({ number, panel, flatX, flatY, material, thickness }) => ({
      number,
      panel,
      x: flatX,
      y: flatY,
      material: material.id,
      thickness,
    })),
    cuts: plan.cuts,
    punching: plan.punching,
    ...(plan.joints && { joints: plan.joints }),
    ...(plan.order && { order: orderReport(plan.order) }),
    checks: plan.checks.map(({ why, ...check }) => ({ ...check, why: phraseText(why) })),
    practice: plan.practice,
    uncertainty: plan.sizes,
    steps: plan.steps.map((step) => phraseText(step)),
    remarks: plan.remarks.map(({ level, phrase }) => ({ level, text: phraseText(phrase) })),
    cautions: plan.cautions.map((id) => catalogue.cautions[id]?.text ?? id),
  };
}

/** The order of bends in words and numbers, or what stops it. */
function orderReport(order: BendOrder) {
  if ("steps" in order)
    return order.steps.map(({ bend, faceUp, onLeaf, turnedOver, turned, fingers, why }) => ({
      bend,
      faceUp,
      onLeaf,
      turnedOver,
      turned,
      fingers: fingers.chosen,
      why: phraseText(why),
    }));
  if ("trapped" in order) {
    const { why, remedies, made: _, ...trapped } = order.trapped;
    return { trapped: { ...trapped, why: phraseText(why), remedies: remedies.map(({ phrase }) => phraseText(phrase)) } };
  }
  return { stopped: true };
}
