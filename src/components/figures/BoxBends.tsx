import { useTexts } from "../../texts/context.ts";
import { figuresEdges } from "../../texts/en/figures-edges.ts";
import { Line, Paper, Path, spot, Text } from "./pen.tsx";

const size = { width: 150, depth: 92, side: 36 };

/** The blank of a box from above, its four bends numbered in the order they are made. */
export default function BoxBends() {
  const { boxBends: texts } = useTexts(figuresEdges);
  const [left, top] = [105, 60];
  const { width, depth, side } = size;
  const [right, bottom] = [left + width, top + depth];
  const badges = [
    { number: 1, x: left + width / 2, y: top - side / 2 },
    { number: 2, x: left + width / 2, y: bottom + side / 2 },
    { number: 3, x: left - side / 2, y: top + depth / 2 },
    { number: 4, x: right + side / 2, y: top + depth / 2 },
  ];
  return (
    <Paper height={236} title={texts.title}>
      <Path
        d={`M${left} ${top - side}H${right}V${top}H${right + side}V${bottom}H${right}V${bottom + side}H${left}V${bottom}H${left - side}V${top}H${left}Z`}
        kind="sheet"
      />
      <Line from={spot(left, top)} to={spot(right, top)} />
      <Line from={spot(left, bottom)} to={spot(right, bottom)} />
      <Line from={spot(left, top)} to={spot(left, bottom)} />
      <Line from={spot(right, top)} to={spot(right, bottom)} />
      {[left, right].flatMap((x) => [top, bottom].map((y) => <circle key={`${x} ${y}`} class="badge" cx={x} cy={y} r={4} />))}
      {badges.map(({ number, x, y }) => (
        <g key={number}>
          <circle class="badge" cx={x} cy={y} r={10} />
          <text class="mark-text" x={x} y={y + 4.5} text-anchor="middle">
            {number}
          </text>
        </g>
      ))}
      <Text spot={spot(left + width / 2, top + depth / 2 + 4)} lines={texts.bottom} anchor="middle" kind="name" />
      <Text spot={spot(180, 222)} lines={texts.order} anchor="middle" kind="name" />
    </Paper>
  );
}
