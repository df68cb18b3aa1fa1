import { jointSpacing } from "../../../lib/joining/spot-spacing.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Line, Note, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { box } from "./shapes.ts";

/** Usual test strip [mm]: common practice. */
const strip = { length: 100, width: 30, lap: 60 };

/** Two strips with two spots at the pitch of the job: the first draws current from the second, which is the one that counts. */
export default function Coupon() {
  const { coupon: texts } = useTexts(figuresJoining);
  const { pitch, edge } = jointSpacing(1);
  const scale = 2.05;
  const left = 22;
  const x = (mm: number) => left + scale * mm;
  const top = 58;
  const foot = top + scale * strip.width;
  const middle = top + (scale * strip.width) / 2;
  const lap = strip.length - strip.lap;
  const [second, first] = [lap + edge, lap + edge + pitch];
  const mm = (value: number) => formatNumber(value, 0);
  return (
    <Paper height={foot + 92} title={texts.title(strip.length, strip.width, strip.lap, mm(pitch))}>
      <Path d={box(x(0), top, x(strip.length), foot)} kind="sheet" />
      <Path d={box(x(lap), top, x(lap + strip.length), foot)} kind="sheet" />
      <Line from={spot(x(0), middle)} to={spot(x(lap + strip.length), middle)} kind="centre" />
      {[first, second].map((place) => (
        <circle key={place} class="outline" cx={x(place)} cy={middle} r={scale * 2.5} />
      ))}
      <Size from={spot(x(0), top)} to={spot(x(strip.length), top)} off={34} text={mm(strip.length)} gap={3} />
      <Size from={spot(x(lap), top)} to={spot(x(strip.length), top)} off={12} text={texts.lap(strip.lap)} />
      <Size from={spot(x(lap + strip.length), foot)} to={spot(x(lap + strip.length), top)} off={-14} text={mm(strip.width)} />
      <Size from={spot(x(second), middle)} to={spot(x(first), middle)} off={-48} text={`p ${mm(pitch)}`} gap={8} />
      <Note to={spot(x(first), middle)} from={spot(x(first) + 44, foot + 44)} lines={texts.firstSpot} />
      <Note to={spot(x(second), middle)} from={spot(112, foot + 44)} lines={texts.secondSpot} anchor="end" />
      <Text spot={spot(348, foot + 84)} lines={texts.sizesIn} anchor="end" kind="label" />
    </Paper>
  );
}
