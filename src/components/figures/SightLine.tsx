import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { bracketLines } from "./bracket.ts";
import { at, away, Line, Note, Paper, Path, Size, spot, Text } from "./pen.tsx";
import { type BrakeFront, bedPath, fingerPath, leafPath } from "./tool.ts";

/** The clamped blank from above and in section: the nose just covers the strip up to the sight line. */
export default function SightLine() {
  const { sightLine: texts } = useTexts(figuresBending);
  const { first, second, sight, radius, thickness } = bracketLines();
  const scale = 30;
  const hinge = spot(214, 306);
  const front: BrakeFront = { hinge, scale, noseRadius: radius, setback: thickness, thickness, reach: 7, height: 2.6 };
  const nose = hinge.x - scale * thickness;
  const x = (value: number) => nose + scale * (value - sight);
  const plan = { top: 40, bottom: 166 };
  const right = 336;
  const centre = spot(x(first), hinge.y - scale * (thickness + radius));
  return (
    <Paper height={372} title={texts.title}>
      <Path d={`M8 ${plan.top}H${right}V${plan.bottom}H8Z`} kind="sheet" />
      <Path d={`M8 ${plan.top + 20}H${nose}V${plan.bottom - 20}H8Z`} kind="tool" />
      <Line from={spot(x(first), plan.top)} to={spot(x(first), plan.top + 20)} />
      <Line from={spot(x(first), plan.top + 20)} to={spot(x(first), plan.bottom - 20)} kind="hidden" />
      <Line from={spot(x(first), plan.bottom - 20)} to={spot(x(first), plan.bottom)} />
      <Line from={spot(x(second), plan.top)} to={spot(x(second), plan.bottom)} />
      <Line from={spot(nose, plan.top)} to={spot(nose, plan.bottom)} kind="sight" />
      <Text spot={spot(64, 108)} lines={texts.fingerAbove} anchor="middle" kind="name" />
      <Text spot={spot(right - 4, 108)} lines={texts.onLeaf} anchor="end" kind="name" />
      <Note to={spot(x(first), plan.top + 8)} from={spot(92, 20)} lines={texts.tangent} anchor="end" />
      <Note to={spot(nose, plan.top + 4)} from={spot(188, 20)} lines={texts.sight} />
      <Note to={spot(x(second), plan.bottom - 6)} from={spot(258, 186)} lines={texts.tangent} />

      <Line from={spot(nose, plan.bottom)} to={spot(nose, hinge.y - scale * thickness)} kind="hidden" />
      <Line from={spot(x(first), plan.bottom)} to={centre} kind="hidden" />
      <Path d={bedPath(front, 1.6)} kind="tool" />
      <Path d={leafPath({ ...front, reach: 4.1 }, 1.3, 0)} kind="tool" />
      <Path d={`M8 ${hinge.y - scale * thickness}H${right}V${hinge.y}H8Z`} kind="sheet" />
      <Path d={fingerPath(front)} kind="tool" />
      <circle class="dot" cx={centre.x} cy={centre.y} r={2} />
      <path class="thin" d={`M${at(centre)}L${at(away(centre, -50, scale * radius))}`} />
      <Size from={spot(x(first), centre.y - 20)} to={spot(nose, centre.y - 20)} off={12} text="R" gap={0} />
      <Text spot={spot(58, 262)} lines={texts.finger} anchor="middle" kind="name" />
      <Text spot={spot(76, 334)} lines={texts.bed} anchor="middle" kind="name" />
      <Text spot={spot(286, 334)} lines={texts.leaf} anchor="middle" kind="name" />
      <Line from={spot(hinge.x, hinge.y + 6)} to={spot(hinge.x, hinge.y + 44)} kind="centre" />
      <Text spot={spot(hinge.x, hinge.y + 60)} lines={texts.hinge} anchor="middle" kind="name" />
    </Paper>
  );
}
