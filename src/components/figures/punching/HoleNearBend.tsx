import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Line, Paper, Path, spot, Text } from "../pen.tsx";
import { rectangle } from "./cut.ts";

/** A hole too near a bend, from above before and after bending: it is drawn out towards the bend. */
export default function HoleNearBend() {
  const { holeNearBend: texts } = useTexts(figuresPunching);
  const r = 22;
  const y = 86;
  return (
    <Paper height={200} title={texts.title}>
      {[0, 180].map((left) => {
        const after = left > 0;
        const line = left + 50;
        return (
          <g key={left}>
            <Path d={rectangle(spot(left + 14, 26), spot(left + 168, 148))} kind="sheet" />
            <rect class="zone" x={line - 11} y={26} width={22} height={122} />
            <Line from={spot(line - 11, 26)} to={spot(line - 11, 148)} />
            <Line from={spot(line + 11, 26)} to={spot(line + 11, 148)} />
            {after ? (
              <path
                class="outline"
                d={`M${line + 36} ${y - r}A${r} ${r} 0 0 1 ${line + 36} ${y + r}C${line + 18} ${y + r} ${line + 2} ${y + 12} ${line + 2} ${y}C${line + 2} ${y - 12} ${line + 18} ${y - r} ${line + 36} ${y - r}Z`}
              />
            ) : (
              <circle class="outline" cx={line + 36} cy={y} r={r} />
            )}
            {after && <circle class="sight" cx={line + 36} cy={y} r={r} stroke-dasharray="4 3" />}
            <circle class="outline" cx={left + 140} cy={y} r={r - 4} />
            <Text spot={spot(left + 90, 172)} lines={after ? texts.bent : texts.punchedInTheFlat} anchor="middle" kind="name" />
          </g>
        );
      })}
      <Text spot={spot(50, 18)} lines={texts.bend} anchor="middle" kind="name" />
      <Text spot={spot(230, 18)} lines={texts.bend} anchor="middle" kind="name" />
    </Paper>
  );
}
