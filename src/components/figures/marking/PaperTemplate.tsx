import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { Line, Note, Paper, Path, Size, spot } from "../pen.tsx";

/** A drawing printed at full size, glued to the sheet with its datum lines on the datum edges. */
export default function PaperTemplate() {
  const { paperTemplate: texts } = useTexts(figuresMarking);
  const left = 30;
  const bottom = 212;
  const paper = { x: left, y: 58, width: 244, height: bottom - 58 };
  const centres = [spot(86, 110), spot(158, 110), spot(86, 170), spot(158, 170)];
  return (
    <Paper height={262} title={texts.title}>
      <Path d={`M${left} ${bottom}H344V34H${left}Z`} kind="tool" />
      <Path d={`M${paper.x} ${bottom}H${paper.x + paper.width}V${paper.y}H${paper.x}Z`} kind="sheet" />
      <Path d="M52 190H196V88H52Z" kind="outline" />
      {centres.map(({ x, y }) => (
        <g key={`${x} ${y}`}>
          <Line from={spot(x - 9, y)} to={spot(x + 9, y)} kind="sight" />
          <Line from={spot(x, y - 9)} to={spot(x, y + 9)} kind="sight" />
        </g>
      ))}
      <Line from={spot(232, 80)} to={spot(232, 192)} kind="outline" />
      <Line from={spot(226, 80)} to={spot(238, 80)} kind="outline" />
      <Line from={spot(226, 192)} to={spot(238, 192)} kind="outline" />
      <Size from={spot(238, 192)} to={spot(238, 80)} off={-14} gap={2} text={texts.bar} />
      <Note to={spot(252, 66)} from={spot(262, 22)} lines={texts.paper} />
      <Note to={spot(312, 58)} from={spot(318, 22)} lines={texts.sheet} />
      <Note to={centres[1] ?? spot(0, 0)} from={spot(150, 30)} lines={texts.prickThrough} anchor="middle" />
      <Note to={spot(110, bottom)} from={spot(122, 234)} lines={texts.datumLinesDatum} end="arrow" />
    </Paper>
  );
}
