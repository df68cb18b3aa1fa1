import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Line, Note, Paper, Path, Size, spot, Text } from "../pen.tsx";

/** How far beside the line to cut [mm]: 1/32 in, FAA text. */
const beside = 25.4 / 32;

/** A cut made in bites: with the blades stopped short of closing, and closed each time. */
export default function SnipsBites() {
  const { snipsBites: texts } = useTexts(figuresCutting);
  const cut = (y: number, jag: number) =>
    `M14 ${y}${Array.from({ length: 4 }, (_, index) => `H${80 + index * 66}${jag > 0 ? `l4 ${-jag}l2 ${jag + 3}l3 -3` : ""}`).join("")}H346`;
  return (
    <Paper height={238} title={texts.title(formatNumber(beside, 1))}>
      {[
        { y: 66, jag: 0, name: texts.stoppedBeforeTheyClose },
        { y: 166, jag: 7, name: texts.closedAtEveryBite },
      ].map(({ y, jag, name }) => (
        <g key={name}>
          <Path d={`${cut(y, jag)}V${y + 40}H14Z`} kind="sheet" />
          <Line from={spot(14, y + 14)} to={spot(346, y + 14)} kind="sight" />
          <Text spot={spot(24, y + 33)} lines={name} kind="name" />
        </g>
      ))}
      <Size from={spot(206, 80)} to={spot(206, 66)} off={-14} gap={2} text={formatNumber(beside, 1)} outside="to" />
      <Note to={spot(306, 80)} from={spot(292, 34)} lines={texts.line} anchor="middle" />
      <Note to={spot(217, 162)} from={spot(232, 136)} lines={texts.jag} />
    </Paper>
  );
}
