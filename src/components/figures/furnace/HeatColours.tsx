import { annealing, canAnneal } from "../../../lib/furnace/annealing.ts";
import { dooleyColours, heatColours } from "../../../lib/furnace/heat-colours.ts";
import { toBase } from "../../../lib/quantity/units.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresFurnace } from "../../../texts/en/figures-furnace.ts";
import { Line, Paper, spot, Text } from "../pen.tsx";

/** Heat colours by two writers on one scale, and where steel is annealed. */
export default function HeatColours() {
  const { heatColours: texts } = useTexts(figuresFurnace);
  const top = 44;
  const scale = 0.42;
  const first = 400;
  const last = 1100;
  const y = (celsius: number) => top + scale * (celsius - first);
  const steel = annealing["steel-cr"];
  const band = canAnneal(steel) ? steel.ranges[0] : undefined;
  const bands = heatColours.filter(({ to }) => to <= last);
  return (
    <Paper height={y(last) + 30} title={texts.title}>
      {band && <rect class="warm" x={44} y={y(band.low)} width={304} height={scale * (band.high - band.low)} />}
      {[400, 500, 600, 700, 800, 900, 1000, 1100].map((celsius) => (
        <g key={celsius}>
          <Line from={spot(44, y(celsius))} to={spot(348, y(celsius))} />
          <Text spot={spot(40, y(celsius) + 4)} lines={`${celsius}`} anchor="end" kind="size" />
        </g>
      ))}
      {bands.map(({ colour, from, to }) => (
        <g key={colour}>
          <rect class="gauge" x={66} y={y(from)} width={116} height={scale * (to - from)} />
          <Text spot={spot(124, y((from + to) / 2) + 4)} lines={colour} anchor="middle" kind="name" />
        </g>
      ))}
      {dooleyColours.map(({ colour, fahrenheit }) => {
        const at = y(toBase(fahrenheit, "temperature", "°F"));
        return (
          <g key={colour}>
            <Line from={spot(214, at)} to={spot(246, at)} kind="sight" />
            <Text spot={spot(252, at + 4)} lines={colour} kind="size" />
          </g>
        );
      })}
      <Text spot={spot(124, 24)} lines={texts.oneWriter} anchor="middle" kind="label" />
      <Text spot={spot(262, 24)} lines={texts.another} anchor="middle" kind="label" />
      <Text spot={spot(8, 24)} lines="°C" kind="label" />
      {band && (
        <Text spot={spot(346, y((band.low + band.high) / 2) + 12)} lines={texts.steelIsAnnealed} anchor="end" kind="size" />
      )}
    </Paper>
  );
}
