import type { LengthView } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { drawings } from "../../../texts/en/drawings.ts";
import { Line, Size, spot, Text } from "../../figures/pen.tsx";
import { Aside, drawingWidth } from "./Drawing.tsx";
import { useSizes } from "./sizes.ts";

interface Props {
  /** Place of its upper edge. */
  readonly top: number;
  readonly total: number;
  /** Straight parts in order; a bend lies between each two. */
  readonly straight: readonly number[];
  /** Length of each bend on the flat. */
  readonly bend: number;
  readonly view: LengthView;
}

const margin = 20;
const height = 34;

/** A blank seen from above, with the zones that become bends between their tangent lines. */
export function FlatStrip({ top, total, straight, bend, view }: Props) {
  const texts = useTexts(drawings);
  const { size } = useSizes(view);
  const scale = (drawingWidth - 2 * margin) / total;
  let at = 0;
  const parts = straight.map((length, index) => {
    const start = at;
    at += length + (index < straight.length - 1 ? bend : 0);
    return { start, length, zone: index < straight.length - 1 ? start + length : undefined };
  });
  const x = (length: number) => margin + scale * length;
  const bottom = top + height;
  const sizes = straight.length <= 6;
  const [firstZone] = parts.flatMap(({ zone }) => (zone === undefined ? [] : [zone]));
  return (
    <g>
      <Aside place={spot(margin, top - 28)}>{texts.blankFromAbove}</Aside>
      {parts.map(({ zone }) =>
        zone === undefined ? null : (
          <g key={zone}>
            <rect class="zone" x={x(zone)} y={top} width={Math.max(scale * bend, 0.5)} height={height} />
            <Line from={spot(x(zone), top)} to={spot(x(zone), bottom)} />
            <Line from={spot(x(zone + bend), top)} to={spot(x(zone + bend), bottom)} />
          </g>
        ),
      )}
      <rect class="sheet" x={margin} y={top} width={scale * total} height={height} />
      {sizes &&
        parts.map(({ start, length }) =>
          scale * length < 30 ? null : (
            <Size key={start} from={spot(x(start), bottom)} to={spot(x(start + length), bottom)} off={-20} text={size(length)} />
          ),
        )}
      {firstZone !== undefined && (
        <>
          <Line from={spot(x(firstZone + bend / 2), top + height / 2)} to={spot(x(firstZone + bend / 2), bottom + 31)} />
          <Text
            spot={spot(Math.max(x(firstZone + bend / 2), 52), bottom + 43)}
            lines={`${straight.length > 2 ? texts.eachBend : texts.bend} ${size(bend)}`}
            anchor="middle"
            kind="size"
          />
        </>
      )}
      <Size from={spot(margin, top)} to={spot(x(total), top)} off={12} text={size(total)} />
    </g>
  );
}
