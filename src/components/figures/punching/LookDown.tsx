import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Line, Note, Paper, Path, spot, Text } from "../pen.tsx";
import { rectangle } from "./cut.ts";

const hole = 34;

/** Finding the place: the centre mark seen from above with its circle, and the tip of the punch dropping into it. */
export default function LookDown() {
  const { lookDown: texts } = useTexts(figuresPunching);
  const plan = spot(86, 92);
  const side = spot(268, 128);
  const mark = 7;
  const tip = 46;
  return (
    <Paper height={214} title={texts.title}>
      <Path d={rectangle(spot(14, 22), spot(160, 162))} kind="sheet" />
      <Line from={spot(22, plan.y)} to={spot(152, plan.y)} />
      <Line from={spot(plan.x, 30)} to={spot(plan.x, 154)} />
      <circle class="sight" cx={plan.x} cy={plan.y} r={hole} />
      <circle class="dot" cx={plan.x} cy={plan.y} r={3.4} />
      <Note to={plan} from={spot(116, 44)} lines={texts.mark} />
      <Text spot={spot(plan.x, 184)} lines={texts.fromAbove} anchor="middle" kind="name" />

      <Path
        d={`M${side.x - hole} 40H${side.x + hole}V${side.y - tip + 16}L${side.x + 8} ${side.y - tip + 16}L${side.x} ${side.y - tip + 26}L${side.x - 8} ${side.y - tip + 16}H${side.x - hole}Z`}
        kind="tool"
      />
      <Line from={spot(side.x, 26)} to={spot(side.x, 172)} kind="centre" />
      <Path
        d={`M188 ${side.y}H${side.x - mark - 3}Q${side.x - mark} ${side.y - 3} ${side.x - mark + 1} ${side.y}L${side.x} ${side.y + 9}L${side.x + mark - 1} ${side.y}Q${side.x + mark} ${side.y - 3} ${side.x + mark + 3} ${side.y}H348V${side.y + 20}H188Z`}
        kind="sheet"
      />
      <Path d={rectangle(spot(194, side.y + 20), spot(side.x - hole - 2, side.y + 36))} kind="tool" />
      <Path d={rectangle(spot(side.x + hole + 2, side.y + 20), spot(342, side.y + 36))} kind="tool" />
      <Note to={spot(side.x + 2, side.y - tip + 20)} from={spot(312, 100)} lines={texts.tip} />
      <Text spot={spot(200, 70)} lines={texts.punch} anchor="middle" kind="name" />
      <Text spot={spot(side.x, 184)} lines={texts.fromTheSide} anchor="middle" kind="name" />
    </Paper>
  );
}
