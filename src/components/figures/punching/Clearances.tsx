import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Line, Paper, Path, spot, Text } from "../pen.tsx";
import { type Cut, diePaths, edgePath, punchPath } from "./cut.ts";

const edges = [
  {
    name: "tight",
    clearance: 1.5,
    rollover: 0.06,
    penetration: 0.3,
    burr: 0.04,
    second: true,
  },
  {
    name: "right",
    clearance: 5,
    rollover: 0.1,
    penetration: 0.36,
    burr: 0.05,
    second: false,
  },
  {
    name: "loose",
    clearance: 14,
    rollover: 0.26,
    penetration: 0.12,
    burr: 0.24,
    second: false,
  },
] as const;

/** The edge that a tight, a right and a loose die leave. */
export default function Clearances() {
  const { clearances: texts } = useTexts(figuresPunching);
  return (
    <Paper height={214} title={texts.title}>
      {edges.map(({ name, second, ...shape }, index) => {
        const cut: Cut = { top: spot(index * 120 + 92, 54), thickness: 60, half: 30, reach: 84, ...shape };
        const edge = cut.top.x - cut.half;
        const bright = cut.top.y + (cut.rollover + cut.penetration) * cut.thickness;
        const id = `clearances-${index}`;
        return (
          <g key={name}>
            <clipPath id={id}>
              <rect x={index * 120 + 8} y={8} width={84} height={144} />
            </clipPath>
            <g clip-path={`url(#${id})`}>
              {diePaths(cut, 34).map((d) => (
                <Path key={d} d={d} kind="tool" />
              ))}
              <Path d={edgePath(cut, -1)} kind="sheet" />
              <path class="stretch" d={`M${edge} ${cut.top.y + cut.rollover * cut.thickness}V${bright}`} />
              {second && (
                <>
                  <path class="squeeze" d={`M${edge - 1} ${bright}V${bright + 11}`} />
                  <path class="stretch" d={`M${edge - 1.5} ${bright + 13}V${bright + 24}`} />
                </>
              )}
              {!second && <path class="squeeze" d={`M${edge} ${bright}L${edge - cut.clearance} ${cut.top.y + cut.thickness}`} />}
              <Path d={punchPath(cut, -12, 40)} kind="tool" />
            </g>
            <Line from={spot(cut.top.x, 8)} to={spot(cut.top.x, 150)} kind="centre" />
            <Text spot={spot(index * 120 + 60, 170)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
