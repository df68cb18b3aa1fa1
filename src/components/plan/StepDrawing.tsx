import type { FlatChain } from "../../lib/part/flatten.ts";
import { fold } from "../../lib/part/fold.ts";
import { useTexts } from "../../texts/context.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { Paper, paperWidth, spot } from "../figures/pen.tsx";
import { onPaper, sectionPath } from "../figures/section.ts";

const margin = 12;
const tallest = 90;

/** The part in section as one step of the order leaves it, and, ghosted, as it came to the brake. */
export function StepDrawing({ chain, made, bend }: { chain: FlatChain; made: ReadonlySet<string>; bend: string }) {
  const texts = useTexts(planSheet);
  const turned = (also: boolean) => chain.bends.map(({ id }) => (made.has(id) || (also && id === bend) ? 1 : 0));
  /** Bends that are still flat are left out of what is folded, so each is put back in its place. */
  const section = (also: boolean) => {
    const { panels, bends } = fold(chain, turned(also));
    return { panels, bends: chain.bends.map(({ id }) => bends.find((each) => each.id === id)) };
  };
  const before = section(false);
  const after = section(true);
  const { thickness } = chain.part;
  const points = [before, after].flatMap(({ panels }) => panels.flatMap(({ start, end }) => [start, end]));
  const xs = points.map(({ x }) => x);
  const zs = points.map(({ z }) => z);
  const [minX, maxX, minZ, maxZ] = [Math.min(...xs), Math.max(...xs), Math.min(...zs), Math.max(...zs)];
  const room = 2 * thickness;
  const scale = Math.min((paperWidth - 2 * margin) / (maxX - minX + room), tallest / (maxZ - minZ + room));
  const height = (maxZ - minZ + room) * scale + 2 * margin;
  const view = {
    scale,
    origin: spot(paperWidth / 2 - ((minX + maxX) / 2) * scale, height / 2 + ((minZ + maxZ) / 2) * scale),
  };
  const at = after.bends.find((each) => each?.id === bend);
  const mark = at && onPaper(view, at.centre.x, at.centre.z);
  return (
    <Paper height={height} title={texts.drawing.afterBend(bend)}>
      <path class="sheet-ghost" d={sectionPath(before, thickness, view)} />
      <path class="sheet" d={sectionPath(after, thickness, view)} />
      {mark && <circle class="thin" cx={mark.x.toFixed(1)} cy={mark.y.toFixed(1)} r={10} />}
    </Paper>
  );
}
