import { loadCatalogue } from "../../catalogue/load.ts";
import { overbend } from "../../lib/bending/springback.ts";
import { formatNumber } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { figuresSpringback } from "../../texts/en/figures-springback.ts";
import { away, Line, Note, Paper, Path, spot, Text } from "./pen.tsx";
import { stripPath } from "./section.ts";

/** A large radius in stainless sheet, so that the springback can be seen. */
const wanted = { thickness: 1, radius: 20, angle: 90 };
const material = "stainless-304" as const;

/** The same bend while the tool holds it and after it lets go, both drawn from the formula. */
export default function SpringBack() {
  const { springBack: texts } = useTexts(figuresSpringback);
  const { yield: strength, elasticModulus, name } = loadCatalogue().materials[material];
  const found = overbend({ ...wanted, yield: strength.value, elasticModulus: elasticModulus.value });
  const scale = 5.2;
  const view = { scale, origin: spot(36, 214) };
  const straight = 18;
  const leg = 14;
  const free = stripPath(
    [{ ahead: straight }, { turn: wanted.angle, radius: wanted.radius }, { ahead: leg }],
    wanted.thickness,
    view,
  );
  const held = stripPath(
    [{ ahead: straight }, { turn: found.swingAngle, radius: found.toolRadius }, { ahead: leg }],
    wanted.thickness,
    view,
  );
  const centre = spot(view.origin.x + scale * straight, view.origin.y - scale * (wanted.radius + wanted.thickness));
  const heldCentre = spot(centre.x, view.origin.y - scale * (found.toolRadius + wanted.thickness));
  return (
    <Paper height={250} title={texts.title(name, formatNumber(found.swingAngle, 1), formatNumber(found.toolRadius, 1))}>
      <Path d={held.d} kind="sheet-ghost" />
      <Path d={free.d} kind="sheet" />
      <circle class="dot" cx={centre.x} cy={centre.y} r={2} />
      <Line from={centre} to={away(centre, -40, scale * wanted.radius)} />
      <Note
        to={away(centre, -40, scale * wanted.radius * 0.45)}
        from={spot(120, 62)}
        lines={texts.letGo(formatNumber(wanted.radius, 1))}
        anchor="end"
      />
      <Line from={heldCentre} to={away(heldCentre, -78, scale * found.toolRadius)} kind="hidden" />
      <Note
        to={away(heldCentre, -78, scale * found.toolRadius * 0.5)}
        from={spot(92, 132)}
        lines={texts.held(formatNumber(found.toolRadius, 1))}
        anchor="end"
      />
      <Note
        to={spot(centre.x + scale * (wanted.radius + 0.5), centre.y - 60)}
        from={spot(272, 84)}
        lines={texts.letGoAt(formatNumber(wanted.angle, 1))}
      />
      <Note
        to={spot(heldEndX(held, view), heldEndY(held, view) + 20)}
        from={spot(204, 40)}
        lines={texts.heldAt(formatNumber(found.swingAngle, 1))}
        anchor="end"
      />
      <Text spot={spot(180, 242)} lines={texts.byTheFormula(name)} anchor="middle" kind="label" />
    </Paper>
  );
}

type Walked = ReturnType<typeof stripPath>;
const heldEndX = (walked: Walked, view: { scale: number; origin: { x: number } }) => view.origin.x + view.scale * walked.end.x;
const heldEndY = (walked: Walked, view: { scale: number; origin: { y: number } }) => view.origin.y - view.scale * walked.end.z;
