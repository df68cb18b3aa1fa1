import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { AngleSize, at, away, Line, Paper, Path, spot, Text } from "./pen.tsx";
import { stripPath } from "./section.ts";

const angles = [30, 90, 135];

/** The same three bends with both their angles: turned through from flat, and left inside. */
export default function AngleNames() {
  const { angleNames: texts } = useTexts(figuresBending);
  return (
    <Paper height={158} title={texts.title}>
      {angles.map((angle, index) => {
        const cell = 120;
        const corner = spot(cell * index + (angle > 90 ? 66 : 60), 88);
        const thickness = 6;
        const view = { scale: 1, origin: spot(corner.x - 54, corner.y + thickness) };
        const strip = stripPath([{ ahead: 54 }, { turn: angle, radius: 0.01 }, { ahead: 48 }], thickness, view);
        return (
          <g key={angle}>
            <Path d={strip.d} kind="sheet" />
            <Line
              from={spot(corner.x + 8, corner.y + thickness / 2)}
              to={spot(corner.x + 48, corner.y + thickness / 2)}
              kind="hidden"
            />
            <AngleSize centre={corner} radius={34} from={0} to={angle} text="" kind="motion" />
            <path class="thin" d={arcOf(corner, 20, angle)} />
            <text class="mark-text" x={cell * index + 60} y={126} text-anchor="middle">
              {texts.turned(angle)}
            </text>
            <Text spot={spot(cell * index + 60, 146)} lines={texts.inside(180 - angle)} anchor="middle" kind="label" />
          </g>
        );
      })}
    </Paper>
  );
}

function arcOf(corner: { x: number; y: number }, radius: number, angle: number): string {
  const from = away(corner, angle, radius);
  const to = away(corner, 180, radius);
  return `M${at(from)}A${radius} ${radius} 0 0 0 ${at(to)}`;
}
