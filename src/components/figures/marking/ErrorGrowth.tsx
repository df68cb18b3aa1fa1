import { loadCatalogue } from "../../../catalogue/load.ts";
import { chainError } from "../../../lib/marking/line-error.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { at, Line, Note, Paper, Path, spot, Text } from "../pen.tsx";

const counts = Array.from({ length: 8 }, (_, index) => index + 1);

/** How far the last line may be off against the number of lines: end to end, and from one edge. */
export default function ErrorGrowth() {
  const { errorGrowth: texts } = useTexts(figuresMarking);
  const method = loadCatalogue().markingMethods["rule-and-scriber"];
  if (!method) throw new Error("marking.yaml has no rule-and-scriber");
  const perLine = method.error;
  const most = chainError({ perLine, count: counts.length }).worst;
  const left = 42;
  const right = 330;
  const bottom = 196;
  const top = 24;
  const x = (count: number) => left + ((right - left) * count) / (counts.length + 0.5);
  const y = (error: number) => bottom - ((bottom - top) * error) / (most * 1.1);
  const curve = (error: (count: number) => number) => counts.map((count) => spot(x(count), y(error(count))));
  const worst = curve((count) => chainError({ perLine, count }).worst);
  const likely = curve((count) => chainError({ perLine, count }).likely);
  const last = chainError({ perLine, count: counts.length });
  return (
    <Paper height={246} title={texts.title(perLine, formatNumber(last.worst, 1), formatNumber(last.likely, 1))}>
      {[1, 2, 3, 4].map((error) => (
        <g key={error}>
          <path class="grain" d={`M${left} ${y(error).toFixed(1)}H${right}`} />
          <Text spot={spot(left - 6, y(error) + 4)} lines={String(error)} anchor="end" kind="size" />
        </g>
      ))}
      {counts.map((count) => (
        <Text key={count} spot={spot(x(count), bottom + 17)} lines={String(count)} anchor="middle" kind="size" />
      ))}
      <Line from={spot(left, bottom)} to={spot(right, bottom)} />
      <Line from={spot(left, bottom)} to={spot(left, top)} />
      <Path d={`M${worst.map(at).join("L")}`} kind="outline" />
      <Path d={`M${likely.map(at).join("L")}`} kind="outline" />
      <Line from={spot(x(1), y(perLine))} to={spot(x(counts.length), y(perLine))} kind="sight" />
      <Note to={spot(x(6), y(6 * perLine))} from={spot(x(4.4), y(3.5))} lines={texts.worst} anchor="end" />
      <Note
        to={spot(x(7), y(chainError({ perLine, count: 7 }).likely))}
        from={spot(x(6.6), y(2.15))}
        lines={texts.likely}
        anchor="middle"
      />
      <Note to={spot(x(5), y(perLine))} from={spot(x(5.35), y(0.25))} lines={texts.allFromOneEdge} />
      <Text spot={spot((left + right) / 2, bottom + 38)} lines={texts.numberOfLines} anchor="middle" kind="label" />
      <Text spot={spot(left + 6, top + 2)} lines={texts.lastLineOffBy} kind="label" />
    </Paper>
  );
}
