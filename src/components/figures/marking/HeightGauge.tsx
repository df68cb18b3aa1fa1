import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { Line, Note, Paper, Path, Size, spot, Text } from "../pen.tsx";

const plate = 196;

/** Sheet standing on its datum edge against a block, and a height gauge that scribes it, from the side. */
export default function HeightGauge() {
  const { heightGauge: texts } = useTexts(figuresMarking);
  const line = 92;
  return (
    <Paper height={248} title={texts.title}>
      <Path d={`M20 ${plate}H340V${plate + 22}H20Z`} kind="tool" />
      <Path d={`M56 ${plate}V58H108V${plate}Z`} kind="tool" />
      <Path d="M70 74H94V176H70Z" kind="thin" />
      <Path d={`M108 ${plate}V34H113V${plate}Z`} kind="sheet" />
      <Path d={`M232 ${plate}V${plate - 22}H302V${plate}Z`} kind="tool" />
      <Path d={`M262 ${plate - 22}V30H276V${plate - 22}Z`} kind="tool" />
      {Array.from({ length: 13 }, (_, index) => (
        <Line key={index} from={spot(262, 44 + 10 * index)} to={spot(262 + (index % 5 === 0 ? 8 : 5), 44 + 10 * index)} />
      ))}
      <Path d={`M228 ${line - 12}H290V${line + 16}H228Z`} kind="tool" />
      <Path d={`M228 ${line}L113 ${line}L126 ${line + 7}H228Z`} kind="outline" />
      <Line from={spot(104, line)} to={spot(117, line)} kind="sight" />
      <Size from={spot(113, line)} to={spot(113, plate)} off={46} gap={10} text={texts.heightSet} />
      <Note to={spot(110, 44)} from={spot(136, 28)} lines={texts.sheet} />
      <Note to={spot(82, 66)} from={spot(56, 30)} lines={texts.squareBlock} anchor="middle" />
      <Note to={spot(168, line + 3)} from={spot(176, 66)} lines={texts.scriber} anchor="middle" />
      <Note to={spot(282, line - 4)} from={spot(296, 66)} lines={texts.slide} />
      <Text spot={spot(180, plate + 15)} lines={texts.surfacePlate} anchor="middle" kind="label" />
      <Note to={spot(110, plate)} from={spot(64, 226)} lines={texts.datumEdge} end="arrow" anchor="middle" />
    </Paper>
  );
}
