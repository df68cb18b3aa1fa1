import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { at, away, Line, Paper, Path, type Spot, spot, Text } from "../pen.tsx";

const surface = 132;

/** A punch with its point at a spot: the full angle of the point, and its lean from upright, to the right when positive [deg]. */
function punchPath(point: Spot, angle: number, lean: number, width: number): string {
  const up = 90 - lean;
  const shoulder = away(point, up, width / Math.tan((angle * Math.PI) / 360));
  const end = away(point, up, 92);
  const side = (from: Spot, sign: 1 | -1) => away(from, up + sign * 90, width);
  return `M${at(side(end, 1))}L${at(side(shoulder, 1))}L${at(point)}L${at(side(shoulder, -1))}L${at(side(end, -1))}Z`;
}

const cells = [
  { name: "lean", angle: 60, lean: 32, width: 13, dent: 0 },
  { name: "upright", angle: 60, lean: 0, width: 13, dent: 4 },
  { name: "deepen", angle: 90, lean: 0, width: 15, dent: 7 },
] as const;

/** From two scribed lines to a centre that guides a drill. */
export default function PunchSteps() {
  const { punchSteps: texts } = useTexts(figuresMarking);
  return (
    <Paper height={206} title={texts.title}>
      {cells.map(({ name, angle, lean, width, dent }, index) => {
        const point = spot(index * 120 + (index === 0 ? 44 : 60), surface + dent);
        const half = dent * Math.tan((angle * Math.PI) / 360);
        return (
          <g key={angle + lean}>
            <Path
              d={`M${index * 120 + 6} ${surface}H${point.x - half}L${at(point)}L${point.x + half} ${surface}H${index * 120 + 114}V${surface + 14}H${index * 120 + 6}Z`}
              kind="sheet"
            />
            <Path d={punchPath(point, angle, lean, width)} kind="tool" />
            {index > 0 && <Text spot={spot(point.x + 22, surface - 14)} lines={`${angle}°`} kind="size" />}
            {index === 0 && <Line from={spot(point.x, surface - 4)} to={spot(point.x, surface + 6)} kind="sight" />}
            <Text spot={spot(index * 120 + 60, 176)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
