import type { Polygon, Segments } from "./distance.ts";
import type { FormingBrake } from "./job.ts";
import { segmentAt } from "./pose.ts";
import { linesOf, staysClear } from "./region.ts";
import type { Tools } from "./tools.ts";

/** The opening of the clamp is shared in quarters between lifting the piece off the bed and raising the fingers off it. */
export const quarters = 4;
/** Longer than any way out [mm]. */
const far = 20_000;

/**
 * `bed`: the piece is lifted, then drawn forwards over bed and leaf. `fingers`: fingers and beam are raised off it, then it is drawn
 * forwards. `shifted`: the same, but the piece is drawn forwards a little before the fingers are raised. `beam`: fingers taken out.
 */
export const passages = ["bed", "fingers", "shifted", "beam"] as const;
export type Passage = (typeof passages)[number];
/** How far a piece is drawn forwards from the noses before they are raised past a folded edge or a flange [mm]. */
const shift = 10;

function move(brake: FormingBrake, tools: Tools, passage: Passage, quarter: number) {
  const way = (brake.clampOpening * quarter) / quarters;
  const obstacles = passage === "bed" ? [tools.bed, tools.leaf] : passage === "beam" ? [tools.beam] : [tools.fingers, tools.beam];
  return { rise: passage === "bed" ? way : -way, first: passage === "shifted" ? shift : 0, obstacles };
}

/** Whether sheet in section goes through a passage. Handling needs no clearance, only that nothing is cut through. */
export function sheetPasses(
  brake: FormingBrake,
  tools: Tools,
  sheet: Segments,
  passage: Passage,
  quarter: number,
  keep: number,
  skip?: ReadonlySet<number>,
): boolean {
  const { rise, first, obstacles } = move(brake, tools, passage, quarter);
  for (let index = 0; 4 * index < sheet.length; index += 1) {
    if (skip?.has(index)) continue;
    const [sx, az, tx, bz] = segmentAt(sheet, index);
    const [ax, bx] = [sx + first, tx + first];
    for (const tool of obstacles) {
      if (first !== 0 && !staysClear(tool, [sx, az, tx, bz], first, 0, keep)) return false;
      if (rise !== 0 && !staysClear(tool, [ax, az, bx, bz], 0, rise, keep)) return false;
      if (!staysClear(tool, [ax, az + rise, bx, bz + rise], far, 0, keep)) return false;
    }
  }
  return true;
}

/** The same for panels that stand across the section: fingers are beside them, not in their way. */
export function boxesPass(
  brake: FormingBrake,
  tools: Tools,
  boxes: readonly Polygon[],
  passage: Passage,
  quarter: number,
): boolean {
  const { rise, obstacles } = move(brake, tools, passage === "bed" ? passage : "beam", quarter);
  return boxes.every((box) =>
    linesOf(box).every(([ax, az, bx, bz]) =>
      obstacles.every(
        (tool) =>
          (rise === 0 || staysClear(tool, [ax, az, bx, bz], 0, rise, 0)) &&
          staysClear(tool, [ax, az + rise, bx, bz + rise], far, 0, 0),
      ),
    ),
  );
}
