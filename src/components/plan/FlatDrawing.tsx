import { datumEdges } from "../../lib/part/datum.ts";
import { bendName } from "../../lib/part/drawing.ts";
import type { FlatHole } from "../../lib/part/flatten.ts";
import { holeEdge } from "../../lib/part/hole-edge.ts";
import type { Axis } from "../../lib/part/model.ts";
import type { Plan, PlannedBend } from "../../lib/part/plan.ts";
import type { ScribeLine } from "../../lib/part/scribe.ts";
import { formatQuantity, type LengthView, showQuantity } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { Arrowhead, at, Line, Paper, paperWidth, type Spot, spot, Text } from "../figures/pen.tsx";
import { spread } from "./spread.ts";

/** Widths of a letter and a figure [units of the paper], for the room that names and settings take. */
const letter = 6.9;
const digit = 7.3;
/** From the drawing to its settings, and to the names of its bends. */
const toSetting = 26;
const toName = 22;
const top = 26;
const tallest = 210;
const labelGap = 15;
const uprightGap = 13;
/** Where labels along the top and bottom may begin [units of the paper]. */
const firstLabel = 30;
/** More holes than this leave no room for their numbers. */
export const mostNumbered = 16;

/** The unfolded sheet with everything that is scribed on it, dimensioned from its datum edges. */
export function FlatDrawing({ plan, view }: { plan: Plan; view: LengthView }) {
  const texts = useTexts(planSheet);
  const { blank, part, layout, scribe } = plan;
  const fromSouth = plan.bends.filter(({ from }) => from === "south");
  const fromWest = plan.bends.filter(({ from }) => from === "west");
  const edges = layout.chains.flatMap((chain) => chain.edgeLines.map((line) => ({ ...line, axis: chain.axis })));
  const show = (value: number) => showQuantity(value, "length", view, "setting").number;
  const roomOf = (bends: readonly PlannedBend[]) =>
    toName + letter * Math.max(...bends.map((bend) => nameOf(texts, bend).length));
  const settingRoom = (whole: number) => toSetting + digit * show(whole).length;
  const head = fromWest.length > 0 ? roomOf(fromWest) : top;
  const left = settingRoom(blank.depth);
  const right = fromSouth.length > 0 ? roomOf(fromSouth) : top;
  const bottom = settingRoom(blank.width);
  const scale = Math.min((paperWidth - left - right) / blank.width, tallest / blank.depth);
  const width = blank.width * scale;
  const depth = blank.depth * scale;
  const height = head + depth + bottom;
  const origin = spot(left + (paperWidth - left - right - width) / 2, head + depth);
  const place = (x: number, y: number): Spot => spot(origin.x + x * scale, origin.y - y * scale);
  /** Both ends of a line at a distance from one datum edge. */
  const across = (axis: Axis, distance: number, span: { from: number; to: number }) =>
    axis === "y"
      ? ([place(span.from, distance), place(span.to, distance)] as const)
      : ([place(distance, span.from), place(distance, span.to)] as const);
  const axisOf = ({ from }: { from: "south" | "west" }) => (from === "south" ? "y" : "x");
  const band = (bend: PlannedBend) => {
    const [a, b] = across(axisOf(bend), bend.tangents[0], bend.span);
    const [c, d] = across(axisOf(bend), bend.tangents[1], bend.span);
    return `M${at(a)}L${at(b)}L${at(d)}L${at(c)}Z`;
  };
  const datums = datumEdges(layout);

  return (
    <Paper
      height={height}
      title={texts.drawing.flat(
        part.name,
        formatQuantity(blank.width, "length", view),
        formatQuantity(blank.depth, "length", view),
      )}
    >
      <path class="sheet" d={`M${layout.outline.map(({ x, y }) => at(place(x, y))).join("L")}Z`} />
      {plan.bends.map((bend) => {
        const lines = [...bend.tangents, bend.sightLine].map((distance) => across(axisOf(bend), distance, bend.span));
        return (
          <g key={bend.id}>
            <path class="band" d={band(bend)} />
            {lines.map(([from, to], index) => (
              <Line key={String(index)} from={from} to={to} kind={index === 2 ? "sight" : "thin"} />
            ))}
          </g>
        );
      })}
      {edges.map(({ edge, line, turn, axis }) => {
        const [from, to] = across(axis, line, layout.spans[edge.id] ?? { from: 0, to: 0 });
        return <Line key={`${edge.id} ${turn}`} from={from} to={to} />;
      })}
      {layout.corners.map(({ id, x, y, relief }) => {
        if (!relief) return null;
        const centre = place(x, y);
        const reach = (relief.size / 2) * scale;
        return relief.kind === "hole" ? (
          <circle key={id} class="outline" cx={centre.x.toFixed(2)} cy={centre.y.toFixed(2)} r={reach.toFixed(2)} />
        ) : null;
      })}
      {layout.holes.map((hole) => (
        <HoleShape key={hole.number} hole={hole} place={place} scale={scale} />
      ))}
      {layout.holes.length <= mostNumbered &&
        layout.holes.map(({ number, flatX, flatY, width: along, height: across }) => {
          const centre = place(flatX, flatY);
          const off = (Math.min(along, across) / 2) * scale * 0.7 + 2;
          return <Text key={number} spot={spot(centre.x + off, centre.y - off)} lines={String(number)} kind="size" />;
        })}
      {layout.attachments.map(({ number, flatX, flatY }) => (
        <Cross key={`spot ${number}`} point={place(flatX, flatY)} reach={4} />
      ))}
      {layout.tabs.flatMap(({ id, joints }) =>
        joints.flatMap(({ tab, wall }, index) =>
          [tab, wall].map((point, which) => <Cross key={`${id} ${index} ${which}`} point={place(point.x, point.y)} reach={3} />),
        ),
      )}
      <Settings
        lines={roomFor(
          scribe.filter(({ from }) => from === "south"),
          depth / labelGap,
        )}
        whole={blank.depth}
        place={(distance) => place(0, distance)}
        origin={origin}
        range={[head - 12, origin.y - 4]}
        show={show}
      />
      <SettingsBelow
        lines={roomFor(
          scribe.filter(({ from }) => from === "west"),
          (paperWidth - left + 10) / uprightGap,
        )}
        whole={blank.width}
        place={(distance) => place(distance, 0)}
        bottom={origin.y}
        show={show}
      />
      <Names
        bends={onePerName(texts, fromSouth)}
        place={(bend) => place(Math.min(blank.width, bend.span.to), bend.line)}
        edge={origin.x + width}
        range={[head, origin.y]}
      />
      <NamesAbove
        bends={onePerName(texts, fromWest)}
        place={(bend) => place(bend.line, Math.min(blank.depth, bend.span.to))}
        edge={head}
      />
      <circle class="thin" cx={origin.x.toFixed(2)} cy={origin.y.toFixed(2)} r={3} />
      {datums.map((edge) => (
        <Datum key={edge} from={place(0, 0)} to={edge === "south" ? place(blank.width, 0) : place(0, blank.depth)} />
      ))}
    </Paper>
  );
}

/** Settings of the bends come before those of holes where there is no room for all; the scribe list has every one. */
function roomFor(lines: readonly ScribeLine[], room: number): readonly ScribeLine[] {
  if (lines.length < room) return lines;
  const bends = lines.filter(({ kind }) => kind === "sight" || kind === "fold" || kind === "notch");
  return bends.length < room ? bends : bends.filter(({ kind }) => kind === "sight");
}

interface SettingsProps {
  readonly lines: readonly Pick<ScribeLine, "distance" | "number">[];
  readonly whole: number;
  readonly place: (distance: number) => Spot;
  readonly show: (value: number) => string;
}

/** Settings from the south edge, up the left side, from the origin on: running dimensions after ISO 129. */
export function Settings({
  lines,
  whole,
  place,
  origin,
  range,
  show,
}: SettingsProps & { origin: Spot; range: readonly [number, number] }) {
  const distances = [0, ...lines.map(({ distance }) => distance), whole];
  const labels = spread(
    distances.map((distance) => place(distance).y),
    labelGap,
    ...range,
  );
  return (
    <g>
      {distances.map((distance, index) => {
        const y = labels[index] as number;
        const edge = place(distance);
        return (
          <g key={String(index)}>
            <path class="thin" d={`M${at(edge)}L${at(spot(origin.x - 8, edge.y))}L${at(spot(origin.x - 16, y))}`} />
            <text
              class={distance === whole ? "size whole" : "size"}
              x={(origin.x - 19).toFixed(2)}
              y={(y + 4).toFixed(2)}
              text-anchor="end"
            >
              {distance === 0 ? "0" : show(distance)}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** Settings from the west edge, along the bottom, read from the right. */
export function SettingsBelow({ lines, whole, place, bottom: floor, show }: SettingsProps & { bottom: number }) {
  const distances = [0, ...lines.map(({ distance }) => distance), whole];
  const labels = spread(
    distances.map((distance) => place(distance).x),
    uprightGap,
    firstLabel,
    paperWidth - 12,
  );
  return (
    <g>
      {distances.map((distance, index) => {
        const x = labels[index] as number;
        const edge = place(distance);
        const turned = spot(x, floor + 15);
        return (
          <g key={String(index)}>
            <path class="thin" d={`M${at(edge)}L${at(spot(edge.x, floor + 6))}L${at(spot(x, floor + 12))}`} />
            <text
              class={distance === whole ? "size whole" : "size"}
              x={turned.x.toFixed(2)}
              y={turned.y.toFixed(2)}
              text-anchor="end"
              dy={4}
              transform={`rotate(-90 ${turned.x.toFixed(2)} ${turned.y.toFixed(2)})`}
            >
              {distance === 0 ? "0" : show(distance)}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** `north.1 90° up`; the tabs at one end lie on one line and are named once, as `tabs west 90° up`. */
function nameOf({ drawing }: typeof planSheet, { id, angle, way }: PlannedBend): string {
  const end = /\.tab-(\w+)$/.exec(id)?.[1];
  return bendName({ id: end ? drawing.tabs(end) : id, angle, way });
}

/** One bend of those that lie on one line and are called the same. */
const onePerName = (texts: typeof planSheet, bends: readonly PlannedBend[]) =>
  bends.filter(
    (bend, index) =>
      bends.findIndex((other) => nameOf(texts, other) === nameOf(texts, bend) && other.from === bend.from) === index,
  );

interface NamesProps {
  readonly bends: readonly PlannedBend[];
  readonly place: (bend: PlannedBend) => Spot;
  readonly edge: number;
}

function Names({ bends, place, edge, range }: NamesProps & { range: readonly [number, number] }) {
  const texts = useTexts(planSheet);
  const labels = spread(
    bends.map((bend) => place(bend).y),
    labelGap,
    ...range,
  );
  return (
    <g>
      {bends.map((bend, index) => {
        const from = place(bend);
        const y = labels[index] as number;
        return (
          <g key={bend.id}>
            <path class="thin" d={`M${at(from)}L${at(spot(edge + 6, from.y))}L${at(spot(edge + 12, y))}`} />
            <Text spot={spot(edge + 15, y + 4)} lines={nameOf(texts, bend)} kind="name" />
          </g>
        );
      })}
    </g>
  );
}

function NamesAbove({ bends, place, edge }: NamesProps) {
  const texts = useTexts(planSheet);
  const labels = spread(
    bends.map((bend) => place(bend).x),
    uprightGap + 2,
    firstLabel,
    paperWidth - 12,
  );
  return (
    <g>
      {bends.map((bend, index) => {
        const from = place(bend);
        const turned = spot(labels[index] as number, edge - 14);
        return (
          <g key={bend.id}>
            <path class="thin" d={`M${at(from)}L${at(spot(from.x, edge - 5))}L${at(spot(turned.x, edge - 11))}`} />
            <text
              class="name"
              x={turned.x.toFixed(2)}
              y={turned.y.toFixed(2)}
              dy={4}
              transform={`rotate(-90 ${turned.x.toFixed(2)} ${turned.y.toFixed(2)})`}
            >
              {nameOf(texts, bend)}
            </text>
          </g>
        );
      })}
    </g>
  );
}

function Cross({ point, reach }: { point: Spot; reach: number }) {
  return (
    <g>
      <Line from={spot(point.x - reach, point.y)} to={spot(point.x + reach, point.y)} kind="centre" />
      <Line from={spot(point.x, point.y - reach)} to={spot(point.x, point.y + reach)} kind="centre" />
    </g>
  );
}

export function HoleShape({ hole, place, scale }: { hole: FlatHole; place: (x: number, y: number) => Spot; scale: number }) {
  const centre = place(hole.flatX, hole.flatY);
  const reach = (Math.min(hole.width, hole.height) / 2) * scale + 6;
  const edge = hole.shape === "round" ? undefined : holeEdge(hole);
  return (
    <g>
      {edge ? (
        <path class="outline" d={`M${edge.map(({ x, y }) => at(place(hole.flatX + x, hole.flatY + y))).join("L")}Z`} />
      ) : (
        <circle class="outline" cx={centre.x.toFixed(2)} cy={centre.y.toFixed(2)} r={((hole.width / 2) * scale).toFixed(2)} />
      )}
      <Cross point={centre} reach={reach} />
    </g>
  );
}

/** An edge that settings are taken from, marked at its ends. */
export function Datum({ from, to }: { from: Spot; to: Spot }) {
  const level = from.y === to.y;
  return (
    <g>
      <Line from={from} to={to} kind="sight" />
      <Arrowhead tip={from} direction={level ? 90 : 0} kind="arrow-motion" />
      <Arrowhead tip={to} direction={level ? 90 : 0} kind="arrow-motion" />
    </g>
  );
}
