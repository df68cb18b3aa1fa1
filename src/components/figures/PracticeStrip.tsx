import { useTexts } from "../../texts/context.ts";
import { figuresSpringback } from "../../texts/en/figures-springback.ts";
import { Arrowhead, Line, Note, Paper, Path, Size, spot, Text } from "./pen.tsx";

/** A practice strip, flat: size, number, rolling direction, sight line and the places where it is measured. */
export default function PracticeStrip() {
  const { practiceStrip: texts } = useTexts(figuresSpringback);
  const scale = 2.6;
  const left = 46;
  const top = 58;
  const length = 100;
  const width = 50;
  const x = (value: number) => left + scale * value;
  const y = (value: number) => top + scale * value;
  return (
    <Paper height={262} title={texts.title}>
      <Path d={`M${x(0)} ${y(0)}H${x(length)}V${y(width)}H${x(0)}Z`} kind="sheet" />
      <Line from={spot(x(50), y(0))} to={spot(x(50), y(width))} kind="sight" />
      <Size from={spot(x(0), y(0))} to={spot(x(length), y(0))} off={18} text={texts.length} />
      <Size from={spot(x(0), y(0))} to={spot(x(0), y(width))} off={-18} text={texts.width} />
      {[8, 25, 42].map((place) => (
        <Line key={place} from={spot(x(2), y(place))} to={spot(x(length - 2), y(place))} kind="hidden" />
      ))}
      <Text spot={spot(x(8), y(17.5))} lines={texts.number} kind="big" />
      <Text spot={spot(x(76), y(36))} lines={texts.clamped} anchor="middle" kind="label" />
      <Line from={spot(x(6), y(33))} to={spot(x(42), y(33))} kind="thin" />
      <Arrowhead tip={spot(x(42), y(33))} direction={0} />
      <Arrowhead tip={spot(x(6), y(33))} direction={180} />
      <Text spot={spot(x(24), y(39.5))} lines={texts.rollingDirection} anchor="middle" kind="label" />
      <Note to={spot(x(50), y(46))} from={spot(x(40), 210)} lines={texts.sightLine} anchor="end" />
      <Note to={spot(x(84), y(42))} from={spot(x(76), 200)} lines={texts.measure} anchor="middle" />
    </Paper>
  );
}
