import { formatNumber } from "../../lib/quantity/format.ts";
import { useLanguage, useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { bracketLines } from "./bracket.ts";
import { away, Line, Paper, Path, Size, spot, Text } from "./pen.tsx";

/** The blank of the worked example with its lines, and its bend zone enlarged. */
export default function FlatStrip() {
  const { flatStrip: texts } = useTexts(figuresBending);
  const { blank, first, second, sight, radius } = bracketLines();
  const mm = (value: number) => formatNumber(value, 2);
  const whole = { scale: 3.8, left: 20, top: 76, height: 78 };
  const x = (value: number) => whole.left + whole.scale * value;
  const bottom = whole.top + whole.height;
  const zoom = { scale: 52, top: 236, height: 70 };
  const zoomLeft = 90;
  const zx = (value: number) => zoomLeft + zoom.scale * (value - first);
  const zoomBottom = zoom.top + zoom.height;
  return (
    <Paper height={372} title={texts.title(mm(blank), mm(sight), mm(first), mm(second))}>
      <Path d={`M${x(0)} ${whole.top}H${x(blank)}V${bottom}H${x(0)}Z`} kind="sheet" />
      <Line from={spot(x(first), whole.top)} to={spot(x(first), bottom)} />
      <Line from={spot(x(second), whole.top)} to={spot(x(second), bottom)} />
      <Line from={spot(x(sight), whole.top)} to={spot(x(sight), bottom)} kind="sight" />
      <Size from={spot(x(0), whole.top)} to={spot(x(sight), whole.top)} off={18} text={mm(sight)} />
      <Size from={spot(x(0), whole.top)} to={spot(x(blank), whole.top)} off={46} text={mm(blank)} />
      <Text spot={spot(x(0) + 6, bottom + 18)} lines={texts.datum} kind="label" />
      <Line from={spot(x(0), bottom + 3)} to={spot(x(0), bottom + 22)} kind="outline" />
      <Text spot={spot(x(26), whole.top + 44)} lines={texts.long} anchor="middle" kind="label" />
      <Text spot={spot(x((second + blank) / 2), whole.top + 38)} lines={texts.short} anchor="middle" kind="label" />
      <circle class="thin" cx={x((first + second) / 2)} cy={bottom - 4} r={11} />
      <Line from={away(spot(x((first + second) / 2), bottom - 4), 218, 11)} to={spot(zx(first) - 44, zoom.top)} kind="hidden" />
      <Line from={away(spot(x((first + second) / 2), bottom - 4), -38, 11)} to={spot(zx(second) + 44, zoom.top)} kind="hidden" />

      <path class="band" d={`M${zx(first)} ${zoom.top}H${zx(second)}V${zoomBottom}H${zx(first)}Z`} />
      <Line from={spot(zx(first) - 44, zoom.top)} to={spot(zx(second) + 44, zoom.top)} kind="outline" />
      <Line from={spot(zx(first) - 44, zoomBottom)} to={spot(zx(second) + 44, zoomBottom)} kind="outline" />
      <Line from={spot(zx(first), zoom.top)} to={spot(zx(first), zoomBottom)} />
      <Line from={spot(zx(second), zoom.top)} to={spot(zx(second), zoomBottom)} />
      <Line from={spot(zx(sight), zoom.top - 6)} to={spot(zx(sight), zoomBottom + 6)} kind="sight" />
      <Size from={spot(zx(first), zoom.top)} to={spot(zx(sight), zoom.top)} off={16} text={`R = ${mm(radius)}`} />
      <Size
        from={spot(zx(first), zoomBottom)}
        to={spot(zx(second), zoomBottom)}
        off={-26}
        text={texts.zone(mm(second - first))}
      />
      <Text spot={spot(zx(first) - 6, zoom.top + 26)} lines={[...texts.tangent, mm(first)]} anchor="end" kind="size" />
      <Text spot={spot(zx(second) + 6, zoom.top + 26)} lines={[...texts.tangent, mm(second)]} kind="size" />
      <text class="mark-text" x={zx(sight) + 6} y={zoomBottom - 26}>
        {texts.sight}
      </text>
      <text class="mark-text size" x={zx(sight) + 6} y={zoomBottom - 10}>
        {useLanguage().digits(mm(sight))}
      </text>
      <Text spot={spot(180, 364)} lines={texts.units} anchor="middle" kind="label" />
    </Paper>
  );
}
