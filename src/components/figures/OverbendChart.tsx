import { loadCatalogue } from "../../catalogue/load.ts";
import { overbend } from "../../lib/bending/springback.ts";
import { useTexts } from "../../texts/context.ts";
import { figuresSpringback } from "../../texts/en/figures-springback.ts";
import { at, Line, Note, Paper, Path, spot, Text } from "./pen.tsx";

/** `at`: the ratio at which the name is tied to its curve, and how far away it stands. */
const metals = [
  { id: "al-5052-h32", at: 9, off: [14, 6] },
  { id: "stainless-304", at: 15, off: [-14, -24] },
  { id: "steel-cr", at: 14, off: [6, 22] },
  { id: "copper-soft", at: 15, off: [-4, 26] },
] as const;
const largestRatio = 20;
const largestOverbend = 8;

/** Overbend at 90° against radius over thickness for four metals, by the formula. */
export default function OverbendChart() {
  const { overbendChart: texts } = useTexts(figuresSpringback);
  const { materials } = loadCatalogue();
  const left = 44;
  const right = 340;
  const top = 20;
  const bottom = 214;
  const x = (ratio: number) => left + ((right - left) * ratio) / largestRatio;
  const y = (degrees: number) => bottom - ((bottom - top) * degrees) / largestOverbend;
  const curves = metals.map(({ id, at: ratio, off }) => {
    const { yield: strength, elasticModulus } = materials[id];
    const value = (each: number) =>
      overbend({ angle: 90, thickness: 1, radius: each, yield: strength.value, elasticModulus: elasticModulus.value }).overbend;
    const points = Array.from({ length: 41 }, (_, index) => (largestRatio * index) / 40).map((each) =>
      spot(x(each), y(value(each))),
    );
    return {
      name: texts.metals[id],
      off,
      tie: spot(x(ratio), y(value(ratio))),
      points: points.filter((point) => point.y >= top),
    };
  });
  return (
    <Paper height={262} title={texts.title}>
      {[0, 2, 4, 6, 8].map((degrees) => (
        <g key={degrees}>
          <path class="grain" d={`M${left} ${y(degrees)}H${right}`} />
          <Text spot={spot(left - 6, y(degrees) + 4)} lines={`${degrees}°`} anchor="end" kind="size" />
        </g>
      ))}
      {[0, 5, 10, 15, 20].map((ratio) => (
        <Text key={ratio} spot={spot(x(ratio), bottom + 18)} lines={String(ratio)} anchor="middle" kind="size" />
      ))}
      <Line from={spot(left, bottom)} to={spot(right, bottom)} />
      <Line from={spot(left, bottom)} to={spot(left, top)} />
      {curves.map(({ name, off, tie, points }, index) => (
        <g key={name}>
          <Path d={`M${points.map(at).join("L")}`} kind={index % 2 === 0 ? "sight" : "outline"} />
          <Note to={tie} from={spot(tie.x + off[0], tie.y + off[1])} lines={name} anchor={off[0] < -8 ? "end" : "start"} />
        </g>
      ))}
      <Text spot={spot((left + right) / 2, bottom + 38)} lines={texts.radiusOverThickness} anchor="middle" kind="label" />
      <Text spot={spot(left + 8, top + 6)} lines={texts.overbend} kind="label" />
    </Paper>
  );
}
