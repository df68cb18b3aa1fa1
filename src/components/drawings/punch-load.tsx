import type { Values } from "../../lib/inputs.ts";
import { formatQuantity } from "../../lib/quantity/format.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/punch-load.ts";
import { useTexts } from "../../texts/context.ts";
import { punchLoad } from "../../texts/en/drawings/punch-load.ts";
import { Arrowhead, Line, Size, spot } from "../figures/pen.tsx";
import { type Cut, diePaths, pressedPath, punchPath } from "../figures/punching/cut.ts";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { LoadGauge, percent } from "./parts/LoadGauge.tsx";
import { useSizes } from "./parts/sizes.ts";

/** The hole from above with the edge that is cut, the punch in the sheet, and how much of this shop's punch that takes. */
export default function PunchLoadDrawing({ id, values, outputs, view, shop }: DrawingProps) {
  const texts = useTexts(punchLoad);
  const { size, units } = useSizes(view);
  const { shape, diameter, width, height, thickness } = values as Values<typeof sheet.inputs>;
  const { force, perimeter } = outputs as OutputValues<typeof sheet.outputs>;
  if (force === null || perimeter === null) return null;
  const across = shape === "round" ? diameter : width;
  const along = shape === "rectangle" ? height : across;
  // Any hole has to fit, and its sides keep their proportion as long as both can be seen.
  const scale = 84 / Math.max(across, along);
  const [w, h] = [Math.max(scale * across, 6), Math.max(scale * along, 6)];
  const middle = spot(88, 104);
  const cut: Cut = {
    top: spot(264, 96),
    thickness: Math.min(Math.max((52 * thickness) / across, 6), 40),
    half: 26,
    clearance: 4,
    reach: 78,
    rollover: 0.12,
    penetration: 0.4,
    burr: 0.06,
  };
  const share = force / shop.punch.force;
  const text = formatQuantity(force, "force", view);
  return (
    <Drawing
      id={id}
      height={262}
      title={texts.title}
      description={texts.text(shape, size(perimeter), size(thickness), text, percent(share), units)}
    >
      <Aside place={spot(8, 14)}>{texts.fromAbove}</Aside>
      <Aside place={spot(352, 14)} end>
        {texts.inSection}
      </Aside>
      <rect class="sheet" x={24} y={44} width={128} height={120} />
      {shape === "round" ? (
        <circle class="stretch" cx={middle.x} cy={middle.y} r={w / 2} />
      ) : (
        <rect class="stretch" x={middle.x - w / 2} y={middle.y - h / 2} width={w} height={h} />
      )}
      <text class="size" x={middle.x} y={middle.y + 5} text-anchor="middle">
        {`L ${size(perimeter)}`}
      </text>
      <Size
        from={spot(middle.x - w / 2, 44)}
        to={spot(middle.x + w / 2, 44)}
        off={8}
        text={`${shape === "round" ? "d" : "a"} ${size(across)}`}
        gap={2}
      />
      {shape === "rectangle" && (
        <text class="size" x={middle.x} y={156} text-anchor="middle">
          {`b ${size(along)}`}
        </text>
      )}
      {diePaths(cut, 36).map((d) => (
        <path key={d} class="tool" d={d} />
      ))}
      <path class="sheet" d={pressedPath(cut, 0.3 * cut.thickness)} />
      <path class="tool" d={punchPath(cut, 0.3 * cut.thickness, 44)} />
      <Line from={spot(264, 34)} to={spot(264, 48)} kind="motion" />
      <Arrowhead tip={spot(264, 56)} direction={-90} kind="arrow-motion" />
      <text class="mark-text" x={264} y={30} text-anchor="middle">
        {`F ${text}`}
      </text>
      <Size
        from={spot(186, 96 + cut.thickness)}
        to={spot(186, 96)}
        off={0.1}
        gap={0}
        text={`T ${size(thickness)}`}
        outside="to"
      />
      <LoadGauge share={share} top={218} />
    </Drawing>
  );
}
