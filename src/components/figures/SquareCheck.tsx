import { arcPath, at, away, Paper, Path, spot, Text } from "./pen.tsx";
import { stripPath } from "./section.ts";

const thickness = 4;
const cells = [
  { name: ["light at the tip:", "leg under-bent"], angle: 82 },
  { name: ["no light:", "90°"], angle: 90 },
  { name: ["light at the heel:", "leg over-bent"], angle: 97 },
];

/** A try square held inside three bends: where light shows, and what it means. */
export default function SquareCheck() {
  return (
    <Paper
      height={184}
      title="A square inside a bend: a gap at the tip means the leg is under-bent, a gap at the heel means it is over-bent"
    >
      {cells.map(({ name, angle }, index) => {
        const left = index * 120;
        const start = spot(left + 18, 118);
        const run = 62;
        const strip = stripPath([{ ahead: run }, { turn: angle, radius: 3 }, { ahead: 72 }], thickness, {
          scale: 1,
          origin: start,
        });
        // The stock of the square lies on the level leg; the blade is slid up to the leg until it touches.
        const inside = start.y - thickness;
        const centre = spot(start.x + run, inside - 3);
        const heel = away(centre, angle - 90, 3);
        const tip = away(heel, angle, 64);
        const blade = Math.min(heel.x, tip.x) - 0.5;
        const touchTop = inside - 62;
        return (
          <g key={name[0]}>
            <Path d={strip.d} kind="sheet" />
            <path
              class="tool"
              d={`M${at(spot(blade, touchTop))}L${at(spot(blade, inside - 9))}${arcPath(spot(blade - 6, inside - 6), 6, 0, -90, "L")}L${at(spot(start.x + 4, inside))}L${at(spot(start.x + 4, inside - 12))}L${at(spot(blade - 13, inside - 12))}L${at(spot(blade - 13, touchTop))}Z`}
            />
            <Text spot={spot(left + 60, 150)} lines={name} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
