import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Arrowhead, Line, Paper, Path, spot, Text } from "../pen.tsx";
import { rectangle } from "./cut.ts";

/** A hole beside a leg that is already bent: the holder of the punch, or of the die, needs the room the leg takes. */
export default function LegInTheWay() {
  const { legInTheWay: texts } = useTexts(figuresPunching);
  return (
    <Paper height={232} title={texts.title}>
      {[92, 268].map((x, index) => {
        const up = index === 0;
        const leg = up
          ? `M${x - 62} 121H${x + 34}V64H${x + 39}V126H${x - 62}Z`
          : `M${x - 62} 121H${x + 39}V172H${x + 34}V126H${x - 62}Z`;
        return (
          <g key={x}>
            <Path d={rectangle(spot(x - 48, 14), spot(x + 48, 62))} kind="tool" />
            <Path d={rectangle(spot(x - 12, 62), spot(x + 12, 112))} kind="tool" />
            <Path d={`M${x - 44} 182V140H${x - 13}V182ZM${x + 44} 182V140H${x + 13}V182Z`} kind="tool" />
            <Path d={leg} kind="sheet" />
            <Line from={spot(x + 62, up ? 96 : 146)} to={spot(x + 44, up ? 74 : 152)} kind="motion" />
            <Arrowhead tip={spot(x + 38, up ? 68 : 156)} direction={up ? 134 : -150} kind="arrow-motion" />
            <Text spot={spot(x, 204)} lines={up ? texts.legUp : texts.legDown} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
