import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/cone-blank.ts";
import { useTexts } from "../../texts/context.ts";
import { coneBlank } from "../../texts/en/drawings/cone-blank.ts";
import { arcPath, at, away, Line, Size, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";
import { fitInto, type Point } from "./parts/strip.ts";

const blankBox = { left: 128, top: 30, width: drawingWidth - 152, height: 214 };

/** The cone from the side, and its blank as it is swung, both to scale. */
export default function ConeBlankDrawing({ id, values, outputs, view }: DrawingProps) {
  const texts = useTexts(coneBlank);
  const { size, angle: turned, units } = useSizes(view);
  const { largeDiameter, smallDiameter, height } = values as Values<typeof sheet.inputs>;
  const { outerRadius, innerRadius, sectorAngle, chord } = outputs as OutputValues<typeof sheet.outputs>;
  if (outerRadius === null || innerRadius === null || sectorAngle === null || chord === null) return null;
  const cone = fitInto(
    [
      { x: -largeDiameter / 2, z: 0 },
      { x: largeDiameter / 2, z: height },
    ],
    { left: 16, top: 44, width: 88, height: 160 },
  );
  const body = [
    { x: -smallDiameter / 2, z: height },
    { x: smallDiameter / 2, z: height },
    { x: largeDiameter / 2, z: 0 },
    { x: -largeDiameter / 2, z: 0 },
  ].map(cone.spot);
  const half = (sectorAngle * Math.PI) / 360;
  const onArc = (radius: number, turn: number): Point => ({ x: radius * Math.sin(turn), z: -radius * Math.cos(turn) });
  const turns = Array.from({ length: 25 }, (_, index) => -half + (2 * half * index) / 24);
  const { scale, spot: put } = fitInto(
    [{ x: 0, z: 0 }, ...turns.flatMap((turn) => [onArc(outerRadius, turn), onArc(innerRadius, turn)])],
    blankBox,
  );
  const apex = put({ x: 0, z: 0 });
  const from = -90 - sectorAngle / 2;
  const to = -90 + sectorAngle / 2;
  const [outerWay, innerWay] = [scale * outerRadius, scale * innerRadius];
  return (
    <Drawing
      id={id}
      height={262}
      title={texts.title}
      description={texts.text(
        size(largeDiameter),
        size(smallDiameter),
        size(height),
        turned(sectorAngle),
        size(outerRadius),
        size(innerRadius),
        units,
      )}
    >
      <Aside place={spot(8, 14)}>{texts.toScale(units)}</Aside>
      <path class="sheet" d={`M${body.map(at).join("L")}Z`} />
      <Size from={body[3] ?? apex} to={body[2] ?? apex} off={-20} text={`D ${size(largeDiameter)}`} />
      <text class="size" x={60} y={Math.max(34, (body[0]?.y ?? 40) - 8)} text-anchor="middle">
        {smallDiameter > 0 ? `d ${size(smallDiameter)}` : ""}
      </text>
      <path
        class="sheet"
        d={`${arcPath(apex, outerWay, from, to)}L${at(away(apex, to, innerWay))}${innerWay > 0.5 ? arcPath(apex, innerWay, to, from, "L") : ""}Z`}
      />
      <Line from={apex} to={away(apex, from, innerWay)} kind="hidden" />
      <Line from={apex} to={away(apex, to, innerWay)} kind="hidden" />
      <circle class="dot" cx={apex.x} cy={apex.y} r={2.4} />
      <Line from={apex} to={away(apex, from + 0.25 * sectorAngle, outerWay)} />
      <text
        class="size"
        x={away(apex, from + 0.25 * sectorAngle, (outerWay + innerWay) / 2).x}
        y={away(apex, from + 0.25 * sectorAngle, (outerWay + innerWay) / 2).y}
        text-anchor="middle"
      >
        {`R1 ${size(outerRadius)}`}
      </text>
      {innerWay > 12 && (
        <g>
          <Line from={apex} to={away(apex, from + 0.75 * sectorAngle, innerWay)} />
          <text
            class="size"
            x={away(apex, from + 0.75 * sectorAngle, innerWay / 2).x}
            y={away(apex, from + 0.75 * sectorAngle, innerWay / 2).y}
            text-anchor="middle"
          >
            {`R2 ${size(innerRadius)}`}
          </text>
        </g>
      )}
      <text class="size" x={blankBox.left} y={256}>
        {texts.sector(turned(sectorAngle), size(chord))}
      </text>
    </Drawing>
  );
}
