import { holeLimits } from "../../../lib/punching/hole-rules.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresPunching } from "../../../texts/en/figures-punching.ts";
import { Line, Note, Paper, Path, Size, spot, Text } from "../pen.tsx";
import { rectangle } from "./cut.ts";

const part = { family: "carbon-steel", thickness: 1.2, radius: 1.6 } as const;
const diameter = 5;

/** A corner of a bracket with holes as near as the rules allow, to scale: from above, and in section through the leg. */
export default function HolePlaces() {
  const { holePlaces: texts } = useTexts(figuresPunching);
  const { minEdge, minSpacing, minBend } = holeLimits(part);
  const scale = 12;
  const { thickness, radius } = part;
  // Both views share their places across: the inside face of the leg, the first hole, the second, the free edge.
  const inside = 60;
  const first = inside + scale * minBend;
  const second = first + scale * (diameter + minSpacing);
  const edge = second + scale * (diameter + minEdge);
  const size = scale * diameter;
  const plan = { top: 36, bottom: 172, y: 110 };
  const floor = 316;
  const face = inside - scale * thickness;
  const upper = floor - scale * thickness;
  const bend = scale * radius;
  return (
    <Paper height={352} title={texts.title}>
      <Path d={`M${face} ${plan.top}H${edge}V${plan.bottom}H${face}Z`} kind="sheet" />
      <Line from={spot(inside, plan.top)} to={spot(inside, plan.bottom)} kind="sight" />
      <Line from={spot(inside + bend, plan.top)} to={spot(inside + bend, plan.bottom)} />
      {[first, second].map((left) => (
        <g key={left}>
          <circle class="outline" cx={left + size / 2} cy={plan.y} r={size / 2} />
          <Line from={spot(left - 6, plan.y)} to={spot(left + size + 6, plan.y)} kind="centre" />
          <Line
            from={spot(left + size / 2, plan.y - size / 2 - 6)}
            to={spot(left + size / 2, plan.y + size / 2 + 6)}
            kind="centre"
          />
        </g>
      ))}
      <Note to={spot(inside + bend, plan.top + 8)} from={spot(98, 20)} lines={texts.whereTheBendEnds} />
      <Text spot={spot(24, plan.y - 4)} lines={texts.leg} anchor="middle" kind="name" />

      <Path
        d={`M${face} 208H${inside}V${upper - bend}A${bend} ${bend} 0 0 0 ${inside + bend} ${upper}H${first}V${floor}H${inside + bend}A${bend + scale * thickness} ${bend + scale * thickness} 0 0 1 ${face} ${upper - bend}Z`}
        kind="sheet"
      />
      <Path d={rectangle(spot(first + size, upper), spot(second, floor))} kind="sheet" />
      <Path d={rectangle(spot(second + size, upper), spot(edge, floor))} kind="sheet" />
      <Size from={spot(inside, 246)} to={spot(first, 246)} off={0.1} text={`${minBend} mm`} gap={0} />
      <Size from={spot(first + size, 286)} to={spot(second, 286)} off={0.1} text={`${minSpacing} mm`} outside="from" gap={0} />
      <Size from={spot(second + size, 286)} to={spot(edge, 286)} off={0.1} text={`${minEdge} mm`} outside="to" gap={0} />
      <Line from={spot(first, plan.y + size / 2 + 14)} to={spot(first, 252)} kind="hidden" />
      {[first + size, second, second + size, edge].map((at) => (
        <Line key={at} from={spot(at, plan.y + size / 2 + 14)} to={spot(at, upper - 4)} kind="hidden" />
      ))}
      <Text spot={spot(204, 342)} lines={texts.toScale(thickness, radius, diameter)} anchor="middle" kind="label" />
    </Paper>
  );
}
