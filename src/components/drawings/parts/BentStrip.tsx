import { useTexts } from "../../../texts/context.ts";
import { drawings } from "../../../texts/en/drawings.ts";
import { Arrowhead, arcPath, away, Size, type Spot, spot } from "../../figures/pen.tsx";
import type { StripStep } from "../../figures/section.ts";
import { Aside, drawingWidth } from "./Drawing.tsx";
import { useSizes } from "./sizes.ts";
import { fitInto, from, hull, outline, type Piece, type Place, thickening, walk } from "./strip.ts";

export interface Bend {
  /** Turned through from flat [deg]. */
  readonly angle: number;
  readonly radius: number;
  readonly thickness: number;
  /** From the tangent line to where the legs are measured to. */
  readonly setback: number;
  readonly allowance: number;
}

interface Props {
  /** Outside legs [mm]. */
  readonly legs: readonly number[];
  /** What stands at each leg; without it the legs have no sizes. */
  readonly sizes?: readonly string[] | undefined;
  readonly bend: Bend;
  /** Top and height of the room it may take; it has the whole width. */
  readonly top: number;
  readonly height: number;
}

/** Whether the strip comes so near to itself that the drawing would be a tangle. */
function tangles(pieces: readonly Piece[], room: number): boolean {
  const points: { x: number; z: number; way: number }[] = [];
  let way = 0;
  for (const { start, end } of pieces) {
    const length = Math.hypot(end.x - start.x, end.z - start.z);
    const count = Math.min(40, Math.max(2, Math.ceil(length / room)));
    for (let index = 0; index < count; index++) {
      const part = index / count;
      const [x, z] = [start.x + part * (end.x - start.x), start.z + part * (end.z - start.z)];
      points.push({ x, z, way: way + part * length });
    }
    way += length;
  }
  return points.some((a, index) =>
    points.slice(index + 1).some((b) => b.way - a.way > 4 * room && Math.hypot(a.x - b.x, a.z - b.z) < room),
  );
}

/** A strip with its bends, seen from its edge: the outside legs with their sizes, the angle turned from flat at the first bend. */
export function BentStrip({ legs, sizes, bend, top, height }: Props) {
  const texts = useTexts(drawings);
  const box = { left: 46, top: top + 30, width: drawingWidth - 92, height: height - 60 };
  const last = legs.length - 1;

  // Thin sheet is drawn thicker, on the same outside legs.
  const drawnAs = (more: number) => {
    const setback = bend.setback * more;
    const thickness = bend.thickness * more;
    const steps = (alternate: boolean) =>
      legs.flatMap((leg, index): StripStep[] => {
        const ends = (index > 0 ? 1 : 0) + (index < last ? 1 : 0);
        const straight = { ahead: Math.max(leg - ends * setback, 0.02 * leg) };
        const turn = { turn: alternate && index % 2 === 1 ? -bend.angle : bend.angle, radius: bend.radius * more };
        return index < last ? [straight, turn] : [straight];
      });
    const round = walk(steps(false), thickness);
    const pieces = legs.length > 3 && tangles(round, 2 * thickness) ? walk(steps(true), thickness) : round;
    const bendStart = pieces[1]?.start;
    const flatLeg = bend.allowance * more + Math.max((legs[1] ?? 0) - setback, 0);
    const flat = bendStart && { start: bendStart, end: from(bendStart, flatLeg) };
    const sight = fitInto([...hull(pieces, thickness), ...(flat ? [flat.end] : [])], box);
    return { more, setback, thickness, pieces, flat, sight };
  };
  const drawn = drawnAs(thickening(bend.thickness, drawnAs(1).sight.scale));
  const { pieces, flat, sight, thickness, setback, more } = drawn;
  const put = sight.spot;
  return (
    <g>
      {flat && <Unbent start={put(from(flat.start, 0, thickness / 2))} end={put(from(flat.end, 0, -thickness / 2))} />}
      <path class="sheet" d={outline(pieces, thickness, sight)} />
      {flat && <Turned corner={put(pivot(flat.start, bend, more))} angle={bend.angle} />}
      {sizes?.map((text, index) => (
        <LegSize
          key={`${index} ${text}`}
          pieces={pieces}
          index={index}
          text={text}
          setback={setback}
          thickness={thickness}
          put={put}
        />
      ))}
      {more > 1.05 && (
        <Aside place={spot(drawingWidth - 8, top + height - 8)} end>
          {texts.thickerSheet}
        </Aside>
      )}
    </g>
  );
}

/** Where the flat and the turned leg meet; for bends far past square, the place on the flat below the bend. */
function pivot(start: Place, { angle, radius, thickness }: Bend, more: number): Place {
  const middle = (radius + thickness / 2) * more;
  return from(start, angle <= 120 ? middle * Math.tan((angle * Math.PI) / 360) : middle);
}

/** The leg before it was bent: ISO 128 draws outlines before forming long-dashed, double-dotted and narrow. */
function Unbent({ start, end }: { start: Spot; end: Spot }) {
  return <path class="before" d={`M${start.x} ${start.y}L${end.x} ${start.y}L${end.x} ${end.y}L${start.x} ${end.y}`} />;
}

function Turned({ corner, angle }: { corner: Spot; angle: number }) {
  const texts = useTexts(drawings);
  const { angle: turned } = useSizes("mm");
  const radius = 30;
  const lean = ((7 / radius) * 90) / Math.PI;
  // Beside the arc there is no room below a leg that is hardly turned.
  const shallow = angle < 75;
  const place = shallow ? spot(corner.x + 8, corner.y + 24) : away(corner, Math.min(angle / 2, 60), radius + 8);
  return (
    <g>
      <path class="motion-line" d={arcPath(corner, radius, 0, angle)} />
      <Arrowhead tip={away(corner, angle, radius)} direction={angle + 90 - lean} kind="arrow-motion" />
      <text class="mark-text big" x={place.x} y={place.y + 2}>
        {turned(angle)}
      </text>
      <text class="mark-text" x={place.x + (shallow ? 38 : 0)} y={place.y + (shallow ? 2 : 16)}>
        {texts.fromFlat}
      </text>
    </g>
  );
}

interface LegSizeProps {
  readonly pieces: readonly Piece[];
  readonly index: number;
  readonly text: string;
  readonly setback: number;
  readonly thickness: number;
  put(point: { x: number; z: number }): Spot;
}

/** An outside leg, measured along its outer face to the apex or the outermost point. */
function LegSize({ pieces, index, text, setback, thickness, put }: LegSizeProps) {
  const straight = pieces[2 * index];
  const before = pieces[2 * index - 1];
  const after = pieces[2 * index + 1];
  if (!straight) return null;
  const [turn = 1] = [after, before].flatMap((piece) => (piece && "turn" in piece.step ? [piece.step.turn] : []));
  // The outer face is away from the centre of the bend.
  const side = turn > 0 ? -1 : 1;
  const a = put(from(straight.start, before ? -setback : 0, (side * thickness) / 2));
  const b = put(from(straight.end, after ? setback : 0, (side * thickness) / 2));
  if (Math.hypot(b.x - a.x, b.y - a.y) < 16) return null;
  return <Size from={a} to={b} off={side * 17} text={text} />;
}
