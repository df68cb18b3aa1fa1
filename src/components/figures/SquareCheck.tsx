import { useTexts } from "../../texts/context.ts";
import { figuresSpringback } from "../../texts/en/figures-springback.ts";
import { arcPath, at, away, Paper, Path, spot, Text } from "./pen.tsx";
import { stripPath } from "./section.ts";

const thickness = 4;
const cells = [
  { name: "underBent", angle: 82 },
  { name: "right", angle: 90 },
  { name: "overBent", angle: 97 },
] as const;

/** A try square held inside three bends: where light shows, and what it means. */
export default function SquareCheck() {
  const { squareCheck: texts } = useTexts(figuresSpringback);
  return (
    <Paper height={184} title={texts.title}>
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
          <g key={name}>
            <Path d={strip.d} kind="sheet" />
            <path
              class="tool"
              d={`M${at(spot(blade, touchTop))}L${at(spot(blade, inside - 9))}${arcPath(spot(blade - 6, inside - 6), 6, 0, -90, "L")}L${at(spot(start.x + 4, inside))}L${at(spot(start.x + 4, inside - 12))}L${at(spot(blade - 13, inside - 12))}L${at(spot(blade - 13, touchTop))}Z`}
            />
            <Text spot={spot(left + 60, 150)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
