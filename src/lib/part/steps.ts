import { mm, type Phrase, say } from "../quantity/phrase.ts";
import { datumEdges } from "./datum.ts";
import { bendsOf, type FlatLayout } from "./flatten.ts";
import type { Plan } from "./plan.ts";

type Known = Pick<Plan, "layout" | "scribe" | "blank" | "practice" | "order">;

/** The whole job in short sentences, in the order it is done. */
export function stepsFor({ layout, scribe, blank, practice, order }: Known): Phrase[] {
  const datums = datumEdges(layout);
  const steps: Phrase[] = [];
  for (const { pieces, size, angle, for: bends } of practice)
    steps.push(
      say`Cut ${pieces} practice strips ${mm(size.length)} × ${mm(size.width)} from the same sheet, bend each in the middle to ${{ value: angle, quantity: "angle" }}, measure both legs, and enter them (for ${bends.join(", ")}).`,
    );
  steps.push(
    say`Cut the blank to ${mm(blank.width)} west to east by ${mm(blank.depth)} south to north, corners square, and take the burr off every edge.`,
  );
  steps.push(
    datums.length === 1
      ? say`Mark the ${datums.join()} edge as the datum: every setting along the part is taken from it.`
      : say`Mark the ${datums.join(" and the ")} edge as datums: every setting is taken from one of them.`,
  );
  const { coated, family } = layout.part.material;
  if (scribe.length > 0)
    steps.push(
      coated || family === "aluminium"
        ? say`Draw the ${scribe.length} lines of the list in order with a fine marker: a scratch that stays on the part harms ${coated ? "its coating" : "this metal"}. Scribe only where metal is cut away.`
        : say`Scribe the ${scribe.length} lines of the list in order, each once, lightly.`,
    );
  if (layout.holes.length > 0)
    steps.push(
      say`Centre-punch where the lines of each hole cross, then punch or drill the ${layout.holes.length === 1 ? "hole" : `${layout.holes.length} holes`} while the blank is flat.`,
    );
  const reliefs = layout.corners.filter(({ relief }) => relief);
  const holesOut = reliefs.filter(({ relief }) => relief?.kind === "hole");
  if (holesOut.length > 0)
    steps.push(
      say`Drill the relief holes, ${mm(holesOut[0]?.relief?.size ?? 0)} across, where the lines of each corner cross: ${holesOut.map(({ id }) => id).join(", ")}.`,
    );
  if (layout.corners.length > 0)
    steps.push(
      say`Cut the corners out to their notch lines${reliefs.length > holesOut.length ? say`, and the square reliefs of ${mm(reliefs.find(({ relief }) => relief?.kind === "notch")?.relief?.size ?? 0)} where the bends cross` : ""}. Take the burr off.`,
    );
  steps.push(...bendingSteps(layout, order));
  if (layout.tabs.length > 0)
    steps.push(
      layout.tabs[0]?.joint === "rivets"
        ? say`Drill the tabs and the sides together at their marks and rivet them.`
        : say`Spot-weld the tabs to the sides at their marks, after a test coupon of the same two sheets has passed.`,
    );
  if (layout.attachments.length > 0)
    steps.push(
      say`Spot-weld the pieces at their marks, after a test coupon of the same two sheets has passed; where a check refuses the metals, rivet them.`,
    );
  steps.push(say`Measure every finished size and write it beside the one wanted.`);
  return steps;
}

/** Bending: in the order found, or by what to look for while none is known. */
function bendingSteps(layout: FlatLayout, order: Plan["order"]): Phrase[] {
  const bends = bendsOf(layout);
  const tabs = layout.tabs.map(({ id }) => id);
  const steps: Phrase[] = [];
  if (tabs.length > 0) steps.push(say`Bend the tabs before the sides they are on: ${tabs.join(", ")}.`);
  if (order && "trapped" in order) {
    steps.push(say`Stop before bending: ${order.trapped.why} Change the part first.`);
    return steps;
  }
  if (order && "steps" in order) {
    const all = order.steps.map(({ bend }) => bend).join(", ");
    if (order.steps.length > 1) steps.push(say`Bend in this order: ${all}. The list of bends says how the piece lies each time.`);
  } else {
    if (layout.chains.some(({ edgeLines }) => edgeLines.length > 0))
      steps.push(say`Make the folded edges first: swing as far as the leaf goes, then press them down.`);
    if (bends.length > 1)
      steps.push(
        say`Decide which bend comes first: a leg that already stands must not be where the leaf, the fingers or the bed have to be. The bending page goes through the usual shapes.`,
      );
  }
  if (bends.length > 0)
    steps.push(
      say`For each bend set the nose of the fingers to the sight line, clamp, swing past the angle, let go, measure, and go on until it is right.`,
    );
  return steps;
}
