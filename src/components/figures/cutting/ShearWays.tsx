import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Line, Paper, Path, Size, spot, Text } from "../pen.tsx";

const blade = 112;
const cells = ["line", "stop", "scale"] as const;

/** Three ways to place the sheet, from above: you stand below, the blade cuts along the bright line. */
export default function ShearWays() {
  const { shearWays: texts } = useTexts(figuresCutting);
  return (
    <Paper height={262} title={texts.title}>
      <Text spot={spot(352, 20)} lines={texts.behindTheShear} anchor="end" kind="label" />
      {cells.map((cell, index) => {
        const left = index * 120 + 14;
        const right = left + 92;
        const top = cell === "stop" ? 64 : 82;
        const bottom = cell === "scale" ? 170 : 184;
        return (
          <g key={cell}>
            <Path d={`M${left - 8} ${blade}H${right + 8}V202H${left - 8}Z`} kind="tool" />
            <Path d={`M${left} ${top}H${right}V${bottom}H${left}Z`} kind="sheet" />
            <Line from={spot(left - 8, blade)} to={spot(right + 8, blade)} kind="sight" />
            {cell === "stop" && <Path d={`M${left - 4} ${top - 9}H${right + 4}V${top}H${left - 4}Z`} kind="tool" />}
            {cell === "scale" && (
              <>
                <Path d={`M${left - 4} ${bottom}H${right + 4}V${bottom + 9}H${left - 4}Z`} kind="tool" />
                {Array.from({ length: 8 }, (_, mark) => (
                  <Line key={mark} from={spot(right + 8, blade + 10 * mark + 10)} to={spot(right + 3, blade + 10 * mark + 10)} />
                ))}
              </>
            )}
            {cell === "line" ? (
              <Text spot={spot(left + 46, blade + 16)} lines={texts.line} anchor="middle" kind="label" />
            ) : (
              <Size
                from={spot(left + 16, cell === "stop" ? top : bottom)}
                to={spot(left + 16, blade)}
                off={cell === "stop" ? 4 : -4}
                gap={0}
                text=""
              />
            )}
            <Text
              spot={spot(left + 54, cell === "stop" ? (top + blade) / 2 + 4 : (blade + bottom) / 2 + 10)}
              lines={texts.kept}
              anchor="middle"
              kind="label"
            />
            <Text
              spot={spot(left + 54, cell === "stop" ? 156 : top + 20)}
              lines={cell === "stop" ? texts.rest : texts.waste}
              anchor="middle"
              kind="label"
            />
            <Text spot={spot(left + 46, 226)} lines={texts.ways[cell]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
