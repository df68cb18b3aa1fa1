import { mm, type Phrase, say } from "../../quantity/phrase.ts";
import type { Blank } from "../blank.ts";
import type { RolledSheet } from "./model.ts";
import type { TrialStrip } from "./plan.ts";
import type { RolledLine } from "./scribe.ts";
import type { RollSettings } from "./setting.ts";

/** The work in its order. Hooks before rolling, standing edges after it: /rolling/, /joining/seams/. */
export function rolledSteps(
  sheet: RolledSheet,
  blank: Blank,
  scribe: readonly RolledLine[],
  { settings }: RollSettings,
  practice: readonly TrialStrip[],
): Phrase[] {
  const { part, seam, sector, holes, joints } = sheet;
  const cone = part.kind === "cone";
  const off = sector !== undefined && sector.centre.y > sheet.depth;
  const steps: Phrase[] = [];
  if (practice.length > 0)
    steps.push(say`Roll and measure the ${practice.length} trial strips, and enter them in the setting of the rolls.`);
  steps.push(
    cone
      ? say`Cut a rectangle ${mm(blank.width)} × ${mm(blank.depth)}, corners square.`
      : say`Cut the blank to ${mm(blank.width)} west to east, round the tube, by ${mm(blank.depth)} south to north. Both diagonals must be alike.`,
  );
  const { coated, family } = part.material;
  const fine = coated || family === "aluminium";
  steps.push(
    say`${off ? "Clamp a board of the same height where the centre O lies. " : ""}${fine ? "Draw" : "Scribe"} the ${scribe.length} lines of the list in order on the face that will lie up in the rolls, the inside later${fine ? say`, with a fine marker: a scratch that stays on the part harms ${coated ? "its coating" : "this metal"}` : ", each once, lightly"}.`,
  );
  steps.push(
    sector
      ? say`Cut the straight edges on the shear and the arcs with snips or on the band saw, file to the line, and take the burr off.`
      : say`Take the burr off every edge.`,
  );
  if (holes.length > 0)
    steps.push(
      say`Centre-punch where the lines of each hole cross, then punch or drill the ${holes.length === 1 ? "hole" : `${holes.length} holes`} while the blank is flat; a large one after rolling, or the sheet kinks there.`,
    );
  if (seam.kind === "grooved")
    steps.push(
      say`Fold both hooks on the brake, A up and B down, ${mm(seam.width)} wide, and leave them open enough for one thickness. Clip their corners.`,
    );
  const flat = Math.max(0, ...settings.map(({ flatEnd }) => flatEnd));
  if (flat > 0)
    steps.push(
      say`Bend both edges to the template first, over about ${mm(flat)}: over a bar, or by rolling the sheet end for end.`,
    );
  steps.push(
    say`Zero: the rear roll just touches the flat sheet along its whole length.${seam.kind === "grooved" ? " Lay the sheet in behind the hook, the rolls standing still: the pinch must not squeeze it." : ""}`,
  );
  if (cone)
    steps.push(
      say`Set the stop at the narrow end, and lead the blank by the wide end; its middle line passes the rolls square to them.`,
    );
  const [first] = settings;
  if (first)
    steps.push(say`Roll in ${first.passes.length} passes as listed. Stop before the last and hold the template to the curve.`);
  steps.push(...closing(sheet));
  if (joints.length > 0)
    steps.push(
      seam.joint === "rivets"
        ? say`Drill the ${joints.length} holes through both layers at their marks, with clamps on, and rivet from the middle outwards.`
        : say`Spot-weld the ${joints.length} marks from the middle outwards, after a test coupon of the same sheets has passed.`,
    );
  steps.push(say`Measure every finished size: diameters with a tape all round, or as the mean of two at right angles.`);
  return steps;
}

function closing({ part, seam }: RolledSheet): Phrase[] {
  if (part.kind === "tube" && part.arc < 360) return [say`Hold the curve to the template from end to end.`];
  const off = say`Free the end of the upper roll as the manual says, and slide the part off.`;
  switch (seam.kind) {
    case "butt":
      return [off, say`Bring the edges together; they meet along their whole length, or are eased by hand.`];
    case "lap":
      return [
        say`Roll side B, which lies inside, a little tighter.`,
        off,
        say`Lay edge A over B, the edge of B on the lap line, and clamp.`,
      ];
    case "grooved":
      return [
        off,
        say`Hook the edges into each other over a stake, and set the seam down with a grooving tool of ${mm(seam.width)} from both ends to the middle.`,
      ];
    case "standing":
      return [off, say`Turn edges A and B out square over a stake, fold A's rim over B, and fold both over together.`];
  }
}
