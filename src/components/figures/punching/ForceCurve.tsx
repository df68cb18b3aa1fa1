import { loadCatalogue } from "../../../catalogue/load.ts";
import { punchForce } from "../../../lib/punching/punch-force.ts";
import { penetrations } from "../../../lib/punching/punch-work.ts";
import { shearedForceByWork } from "../../../lib/punching/sheared-punch.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Arrowhead, Line, Note, Paper, Path, spot, Text } from "../pen.tsx";

const thickness = 1.2;
const diameter = 10;
/** Shear ground onto the punch, in thicknesses. */
const ground = 1;

/** Force over depth for a flat punch and one ground with shear: two rectangles of the same area. */
export default function ForceCurve() {
  const { forceCurve: texts } = useTexts(figuresPunching);
  const { materials } = loadCatalogue();
  const penetration = penetrations["steel-cr"]?.value ?? 1;
  const force = punchForce({
    perimeter: Math.PI * diameter,
    thickness,
    shearStrength: materials["steel-cr"].shearStrength.value,
  });
  const shearHeight = ground * thickness;
  const sheared = shearedForceByWork({ force, penetration, thickness, shearHeight });
  const origin = spot(52, 232);
  const x = (depth: number) => origin.x + (depth / 2.1) * 290;
  const y = (newtons: number) => origin.y - (newtons / 12_000) * 200;
  const flatEnd = penetration * thickness;
  const shearedEnd = flatEnd + shearHeight;
  const kN = (newtons: number) => `${(newtons / 1000).toFixed(1)} kN`;
  return (
    <Paper height={278} title={texts.title(diameter, thickness, kN(force), kN(sheared))}>
      <path class="band" d={`M${x(0)} ${origin.y}V${y(sheared)}H${x(shearedEnd)}V${origin.y}Z`} />
      <Line from={origin} to={spot(348, origin.y)} />
      <Arrowhead tip={spot(352, origin.y)} direction={0} />
      <Line from={origin} to={spot(origin.x, 18)} />
      <Arrowhead tip={spot(origin.x, 14)} direction={90} />
      <Path d={`M${x(0)} ${origin.y}V${y(force)}H${x(flatEnd)}V${origin.y}`} kind="outline" />
      <Path
        d={`M${x(0)} ${origin.y}C${x(0.06)} ${y(force * 0.6)} ${x(0.2)} ${y(force)} ${x(0.34)} ${y(force)}S${x(0.5)} ${y(force * 0.72)} ${x(flatEnd)} ${y(force * 0.62)}L${x(flatEnd + 0.05)} ${origin.y}`}
        kind="hidden"
      />
      <path class="sight" d={`M${x(0)} ${y(sheared)}H${x(shearedEnd)}V${origin.y}`} />
      {[0.5, 1, 1.5, 2].map((depth) => (
        <g key={depth}>
          <Line from={spot(x(depth), origin.y)} to={spot(x(depth), origin.y + 5)} />
          <Text spot={spot(x(depth), origin.y + 19)} lines={String(depth)} anchor="middle" kind="size" />
        </g>
      ))}
      {[5000, 10_000].map((newtons) => (
        <g key={newtons}>
          <Line from={spot(origin.x - 5, y(newtons))} to={spot(origin.x, y(newtons))} />
          <Text spot={spot(origin.x - 9, y(newtons) + 4)} lines={String(newtons / 1000)} anchor="end" kind="size" />
        </g>
      ))}
      <Text spot={spot(62, 22)} lines={texts.force} kind="name" />
      <Text spot={spot(352, origin.y + 38)} lines={texts.depthOfThePunch} anchor="end" kind="name" />
      <Note to={spot(x(flatEnd), y(force * 0.84))} from={spot(160, 76)} lines={texts.flatPunch(kN(force))} end="arrow" />
      <Note to={spot(x(1.3), y(sheared))} from={spot(236, 134)} lines={[texts.withShear, kN(sheared)]} end="arrow" />
    </Paper>
  );
}
