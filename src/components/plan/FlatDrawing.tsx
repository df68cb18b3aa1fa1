import type { Plan } from "../../lib/part/plan.ts";
import { formatQuantity, type LengthView, showQuantity } from "../../lib/quantity/format.ts";
import { Arrowhead, at, Line, Paper, paperWidth, type Spot, spot, Text } from "../figures/pen.tsx";
import { spread } from "./spread.ts";

/** Room for the settings on the left and the names of the bends on the right, in units of the paper. */
const left = 66;
const right = 112;
const top = 26;
const bottom = 66;
const tallest = 460;
const labelGap = 15;

/** The unfolded sheet with everything that is scribed on it, dimensioned from its datum edges. */
export function FlatDrawing({ plan, view }: { plan: Plan; view: LengthView }) {
  const { blank, part, layout, scribe } = plan;
  const scale = Math.min((paperWidth - left - right) / blank.width, tallest / blank.depth);
  const width = blank.width * scale;
  const depth = blank.depth * scale;
  const height = top + depth + bottom;
  const origin = spot(left + (paperWidth - left - right - width) / 2, top + depth);
  const place = (x: number, y: number): Spot => spot(origin.x + x * scale, origin.y - y * scale);
  const show = (value: number) => showQuantity(value, "length", view, "setting").number;
  const upwards = part.axis === "y";
  const across = (distance: number) =>
    upwards
      ? ([place(0, distance), place(blank.width, distance)] as const)
      : ([place(distance, 0), place(distance, blank.depth)] as const);
  const band = (from: number, to: number) => {
    const [a, b] = across(from);
    const [c, d] = across(to);
    return `M${at(a)}L${at(b)}L${at(d)}L${at(c)}Z`;
  };
  const corners = [place(0, 0), place(blank.width, 0), place(blank.width, blank.depth), place(0, blank.depth)];

  const fromSouth = scribe.filter(({ from }) => from === "south");
  const fromWest = scribe.filter(({ from }) => from === "west");
  const southLabels = spread(
    [...fromSouth.map(({ distance }) => place(0, distance).y), place(0, blank.depth).y],
    labelGap,
    top - 12,
    origin.y - 4,
  );
  const westLabels = spread(
    [...fromWest.map(({ distance }) => place(distance, 0).x), place(blank.width, 0).x],
    13,
    left - 30,
    paperWidth - 20,
  );
  const names = layout.bends.map((bend) => ({
    at: upwards ? place(blank.width, bend.line) : place(bend.line, blank.depth),
    text: `${bend.id} ${Number(bend.angle.toFixed(1))}° ${bend.way}`,
  }));
  const nameLabels = spread(
    names.map((name) => name.at.y),
    labelGap,
    top,
    origin.y,
  );

  return (
    <Paper
      height={height}
      title={`Flat layout of ${part.name}: ${formatQuantity(blank.width, "length", view)} by ${formatQuantity(blank.depth, "length", view)}`}
    >
      <path class="sheet" d={`M${corners.map(at).join("L")}Z`} />
      {layout.bends.map((bend) => (
        <g key={bend.id}>
          <path class="band" d={band(bend.from, bend.to)} />
          <Line from={across(bend.from)[0]} to={across(bend.from)[1]} />
          <Line from={across(bend.to)[0]} to={across(bend.to)[1]} />
        </g>
      ))}
      {scribe
        .filter(({ kind }) => kind !== "hole")
        .map(({ number, distance, kind }) => {
          const [from, to] = across(distance);
          return <Line key={number} from={from} to={to} kind={kind === "sight" ? "sight" : "thin"} />;
        })}
      {layout.holes.map((hole) => {
        const centre = place(hole.flatX, hole.flatY);
        const radius = (hole.diameter / 2) * scale;
        const reach = radius + 6;
        return (
          <g key={hole.index}>
            <circle class="outline" cx={centre.x.toFixed(2)} cy={centre.y.toFixed(2)} r={radius.toFixed(2)} />
            <Line from={spot(centre.x - reach, centre.y)} to={spot(centre.x + reach, centre.y)} kind="centre" />
            <Line from={spot(centre.x, centre.y - reach)} to={spot(centre.x, centre.y + reach)} kind="centre" />
          </g>
        );
      })}
      {fromSouth.map(({ number, distance }, index) => {
        const y = southLabels[index] as number;
        const edge = place(0, distance);
        return (
          <g key={number}>
            <path class="thin" d={`M${at(edge)}L${at(spot(origin.x - 8, edge.y))}L${at(spot(origin.x - 16, y))}`} />
            <Text spot={spot(origin.x - 19, y + 4)} lines={show(distance)} anchor="end" kind="size" />
          </g>
        );
      })}
      <g>
        <path
          class="thin"
          d={`M${at(place(0, blank.depth))}L${at(spot(origin.x - 8, place(0, blank.depth).y))}L${at(spot(origin.x - 16, southLabels.at(-1) as number))}`}
        />
        <Text spot={spot(origin.x - 19, (southLabels.at(-1) as number) + 4)} lines={show(blank.depth)} anchor="end" kind="big" />
      </g>
      {fromWest.map(({ number, distance }, index) => {
        const x = westLabels[index] as number;
        const edge = place(distance, 0);
        return (
          <g key={number}>
            <path class="thin" d={`M${at(edge)}L${at(spot(edge.x, edge.y + 6))}L${at(spot(x, edge.y + 12))}`} />
            <text
              class="size"
              x={x.toFixed(2)}
              y={(edge.y + 15).toFixed(2)}
              text-anchor="end"
              dy={4}
              transform={`rotate(-90 ${x.toFixed(2)} ${(edge.y + 15).toFixed(2)})`}
            >
              {show(distance)}
            </text>
          </g>
        );
      })}
      <path class="thin" d={`M${at(spot(origin.x + width, origin.y + 5))}V${(origin.y + bottom - 18).toFixed(2)}`} />
      <Text spot={spot(origin.x + width + 4, origin.y + bottom - 12)} lines={show(blank.width)} anchor="middle" kind="big" />
      {names.map((name, index) => {
        const y = nameLabels[index] as number;
        if (!upwards)
          return <Text key={name.text} spot={spot(name.at.x, top - 8)} lines={name.text} anchor="middle" kind="name" />;
        return (
          <g key={name.text}>
            <path class="thin" d={`M${at(name.at)}L${at(spot(name.at.x + 6, name.at.y))}L${at(spot(name.at.x + 12, y))}`} />
            <Text spot={spot(name.at.x + 15, y + 4)} lines={name.text} kind="name" />
          </g>
        );
      })}
      <Datum from={upwards ? place(0, 0) : place(0, 0)} to={upwards ? place(blank.width, 0) : place(0, blank.depth)} />
    </Paper>
  );
}

/** The edge that every setting along the part is taken from, marked at its ends. */
function Datum({ from, to }: { from: Spot; to: Spot }) {
  const level = from.y === to.y;
  return (
    <g>
      <Line from={from} to={to} kind="sight" />
      <Arrowhead tip={from} direction={level ? 90 : 0} kind="arrow-motion" />
      <Arrowhead tip={to} direction={level ? 90 : 0} kind="arrow-motion" />
    </g>
  );
}
