import type { FlatChain } from "../../lib/part/flatten.ts";
import { panelName } from "../../lib/part/flatten.ts";
import { fold } from "../../lib/part/fold.ts";
import { formatQuantity, type LengthView } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { away, mid, Paper, paperWidth, spot, Text } from "../figures/pen.tsx";
import { onPaper, sectionPath } from "../figures/section.ts";

const margin = 64;
const tallest = 88;
/** Of the letters above their line, from one line to the next, and what is left free round everything. */
const textHeight = 12;
const lineHeight = 19;
const edge = 6;

/** The finished part seen along the bends of one direction, each panel with the size it is to have. */
export function SectionDrawing({ chain, view }: { chain: FlatChain; view: LengthView }) {
  const texts = useTexts(planSheet);
  const { part } = chain;
  const section = fold(chain);
  const spots = section.panels.flatMap(({ start, end }) => [start, end]);
  const xs = spots.map(({ x }) => x);
  const zs = spots.map(({ z }) => z);
  const [minX, maxX, minZ, maxZ] = [Math.min(...xs), Math.max(...xs), Math.min(...zs), Math.max(...zs)];
  const room = part.thickness * 2;
  const scale = Math.min((paperWidth - 2 * margin) / (maxX - minX + room), tallest / (maxZ - minZ + room));
  const middleX = paperWidth / 2 - ((minX + maxX) / 2) * scale;
  const loose = { scale, origin: spot(middleX, 0) };
  const centre = onPaper(loose, (minX + maxX) / 2, (minZ + maxZ) / 2);
  const labels = section.panels.map((panel) => {
    const middle = mid(onPaper(loose, panel.start.x, panel.start.z), onPaper(loose, panel.end.x, panel.end.z));
    // Sizes stand on the side of the panel that faces away from the middle of the part.
    const normal = panel.heading - 90;
    const outward = away(middle, normal, 20);
    const inward = away(middle, normal + 180, 20 + part.thickness * scale);
    const far = (s: { x: number; y: number }) => Math.hypot(s.x - centre.x, s.y - centre.y);
    const place = far(outward) >= far(inward) ? outward : inward;
    const steep = Math.abs(Math.sin((panel.heading * Math.PI) / 180)) > 0.5;
    const right = place.x > middle.x;
    return {
      id: panel.id,
      x: place.x + (steep ? (right ? -10 : 10) : 0),
      // Above the metal both lines stand clear of it.
      y: place.y + 4 - (!steep && place.y < middle.y ? textHeight : 0),
      anchor: !steep ? ("middle" as const) : right ? ("start" as const) : ("end" as const),
    };
  });
  // The paper ends where the metal and its sizes do.
  const top = Math.min(-maxZ * scale - part.thickness * scale, ...labels.map(({ y }) => y - textHeight)) - edge;
  const floor = Math.max(-minZ * scale + part.thickness * scale, ...labels.map(({ y }) => y + lineHeight)) + edge;
  const view2 = { scale, origin: spot(middleX, -top) };

  return (
    <Paper
      height={floor - top}
      title={texts.drawing.bent(
        part.name,
        section.panels.map(({ id }) => panelName(id)),
      )}
    >
      <path class="sheet" d={sectionPath(section, part.thickness, view2)} />
      {labels.map(({ id, x, y, anchor }, index) => (
        <Text
          key={id}
          spot={spot(x, y - top)}
          lines={[id, formatQuantity(chain.panels[index]?.length ?? 0, "length", view, "size")]}
          anchor={anchor}
          kind="size"
        />
      ))}
    </Paper>
  );
}
