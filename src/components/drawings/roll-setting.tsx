import type { Values } from "../../lib/inputs.ts";
import { formatNumber } from "../../lib/quantity/format.ts";
import type { OutputValues } from "../../lib/worksheet.ts";
import type sheet from "../../lib/worksheets/roll-setting.ts";
import { useTexts } from "../../texts/context.ts";
import { rollSetting } from "../../texts/en/drawings/roll-setting.ts";
import { Arrowhead, at, Line, type Spot, spot } from "../figures/pen.tsx";
import { Aside, Drawing, type DrawingProps, drawingWidth } from "./parts/Drawing.tsx";
import { useSizes } from "./parts/sizes.ts";
import { fitInto, type Point } from "./parts/strip.ts";

const box = { left: 24, top: 28, width: drawingWidth - 48, height: 214 };

/** The rolls from the side to scale: flat contact dashed, the setting solid, the sheet between them and after it. */
export default function RollSettingDrawing({ id, values, outputs, view, shop }: DrawingProps) {
  const texts = useTexts(rollSetting);
  const { size, units } = useSizes(view);
  const { radius, thickness, ...own } = values as Values<typeof sheet.inputs>;
  const { turns, rearRollRise: rise, loadedRadius: held } = outputs as OutputValues<typeof sheet.outputs>;
  if (turns === null || rise === null || held === null) return null;
  const front = (own.frontRoll ?? shop.rolls.frontRoll) / 2;
  const rear = (own.rearRoll ?? shop.rolls.rearRoll) / 2;
  const x = own.rollSpacing ?? shop.rolls.spacing;

  // The sheet on the middle of its thickness: level, held at one radius to the rear roll, then at the finished one.
  const turn = Math.asin(Math.min(1, x / (held + thickness + rear)));
  const bent = held + thickness / 2;
  const free = radius + thickness / 2;
  const on = Math.min((1.6 * x) / free, Math.PI - turn);
  const along = (angle: number): Point =>
    angle <= turn
      ? { x: bent * Math.sin(angle), z: thickness / 2 + bent * (1 - Math.cos(angle)) }
      : {
          x: bent * Math.sin(turn) + free * (Math.sin(angle) - Math.sin(turn)),
          z: thickness / 2 + bent * (1 - Math.cos(turn)) + free * (Math.cos(turn) - Math.cos(angle)),
        };
  const count = 48;
  const curve = Array.from({ length: count + 1 }, (_, index) => along(((turn + on) * index) / count));
  const centres = [
    { x: 0, z: thickness + front, r: front },
    { x: 0, z: -front, r: front },
    { x, z: rise - rear, r: rear },
  ];
  const flat = { x, z: -rear, r: rear };
  const lead = { x: -0.9 * x, z: thickness / 2 };
  const hull = [...centres, flat].flatMap(({ x: cx, z, r }) => [
    { x: cx - r, z: z - r },
    { x: cx + r, z: z + r },
  ]);
  const { scale, spot: put } = fitInto([...hull, ...curve, lead], box);
  const roll = (centre: { x: number; z: number; r: number }, kind: string) => {
    const { x: cx, y: cy } = put(centre);
    return <circle key={`${kind} ${cx} ${cy}`} class={kind} cx={cx} cy={cy} r={scale * centre.r} />;
  };
  const end = put({ x: 0, z: thickness / 2 });
  const path: Spot[] = curve.map(put);
  const last = path.at(-1) ?? end;
  const [lower, upper] = [put({ x, z: -rear }), put({ x, z: rise - rear })];
  return (
    <Drawing
      id={id}
      height={290}
      title={texts.title}
      description={texts.text(size(rise), formatNumber(turns, 1), size(held), size(radius), units)}
    >
      <Aside place={spot(8, 14)}>{texts.toScale(units)}</Aside>
      <Aside place={spot(352, 14)} end>
        {texts.dashed}
      </Aside>
      {centres.map((centre) => roll(centre, "tool"))}
      {roll(flat, "hidden")}
      <path class="outline" d={`M${at(put(lead))}L${path.map(at).join("L")}`} />
      <Line from={lower} to={upper} kind="sight" />
      {Math.abs(upper.y - lower.y) > 10 && <Arrowhead tip={upper} direction={90} kind="arrow-motion" />}
      <text class="mark-text" x={lower.x + 8} y={Math.min((lower.y + upper.y) / 2 + 4, 276)} text-anchor="start">
        {`h ${size(rise)}`}
      </text>
      <text class="size" x={24} y={276}>
        {texts.radii(size(held), size(radius))}
      </text>
      <circle class="dot" cx={last.x} cy={last.y} r={2} />
    </Drawing>
  );
}
