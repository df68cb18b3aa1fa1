import { coneBlank } from "../../../lib/rolling/cone-blank.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { AngleSize, arcPath, at, away, Line, Paper, Path, Size, spot, Text } from "../pen.tsx";

const cone = { largeDiameter: 200, smallDiameter: 120, height: 150 };

/** A frustum from the side, and its blank: the sector of a ring. To scale. */
export default function ConeLayout() {
  const { coneLayout: texts } = useTexts(figuresRolling);
  const { outerRadius, innerRadius, sectorAngle } = coneBlank(cone);
  const small = 0.36;
  const [axis, base] = [spot(62, 76), 76 + small * cone.height];
  const scale = 0.36;
  const apex = spot(236, 30);
  const half = sectorAngle / 2;
  return (
    <Paper height={236} title={texts.title}>
      <Path
        d={`M${axis.x - (small * cone.smallDiameter) / 2} ${axis.y}H${axis.x + (small * cone.smallDiameter) / 2}L${axis.x + (small * cone.largeDiameter) / 2} ${base}H${axis.x - (small * cone.largeDiameter) / 2}Z`}
        kind="sheet"
      />
      <Line from={spot(axis.x, axis.y - 12)} to={spot(axis.x, base + 12)} kind="centre" />
      <Size
        from={spot(axis.x - (small * cone.smallDiameter) / 2, axis.y)}
        to={spot(axis.x + (small * cone.smallDiameter) / 2, axis.y)}
        off={14}
        text="d"
      />
      <Size
        from={spot(axis.x - (small * cone.largeDiameter) / 2, base)}
        to={spot(axis.x + (small * cone.largeDiameter) / 2, base)}
        off={-22}
        text="D"
      />
      <Text spot={spot(axis.x + 6, (axis.y + base) / 2)} lines="H" kind="size" />
      <Path
        d={`${arcPath(apex, scale * outerRadius, -90 - half, -90 + half)}L${at(away(apex, -90 + half, scale * innerRadius))}${arcPath(apex, scale * innerRadius, -90 + half, -90 - half, "L")}Z`}
        kind="sheet"
      />
      <Line from={apex} to={away(apex, -90 - half, scale * innerRadius)} kind="hidden" />
      <Line from={apex} to={away(apex, -90 + half, scale * innerRadius)} kind="hidden" />
      <circle class="dot" cx={apex.x} cy={apex.y} r={2.4} />
      <AngleSize centre={apex} radius={40} from={-90 - half} to={-90 + half} text="A" textOff={16} />
      <Line from={apex} to={away(apex, -104, scale * outerRadius)} />
      <Text spot={away(apex, -111, scale * outerRadius * 0.86)} lines="R1" anchor="middle" kind="size" />
      <Line from={apex} to={away(apex, -76, scale * innerRadius)} />
      <Text
        spot={spot(away(apex, -76, scale * innerRadius * 0.8).x + 8, away(apex, -76, scale * innerRadius * 0.8).y)}
        lines="R2"
        kind="size"
      />
    </Paper>
  );
}
