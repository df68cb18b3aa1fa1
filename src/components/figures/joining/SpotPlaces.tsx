import { jointFactors, jointSpacing } from "../../../lib/joining/spot-spacing.ts";
import { buttonFactors, weldButton } from "../../../lib/joining/weld-button.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Line, Note, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { box } from "./shapes.ts";

const thickness = 1;

/** Where spots go in the lap of two 1 mm sheets under load, to scale. */
export default function SpotPlaces() {
  const { spotPlaces: texts } = useTexts(figuresJoining);
  const { pitch, edge } = jointSpacing(thickness);
  const diameter = weldButton({ governing: thickness, factor: buttonFactors.target });
  const scale = 4.4;
  const lap = { left: 116, right: 116 + 2 * edge * scale };
  const middle = (lap.left + lap.right) / 2;
  const top = 54;
  const rows = [0, 1, 2].map((index) => top + edge * scale + index * pitch * scale);
  const foot = (rows.at(-1) ?? 0) + edge * scale;
  const mm = (value: number) => formatNumber(value, 0);
  return (
    <Paper height={foot + 66} title={texts.title(mm(pitch), mm(edge), mm(2 * edge))}>
      <Path d={box(12, top, lap.right, foot)} kind="sheet" />
      <Path d={box(lap.left, top, 348, foot)} kind="sheet" />
      <Line from={spot(lap.left, top)} to={spot(lap.left, foot)} kind="hidden" />
      <Line from={spot(middle, top - 10)} to={spot(middle, foot + 10)} kind="centre" />
      {rows.map((y) => (
        <g key={y}>
          <circle class="outline" cx={middle} cy={y} r={(diameter * scale) / 2} />
          <Line from={spot(middle - 20, y)} to={spot(middle + 20, y)} kind="centre" />
        </g>
      ))}
      <Size from={spot(lap.left, top)} to={spot(lap.right, top)} off={14} text={texts.lap(mm(2 * edge))} />
      <Size from={spot(middle, foot)} to={spot(lap.right, foot)} off={-22} text={`e ${mm(edge)}`} />
      <Size from={spot(middle, rows[0] ?? 0)} to={spot(middle, rows[1] ?? 0)} off={-92} text={`p ${mm(pitch)}`} gap={24} />
      <Size from={spot(middle, rows[2] ?? 0)} to={spot(middle, foot)} off={-92} text={`e ${mm(edge)}`} gap={24} />
      <Note
        to={spot(middle - (diameter * scale) / 2, rows[1] ?? 0)}
        from={spot(66, (rows[1] ?? 0) + 26)}
        lines={`d = ${mm(diameter)}`}
        anchor="end"
        end="arrow"
      />
      <Text spot={spot(12, foot + 26)} lines={texts.widestPitch(jointFactors.widestPitch)} kind="label" />
      <Text spot={spot(12, foot + 44)} lines={texts.widestEdge(jointFactors.widestEdge)} kind="label" />
    </Paper>
  );
}
