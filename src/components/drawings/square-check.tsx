import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/square-check.ts";
import { useTexts } from "../../texts/context.ts";
import { squareCheck } from "../../texts/en/drawings/square-check.ts";
import { at, Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const area = { left: 44, top: 56, width: drawingWidth - 104, height: 168 };
/** A shift smaller than this on the paper is drawn as large as this. */
const leastDrawn = 16;

/** The blank with its diagonals, leaning to the side that they say, and mostly more than it does. */
export default function SquareCheckDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(squareCheck);
  const { size, units } = useSizes(view);
  const { width, height, diagonalA, diagonalB } = values as Values<typeof sheet.inputs>;
  const { offset, angleError } = outputs as OutputValues<typeof sheet.outputs>;
  if (offset === null || angleError === null) return null;
  const scale = Math.min((area.width - leastDrawn) / width, area.height / height);
  const own = scale * offset;
  const shift = offset === 0 ? 0 : Math.sign(offset) * Math.min(Math.max(Math.abs(own), leastDrawn), 0.3 * area.width);
  const enlarged = Math.abs(shift) > 1.05 * Math.abs(own);
  const bottom = area.top + scale * height;
  const left = area.left + (area.width - scale * width - Math.abs(shift)) / 2 + Math.max(-shift, 0);
  const right = left + scale * width;
  const corners = [spot(left, bottom), spot(right, bottom), spot(right + shift, area.top), spot(left + shift, area.top)] as const;
  const [a, b, c, d] = corners;
  return (
    <Drawing
      id={id}
      height={bottom + 66}
      title={texts.title}
      description={texts.text(
        size(width),
        size(height),
        size(diagonalA),
        size(diagonalB),
        size(Math.abs(offset)),
        offset < 0 ? texts.left : texts.right,
        units,
      )}
    >
      <Aside place={spot(8, 14)}>{enlarged ? texts.leanLarger(units) : units}</Aside>
      <path class="sheet" d={`M${corners.map(at).join("L")}Z`} />
      <Line from={a} to={c} kind="sight" />
      <Line from={b} to={d} kind="sight" />
      {shift !== 0 && <Line from={a} to={spot(left, area.top - 14)} kind="hidden" />}
      {shift !== 0 && (
        <text class="mark-text" x={left + shift / 2} y={area.top - 20} text-anchor="middle">
          {`v ${size(Math.abs(offset))}`}
        </text>
      )}
      <text class="mark-text" x={c.x} y={c.y - 8}>
        A
      </text>
      <text class="mark-text" x={d.x + 6} y={d.y - 8}>
        B
      </text>
      <text class="mark-text" x={drawingWidth / 2} y={bottom + 52} text-anchor="middle">
        {`A ${size(diagonalA)},  B ${size(diagonalB)}`}
      </text>
      <Size from={a} to={b} off={-18} text={size(width)} />
      <Size from={spot(b.x, b.y)} to={c} off={-18} text={size(height)} />
    </Drawing>
  );
}
