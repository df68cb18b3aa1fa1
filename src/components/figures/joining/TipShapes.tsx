import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Line, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { closed, tipPath } from "./shapes.ts";

const y = 92;
const t = 7;

function Sheets({ x }: { x: number }) {
  return (
    <>
      <Path d={closed(spot(x - 36, y - t), spot(x + 36, y - t), spot(x + 36, y), spot(x - 36, y))} kind="sheet" />
      <Path d={closed(spot(x - 36, y), spot(x + 36, y), spot(x + 36, y + t), spot(x - 36, y + t))} kind="sheet" />
    </>
  );
}

/** Tips as they should be, and three ways they are not. */
export default function TipShapes() {
  const { tipShapes: texts } = useTexts(figuresJoining);
  const good = { half: 8, body: 14, length: 46 };
  const worn = (x: number, side: 1 | -1) => {
    const face = y + side * t;
    return `M${x - 14} ${face + side * 46}L${x - 14} ${face + side * 12}Q${x - 19} ${face + side * 4} ${x - 17} ${face}L${x + 17} ${face}Q${x + 19} ${face + side * 4} ${x + 14} ${face + side * 12}L${x + 14} ${face + side * 46}`;
  };
  return (
    <Paper height={214} title={texts.title}>
      <Sheets x={45} />
      <Path d={tipPath({ ...good, face: spot(45, y - t), side: "above" })} kind="tool" />
      <Path d={tipPath({ ...good, face: spot(45, y + t), side: "below" })} kind="tool" />
      <Size from={spot(37, y - t)} to={spot(53, y - t)} off={60} text={texts.face} outside="to" gap={46} />
      <Text spot={spot(45, 178)} lines={texts.dressed} anchor="middle" kind="name" />

      <Sheets x={135} />
      <Path d={worn(135, -1)} kind="tool" />
      <Path d={worn(135, 1)} kind="tool" />
      <Text spot={spot(135, 178)} lines={texts.mushroomed} anchor="middle" kind="name" />

      <Sheets x={225} />
      <Path d={tipPath({ ...good, face: spot(217, y - t), side: "above" })} kind="tool" />
      <Path d={tipPath({ ...good, face: spot(233, y + t), side: "below" })} kind="tool" />
      <Line from={spot(217, 32)} to={spot(217, 152)} kind="centre" />
      <Line from={spot(233, 32)} to={spot(233, 152)} kind="centre" />
      <Text spot={spot(225, 178)} lines={texts.outOfLine} anchor="middle" kind="name" />

      <Sheets x={315} />
      <g transform={`rotate(9 309 ${y - t})`}>
        <Path d={tipPath({ ...good, face: spot(315, y - t), side: "above" })} kind="tool" />
      </g>
      <Path d={tipPath({ ...good, face: spot(315, y + t), side: "below" })} kind="tool" />
      <Text spot={spot(315, 178)} lines={texts.tilted} anchor="middle" kind="name" />
    </Paper>
  );
}
