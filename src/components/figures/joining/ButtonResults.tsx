import { buttonFactors } from "../../../lib/joining/weld-button.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresJoining } from "../../../texts/en/figures-joining.ts";
import { Line, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { box } from "./shapes.ts";

/** What a peel test shows: each sheet seen on its torn face. */
export default function ButtonResults() {
  const { buttonResults: texts } = useTexts(figuresJoining);
  const y = 66;
  const ragged = (x: number, radius: number, wobble: number) =>
    `${Array.from({ length: 18 }, (_, index) => {
      const angle = (index * Math.PI) / 9;
      const reach = radius + wobble * Math.sin(3 * index);
      return `${index === 0 ? "M" : "L"}${(x + reach * Math.cos(angle)).toFixed(1)} ${(y + reach * Math.sin(angle)).toFixed(1)}`;
    }).join("")}Z`;
  const plate = (x: number) => <Path d={box(x - 38, y - 38, x + 38, y + 38)} kind="sheet" />;
  return (
    <Paper height={250} title={texts.title}>
      {[45, 135, 225, 315].map((x) => (
        <g key={x}>{plate(x)}</g>
      ))}
      <path class="warm" d={ragged(45, 26, 0)} />
      <Path d={ragged(45, 22, 0.7)} kind="outline" />
      <Size from={spot(23, y)} to={spot(67, y)} off={-60} text="d1" gap={20} />
      <Size from={spot(45, y - 22)} to={spot(45, y + 22)} off={31} text="d2" gap={20} />
      <path class="warm" d={ragged(135, 16, 0)} />
      <Path d={ragged(135, 10, 0.6)} kind="outline" />
      <circle class="hidden" cx={135} cy={y} r={20} />
      <path class="warm" d={ragged(225, 20, 0)} />
      <Line from={spot(212, y - 5)} to={spot(238, y - 5)} />
      <Line from={spot(210, y + 3)} to={spot(240, y + 3)} />
      <Line from={spot(214, y + 11)} to={spot(236, y + 11)} />
      <path class="warm" d={ragged(315, 27, 0)} />
      <path class="badge" d={ragged(315, 15, 4)} />
      <Text spot={spot(45, 162)} lines={texts.wholeButton} anchor="middle" kind="name" />
      <Text spot={spot(135, 162)} lines={texts.smallerThan(buttonFactors.least)} anchor="middle" kind="name" />
      <Text spot={spot(225, 162)} lines={texts.cleanBreak} anchor="middle" kind="name" />
      <Text spot={spot(315, 162)} lines={texts.blownOut} anchor="middle" kind="name" />
      <Text spot={spot(12, 228)} lines={texts.meanWidth} kind="label" />
    </Paper>
  );
}
