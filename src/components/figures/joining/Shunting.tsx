import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Arrowhead, Line, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { box, ellipse, tipPath } from "./shapes.ts";

/** The second spot loses current through the first one. */
export default function Shunting() {
  const { shunting: texts } = useTexts(figuresJoining);
  const y = 104;
  const t = 17;
  const [first, second] = [96, 240];
  const tip = { half: 16, body: 24, length: 64 };
  return (
    <Paper height={212} title={texts.title}>
      <Path d={box(20, y - t, 340, y)} kind="sheet" />
      <Path d={box(20, y, 340, y + t)} kind="sheet" />
      <path class="sheet" d={ellipse(spot(first, y), 22, 11)} />
      <path class="melt" d={ellipse(spot(second, y), 14, 7)} />
      <Path d={tipPath({ ...tip, face: spot(second, y - t), side: "above" })} kind="tool" />
      <Path d={tipPath({ ...tip, face: spot(second, y + t), side: "below" })} kind="tool" />
      <Line from={spot(second, 34)} to={spot(second, 168)} kind="sight" />
      <Arrowhead tip={spot(second, 174)} direction={-90} kind="arrow-motion" />
      <Path
        d={`M${second - 10} 46L${second - 10} ${y - t}Q${second - 12} ${y - t / 2} ${second - 34} ${y - t / 2}L${first + 16} ${y - t / 2}Q${first} ${y - t / 2} ${first} ${y}Q${first} ${y + t / 2} ${first + 16} ${y + t / 2}L${second - 34} ${y + t / 2}Q${second - 12} ${y + t / 2} ${second - 10} ${y + t}L${second - 10} 156`}
        kind="motion"
      />
      <Arrowhead tip={spot(second - 10, 164)} direction={-90} kind="arrow-motion" />
      <Size from={spot(first, y - t)} to={spot(second, y - t)} off={46} text={texts.pitch} />
      <Text spot={spot(first, 150)} lines={texts.firstSpot} anchor="middle" kind="name" />
      <Text spot={spot(276, 60)} lines={texts.secondSpotGets} kind="name" />
    </Paper>
  );
}
