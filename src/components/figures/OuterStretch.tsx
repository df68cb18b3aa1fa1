import { outerStrain } from "../../lib/bending/smallest-radius.ts";
import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { at, Line, Note, Paper, Path, spot, Text } from "./pen.tsx";

const largest = 6;
const marks = [0.5, 1, 2, 4];

/** Stretch of the outer face against inside radius over thickness. */
export default function OuterStretch() {
  const { outerStretch: texts } = useTexts(figuresBending);
  const left = 58;
  const right = 340;
  const top = 22;
  const bottom = 196;
  const strain = (ratio: number) => outerStrain({ radius: ratio, thickness: 1 });
  const x = (ratio: number) => left + ((right - left) * ratio) / largest;
  const y = (share: number) => bottom - (bottom - top) * share;
  const curve = Array.from({ length: 61 }, (_, index) => (largest * index) / 60);
  return (
    <Paper height={244} title={texts.title}>
      {[0, 0.25, 0.5, 0.75, 1].map((share) => (
        <g key={share}>
          <path class="grain" d={`M${left} ${y(share)}H${right}`} />
          <Text spot={spot(left - 6, y(share) + 4)} lines={`${share * 100} %`} anchor="end" kind="size" />
        </g>
      ))}
      {[0, 1, 2, 3, 4, 5, 6].map((ratio) => (
        <Text key={ratio} spot={spot(x(ratio), bottom + 18)} lines={String(ratio)} anchor="middle" kind="size" />
      ))}
      <Line from={spot(left, bottom)} to={spot(right, bottom)} />
      <Line from={spot(left, bottom)} to={spot(left, top)} />
      <Path d={`M${curve.map((ratio) => at(spot(x(ratio), y(strain(ratio))))).join("L")}`} kind="sight" />
      {marks.map((ratio) => (
        <Note
          key={ratio}
          to={spot(x(ratio), y(strain(ratio)))}
          from={spot(x(ratio) + 22, y(strain(ratio)) - 20)}
          lines={`${Math.round(strain(ratio) * 100)} %`}
        />
      ))}
      <Text spot={spot((left + right) / 2, bottom + 38)} lines={texts.ratio} anchor="middle" kind="label" />
      <Text spot={spot(right, top + 4)} lines={texts.stretch} anchor="end" kind="label" />
    </Paper>
  );
}
