import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Arrowhead, Line, Note, Paper, Path, spot, Text } from "../pen.tsx";

/** A vertical band saw from the side of the cut: guides low over the sheet, which a block pushes and a board backs. */
export default function SawSetup() {
  const { sawSetup: texts } = useTexts(figuresCutting);
  const table = 176;
  return (
    <Paper height={262} title={texts.title}>
      <Path d="M20 14H236V44H20ZM20 44H58V250H20Z" kind="tool" />
      <Path d={`M96 ${table}H344V${table + 16}H96Z`} kind="tool" />
      <Path d={`M176 44V${table}M190 44V${table}`} kind="thin" />
      <Path d={`M176 ${table + 16}V250M190 ${table + 16}V250`} kind="thin" />
      <Path d={`M158 ${table - 50}H208V${table - 26}H158Z`} kind="tool" />
      <Path d={`M166 44V${table - 50}`} kind="thin" />
      <Path d={`M128 ${table - 10}H320V${table}H128Z`} kind="tool-ghost" />
      <Path d={`M190 ${table - 15}H320V${table - 10}H190Z`} kind="sheet" />
      <Path d={`M128 ${table - 15}H176V${table - 10}H128Z`} kind="sheet-ghost" />
      <Path d={`M320 ${table - 36}H338V${table}H320Z`} kind="tool" />
      <Line from={spot(312, table - 56)} to={spot(278, table - 56)} kind="motion" />
      <Arrowhead tip={spot(270, table - 56)} direction={180} kind="arrow-motion" />
      <Line from={spot(183, 60)} to={spot(183, 96)} kind="motion" />
      <Arrowhead tip={spot(183, 104)} direction={-90} kind="arrow-motion" />
      <Note to={spot(200, table - 40)} from={spot(232, 92)} lines={texts.guide} />
      <Note to={spot(250, table - 12)} from={spot(258, 218)} lines={texts.sheetOnScrapBoard} />
      <Note to={spot(330, table - 24)} from={spot(322, 140)} lines={texts.block} anchor="middle" />
      <Text spot={spot(90, 34)} lines={texts.wheelDoorShut} kind="label" />
      <Text spot={spot(104, table + 12)} lines={texts.table} kind="label" />
      <Text spot={spot(196, 66)} lines={texts.band} kind="label" />
    </Paper>
  );
}
