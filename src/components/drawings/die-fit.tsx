import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/die-fit.ts";
import { useTexts } from "../../texts/context.ts";
import { dieFit } from "../../texts/en/drawings/die-fit.ts";
import { Line, Size, spot } from "../figures/pen.tsx";
import { type Cut, diePaths, punchPath } from "../figures/punching/cut.ts";
import { Aside, Drawing, type DrawingProps } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";

/** Punch, sheet and die in section, and one side of the gap enlarged, thickness and clearance to one scale. */
export default function DieFitDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(dieFit);
  const { size, units } = useSizes(view);
  const { thickness, diameter } = values as Values<typeof sheet.inputs>;
  const { dieDiameter, clearancePerSide } = outputs as OutputValues<typeof sheet.outputs>;
  if (dieDiameter === null || clearancePerSide === null) return null;
  const cut: Cut = {
    top: spot(100, 112),
    thickness: 16,
    half: 34,
    clearance: 4,
    reach: 84,
    rollover: 0.1,
    penetration: 0.4,
    burr: 0,
  };
  const side = { edge: 268, top: 84, thickness: 96 };
  const gap = (side.thickness * clearancePerSide) / thickness;
  const bottom = side.top + side.thickness;
  return (
    <Drawing
      id={id}
      height={262}
      title={texts.title}
      description={texts.text(size(diameter), size(dieDiameter), size(clearancePerSide), size(thickness), units)}
    >
      <Aside place={spot(8, 14)}>{units}</Aside>
      <Aside place={spot(352, 14)} end>
        {texts.oneSide}
      </Aside>
      {diePaths(cut, 50).map((d) => (
        <path key={d} class="tool" d={d} />
      ))}
      <rect class="sheet" x={16} y={112} width={168} height={16} />
      <path class="tool" d={punchPath(cut, -12, 46)} />
      <Size from={spot(66, 54)} to={spot(134, 54)} off={10} text={`d ${size(diameter)}`} />
      <Size from={spot(62, 178)} to={spot(138, 178)} off={-22} text={`D ${size(dieDiameter)}`} />
      <Line from={spot(100, 56)} to={spot(100, 190)} kind="centre" />

      <path class="tool" d={`M${side.edge} 40V${side.top - 6}H352V40Z`} />
      <path class="sheet" d={`M210 ${side.top}H352V${bottom}H210`} />
      <path class="tool" d={`M210 ${bottom}H${side.edge - gap}L${side.edge - gap - 2} 226H210Z`} />
      <Line from={spot(side.edge, side.top - 6)} to={spot(side.edge, 236)} kind="hidden" />
      <Line from={spot(side.edge - gap, bottom)} to={spot(side.edge - gap, 236)} />
      <Size
        from={spot(side.edge - gap, 226)}
        to={spot(side.edge, 226)}
        off={-6}
        gap={0}
        text={`c ${size(clearancePerSide)}`}
        outside="to"
      />
      <Size from={spot(232, bottom)} to={spot(232, side.top)} off={0.1} gap={0} text={`T ${size(thickness)}`} />
      <text class="label" x={312} y={62} text-anchor="middle">
        {texts.punch}
      </text>
      <text class="label" x={224} y={206} text-anchor="middle">
        {texts.die}
      </text>
    </Drawing>
  );
}
