import type { Values } from "../../lib/inputs.ts";
import { jointFactors } from "../../lib/joining/spot-spacing.ts";
import { formatNumber, formatQuantity } from "../../lib/quantity/format.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/spot-joint.ts";
import { useTexts } from "../../texts/context.ts";
import { spotJoint } from "../../texts/en/drawings/spot-joint.ts";
import { box } from "../figures/joining/shapes.ts";
import { Arrowhead, Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const left = 84;
const top = 92;
const room = { wide: 206, high: 120 };
/** Of a longer row the beginning is drawn, broken off behind so many spots. */
const mostDrawn = 4;
/** Of each sheet beyond the lap. */
const beyond = 30;

/** The row from above, to scale: pitch, edge and lap, and the way the load pulls. */
export default function SpotJointDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(spotJoint);
  const { size, units } = useSizes(view);
  const { load } = values as Values<typeof sheet.inputs>;
  const { spots, pitch, edge, lap } = outputs as OutputValues<typeof sheet.outputs>;
  if (spots === null || pitch === null || edge === null || lap === null) return null;
  const broken = spots > mostDrawn;
  const drawn = Math.min(spots, mostDrawn);
  // A broken row ends half a pitch behind its last spot.
  const length = (drawn - 1) * pitch + edge + (broken ? pitch / 2 : edge);
  const scale = Math.min(room.wide / length, room.high / lap);
  const right = left + scale * length;
  const bottom = top + scale * lap;
  const row = top + scale * edge;
  const places = Array.from({ length: drawn }, (_, index) => left + scale * (edge + index * pitch));
  const [one = left, next = right] = places;
  const middle = (left + right) / 2;
  const radius = (scale * edge) / jointFactors.edge / 2;
  const [p = "", e = "", w = ""] = [pitch, edge, lap].map((length) => size(length));
  const force = formatQuantity(load, "force");
  const count = formatNumber(spots, 0);
  const sheetPath = (from: number, to: number) =>
    broken ? `M${right} ${from}L${left} ${from}L${left} ${to}L${right} ${to}` : box(left, from, right, to);
  return (
    <Drawing
      id={id}
      height={bottom + beyond + 84}
      title={texts.title}
      description={texts.text(
        broken ? texts.firstOf(drawn, count) : count,
        spots === 1 ? texts.spot : texts.spots,
        force,
        p,
        e,
        w,
        units,
      )}
    >
      <Aside place={spot(8, 14)}>
        {texts.toScale(broken ? texts.drawnOf(drawn, count) : spots === 1 ? texts.oneSpot : texts.manySpots(count))}
      </Aside>
      <path class="sheet" d={sheetPath(top - beyond, bottom)} />
      <path class="sheet" d={sheetPath(top, bottom + beyond)} />
      <Line from={spot(left, top)} to={spot(right, top)} kind="outline" />
      <Line from={spot(left - 8, row)} to={spot(right + 8, row)} kind="centre" />
      {places.map((x) => (
        <circle key={x} class="outline" cx={x} cy={row} r={radius} />
      ))}
      {broken && (
        <path
          class="hidden"
          d={`M${right} ${top - beyond}L${right - 5} ${row - 12}L${right + 5} ${row + 12}L${right} ${bottom + beyond}`}
        />
      )}
      <Line from={spot(middle, top - beyond - 4)} to={spot(middle, top - beyond - 24)} kind="sight" />
      <Arrowhead tip={spot(middle, top - beyond - 30)} direction={90} kind="arrow-motion" />
      <text class="mark-text" x={middle + 10} y={top - beyond - 16}>
        {`F ${force}`}
      </text>
      <Line from={spot(middle, bottom + beyond + 4)} to={spot(middle, bottom + beyond + 24)} kind="sight" />
      <Arrowhead tip={spot(middle, bottom + beyond + 30)} direction={-90} kind="arrow-motion" />
      <text class="mark-text" x={middle + 10} y={bottom + beyond + 24}>
        {`F ${force}`}
      </text>
      <Size from={spot(right, top)} to={spot(right, bottom)} off={28} gap={6} text={`w ${w}`} />
      <Size from={spot(left, row)} to={spot(left, bottom)} off={-26} gap={6} text={`e ${e}`} />
      <Size
        from={spot(left, bottom + beyond)}
        to={spot(one, bottom + beyond)}
        off={-52}
        gap={0}
        text={`e ${e}`}
        outside={scale * edge < 40 ? "from" : undefined}
      />
      {spots > 1 && <Size from={spot(one, bottom + beyond)} to={spot(next, bottom + beyond)} off={-52} gap={0} text={`p ${p}`} />}
    </Drawing>
  );
}
