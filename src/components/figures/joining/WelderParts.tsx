import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { AngleSize, Line, Note, Paper, Path, Size, spot } from "../pen.tsx";
import { box, tipPath } from "./shapes.ts";

/** Side view of a pedestal spot welder with the names used in the text. A sketch: proportions are not to scale. */
export default function WelderParts() {
  const { welderParts: texts } = useTexts(figuresJoining);
  const tips = spot(72, 148);
  const frame = 208;
  const pivot = spot(250, 92);
  return (
    <Paper height={350} title={texts.title}>
      <Line from={spot(20, 336)} to={spot(344, 336)} />
      <Path d={box(frame, 64, 320, 336)} kind="tool" />
      {/* upper arm, tilting about its pivot; lower arm, fixed in the frame */}
      <Path d={box(60, 84, 312, 100)} kind="tool" />
      <Path d={box(66, 100, 78, 118)} kind="tool" />
      <Path d={tipPath({ face: tips, half: 3, body: 6, length: 30, side: "above" })} kind="tool" />
      <Path d={box(60, 204, 262, 222)} kind="tool" />
      <Path d={box(66, 186, 78, 204)} kind="tool" />
      <Path d={tipPath({ face: spot(tips.x, 156), half: 3, body: 6, length: 30, side: "below" })} kind="tool" />
      <Path d={box(14, 148, 138, 152)} kind="sheet" />
      <Path d={box(40, 152, 156, 156)} kind="sheet" />
      <Path d={box(232, 140, 292, 196)} kind="outline" />
      <Line from={spot(262, 140)} to={spot(262, 100)} kind="outline" />
      <Line from={spot(262, 196)} to={spot(262, 222)} kind="outline" />
      <circle class="dot" cx={pivot.x} cy={pivot.y} r={3} />
      {/* pedal, its rod and its spring */}
      <Path d="M312 312L150 318" kind="outline" />
      <Path d="M150 314L126 318L126 322L150 322Z" kind="tool" />
      <Path d="M308 312L308 100" kind="hidden" />
      <AngleSize centre={spot(312, 312)} radius={188} from={176} to={183} text="" kind="motion" />
      <AngleSize centre={pivot} radius={196} from={172} to={181} text="" kind="motion" />
      <Path d={box(216, 40, 240, 64)} kind="tool" />
      <circle class="dot" cx={228} cy={52} r={4} />
      <Size from={spot(tips.x, 178)} to={spot(frame, 178)} off={-4} text={texts.throat} gap={0} />
      <Note to={spot(228, 52)} from={spot(180, 20)} lines={texts.switch} anchor="end" />
      <Note to={spot(104, 92)} from={spot(96, 66)} lines={texts.upperArm} anchor="middle" />
      <Note to={spot(120, 214)} from={spot(134, 250)} lines={texts.lowerArm} anchor="middle" />
      <Note to={spot(74, 134)} from={spot(30, 118)} lines={texts.tip} anchor="end" />
      <Note to={spot(20, 150)} from={spot(30, 172)} lines={texts.sheets} anchor="middle" />
      <Note to={spot(262, 172)} from={spot(258, 244)} lines={texts.transformer} anchor="middle" />
      <Note to={spot(138, 320)} from={spot(112, 296)} lines={texts.pedal} anchor="end" />
    </Paper>
  );
}
