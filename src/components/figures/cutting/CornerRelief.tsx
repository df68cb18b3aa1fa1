import { formatNumber } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Line, Paper, Path, spot, Text } from "../pen.tsx";
import { cornerPlaces } from "./corner.ts";

const scale = 9;
const reach = 16;

/** The corner of the blank enlarged: where two bend zones cross, and the hole that takes the crossing out. */
export default function CornerRelief() {
  const { cornerRelief: texts } = useTexts(figuresCutting);
  const { guide, tangent, centre, relief } = cornerPlaces();
  const top = 30;
  return (
    <Paper height={250} title={texts.title(formatNumber(relief, 1))}>
      {[false, true].map((drilled) => {
        const left = drilled ? 196 : 14;
        // The corner of the notch lies so far into each picture.
        const start = guide - 5;
        const x = (value: number) => left + scale * (value - start);
        const y = (value: number) => top + scale * (value - start);
        const end = start + reach;
        return (
          <g key={String(drilled)}>
            <Path d={`M${x(guide)} ${y(start)}V${y(guide)}H${x(start)}V${y(end)}H${x(end)}V${y(start)}Z`} kind="sheet" />
            <rect class="band" x={x(tangent)} y={y(guide)} width={scale * (centre - tangent)} height={scale * (end - guide)} />
            <rect class="band" x={x(guide)} y={y(tangent)} width={scale * (end - guide)} height={scale * (centre - tangent)} />
            {[tangent, centre].map((place) => (
              <g key={place}>
                <Line from={spot(x(place), y(guide))} to={spot(x(place), y(end))} />
                <Line from={spot(x(guide), y(place))} to={spot(x(end), y(place))} />
              </g>
            ))}
            {drilled && (
              <>
                <circle class="badge" cx={x(centre)} cy={y(centre)} r={(scale * relief) / 2} />
                <Line from={spot(x(centre) - 20, y(centre))} to={spot(x(centre) + 20, y(centre))} kind="centre" />
                <Line from={spot(x(centre), y(centre) - 20)} to={spot(x(centre), y(centre) + 20)} kind="centre" />
              </>
            )}
            <Text
              spot={spot(left + 74, 206)}
              lines={drilled ? texts.hole(formatNumber(relief, 1)) : texts.zonesCross}
              anchor="middle"
              kind="name"
            />
          </g>
        );
      })}
    </Paper>
  );
}
