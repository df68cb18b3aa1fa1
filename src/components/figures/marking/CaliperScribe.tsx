import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { at, Line, Note, Paper, Path, Size, type Spot, spot, Text } from "../pen.tsx";

/** Set to this [mm]; tilted by this [deg]. */
const setting = 15;
const tilt = 10;
const scale = 5.4;
const surface = 132;

/** Caliper over the edge of a sheet, from the side; turned about the corner of the edge, to the right when positive. */
function Caliper({ corner, turned }: { corner: Spot; turned: number }) {
  const cos = Math.cos((turned * Math.PI) / 180);
  const sin = Math.sin((turned * Math.PI) / 180);
  const put = (x: number, up: number): Spot => spot(corner.x + x * cos + up * sin, corner.y - up * cos + x * sin);
  // The jaw that slides is drawn to where its inner face meets the surface.
  const gap = scale * setting;
  const reach = gap * Math.tan((turned * Math.PI) / 180);
  const path = (points: readonly (readonly [number, number])[]) => `M${points.map(([x, up]) => at(put(x, up))).join("L")}Z`;
  return (
    <g>
      <Path
        d={path([
          [-14, 70],
          [gap + 44, 70],
          [gap + 44, 58],
          [-14, 58],
        ])}
        kind="tool"
      />
      <Path
        d={path([
          [0, 60],
          [0, -18],
          [-6, -18],
          [-14, 4],
          [-14, 60],
        ])}
        kind="tool"
      />
      <Path
        d={path([
          [gap, 60],
          [gap, reach],
          [gap + 5, reach + 8],
          [gap + 15, 30],
          [gap + 15, 60],
        ])}
        kind="tool"
      />
    </g>
  );
}

/** A caliper run along the edge: upright, and what tilting it does. */
export default function CaliperScribe() {
  const { caliperScribe: texts } = useTexts(figuresMarking);
  const far = setting / Math.cos((tilt * Math.PI) / 180);
  return (
    <Paper height={206} title={texts.title(setting, tilt, formatNumber(far, 2))}>
      {[30, 216].map((x, index) => {
        const corner = spot(x, surface);
        const line = index === 0 ? setting : far;
        return (
          <g key={x}>
            <Path d={`M${x} ${surface}H${x + 128}V${surface + 12}H${x}Z`} kind="sheet" />
            <Caliper corner={corner} turned={index === 0 ? 0 : tilt} />
            <Size
              from={spot(x, surface + 12)}
              to={spot(x + line * scale, surface + 12)}
              off={-22}
              text={formatNumber(line, index === 0 ? 0 : 2)}
            />
            <Line from={spot(x + line * scale, surface - 3)} to={spot(x + line * scale, surface + 5)} kind="sight" />
          </g>
        );
      })}
      <Note to={spot(90, 68)} from={spot(96, 36)} lines={texts.beamLevel} />
      <Note to={spot(22, 104)} from={spot(50, 100)} lines={texts.fixedJaw} />
      <Text spot={spot(94, 192)} lines={texts.setTo(setting)} anchor="middle" kind="name" />
      <Text spot={spot(280, 192)} lines={texts.tilted(setting, tilt)} anchor="middle" kind="name" />
    </Paper>
  );
}
