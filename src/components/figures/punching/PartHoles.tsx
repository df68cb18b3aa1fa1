import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Arrowhead, Line, Paper, Path, spot, Text } from "../pen.tsx";
import { rectangle } from "./cut.ts";

const r = 20;

/** Half a hole pushes the punch aside; a row is punched in two rounds, so that every hit is whole or even on both sides. */
export default function PartHoles() {
  const { partHoles: texts } = useTexts(figuresPunching);
  const y = 82;
  const row = [0, 1, 2, 3, 4].map((index) => 204 + index * 1.42 * r);
  return (
    <Paper height={202} title={texts.title}>
      <Path d={rectangle(spot(12, 28), spot(104, 138))} kind="sheet" />
      <circle class="outline" cx={104} cy={y} r={r} />
      <Line from={spot(104, y)} to={spot(138, y)} kind="motion" />
      <Arrowhead tip={spot(146, y)} direction={0} kind="arrow-motion" />
      <Text spot={spot(80, 166)} lines={texts.halfHolePushes} anchor="middle" kind="name" />

      <Path d={rectangle(spot(172, 28), spot(350, 138))} kind="sheet" />
      {row.map((x, index) => {
        const later = index % 2 === 1;
        return (
          <g key={x}>
            <circle class={later ? "sight" : "outline"} cx={x} cy={y} r={r} stroke-dasharray={later ? "4 3" : undefined} />
            <Text
              spot={spot(x, y + (later ? 40 : 4.5))}
              lines={String(later ? 4 + (index - 1) / 2 : 1 + index / 2)}
              anchor="middle"
              kind="size"
            />
          </g>
        );
      })}
      <Text spot={spot(262, 166)} lines={texts.row} anchor="middle" kind="name" />
    </Paper>
  );
}
