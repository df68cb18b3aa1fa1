import { useTexts } from "../../texts/context.ts";
import { figuresSpringback } from "../../texts/en/figures-springback.ts";
import { at, Paper, Path, type Spot, spot, Text } from "./pen.tsx";
import { stripPath } from "./section.ts";

const sheet = { thickness: 2, radius: 2 };
const level = 20;
const upright = 20;
const scale = 2.7;

const cells = [
  { name: "right", angle: 90, tilt: 0, above: false },
  { name: "tilted", angle: 90, tilt: 8, above: false },
  { name: "fromAbove", angle: 83, tilt: 0, above: true },
] as const;

/** A caliper on the outside leg of an angle: from below near the bend, tilted, and from above on a leg that is not square. */
export default function JawPlacement() {
  const { jawPlacement: texts } = useTexts(figuresSpringback);
  return (
    <Paper height={196} title={texts.title}>
      {cells.map(({ name, angle, tilt, above }, index) => {
        const origin = spot(index * 120 + 26, 108);
        const strip = stripPath(
          [{ ahead: level - sheet.radius - sheet.thickness }, { turn: angle, radius: sheet.radius }, { ahead: upright - 4 }],
          sheet.thickness,
          { scale, origin },
        );
        // From above, the jaw meets the tip of a leg that leans out; from below it meets the leg near the bend.
        const contact = above ? scale * strip.end.x : scale * level;
        const reach = above ? scale * (upright + 1) : scale * 6;
        const left = origin;
        const right = spot(origin.x + contact + (tilt > 0 ? 3 : 0), origin.y);
        return (
          <g key={name}>
            <Path d={strip.d} kind="sheet" />
            <g transform={tilt === 0 ? undefined : `rotate(${tilt} ${left.x} ${left.y - 4})`}>
              <Path d={jaws(left, right, reach, above)} kind="tool" />
            </g>
            <Text spot={spot(index * 120 + 60, 168)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}

/** Two caliper jaws and the beam between them; the measuring faces look at each other. */
function jaws(left: Spot, right: Spot, reach: number, above: boolean): string {
  const sign = above ? 1 : -1;
  const beam = above ? left.y - reach - 14 : left.y + 20;
  const outer = above ? beam - 8 : beam + 8;
  const tip = above ? left.y - 1 : left.y - reach;
  return [
    `M${at(spot(left.x, tip))}`,
    `L${at(spot(left.x, beam))}`,
    `L${at(spot(right.x, beam))}`,
    `L${at(spot(right.x, tip))}`,
    `L${at(spot(right.x + 4, tip + sign * -3))}`,
    `L${at(spot(right.x + 10, outer))}`,
    `L${at(spot(left.x - 10, outer))}`,
    `L${at(spot(left.x - 4, tip + sign * -3))}Z`,
  ].join("");
}
