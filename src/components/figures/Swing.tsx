import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { AngleSize, Line, Paper, Path, spot, Text } from "./pen.tsx";
import { stripPath } from "./section.ts";
import { type BrakeFront, bedPath, fingerPath, leafPath } from "./tool.ts";

const sheet = { thickness: 1.2, radius: 1.6 };
const leg = 9;
const clampedLength = 8;
const wanted = 90;
// Larger than most bends need, so that the step back can be seen.
const past = 8;

const steps = [
  { leaf: 0, bent: 0, lift: sheet.thickness },
  { leaf: wanted + past, bent: wanted + past, lift: sheet.thickness },
  { leaf: 0, bent: wanted, lift: sheet.thickness + 1.1 },
];

/** One bend in three pictures: clamped, swung past the angle, let go. */
export default function Swing() {
  const { swing: texts } = useTexts(figuresBending);
  return (
    <Paper height={188} title={texts.title}>
      {steps.map(({ leaf, bent, lift }, index) => {
        const [name = "", more = ""] = texts.steps[index] ?? [];
        const scale = 6.4;
        const left = index * 120;
        const front: BrakeFront = {
          hinge: spot(left + 66, 112),
          scale,
          noseRadius: sheet.radius,
          setback: sheet.thickness,
          thickness: sheet.thickness,
          reach: 9,
          height: 8,
          lift,
        };
        const zone = (Math.max(bent, 1e-3) * Math.PI * (sheet.radius + 0.45 * sheet.thickness)) / 180;
        const start = front.hinge.x - scale * (sheet.thickness + sheet.radius + clampedLength);
        const view = { scale, origin: spot(start, front.hinge.y) };
        const path = stripPath(
          bent === 0
            ? [{ ahead: clampedLength + leg + zone }]
            : [{ ahead: clampedLength }, { turn: bent, radius: sheet.radius }, { ahead: leg }],
          sheet.thickness,
          view,
        );
        const ghost = stripPath(
          [{ ahead: clampedLength }, { turn: wanted + past, radius: sheet.radius }, { ahead: leg }],
          sheet.thickness,
          view,
        );
        return (
          <g key={name}>
            <Path d={bedPath(front, 3)} kind="tool" />
            <Path d={leafPath({ ...front, reach: 7 }, 2.2, leaf)} kind="tool" />
            <Path d={fingerPath(front)} kind="tool" />
            {index === 2 && <Path d={ghost.d} kind="sheet-ghost" />}
            <Path d={path.d} kind="sheet" />
            {index === 1 && <AngleSize centre={front.hinge} radius={50} from={4} to={leaf - 50} text="" kind="motion" />}
            {index === 0 && (
              <Line
                from={spot(front.hinge.x - scale * sheet.thickness, front.hinge.y - scale * 3.4)}
                to={spot(front.hinge.x - scale * sheet.thickness, front.hinge.y - scale * sheet.thickness)}
                kind="sight"
              />
            )}
            <Text spot={spot(left + 60, 158)} lines={[`${index + 1}  ${name}`, more]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
