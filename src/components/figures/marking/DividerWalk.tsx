import { chord, holeCircle } from "../../../lib/marking/hole-circle.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { arcPath, at, away, Line, Note, Paper, Path, spot, Text } from "../pen.tsx";

/** The circle of the example [mm]; dividers set too wide by so much. */
const circle = { diameter: 70, count: 8 };
const tooWide = 0.25;
/** Drawn this much larger, so that the space that is left over can be seen. */
const enlarged = 9;

/** Walking round a circle with dividers that are set a little too wide. */
export default function DividerWalk() {
  const { dividerWalk: texts } = useTexts(figuresMarking);
  const scale = 2.7;
  const middle = spot(150, 130);
  const radius = (scale * circle.diameter) / 2;
  const right = chord(circle);
  const wide = right + enlarged * tooWide;
  const step = (2 * Math.asin(wide / circle.diameter) * 180) / Math.PI;
  const walked = Array.from({ length: circle.count }, (_, index) => away(middle, index * step, radius));
  const wanted = holeCircle({ ...circle, startAngle: 0, centreX: 0, centreY: 0 });
  const short = (circle.count - 1) * tooWide;
  const [first, second] = walked;
  const last = walked.at(-1);
  if (!first || !second || !last) throw new Error("A circle of holes has a first, a second and a last one");
  return (
    <Paper height={262} title={texts.title(tooWide, formatNumber(short, 2))}>
      <circle class="centre" cx={middle.x} cy={middle.y} r={radius} />
      {wanted.map(({ angle }) => {
        const place = away(middle, angle, radius);
        return <circle key={angle} class="thin" cx={place.x.toFixed(1)} cy={place.y.toFixed(1)} r={7} />;
      })}
      <Path d={`M${walked.map(at).join("L")}`} kind="thin" />
      {walked.map((place) => (
        <circle key={at(place)} class="dot" cx={place.x.toFixed(1)} cy={place.y.toFixed(1)} r={2.6} />
      ))}
      <Path d={arcPath(middle, radius, (circle.count - 1) * step, 360)} kind="sight" />
      <Line from={last} to={first} kind="sight" />
      <Path d={`M${at(first)}L${at(away(first, 52, 62))}L${at(second)}`} kind="outline" />
      <Note to={away(first, 52, 40)} from={spot(296, 62)} lines={texts.dividers} />
      <Note
        to={away(middle, ((circle.count - 1) * step + 360) / 2, radius)}
        from={spot(268, 196)}
        lines={texts.lastSpaceTooNarrow(formatNumber(short, 2))}
      />
      <Text spot={spot(middle.x, middle.y - 4)} lines={texts.thinCircles} anchor="middle" kind="label" />
      <Text spot={spot(10, 252)} lines={texts.errorDrawnTimes(enlarged)} kind="label" />
    </Paper>
  );
}
