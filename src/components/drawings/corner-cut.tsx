import { setback } from "../../lib/bending/setback.ts";
import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/corner-cut.ts";
import { useTexts } from "../../texts/context.ts";
import { cornerCut } from "../../texts/en/drawings/corner-cut.ts";
import { Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const area = { left: 62, top: 62, right: drawingWidth - 14, bottom: 286 };

/** The corner of the blank with its notch, the relief hole and the zones that become bends. */
export default function CornerCutDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(cornerCut);
  const { size, units } = useSizes(view);
  const { sideA, sideB, thickness, radius, gap } = values as Values<typeof sheet.inputs>;
  const { guideA, guideB, reliefDiameter } = outputs as OutputValues<typeof sheet.outputs>;
  if (guideA === null || guideB === null || reliefDiameter === null) return null;
  const sb = setback({ angle: 90, radius, thickness, legTo: "apex" });
  // Side A is turned up along the upper edge, side B along the left one.
  const zone = (side: number, guide: number) => ({ from: side - sb, to: guide - gap + sb });
  const a = zone(sideA, guideA);
  const b = zone(sideB, guideB);
  const shown = Math.max(a.to, b.to, guideA, guideB) * 1.5;
  const scale = Math.min(area.right - area.left, area.bottom - area.top) / shown;
  const x = (value: number) => area.left + scale * value;
  const y = (value: number) => area.top + scale * value;
  const right = area.right;
  const bottom = area.bottom;
  const inner = `H${x(guideB)}V${y(guideA)}`;
  return (
    <Drawing
      id={id}
      height={306}
      title={texts.title}
      description={texts.text(size(guideA), size(guideB), size(reliefDiameter), units)}
    >
      <Aside place={spot(8, 14)}>{units}</Aside>
      <rect class="zone" x={x(guideB)} y={y(a.from)} width={right - x(guideB)} height={scale * (a.to - a.from)} />
      <rect class="zone" x={x(b.from)} y={y(guideA)} width={scale * (b.to - b.from)} height={bottom - y(guideA)} />
      <path class="zone" d={`M${right} ${y(0)}${inner}H${x(0)}V${bottom}H${right}Z`} />
      <path class="outline" d={`M${right} ${y(0)}${inner}H${x(0)}V${bottom}`} />
      <path class="before" d={`M${x(0)} ${y(guideA)}V${y(0)}H${x(guideB)}`} />
      {[a.from, a.to].map((place) => (
        <Line key={place} from={spot(x(guideB), y(place))} to={spot(right, y(place))} />
      ))}
      {[b.from, b.to].map((place) => (
        <Line key={place} from={spot(x(place), y(guideA))} to={spot(x(place), bottom)} />
      ))}
      <circle class="badge" cx={x(b.to)} cy={y(a.to)} r={Math.max((scale * reliefDiameter) / 2, 2)} />
      <Size from={spot(x(0), y(0))} to={spot(x(guideB), y(0))} off={20} text={size(guideB)} />
      <Size from={spot(x(0), y(0))} to={spot(x(0), y(guideA))} off={-20} text={size(guideA)} />
      <text class="label" x={right - 8} y={y(0) + 18} text-anchor="end">
        {texts.sideA}
      </text>
      <text class="label" x={x(0) + 8} y={bottom - 10}>
        {texts.sideB}
      </text>
      <text class="mark-text" x={x(b.to) + (scale * reliefDiameter) / 2 + 8} y={y(a.to) + (scale * reliefDiameter) / 2 + 16}>
        {`⌀ ${size(reliefDiameter)}`}
      </text>
    </Drawing>
  );
}
