import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Paper, Path, spot, Text } from "../pen.tsx";
import { stripPath } from "../section.ts";

const sheet = { thickness: 2, radius: 3 };

/** A bend beside a punched edge: with the burr inside it is squeezed, outside it is where a crack starts. */
export default function BurrSide() {
  const { burrSide: texts } = useTexts(figuresPunching);
  const scale = 9;
  return (
    <Paper height={196} title={texts.title}>
      {[0, 180].map((left) => {
        const inside = left === 0;
        const origin = spot(left + 22, 138);
        const view = { scale, origin };
        const steps = [{ ahead: 7 }, { turn: 90, radius: sheet.radius }, { ahead: 7 }] as const;
        const centre = spot(origin.x + scale * 7, origin.y - scale * (sheet.radius + sheet.thickness));
        // Little teeth along the face that has the burr.
        const face = scale * (inside ? sheet.radius : sheet.radius + sheet.thickness);
        const out = inside ? -4 : 4;
        const teeth = Array.from({ length: 9 }, (_, index) => {
          const angle = ((index + 0.5) / 9) * (Math.PI / 2);
          const at = (more: number, turn: number) =>
            `${(centre.x + (face + more) * Math.sin(angle + turn)).toFixed(1)} ${(centre.y + (face + more) * Math.cos(angle + turn)).toFixed(1)}`;
          return `M${at(0, -0.05)}L${at(out, 0)}L${at(0, 0.05)}`;
        });
        const crack = spot(centre.x + face * Math.SQRT1_2, centre.y + face * Math.SQRT1_2);
        return (
          <g key={left}>
            <Path d={stripPath(steps, sheet.thickness, view).d} kind="sheet" />
            <path class={inside ? "squeeze" : "stretch"} d={teeth.join("")} stroke-width={1.4} />
            {!inside && <path class="outline" d={`M${crack.x} ${crack.y}l-4 -5l-4 -1l-3 -6`} />}
            <Text spot={spot(left + 84, 166)} lines={inside ? texts.burrInside : texts.burrOutside} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
