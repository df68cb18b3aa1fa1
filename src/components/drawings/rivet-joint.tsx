import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/rivet-joint.ts";
import { useTexts } from "../../texts/context.ts";
import { rivetJoint } from "../../texts/en/drawings/rivet-joint.ts";
import { Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

const left = 96;
const top = 68;
/** Length of joint that is drawn: two edge distances and a pitch. */
const shown = 200;

/** Two rivets at the end of a row from above, at the least distances and to scale. */
export default function RivetJointDrawing({ id, outputs, view }: DrawingProps) {
  const texts = useTexts(rivetJoint);
  const { size, units } = useSizes(view);
  const { diameter, pitch, edge, count } = outputs as OutputValues<typeof sheet.outputs>;
  if (diameter === null || pitch === null || edge === null) return null;
  const scale = shown / (2 * edge + pitch);
  const half = scale * edge;
  const y = top + half;
  const bottom = y + half;
  const places = [left + half, left + half + scale * pitch];
  const right = left + shown;
  const [p = "", e = "", d = ""] = [pitch, edge, diameter].map((length) => size(length));
  return (
    <Drawing id={id} height={bottom + 68} title={texts.title} description={texts.text(count, d, p, e, units)}>
      <Aside place={spot(8, 14)}>{texts.toScale(units)}</Aside>
      <rect class="sheet" x={left} y={top - 14} width={shown} height={bottom - top + 14} />
      <rect class="sheet" x={left} y={top} width={shown} height={bottom - top + 14} />
      <Line from={spot(left - 10, y)} to={spot(right + 10, y)} kind="centre" />
      {places.map((x) => (
        <circle key={x} class="outline" cx={x} cy={y} r={(scale * diameter) / 2} />
      ))}
      <Size from={spot(places[0] ?? 0, y)} to={spot(places[1] ?? 0, y)} off={half + 28} text={`p ${p}`} gap={half} />
      <Size from={spot(left, y)} to={spot(places[0] ?? 0, y)} off={-half - 32} text={`e ${e}`} gap={half} />
      <Size from={spot(right, y)} to={spot(right, bottom)} off={24} text={`e ${e}`} outside="to" />
      <Aside place={spot(8, bottom + 62)}>{`D ${d}`}</Aside>
    </Drawing>
  );
}
