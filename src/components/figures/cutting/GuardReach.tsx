import { loadCatalogue } from "../../../catalogue/load.ts";
import { guardDistance } from "../../../lib/cutting/guard-opening.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Line, Note, Paper, Path, spot, Text } from "../pen.tsx";

const most = { distance: 140, opening: 20 };
const step = 0.25;

/** Opening below a guard against its distance from the blade: what ISO 13857 lets through, and this shop's shear. */
export default function GuardReach() {
  const { guardReach: texts } = useTexts(figuresCutting);
  const { guardOpening, guardDistance: here } = loadCatalogue().shop.shear;
  const left = 46;
  const right = 340;
  const bottom = 196;
  const top = 34;
  const x = (distance: number) => left + ((right - left) * distance) / most.distance;
  const y = (opening: number) => bottom - ((bottom - top) * opening) / most.opening;
  const openings = Array.from({ length: most.opening / step }, (_, index) => (index + 1) * step);
  // A staircase: at each opening the distance that is asked for.
  const stairs = openings.reduce(
    (path, opening) => `${path}H${x(guardDistance(opening, "slot")).toFixed(1)}V${y(opening).toFixed(1)}`,
    `M${x(guardDistance(step, "slot")).toFixed(1)} ${bottom}`,
  );
  const asked = guardDistance(guardOpening, "slot");
  return (
    <Paper height={254} title={texts.title(guardOpening, asked, here)}>
      <Path d={`${stairs}H${right}V${bottom}Z`} kind="sheet" />
      {[0, 5, 10, 15, 20].map((opening) => (
        <Text key={opening} spot={spot(left - 6, y(opening) + 4)} lines={String(opening)} anchor="end" kind="size" />
      ))}
      {[0, 20, 40, 60, 80, 100, 120, 140].map((distance) => (
        <Text key={distance} spot={spot(x(distance), bottom + 17)} lines={String(distance)} anchor="middle" kind="size" />
      ))}
      <Line from={spot(left, bottom)} to={spot(left, top)} />
      <circle class="arrow-mark" cx={x(here)} cy={y(guardOpening)} r={4} />
      <Note
        to={spot(x(here), y(guardOpening))}
        from={spot(x(46), y(5))}
        lines={texts.thisShop(formatNumber(guardOpening, 0), formatNumber(here, 0))}
      />
      <Text spot={spot(x(34), y(14.2))} lines={texts.tooNear} anchor="middle" kind="name" />
      <Text spot={spot(right - 6, bottom - 8)} lines={texts.farEnough} anchor="end" kind="name" />
      <Text spot={spot(left - 30, 18)} lines={texts.heightOfTheOpening} kind="label" />
      <Text spot={spot((left + right) / 2, bottom + 38)} lines={texts.distanceFromTheBlade} anchor="middle" kind="label" />
    </Paper>
  );
}
