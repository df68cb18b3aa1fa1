import { holeCircle } from "../../../lib/marking/hole-circle.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { Line, Paper, Path, spot, Text } from "../pen.tsx";

const circle = { diameter: 70, count: 8, centreX: 50, centreY: 50 };
const scale = 1.5;
const size = 100;

const distinct = (values: readonly number[]) =>
  [...new Set(values.map((value) => Number(value.toFixed(6))))].sort((a, b) => a - b);

/** The same eight holes twice: with the first on the axis, and turned by half a step, which needs fewer lines. */
export default function FewerLines() {
  const { fewerLines: texts } = useTexts(figuresMarking);
  return (
    <Paper height={262} title={texts.title}>
      {[0, 180 / circle.count].map((startAngle, index) => {
        const left = index === 0 ? 14 : 196;
        const bottom = 188;
        const holes = holeCircle({ ...circle, startAngle });
        const x = (value: number) => left + scale * value;
        const y = (value: number) => bottom - scale * value;
        const across = distinct(holes.map((hole) => hole.x));
        const up = distinct(holes.map((hole) => hole.y));
        return (
          <g key={startAngle}>
            <Path d={`M${left} ${bottom}H${x(size)}V${y(size)}H${left}Z`} kind="sheet" />
            {across.map((value) => (
              <Line key={value} from={spot(x(value), bottom)} to={spot(x(value), y(size))} />
            ))}
            {up.map((value) => (
              <Line key={value} from={spot(left, y(value))} to={spot(x(size), y(value))} />
            ))}
            {holes.map((hole) => (
              <circle key={hole.angle} class="outline" cx={x(hole.x).toFixed(1)} cy={y(hole.y).toFixed(1)} r={4} />
            ))}
            <Text
              spot={spot(x(size / 2), bottom + 20)}
              lines={texts.firstHoleAt(formatNumber(startAngle, 1).replace(/\.0$/, ""), across.length)}
              anchor="middle"
              kind="name"
            />
            <Text
              spot={spot(x(size / 2), bottom + 54)}
              lines={across.map((value) => formatNumber(value, 1).replace(/\.0$/, "")).join("  ")}
              anchor="middle"
              kind="label"
            />
          </g>
        );
      })}
    </Paper>
  );
}
