import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { Paper, Path, type Spot, spot, Text } from "./pen.tsx";
import { type StripStep, stripPath } from "./section.ts";

const sheet = 2;
const bend = (turn: number): StripStep => ({ turn, radius: 2 });
const ahead = (length: number): StripStep => ({ ahead: length });

/** Walked along one face from the first end; a number at each bend says when it is made. */
const shapes: readonly {
  name: "channel" | "z" | "hat" | "j";
  start: Spot;
  heading: number;
  steps: readonly StripStep[];
  badges: readonly [number, number, number][];
}[] = [
  {
    name: "channel",
    start: spot(46, 28),
    heading: -90,
    steps: [ahead(32), bend(90), ahead(34), bend(90), ahead(32)],
    badges: [
      [1, 66, 74],
      [2, 109, 74],
    ],
  },
  {
    name: "z",
    start: spot(52, 112),
    heading: 90,
    steps: [ahead(28), bend(-90), ahead(28), bend(90), ahead(22)],
    badges: [
      [1, 74, 79],
      [2, 98, 40],
    ],
  },
  {
    name: "hat",
    start: spot(18, 96),
    heading: 0,
    steps: [ahead(16), bend(90), ahead(20), bend(-90), ahead(26), bend(-90), ahead(20), bend(90), ahead(16)],
    badges: [
      [3, 34, 80],
      [1, 72, 62],
      [2, 99, 62],
      [4, 146, 80],
    ],
  },
  {
    name: "j",
    start: spot(48, 14),
    heading: -90,
    steps: [ahead(40), bend(90), ahead(28), bend(90), ahead(14), { turn: 178, radius: 0.1 }, ahead(8)],
    badges: [
      [3, 69, 77],
      [2, 96, 79],
      [1, 136, 44],
    ],
  },
];

/** Four common shapes in section with the order in which their bends are made. */
export default function BendOrder() {
  const { bendOrder: texts } = useTexts(figuresBending);
  return (
    <Paper height={290} title={texts.title}>
      {shapes.map(({ name, start, heading, steps, badges }, index) => {
        const left = (index % 2) * 180;
        const top = index < 2 ? 0 : 148;
        const view = { scale: 1.9, origin: spot(left + start.x, top + start.y), turned: heading };
        return (
          <g key={name}>
            <Path d={stripPath(steps, sheet, view).d} kind="sheet" />
            {badges.map(([number, x, y]) => (
              <g key={number}>
                <circle class="badge" cx={left + x} cy={top + y} r={10} />
                <text class="mark-text" x={left + x} y={top + y + 4.5} text-anchor="middle">
                  {number}
                </text>
              </g>
            ))}
            <Text spot={spot(left + 90, top + 132)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
