import { loadCatalogue } from "../../../catalogue/load.ts";
import { runWorksheet } from "../../../lib/worksheet.ts";
import rollSetting from "../../../lib/worksheets/roll-setting.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { arcPath, at, away, Line, Note, Paper, Size, spot, Text } from "../pen.tsx";

/** The example tube as it comes from the rolls, with both ends flat, and as it should be. To scale. */
export default function FlatEnds() {
  const { flatEnds: texts } = useTexts(figuresRolling);
  const { answer, values } = runWorksheet(rollSetting, {}, loadCatalogue());
  const flat = answer?.outputs.flatEnd;
  if (!values || typeof flat !== "number") throw new Error("The example of the rolling page has no flat ends");
  const scale = 1;
  const radius = scale * (values.radius + values.thickness / 2);
  const centre = spot(178, 142);
  // Half of the tube that is curved, from the bottom to either side.
  const turn = 180 - ((scale * flat) / radius) * (180 / Math.PI);
  const right = away(centre, -90 + turn, radius);
  const left = away(centre, -90 - turn, radius);
  const tip = away(right, turn, scale * flat);
  const other = away(left, 180 - turn, scale * flat);
  return (
    <Paper height={236} title={texts.title(Math.round(flat))}>
      <circle class="hidden" cx={centre.x} cy={centre.y} r={radius} />
      <path class="outline" d={`M${at(other)}L${at(left)}${arcPath(centre, radius, -90 - turn, -90 + turn, "L")}L${at(tip)}`} />
      <path class="stretch" d={`M${at(right)}L${at(tip)}M${at(left)}L${at(other)}`} />
      <Size from={right} to={tip} off={-16} text={`${Math.round(flat)} mm`} />
      <Line from={centre} to={away(centre, -30, radius)} />
      <Text spot={spot(centre.x - 34, centre.y + 44)} lines={texts.radius(values.radius)} kind="size" />
      <Note to={away(centre, 90, radius)} from={spot(centre.x, 112)} lines={texts.whereSeamShould} anchor="middle" end="arrow" />
    </Paper>
  );
}
