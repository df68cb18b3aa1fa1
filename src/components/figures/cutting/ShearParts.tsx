import { loadCatalogue } from "../../../catalogue/load.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Arrowhead, Line, Note, Paper, Path, Size, spot, Text } from "../pen.tsx";

/** Side view of a foot shear with the names used in the text; the sheet is fed in from the right. A sketch, not to scale. */
export default function ShearParts() {
  const { shearParts: texts } = useTexts(figuresCutting);
  const { guardOpening, guardDistance } = loadCatalogue().shop.shear;
  const table = 168;
  const sheet = table - 5;
  const cut = 158;
  const guard = 232;
  return (
    <Paper height={318} title={texts.title}>
      <Line from={spot(16, 300)} to={spot(344, 300)} />
      <Path d={`M${cut + 22} ${table + 26}V300M330 ${table + 26}V300`} kind="tool-ghost" />
      <Path d={`M${cut + 16} ${table}H344V${table + 26}H${cut}V${table + 22}H${cut + 16}Z`} kind="tool" />
      <Path d={`M${cut} ${table}H${cut + 16}V${table + 22}H${cut}Z`} kind="tool" />
      <Path d={`M${cut - 3} 56H${cut - 25}V${sheet - 24}L${cut - 3} ${sheet - 18}Z`} kind="tool" />
      <Path
        d={`M${cut + 14} 70H${cut + 38}V${sheet - 10}H${cut + 32}V${sheet}H${cut + 20}V${sheet - 10}H${cut + 14}Z`}
        kind="tool"
      />
      <Path d={`M${guard} 86H${guard + 8}V${sheet - 16}H${guard}Z`} kind="tool" />
      <Path d={`M48 ${sheet + 10}V${sheet - 40}H56V${sheet + 10}Z`} kind="tool" />
      <Line from={spot(40, sheet - 34)} to={spot(cut - 26, sheet - 34)} />
      <Path d={`M56 ${sheet}H336V${table}H56Z`} kind="sheet" />
      <Path d="M252 300L258 288H336" kind="outline" />
      <Path d={`M${cut - 14} 282H252`} kind="tool-ghost" />
      <Line from={spot(cut - 14, 80)} to={spot(cut - 14, 112)} kind="motion" />
      <Arrowhead tip={spot(cut - 14, 120)} direction={-90} kind="arrow-motion" />
      <Line from={spot(104, table + 10)} to={spot(94, table + 40)} kind="motion" />
      <Arrowhead tip={spot(91, table + 48)} direction={-107} kind="arrow-motion" />
      <Size from={spot(guard, table)} to={spot(cut, table)} off={-40} gap={28} text={`d = ${formatNumber(guardDistance, 0)}`} />
      <Size
        from={spot(guard + 4, sheet)}
        to={spot(guard + 4, sheet - 16)}
        off={-24}
        gap={6}
        text={`e = ${formatNumber(guardOpening, 0)}`}
        outside="to"
      />
      <Note to={spot(cut - 18, 66)} from={spot(110, 40)} lines={texts.upperBlade} anchor="end" />
      <Note to={spot(cut + 26, 84)} from={spot(200, 40)} lines={texts.holdDown} />
      <Note to={spot(guard + 4, 92)} from={spot(266, 70)} lines={texts.fingerGuard} />
      <Note to={spot(320, sheet + 2)} from={spot(316, 112)} lines={texts.sheet} anchor="middle" />
      <Note to={spot(52, sheet - 34)} from={spot(52, 92)} lines={texts.backStop} anchor="middle" />
      <Note to={spot(cut + 6, table + 14)} from={spot(124, 254)} lines={texts.lowerBlade} anchor="end" />
      <Text spot={spot(320, table + 18)} lines={texts.table} anchor="end" kind="label" />
      <Text spot={spot(86, table + 66)} lines={texts.offcutDrops} anchor="middle" kind="name" />
      <Note to={spot(300, 288)} from={spot(306, 262)} lines={texts.treadle} anchor="middle" />
    </Paper>
  );
}
