import { engagedLength } from "../../lib/cutting/shear-force.ts";
import type { Values } from "../../lib/inputs.ts";
import { formatQuantity } from "../../lib/quantity/format.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/shear-load.ts";
import { useTexts } from "../../texts/context.ts";
import { shearLoad } from "../../texts/en/drawings/shear-load.ts";
import { Arrowhead, Line, Note, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const front = { left: 20, right: drawingWidth - 20, top: 74, thick: 22 };
/** Top edge of the upper blade. */
const top = 30;
const side = { middle: 96, top: 196, thick: 26 };

/** The blades from the front, with what they cut at one moment, and from the side, with the gap between them. */
export default function ShearLoadDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(shearLoad);
  const { size, angle: turned, units } = useSizes(view);
  const { thickness, length, rake } = values as Values<typeof sheet.inputs>;
  const { force, clearance } = outputs as OutputValues<typeof sheet.outputs>;
  if (force === null || clearance === null) return null;
  const width = front.right - front.left;
  const bottom = front.top + front.thick;
  const engaged = rake > 0 ? Math.min(engagedLength({ thickness, rake }), length) : length;
  // To the share of the cut that it is, as long as it can be seen.
  const drawn = width * Math.min(Math.max(engaged / length, 0.08), 1);
  const start = rake > 0 ? front.left + Math.min(0.3 * width, width - drawn) : front.left;
  const whole = rake === 0 || drawn === width;
  const slope = front.thick / drawn;
  const bladeAt = (x: number) => bottom - slope * (x - start);
  // A steep blade leaves the picture at its top before it leaves it on the right.
  const leaves = Math.min(start + (bottom - top) / slope, front.right);
  const upper = rake > 0 ? `L${start} ${bottom}L${leaves} ${bladeAt(leaves)}V${top}` : `H${front.right}V${top}`;
  const gap = 7;
  return (
    <Drawing
      id={id}
      height={290}
      title={texts.title}
      description={texts.text(
        size(thickness),
        size(length),
        rake > 0 ? texts.raked(turned(rake), size(engaged)) : texts.parallelBlades,
        formatQuantity(force, "force"),
        size(clearance),
        units,
      )}
    >
      <Aside place={spot(8, 14)}>{texts.drawnLarger(units)}</Aside>
      <path class="tool" d={`M${front.left} ${top}V${rake > 0 ? bottom : front.top}${upper}Z`} />
      <path
        class="sheet"
        d={
          rake > 0
            ? `M${start} ${bottom}L${start + drawn} ${bladeAt(start + drawn)}H${front.right}V${bottom}Z`
            : `M${front.left} ${front.top}H${front.right}V${bottom}H${front.left}Z`
        }
      />
      <rect class="tool" x={front.left} y={bottom} width={width} height={16} />
      {rake > 0 && <path class="mark-line" d={`M${start} ${bottom}L${start + drawn} ${bladeAt(start + drawn)}V${bottom}Z`} />}
      <Size
        from={spot(start, bottom)}
        to={spot(whole ? front.right : start + drawn, bottom)}
        off={-30}
        gap={18}
        text={size(engaged)}
        outside={drawn < 60 ? "to" : undefined}
      />
      <text class="label" x={front.left + 6} y={46}>
        {texts.upperBlade(rake > 0 ? `, ${turned(rake)}` : texts.parallel)}
      </text>

      <path class="tool" d={`M${side.middle - gap / 2} ${side.top}V${side.top - 26}H${side.middle - 50}V${side.top - 6}Z`} />
      <path
        class="tool"
        d={`M${side.middle + gap / 2} ${side.top + side.thick}V${side.top + 60}H${side.middle + 56}V${side.top + side.thick}Z`}
      />
      <rect class="sheet" x={side.middle - 66} y={side.top} width={150} height={side.thick} />
      <Line from={spot(side.middle - gap / 2, side.top)} to={spot(side.middle - gap / 2, side.top + 72)} />
      <Line from={spot(side.middle + gap / 2, side.top + 60)} to={spot(side.middle + gap / 2, side.top + 72)} />
      <Line from={spot(side.middle - 22, side.top + 67)} to={spot(side.middle - gap / 2, side.top + 67)} />
      <Line from={spot(side.middle + 22, side.top + 67)} to={spot(side.middle + gap / 2, side.top + 67)} />
      <Arrowhead tip={spot(side.middle - gap / 2, side.top + 67)} direction={0} />
      <Arrowhead tip={spot(side.middle + gap / 2, side.top + 67)} direction={180} />
      <text class="size" x={side.middle + 26} y={side.top + 71}>
        {`c ${size(clearance)}`}
      </text>
      <Size from={spot(side.middle + 84, side.top + side.thick)} to={spot(side.middle + 84, side.top)} off={-16} text="" />
      <text class="size" x={side.middle + 106} y={side.top + side.thick / 2 + 4}>
        {`T ${size(thickness)}`}
      </text>
      <Note to={spot(side.middle - 30, side.top - 16)} from={spot(side.middle + 40, side.top - 18)} lines={texts.fromTheSide} />
    </Drawing>
  );
}
