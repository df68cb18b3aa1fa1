import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Arrowhead, Line, Paper, Path, type Spot, spot, Text } from "../pen.tsx";
import { stripPath } from "../section.ts";
import { box, ellipse } from "./shapes.ts";

const t = 5;

function Pull({ from, to, direction }: { from: Spot; to: Spot; direction: number }) {
  return (
    <>
      <Line from={from} to={to} kind="motion" />
      <Arrowhead tip={to} direction={direction} kind="arrow-motion" />
    </>
  );
}

/** The same joint pulled along the sheets, apart, and open from its edge. */
export default function JointLoads() {
  const { jointLoads: texts } = useTexts(figuresJoining);
  const joint = spot(60, 66);
  const flange = (origin: Spot, turn: number) =>
    stripPath([{ ahead: 22 }, { turn, radius: 4 }, { ahead: 30 }], t, { scale: 1, origin }).d;
  return (
    <Paper height={168} title={texts.title}>
      <g>
        <Path d={box(20, joint.y - t, 76, joint.y)} kind="sheet" />
        <Path d={box(44, joint.y, 100, joint.y + t)} kind="sheet" />
        <path class="sheet" d={ellipse(joint, 9, 3.6)} />
        <Pull from={spot(18, joint.y - 2)} to={spot(3, joint.y - 2)} direction={180} />
        <Pull from={spot(102, joint.y + 2)} to={spot(117, joint.y + 2)} direction={0} />
        <Text spot={spot(60, 128)} lines={texts.alongTheSheets} anchor="middle" kind="name" />
      </g>
      <g transform="translate(120 0)">
        <Path d={box(24, joint.y - t, 96, joint.y)} kind="sheet" />
        <Path d={box(24, joint.y, 96, joint.y + t)} kind="sheet" />
        <path class="sheet" d={ellipse(joint, 9, 3.6)} />
        <Pull from={spot(60, joint.y - t - 4)} to={spot(60, 30)} direction={90} />
        <Pull from={spot(60, joint.y + t + 4)} to={spot(60, 102)} direction={-90} />
        <Text spot={spot(60, 128)} lines={texts.straightApart} anchor="middle" kind="name" />
      </g>
      <g transform="translate(240 0)">
        <Path d={flange(spot(44, joint.y), 90)} kind="sheet" />
        <g transform={`matrix(1 0 0 -1 0 ${2 * joint.y})`}>
          <Path d={flange(spot(44, joint.y), 90)} kind="sheet" />
        </g>
        <path class="sheet" d={ellipse(spot(52, joint.y), 8, 3.6)} />
        <Pull from={spot(81, joint.y - 28)} to={spot(104, joint.y - 38)} direction={23} />
        <Pull from={spot(81, joint.y + 28)} to={spot(104, joint.y + 38)} direction={-23} />
        <Text spot={spot(60, 128)} lines={texts.peeledOpen} anchor="middle" kind="name" />
      </g>
    </Paper>
  );
}
