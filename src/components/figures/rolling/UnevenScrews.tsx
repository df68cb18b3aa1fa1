import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { Line, Paper, Path, spot, Text } from "../pen.tsx";

const tubes = [
  { name: "alike", left: 3, right: 3, step: 0, bow: 0 },
  { name: "unlike", left: 2, right: 22, step: 0, bow: 0 },
  { name: "crooked", left: 3, right: 3, step: 14, bow: 0 },
  { name: "giving", left: 2, right: 2, step: 0, bow: 12 },
] as const;

/** Four tubes with the seam towards you, and what each seam says about the setting. */
export default function UnevenScrews() {
  const { unevenScrews: texts } = useTexts(figuresRolling);
  return (
    <Paper height={278} title={texts.title}>
      {tubes.map(({ name, left, right, step, bow }, index) => {
        const x = 22 + (index % 2) * 180;
        const y = 22 + Math.floor(index / 2) * 136;
        const [long, high] = [136, 72];
        const middle = y + high / 2;
        return (
          <g key={name}>
            <Path
              d={`M${x} ${middle - left / 2}Q${x + long / 2} ${middle - (left + right) / 4 - bow / 2} ${x + long} ${middle - right / 2}V${y}H${x}Z`}
              kind="sheet"
            />
            <Path
              d={`M${x + step} ${middle + left / 2}Q${x + long / 2 + step} ${middle + (left + right) / 4 + bow / 2} ${x + long + step} ${middle + right / 2}V${y + high}H${x + step}Z`}
              kind="sheet"
            />
            <Line from={spot(x - 8, middle)} to={spot(x + long + 14, middle)} kind="centre" />
            <Text spot={spot(x + long / 2, y + high + 18)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
