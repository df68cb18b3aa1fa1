import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { AngleSize, away, Line, Note, Paper, Path, Size, spot, Text } from "../pen.tsx";

const ruleThickness = 1;
const slant = 20;
const scale = 46;

/** A rule from its side: its divisions lie on top, one thickness above the sheet, so a slanting look reads another place. */
export default function Parallax() {
  const { parallax: texts } = useTexts(figuresMarking);
  const floor = 158;
  const top = floor - ruleThickness * scale;
  const division = spot(150, top);
  const error = ruleThickness * Math.tan((slant * Math.PI) / 180);
  const wrong = spot(division.x - error * scale, floor);
  return (
    <Paper height={214} title={texts.title(slant, formatNumber(error, 2))}>
      <Path d={`M16 ${top}H344V${floor}H16Z`} kind="tool" />
      <Path d={`M10 ${floor}H350V${floor + 13}H10Z`} kind="sheet" />
      {Array.from({ length: 6 }, (_, index) => (
        <Line
          key={index}
          from={spot(division.x + (index - 2) * scale, top)}
          to={spot(division.x + (index - 2) * scale, top + (index === 2 ? 16 : 9))}
          kind="outline"
        />
      ))}
      <Line from={spot(division.x, 24)} to={spot(division.x, floor)} kind="sight" />
      <Line from={wrong} to={away(division, 90 - slant, 92)} kind="motion" />
      <AngleSize centre={division} radius={66} from={90} to={90 - slant} text={`${slant}°`} textOff={10} />
      <Size from={wrong} to={spot(division.x, floor)} off={-30} gap={14} text={formatNumber(error, 2)} outside="to" />
      <Note to={spot(300, top + 24)} from={spot(286, top - 22)} lines={texts.rule} anchor="middle" />
      <Text spot={spot(division.x - 8, 22)} lines={texts.lookStraightDown} anchor="end" kind="name" />
      <Text spot={spot(division.x + 42, 22)} lines={texts.lookAtSlant} kind="name" />
      <Text spot={spot(24, floor + 32)} lines={texts.sheet} kind="label" />
    </Paper>
  );
}
