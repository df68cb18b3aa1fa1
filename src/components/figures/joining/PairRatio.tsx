import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Paper, Path, spot, Text } from "../pen.tsx";
import { box, ellipse, tipPath } from "./shapes.ts";

const pairs = [
  { name: "alike", upper: 14, reach: 10, lower: 14 },
  { name: "oneToThree", upper: 9, reach: 15, lower: 27 },
  { name: "oneToFive", upper: 8, reach: 17, lower: 40 },
] as const;

/** The nugget grows in the middle of the pile, wherever the joint is. */
export default function PairRatio() {
  const { pairRatio: texts } = useTexts(figuresJoining);
  const top = 66;
  return (
    <Paper height={218} title={texts.title}>
      {pairs.map(({ name, upper, reach, lower }, index) => {
        const x = 60 + 120 * index;
        const joint = top + upper;
        const foot = joint + lower;
        const middle = spot(x, (top + foot) / 2);
        const tip = { half: 13, body: 20, length: 44 };
        return (
          <g key={name}>
            <Path d={box(x - 46, top, x + 46, joint)} kind="sheet" />
            <Path d={box(x - 46, joint, x + 46, foot)} kind="sheet" />
            <path class="melt" d={ellipse(middle, 17, Math.min(reach, (foot - top) / 2 - 5) * (index === 1 ? 0.72 : 0.8))} />
            <Path d={tipPath({ ...tip, face: spot(x, top), side: "above" })} kind="tool" />
            <Path d={tipPath({ ...tip, length: 40, face: spot(x, foot), side: "below" })} kind="tool" />
            <Path d={`M${x - 46} ${joint}L${x + 46} ${joint}`} kind="sight" />
            <Text spot={spot(x, 176)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
