import type { FlatChain } from "../../lib/part/flatten.ts";
import { panelName } from "../../lib/part/flatten.ts";
import { fold } from "../../lib/part/fold.ts";
import { formatQuantity, type LengthView } from "../../lib/quantity/format.ts";
import { away, mid, Paper, paperWidth, spot, Text } from "../figures/pen.tsx";
import { onPaper, sectionPath } from "../figures/section.ts";

const margin = 64;
const tallest = 230;

/** The finished part seen along the bends of one direction, each panel with the size it is to have. */
export function SectionDrawing({ chain, view }: { chain: FlatChain; view: LengthView }) {
  const { part } = chain;
  const section = fold(chain);
  const spots = section.panels.flatMap(({ start, end }) => [start, end]);
  const xs = spots.map(({ x }) => x);
  const zs = spots.map(({ z }) => z);
  const [minX, maxX, minZ, maxZ] = [Math.min(...xs), Math.max(...xs), Math.min(...zs), Math.max(...zs)];
  const room = part.thickness * 2;
  const scale = Math.min((paperWidth - 2 * margin) / (maxX - minX + room), tallest / (maxZ - minZ + room));
  const height = (maxZ - minZ + room) * scale + 76;
  const origin = spot(paperWidth / 2 - ((minX + maxX) / 2) * scale, height / 2 + ((minZ + maxZ) / 2) * scale);
  const view2 = { scale, origin };
  const centre = onPaper(view2, (minX + maxX) / 2, (minZ + maxZ) / 2);

  return (
    <Paper height={height} title={`${part.name}, bent: ${section.panels.map(({ id }) => panelName(id)).join(", ")}`}>
      <path class="sheet" d={sectionPath(section, part.thickness, view2)} />
      {section.panels.map((panel, index) => {
        const middle = mid(onPaper(view2, panel.start.x, panel.start.z), onPaper(view2, panel.end.x, panel.end.z));
        // Sizes stand on the side of the panel that faces away from the middle of the part.
        const normal = panel.heading - 90;
        const outward = away(middle, normal, 20);
        const inward = away(middle, normal + 180, 20 + part.thickness * scale);
        const far = (s: { x: number; y: number }) => Math.hypot(s.x - centre.x, s.y - centre.y);
        const place = far(outward) >= far(inward) ? outward : inward;
        const steep = Math.abs(Math.sin((panel.heading * Math.PI) / 180)) > 0.5;
        const anchor = !steep ? "middle" : place.x > middle.x ? "start" : "end";
        const nudge = steep ? (place.x > middle.x ? -10 : 10) : 0;
        return (
          <Text
            key={panel.id}
            spot={spot(place.x + nudge, place.y + 4)}
            lines={[panel.id, formatQuantity(chain.panels[index]?.length ?? 0, "length", view, "size")]}
            anchor={anchor}
            kind="size"
          />
        );
      })}
    </Paper>
  );
}
