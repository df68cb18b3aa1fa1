import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Arrowhead, Line, Paper, Path, spot, Text } from "../pen.tsx";
import { type Cut, diePaths, edgePath, pressedPath, punchPath, slugPath } from "./cut.ts";

const steps = [
  { name: "drawnIn", depth: 5 },
  { name: "cut", depth: 17 },
  { name: "broken", depth: 40 },
] as const;

/** How a hole comes about, in three sections through punch, sheet and die. */
export default function CutStages() {
  const { cutStages: texts } = useTexts(figuresPunching);
  return (
    <Paper height={214} title={texts.title}>
      {steps.map(({ name, depth }, index) => {
        const cut: Cut = {
          top: spot(60 + index * 120, 70),
          thickness: 34,
          half: 22,
          clearance: 4,
          reach: 52,
          rollover: 0.13,
          penetration: 0.37,
          burr: 0.08,
        };
        const { top, thickness, half, clearance } = cut;
        const [first = "", second = ""] = texts[name];
        const done = depth > thickness;
        return (
          <g key={name}>
            {diePaths(cut, 56).map((d) => (
              <Path key={d} d={d} kind="tool" />
            ))}
            {done ? (
              <>
                <Path d={edgePath(cut, -1)} kind="sheet" />
                <Path d={edgePath(cut, 1)} kind="sheet" />
                <Path d={slugPath(cut, 51)} kind="sheet" />
              </>
            ) : (
              <Path d={pressedPath(cut, depth)} kind="sheet" />
            )}
            {index === 1 &&
              [-1, 1].map((side) => (
                <g key={side}>
                  <Line
                    from={spot(top.x + side * half, top.y + depth)}
                    to={spot(top.x + side * (half + 0.4 * clearance), top.y + depth + 6)}
                    kind="sight"
                  />
                  <Line
                    from={spot(top.x + side * (half + clearance), top.y + thickness)}
                    to={spot(top.x + side * (half + 0.6 * clearance), top.y + thickness - 6)}
                    kind="sight"
                  />
                </g>
              ))}
            <Path d={punchPath(cut, depth, 46)} kind="tool" />
            <Line from={spot(top.x, top.y + depth - 46)} to={spot(top.x, top.y + depth - 20)} kind="motion" />
            <Arrowhead tip={spot(top.x, top.y + depth - 14)} direction={-90} kind="arrow-motion" />
            <Text spot={spot(top.x, 184)} lines={[`${index + 1}  ${first}`, second]} anchor="middle" kind="name" />
          </g>
        );
      })}
      <Text spot={spot(12, 18)} lines={texts.punch} kind="name" />
      <Text spot={spot(12, 132)} lines={texts.die} kind="name" />
    </Paper>
  );
}
