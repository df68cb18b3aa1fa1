import { loadCatalogue } from "../../../catalogue/load.ts";
import { radiusLeft } from "../../../lib/rolling/loaded-radius.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { Arrowhead, at, Line, Paper, spot, Text } from "../pen.tsx";

const thickness = 1;
const metals = ["steel-cr", "stainless-304", "al-3003-h14"] as const;

/** Radius left over radius held for three metals: the weaker the curve, the larger the share that comes back. */
export default function RadiusLeft() {
  const { radiusLeft: texts } = useTexts(figuresRolling);
  const { materials } = loadCatalogue();
  const origin = spot(52, 252);
  const [farX, farY] = [160, 400];
  const x = (held: number) => origin.x + (held / farX) * 230;
  const y = (left: number) => origin.y - (left / farY) * 220;
  return (
    <Paper height={300} title={texts.title}>
      <Line from={origin} to={spot(340, origin.y)} />
      <Arrowhead tip={spot(346, origin.y)} direction={0} />
      <Line from={origin} to={spot(origin.x, 20)} />
      <Arrowhead tip={spot(origin.x, 14)} direction={90} />
      <Line from={origin} to={spot(x(farX), y(farX))} kind="hidden" />
      <Text spot={spot(252, y(farX) + 46)} lines={texts.dashed} anchor="middle" kind="label" />
      {metals.map((id, index) => {
        const metal = materials[id];
        const strip = { thickness, yield: metal.yield.value, elasticModulus: metal.elasticModulus.value };
        const points = Array.from({ length: 81 }, (_, step) => 1 + (step * farX) / 80).flatMap((held) => {
          const left = radiusLeft(strip, held);
          return left === undefined || left > farY ? [] : [spot(x(held), y(left))];
        });
        const end = points.at(-1) ?? origin;
        return (
          <g key={id}>
            <path class={index === 1 ? "sight" : "outline"} d={`M${points.map(at).join("L")}`} />
            <Text spot={spot(end.x + 4, end.y + (index === 0 ? 14 : 4))} lines={texts.metals[id]} kind="name" />
          </g>
        );
      })}
      {[50, 100, 150].map((held) => (
        <g key={held}>
          <Line from={spot(x(held), origin.y)} to={spot(x(held), origin.y + 5)} />
          <Text spot={spot(x(held), origin.y + 19)} lines={String(held)} anchor="middle" kind="size" />
        </g>
      ))}
      {[100, 200, 300].map((left) => (
        <g key={left}>
          <Line from={spot(origin.x - 5, y(left))} to={spot(origin.x, y(left))} />
          <Text spot={spot(origin.x - 8, y(left) + 4)} lines={String(left)} anchor="end" kind="size" />
        </g>
      ))}
      <Text spot={spot(60, 16)} lines={texts.radiusLeft} kind="name" />
      <Text spot={spot(346, 292)} lines={texts.radiusHeldBetween} anchor="end" kind="name" />
    </Paper>
  );
}
