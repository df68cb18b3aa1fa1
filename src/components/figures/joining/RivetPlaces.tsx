import { rivetFactors, rivetRows } from "../../../lib/joining/rivets.ts";
import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Line, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { box } from "./shapes.ts";

/** Two rows of rivets from above, every distance in rivet diameters, to scale. */
export default function RivetPlaces() {
  const { rivetPlaces: texts } = useTexts(figuresJoining);
  const scale = 16;
  const { usualPitch: pitch, usualEdge: edge } = rivetFactors;
  const rows = rivetRows({ pitch, diameter: 1 });
  const left = 20;
  const top = 44;
  const lap = { top: top + 34, foot: top + 34 + scale * (2 * edge + rows) };
  const first = lap.top + scale * edge;
  const second = first + scale * rows;
  const places = [0, 1, 2, 3].map((index) => left + scale * (edge + pitch * index));
  const between = places.slice(0, 3).map((x) => x + (scale * pitch) / 2);
  const right = (places.at(-1) ?? 0) + scale * edge;
  const D = (value: number) => `${formatNumber(value, 1).replace(/\.0$/, "")} D`;
  return (
    <Paper height={lap.foot + 76} title={texts.title(D(pitch), D(edge), D(rows))}>
      <Path d={box(left, top, right, lap.foot)} kind="sheet" />
      <Path d={box(left, lap.top, right, lap.foot + 30)} kind="sheet" />
      {[
        { y: first, xs: places },
        { y: second, xs: between },
      ].map(({ y, xs }) => (
        <g key={y}>
          <Line from={spot(left - 8, y)} to={spot(right + 8, y)} kind="centre" />
          {xs.map((x) => (
            <circle key={x} class="outline" cx={x} cy={y} r={scale / 2} />
          ))}
        </g>
      ))}
      <Size
        from={spot(places[0] ?? 0, first)}
        to={spot(places[1] ?? 0, first)}
        off={first - top + 12}
        text={`p ${D(pitch)}`}
        gap={12}
      />
      <Size from={spot(places[3] ?? 0, first)} to={spot(right, first)} off={first - top + 12} text={`e ${D(edge)}`} gap={12} />
      <Size from={spot(right, first)} to={spot(right, second)} off={26} text={D(rows)} />
      <Size from={spot(right, second)} to={spot(right, lap.foot)} off={26} text={`e ${D(edge)}`} outside="to" />
      <Text spot={spot(left, lap.foot + 54)} lines={texts.least(D(rivetFactors.pitch), D(rivetFactors.edge))} kind="label" />
    </Paper>
  );
}
