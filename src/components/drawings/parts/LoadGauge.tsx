import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { drawings } from "../../../texts/en/drawings.ts";
import { Line, spot } from "../../figures/pen.tsx";
import { drawingWidth } from "./Drawing.tsx";

const left = 24;
const width = drawingWidth - 48;
const height = 16;
/** The share of the rating at the right end; what is above is cut off there. */
const full = 1.25;

export const percent = (share: number) => `${formatNumber(100 * share, 0)} %`;

/** How much of a machine's rating a load takes, as a bar with the rating marked. It needs 28 above `top` and 36 below it. */
export function LoadGauge({ share, top }: { share: number; top: number }) {
  const texts = useTexts(drawings);
  const x = (part: number) => left + (width * Math.min(part, full)) / full;
  return (
    <g>
      <rect class="gauge" x={left} y={top} width={width} height={height} />
      <rect class={share > 1 ? "gauge-over" : "gauge-fill"} x={left} y={top} width={x(share) - left} height={height} />
      <Line from={spot(x(1), top - 8)} to={spot(x(1), top + height + 6)} kind="sight" />
      <text class="mark-text" x={x(1)} y={top - 12} text-anchor="middle">
        {texts.rating}
      </text>
      <text class="size" x={left} y={top - 8}>
        {texts.ofRating(percent(share))}
      </text>
      <text class="aside" x={left} y={top + height + 16}>
        0
      </text>
      <text class="aside" x={x(1)} y={top + height + 18} text-anchor="middle">
        100 %
      </text>
    </g>
  );
}
