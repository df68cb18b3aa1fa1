import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Arrowhead, Line, Paper, Path, spot, Text } from "../pen.tsx";
import { box, ellipse, tipPath } from "./shapes.ts";

const sheet = 12;
const stages = [
  { name: "squeeze", press: true, current: false, melt: 0, warm: 0, set: false },
  { name: "weld", press: true, current: true, melt: 0.55, warm: 1, set: false },
  { name: "hold", press: true, current: false, melt: 1, warm: 1, set: true },
  { name: "letGo", press: false, current: false, melt: 1, warm: 0, set: true },
] as const;

/** How a spot weld comes about, in four sections through the tips. */
export default function WeldStages() {
  const { weldStages: texts } = useTexts(figuresJoining);
  return (
    <Paper height={222} title={texts.title}>
      {stages.map(({ name, press, current, melt, warm, set }, index) => {
        const middle = spot(45 + 90 * index, 88);
        const gap = press ? 0 : 8;
        const tip = { half: 11, body: 17, length: 46 };
        return (
          <g key={name}>
            {warm > 0 && <path class="warm" d={ellipse(middle, 21, 11)} />}
            <Path d={box(middle.x - 40, middle.y - sheet, middle.x + 40, middle.y)} kind="sheet" />
            <Path d={box(middle.x - 40, middle.y, middle.x + 40, middle.y + sheet)} kind="sheet" />
            {melt > 0 && <path class={set ? "sheet" : "melt"} d={ellipse(middle, 15 * melt, 9 * melt)} />}
            <Path d={tipPath({ ...tip, face: spot(middle.x, middle.y - sheet - gap), side: "above" })} kind="tool" />
            <Path d={tipPath({ ...tip, face: spot(middle.x, middle.y + sheet + gap), side: "below" })} kind="tool" />
            {press && (
              <>
                <Line from={spot(middle.x, 8)} to={spot(middle.x, 24)} />
                <Arrowhead tip={spot(middle.x, 29)} direction={-90} />
                <Line from={spot(middle.x, 168)} to={spot(middle.x, 152)} />
                <Arrowhead tip={spot(middle.x, 147)} direction={90} />
              </>
            )}
            {current && (
              <>
                <Line from={spot(middle.x, 44)} to={spot(middle.x, 126)} kind="motion" />
                <Arrowhead tip={spot(middle.x, 133)} direction={-90} kind="arrow-motion" />
              </>
            )}
            <Text spot={spot(middle.x, 188)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
