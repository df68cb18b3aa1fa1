import { loadCatalogue } from "../../../catalogue/load.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Line, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { rectangle } from "./cut.ts";

/** Which places of a sheet this shop's punch reaches: everything within its throat from some edge. */
export default function ThroatReach() {
  const { throatReach: texts } = useTexts(figuresPunching);
  const { punch } = loadCatalogue().shop;
  const { throat } = punch;
  const sheet = { width: 1000, depth: 800 };
  const scale = 0.31;
  const corner = spot(34, 38);
  const x = (value: number) => corner.x + scale * value;
  const y = (value: number) => corner.y + scale * value;
  const far = { x: sheet.width - throat, y: sheet.depth - throat };
  return (
    <Paper height={330} title={texts.title(sheet.width, sheet.depth, throat)}>
      <Path d={rectangle(spot(x(0), y(0)), spot(x(sheet.width), y(sheet.depth)))} kind="sheet" />
      <Path d={rectangle(spot(x(throat), y(throat)), spot(x(far.x), y(far.y)))} kind="tool" />
      <Text spot={spot(x(sheet.width / 2), y(sheet.depth / 2) + 4)} lines={texts.outOfReach} anchor="middle" kind="name" />
      <Text spot={spot(x(sheet.width / 2), y(100) + 4)} lines={texts.fromThisEdge} anchor="middle" kind="name" />
      <Text spot={spot(x(sheet.width / 2), y(sheet.depth - 100) + 4)} lines={texts.orFromThisOne} anchor="middle" kind="name" />
      <Size from={spot(x(throat), y(140))} to={spot(x(0), y(140))} off={0.1} text={`${throat} mm`} gap={0} />
      <Size
        from={spot(x(sheet.width), y(sheet.depth - 260))}
        to={spot(x(far.x), y(sheet.depth - 260))}
        off={0.1}
        text={`${throat} mm`}
        gap={0}
      />
      <Size from={spot(x(0), y(0))} to={spot(x(sheet.width), y(0))} off={14} text={`${sheet.width} mm`} />
      <Line from={spot(x(throat), y(0))} to={spot(x(throat), y(throat))} kind="hidden" />
      <Line from={spot(x(far.x), y(far.y))} to={spot(x(far.x), y(sheet.depth))} kind="hidden" />
      <Text spot={spot(180, 316)} lines={texts.eachEdgeMiddle} anchor="middle" kind="label" />
    </Paper>
  );
}
