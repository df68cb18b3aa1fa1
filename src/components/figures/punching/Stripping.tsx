import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Arrowhead, Line, Note, Paper, Path, spot, Text } from "../pen.tsx";
import { type Cut, diePaths, edgePath, rectangle } from "./cut.ts";

/** The way back of the punch, with a stripper and without one. */
export default function Stripping() {
  const { stripping: texts } = useTexts(figuresPunching);
  const cut = (x: number): Cut => ({
    top: spot(x, 112),
    thickness: 14,
    half: 16,
    clearance: 2.5,
    reach: 74,
    rollover: 0.14,
    penetration: 0.36,
    burr: 0.1,
  });
  return (
    <Paper height={208} title={texts.title}>
      {[92, 268].map((x, index) => {
        const held = index === 0;
        const piece = cut(x);
        const { top, thickness, half } = piece;
        return (
          <g key={x}>
            {diePaths(piece, 26).map((d) => (
              <Path key={d} d={d} kind="tool" />
            ))}
            <g transform={held ? undefined : `rotate(-9 ${top.x} ${top.y}) translate(0 -34)`}>
              <Path d={edgePath(piece, -1)} kind="sheet" />
              <Path d={edgePath(piece, 1)} kind="sheet" />
            </g>
            {held &&
              [-1, 1].map((side) => (
                <Path
                  key={side}
                  d={rectangle(spot(top.x + side * (half + 4), top.y - 14), spot(top.x + side * 58, top.y - 3))}
                  kind="tool"
                />
              ))}
            <Path d={rectangle(spot(top.x - half, 22), spot(top.x + half, top.y + (held ? thickness - 4 : -14)))} kind="tool" />
            <Line from={spot(top.x, 72)} to={spot(top.x, 44)} kind="motion" />
            <Arrowhead tip={spot(top.x, 38)} direction={90} kind="arrow-motion" />
            {held &&
              [-1, 1].map((side) => (
                <g key={side}>
                  <Line from={spot(top.x + side * 40, 66)} to={spot(top.x + side * 40, 88)} kind="motion" />
                  <Arrowhead tip={spot(top.x + side * 40, 96)} direction={-90} kind="arrow-motion" />
                </g>
              ))}
            <Text
              spot={spot(top.x, 178)}
              lines={held ? texts.stripperHoldsSheet : texts.withoutSheetRides}
              anchor="middle"
              kind="name"
            />
          </g>
        );
      })}
      <Note to={spot(146, 104)} from={spot(176, 70)} lines={texts.stripper} anchor="middle" />
    </Paper>
  );
}
