import type { Values } from "../../lib/inputs.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/brake-load.ts";
import { useTexts } from "../../texts/context.ts";
import { drawings } from "../../texts/en/drawings.ts";
import { AngleSize, away, spot } from "../figures/pen.tsx";
import { type BrakeFront, bedPath, fingerPath, leafPath } from "../figures/tool.ts";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { LoadGauge, percent } from "./parts/LoadGauge.tsx";
import { useSizes } from "./parts/sizes.ts";

/** The sheet between bed and finger while the leaf swings, and how much of the brake's rating that takes. */
export default function BrakeLoadDrawing({ id, values, outputs, view }: DrawingProps) {
  const { thickness, length } = values as Values<typeof sheet.inputs>;
  const { capacityUsed } = outputs as OutputValues<typeof sheet.outputs>;
  const texts = useTexts(drawings);
  const { size, units } = useSizes(view);
  if (capacityUsed === null) return null;

  // Sheet and tools are one picture, but a sheet of any thickness has to fit into it.
  const drawn = Math.min(Math.max(thickness * 3, 2), 16);
  const front: BrakeFront = {
    hinge: spot(178, 130),
    scale: 1,
    noseRadius: drawn,
    setback: drawn,
    thickness: drawn,
    reach: 120,
    height: 84,
  };
  const start = spot(front.hinge.x - 112, front.hinge.y);
  const swing = 48;
  const centre = spot(front.hinge.x - drawn, front.hinge.y - 2 * drawn);
  const lower = away(centre, swing - 90, 2 * drawn);
  const upper = away(centre, swing - 90, drawn);
  const far = 96;
  const sheetPath = [
    `M${start.x} ${start.y}L${centre.x} ${start.y}`,
    `A${2 * drawn} ${2 * drawn} 0 0 0 ${lower.x} ${lower.y}`,
    `L${away(lower, swing, far).x} ${away(lower, swing, far).y}L${away(upper, swing, far).x} ${away(upper, swing, far).y}L${upper.x} ${upper.y}`,
    `A${drawn} ${drawn} 0 0 1 ${centre.x} ${start.y - drawn}L${start.x} ${start.y - drawn}Z`,
  ].join("");
  return (
    <Drawing
      id={id}
      height={262}
      title={texts.brakeLoad.title}
      description={texts.brakeLoad.text(size(thickness), size(length), percent(capacityUsed), units)}
    >
      <Aside place={spot(8, 14)}>{texts.brakeLoad.side}</Aside>
      <path class="tool" d={bedPath(front, 46)} />
      <path class="tool" d={leafPath({ ...front, reach: 104 }, 22, swing)} />
      <path class="tool" d={fingerPath(front)} />
      <path class="sheet" d={sheetPath} />
      <AngleSize centre={front.hinge} radius={112} from={4} to={swing - 6} text="" kind="motion" />
      <text class="label" x={92} y={74} text-anchor="middle">
        {texts.finger}
      </text>
      <text class="label" x={98} y={160} text-anchor="middle">
        {texts.bed}
      </text>
      <text class="label" x={252} y={92}>
        {texts.leaf}
      </text>
      <text class="size" x={drawingWidth - 12} y={front.hinge.y + 34} text-anchor="end">
        {texts.brakeLoad.along(size(thickness), size(length))}
      </text>

      <LoadGauge share={capacityUsed} top={218} />
    </Drawing>
  );
}
