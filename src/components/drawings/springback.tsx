import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/springback.ts";
import { useTexts } from "../../texts/context.ts";
import { drawings } from "../../texts/en/drawings.ts";
import { Arrowhead, Line, type Spot, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";
import { fitInto, from, hull, outline, thickening, walk } from "./parts/strip.ts";

const box = { left: 24, top: 44, width: drawingWidth - 48, height: 200 };

/** The same strip swung to the end, and after it was let go. */
export default function SpringbackDrawing({ id, values, outputs, view }: DrawingProps) {
  const { thickness, radius, angle } = values as Values<typeof sheet.inputs>;
  const { toolRadius, swingAngle, overbend } = outputs as OutputValues<typeof sheet.outputs>;
  const { springback: texts } = useTexts(drawings);
  const { size, angle: turned, units } = useSizes(view);
  if (toolRadius === null || swingAngle === null || overbend === null) return null;

  const arc = ((radius + thickness / 2) * angle * Math.PI) / 180;
  const leg = Math.max(0.8 * arc, 12 * thickness);
  const drawnAs = (drawn: number) => {
    const strip = (turn: number, bendRadius: number) =>
      walk([{ ahead: leg }, { turn, radius: bendRadius }, { ahead: leg }], drawn);
    const free = strip(angle, radius);
    const held = strip(swingAngle, toolRadius);
    const flat = { start: from({ x: leg, z: 0, heading: 0 }, 0), end: from({ x: leg, z: 0, heading: 0 }, 0.75 * leg) };
    return { drawn, free, held, flat, sight: fitInto([...hull(free, drawn), ...hull(held, drawn), flat.end], box) };
  };
  const { drawn, free, held, flat, sight } = drawnAs(thickness * thickening(thickness, drawnAs(thickness).sight.scale));
  const end = (pieces: typeof free) => pieces.at(-1)?.end ?? flat.end;
  const tips = { free: sight.spot(end(free)), held: sight.spot(end(held)) };
  const corner = sight.spot(flat.start);
  return (
    <Drawing
      id={id}
      height={268}
      title={texts.title}
      description={texts.text(turned(swingAngle), size(toolRadius), turned(overbend), turned(angle), size(radius), units)}
    >
      <Aside place={spot(8, 14)}>{texts.held}</Aside>
      <Aside place={spot(8, 28)}>{texts.free}</Aside>
      <Line from={corner} to={sight.spot(flat.end)} kind="hidden" />
      <path class="before" d={outline(held, drawn, sight)} />
      <path class="sheet" d={outline(free, drawn, sight)} />
      <BackArrow from={tips.held} to={tips.free} />
      <Labelled place={spot(Math.max(tips.held.x - 14, 96), tips.held.y + 4)} name={texts.swing} text={turned(swingAngle)} mark />
      <text class="size" x={corner.x + 6} y={corner.y + 20}>
        {`Ri ${size(toolRadius)} → R ${size(radius)}`}
      </text>
      <Labelled
        place={spot(Math.min(tips.free.x + 14, drawingWidth - 84), tips.free.y + 4)}
        name={texts.endsAt}
        text={turned(angle)}
      />
    </Drawing>
  );
}

function Labelled({ place, name, text, mark = false }: { place: Spot; name: string; text: string; mark?: boolean }) {
  return (
    <text class={mark ? "mark-text" : "size"} x={place.x} y={place.y} text-anchor={mark ? "end" : "start"}>
      {name} {text}
    </text>
  );
}

function BackArrow({ from: start, to }: { from: Spot; to: Spot }) {
  const direction = (Math.atan2(start.y - to.y, to.x - start.x) * 180) / Math.PI;
  if (Math.hypot(to.x - start.x, to.y - start.y) < 9) return null;
  return (
    <g>
      <path class="motion-line" d={`M${start.x} ${start.y}L${to.x} ${to.y}`} />
      <Arrowhead tip={to} direction={direction} kind="arrow-motion" />
    </g>
  );
}
