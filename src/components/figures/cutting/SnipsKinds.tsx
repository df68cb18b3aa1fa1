import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Arrowhead, Paper, Path, spot, Text } from "../pen.tsx";

const cells = [
  { name: "left", bend: -46, heading: 150 },
  { name: "straight", bend: 0, heading: 90 },
  { name: "right", bend: 46, heading: 30 },
] as const;

/** Three pairs of snips and the way each turns, from above; you stand below and cut away from you. */
export default function SnipsKinds() {
  const { snipsKinds: texts } = useTexts(figuresCutting);
  return (
    <Paper height={196} title={texts.title}>
      {cells.map(({ name, bend, heading }, index) => {
        const x = index * 120 + 60;
        const tip = spot(x + bend * 0.72, bend === 0 ? 34 : 46);
        return (
          <g key={name}>
            <Path d={`M${x - 52} 22H${x + 52}V112H${x - 52}Z`} kind="sheet" />
            <Path
              d={
                bend === 0 ? `M${x} 112V38` : `M${x} 112C${x} 84 ${x + bend * 0.1} 66 ${tip.x - Math.sign(bend) * 4} ${tip.y + 3}`
              }
              kind="sight"
            />
            <Arrowhead tip={tip} direction={heading} kind="arrow-motion" />
            {bend !== 0 && <Path d={`M${x} 92V38`} kind="motion" />}
            <Path d={`M${x - 3} 104L${x + 2} 126L${x + 12} 152M${x + 3} 104L${x - 2} 126L${x - 12} 152`} kind="outline" />
            <circle class="dot" cx={x} cy={120} r={2.6} />
            <Text spot={spot(x, 180)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
