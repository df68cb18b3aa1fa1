import type { RolledSheet, Sector } from "../../lib/part/rolled/model.ts";
import type { RolledPlan } from "../../lib/part/rolled/plan.ts";
import { seamPlaces } from "../../lib/part/rolled/seam-places.ts";
import { formatQuantity, type LengthView, showQuantity } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import {
  AngleSize,
  Arrowhead,
  arcPath,
  at,
  away,
  Line,
  mid,
  Paper,
  Path,
  paperWidth,
  Size,
  type Spot,
  spot,
  Text,
} from "../figures/pen.tsx";
import { Datum, HoleShape, Settings, SettingsBelow } from "./FlatDrawing.tsx";

interface Props {
  readonly plan: RolledPlan;
  readonly view: LengthView;
}

const left = 74;
const right = 34;
const top = 26;
const bottom = 76;
const tallest = 420;
const labelGap = 15;

type Place = (x: number, y: number) => Spot;

const bareIn = (view: LengthView) => (value: number) => showQuantity(value, "length", view, "setting").number;
const crossReach = 4;

function Cross({ point }: { point: Spot }) {
  return (
    <g>
      <Line from={spot(point.x - crossReach, point.y)} to={spot(point.x + crossReach, point.y)} kind="centre" />
      <Line from={spot(point.x, point.y - crossReach)} to={spot(point.x, point.y + crossReach)} kind="centre" />
    </g>
  );
}

/** Holes and joints where they lie on the blank. */
function Pierced({ sheet, place, scale }: { sheet: RolledSheet; place: Place; scale: number }) {
  return (
    <g>
      {sheet.holes.map((hole) => (
        <HoleShape key={hole.number} hole={hole} place={place} scale={scale} />
      ))}
      {sheet.joints.map(({ a, b }, index) => (
        <g key={String(index)}>
          <Cross point={place(a.x, a.y)} />
          <Cross point={place(b.x, b.y)} />
        </g>
      ))}
    </g>
  );
}

/** Lap and fold lines of the seam. */
function SeamLines({ sheet, place }: { sheet: RolledSheet; place: Place }) {
  const lines = seamPlaces(sheet).filter(({ kind }) => kind !== "seam");
  return (
    <g>
      {lines.map(({ what, from, to }) => (
        <Line key={what} from={place(from.x, from.y)} to={place(to.x, to.y)} kind="sight" />
      ))}
    </g>
  );
}

/** The blank of a rolled part with everything that is marked on it, the face up that becomes the inside. */
export function RolledBlankDrawing({ plan, view }: Props) {
  return plan.sheet.sector ? (
    <ConeBlank plan={plan} sector={plan.sheet.sector} view={view} />
  ) : (
    <TubeBlank plan={plan} view={view} />
  );
}

function TubeBlank({ plan, view }: Props) {
  const { drawing } = useTexts(planSheet);
  const { blank, part, sheet, scribe } = plan;
  const scale = Math.min((paperWidth - left - right) / blank.width, tallest / blank.depth);
  const [width, depth] = [blank.width * scale, blank.depth * scale];
  const height = top + depth + bottom;
  const origin = spot(left + (paperWidth - left - right - width) / 2, top + depth);
  const place: Place = (x, y) => spot(origin.x + x * scale, origin.y - y * scale);
  const show = bareIn(view);
  const size = (value: number) => formatQuantity(value, "length", view, "setting");
  const from = (edge: "west" | "south", room: number) => {
    const lines = scribe.filter((line) => line.from === edge);
    return lines.length < room ? lines : [];
  };
  return (
    <Paper height={height} title={drawing.blank(part.name, size(blank.width), size(blank.depth))}>
      <path
        class="sheet"
        d={`M${at(place(0, 0))}L${at(place(blank.width, 0))}L${at(place(blank.width, blank.depth))}L${at(place(0, blank.depth))}Z`}
      />
      <Line from={place(blank.width / 2, 0)} to={place(blank.width / 2, blank.depth)} kind="centre" />
      <SeamLines sheet={sheet} place={place} />
      <Pierced sheet={sheet} place={place} scale={scale} />
      <Settings
        lines={from("south", depth / labelGap)}
        whole={blank.depth}
        place={(distance) => place(0, distance)}
        origin={origin}
        range={[top - 12, origin.y - 4]}
        show={show}
      />
      <SettingsBelow
        lines={from("west", (paperWidth - left) / labelGap)}
        whole={blank.width}
        place={(distance) => place(distance, 0)}
        bottom={origin.y}
        show={show}
      />
      <EdgeNames west={place(0, blank.depth)} east={place(blank.width, blank.depth)} />
      <Datum from={place(0, 0)} to={place(blank.width, 0)} />
      <Datum from={place(0, 0)} to={place(0, blank.depth)} />
    </Paper>
  );
}

function EdgeNames({ west, east }: { west: Spot; east: Spot }) {
  return (
    <g>
      <Text spot={spot(west.x, west.y - 8)} lines="A" anchor="middle" kind="name" />
      <Text spot={spot(east.x, east.y - 8)} lines="B" anchor="middle" kind="name" />
    </g>
  );
}

/** The centre of the arcs is drawn where the paper need not be more than this many times as tall as the blank. */
const centreWithin = 2.6;

function ConeBlank({ plan, sector, view }: Props & { sector: Sector }) {
  const { drawing } = useTexts(planSheet);
  const { blank, part, sheet } = plan;
  const { centre, outerRadius, innerRadius, angle } = sector;
  const withCentre = centre.y <= centreWithin * blank.depth;
  const drawn = Math.max(blank.depth, withCentre ? centre.y : 0);
  const scale = Math.min((paperWidth - left - right) / blank.width, tallest / drawn);
  // Above the centre of a sector stands its letter, above a chord over the gap its length.
  const head = angle > 180 ? 40 : 22;
  const height = head + drawn * scale + bottom;
  const origin = spot(left + (paperWidth - left - right - blank.width * scale) / 2, head + drawn * scale);
  const place: Place = (x, y) => spot(origin.x + x * scale, origin.y - y * scale);
  const show = bareIn(view);
  const [a, b] = sector.seamLines as [Sector["seamLines"][number], Sector["seamLines"][number]];
  const o = place(centre.x, centre.y);
  const outline = sheet.outline.map(({ x, y }) => at(place(x, y))).join("L");
  const aside = Math.min(angle / 4, 35);
  const inner = innerRadius * scale;
  const leader = (length: number, direction: number) => {
    const tip = away(o, direction, length * scale);
    return (
      <g>
        <Line from={withCentre ? away(o, direction, 0.75 * inner) : away(tip, direction, -24)} to={tip} />
        <Arrowhead tip={tip} direction={direction} />
      </g>
    );
  };
  const chordEnds = [place(a.outer.x, a.outer.y), place(b.outer.x, b.outer.y)] as const;
  const chordMiddle = mid(...chordEnds);
  return (
    <Paper
      height={height}
      title={drawing.sector(part.name, show(outerRadius), show(innerRadius), formatQuantity(angle, "angle"))}
    >
      <path
        class="thin"
        stroke-dasharray="2 3"
        d={`M${at(place(0, 0))}L${at(place(blank.width, 0))}L${at(place(blank.width, blank.depth))}L${at(place(0, blank.depth))}Z`}
      />
      <path class="sheet" d={`M${outline}Z`} />
      <Line from={place(centre.x, 0)} to={withCentre ? o : place(centre.x, blank.depth)} kind="centre" />
      {[a, b].map(({ side, outer, inner }) => (
        <Line
          key={side}
          from={place(outer.x, outer.y)}
          to={withCentre ? o : place(inner.x, inner.y)}
          kind={sheet.seam.kind === "butt" ? "thin" : "sight"}
        />
      ))}
      <SeamLines sheet={sheet} place={place} />
      <Line from={chordEnds[0]} to={chordEnds[1]} />
      <Text
        spot={angle > 180 ? spot(chordMiddle.x, chordMiddle.y - 18) : spot(chordMiddle.x - 8, chordMiddle.y - 4)}
        lines={drawing.chord(show(sector.chord))}
        anchor={angle > 180 ? "middle" : "end"}
        kind="size"
      />
      <Pierced sheet={sheet} place={place} scale={scale} />
      {leader(outerRadius, 270 + aside)}
      <Text spot={away(o, 270 + aside, outerRadius * scale + 14)} lines={`R1 ${show(outerRadius)}`} kind="size" />
      {innerRadius > 0 && leader(innerRadius, 270 - aside)}
      {innerRadius > 0 && (
        <Text
          spot={away(o, 270 - aside, withCentre && inner > 70 ? 0.75 * inner : inner + 16)}
          lines={`R2 ${show(innerRadius)}`}
          anchor="end"
          kind="size"
        />
      )}
      {withCentre && (
        <g>
          <Cross point={o} />
          <Text spot={spot(o.x, o.y - 8)} lines="O" anchor="middle" kind="name" />
          <AngleSize
            centre={o}
            radius={Math.max(26, Math.min(46, inner * 0.5))}
            from={270 - angle / 2}
            to={270 + angle / 2}
            text={formatQuantity(angle, "angle")}
            textOff={16}
          />
        </g>
      )}
      {!withCentre && (
        <Text
          spot={spot(place(centre.x, 0).x, head - 16)}
          lines={drawing.centreFromSouth(show(centre.y))}
          anchor="middle"
          kind="size"
        />
      )}
      <Settings
        lines={[]}
        whole={blank.depth}
        place={(distance) => place(0, distance)}
        origin={origin}
        range={[head - 12, origin.y - 4]}
        show={show}
      />
      <SettingsBelow
        lines={[{ number: 1, distance: centre.x }]}
        whole={blank.width}
        place={(distance) => place(distance, 0)}
        bottom={origin.y}
        show={show}
      />
      <EdgeNames west={away(place(a.outer.x, a.outer.y), 180, 14)} east={away(place(b.outer.x, b.outer.y), 0, 14)} />
    </Paper>
  );
}

const margin = 40;
const gap = 70;
const room = 230;

/** The finished part in two views: along its axis and from the side, with the sizes a caliper reads. */
export function FinishedRolled({ plan, view }: Props) {
  const { drawing } = useTexts(planSheet);
  const { part, sheet } = plan;
  const show = bareIn(view);
  const [large, small = large] = sheet.ends;
  if (!large || !small) return null;
  const arc = part.kind === "tube" ? part.arc : 360;
  const outer = large.outside / 2;
  const half = (Math.min(arc, 360) * Math.PI) / 360;
  const across = arc >= 180 ? 2 * outer : 2 * outer * Math.sin(half);
  const inner = large.inside / 2;
  const tall = arc > 180 ? outer - outer * Math.cos(half) : outer - inner * Math.cos(half);
  const long = part.kind === "tube" ? part.length : part.height;
  const scale = Math.min((paperWidth - 2 * margin - gap) / (across + long), room / tall);
  const height = tall * scale + 84;
  const floor = 36 + tall * scale;
  const sectionX = margin + (across * scale) / 2;
  const centre = spot(sectionX, floor - outer * scale);
  const sideX = margin + across * scale + gap;

  return (
    <Paper height={height} title={drawing.finished(part.name)}>
      {part.kind === "cone" ? (
        <ConeEnds
          centre={centre}
          scale={scale}
          large={large}
          small={plan.part.kind === "cone" && plan.part.smallDiameter > 0 ? small : undefined}
        />
      ) : (
        <Ring centre={centre} outer={outer * scale} inner={inner * scale} arc={arc} />
      )}
      <Side
        plan={plan}
        x={sideX}
        axis={arc === 360 ? centre.y : undefined}
        floor={floor}
        top={floor - tall * scale}
        scale={scale}
        view={view}
      />
      {part.kind === "tube" && arc === 360 && (
        <Size
          from={spot(sectionX - outer * scale, centre.y)}
          to={spot(sectionX + outer * scale, centre.y)}
          off={-(outer * scale + 18)}
          text={`⌀ ${show(part.diameter)}`}
        />
      )}
      {part.kind === "tube" && arc < 360 && (
        <Text
          spot={spot(sectionX, floor + 22)}
          lines={[`R ${show(part.diameter / 2)}`, drawing.over(formatQuantity(arc, "angle"))]}
          anchor="middle"
          kind="size"
        />
      )}
    </Paper>
  );
}

/** A wall seen along the axis, its middle at the bottom; a full one has its seam at the top. */
function Ring({ centre, outer, inner, arc }: { centre: Spot; outer: number; inner: number; arc: number }) {
  if (arc === 360)
    return (
      <g>
        <path class="sheet" fill-rule="evenodd" d={`${circlePath(centre, outer)}${circlePath(centre, inner)}`} />
        <Line from={spot(centre.x, centre.y - inner)} to={spot(centre.x, centre.y - outer)} kind="outline" />
        <AxisCross centre={centre} reach={outer + 8} />
      </g>
    );
  const [from, to] = [270 - arc / 2, 270 + arc / 2];
  return <Path kind="sheet" d={`${arcPath(centre, outer, from, to)}${arcPath(centre, inner, to, from, "L")}Z`} />;
}

function circlePath({ x, y }: Spot, radius: number): string {
  const [a, b] = [spot(x - radius, y), spot(x + radius, y)];
  const r = radius.toFixed(2);
  return `M${at(a)}A${r} ${r} 0 1 1 ${at(b)}A${r} ${r} 0 1 1 ${at(a)}Z`;
}

function AxisCross({ centre, reach }: { centre: Spot; reach: number }) {
  return (
    <g>
      <Line from={spot(centre.x - reach, centre.y)} to={spot(centre.x + reach, centre.y)} kind="centre" />
      <Line from={spot(centre.x, centre.y - reach)} to={spot(centre.x, centre.y + reach)} kind="centre" />
    </g>
  );
}

type End = RolledSheet["ends"][number];

function ConeEnds({ centre, scale, large, small }: { centre: Spot; scale: number; large: End; small: End | undefined }) {
  return (
    <g>
      <path
        class="sheet"
        fill-rule="evenodd"
        d={circlePath(centre, (large.outside / 2) * scale) + (small ? circlePath(centre, (small.inside / 2) * scale) : "")}
      />
      {small && <path class="thin" d={circlePath(centre, (small.outside / 2) * scale)} />}
      <Line
        from={spot(centre.x, centre.y - ((small?.inside ?? 0) / 2) * scale)}
        to={spot(centre.x, centre.y - (large.outside / 2) * scale)}
        kind="thin"
      />
      <AxisCross centre={centre} reach={(large.outside / 2) * scale + 8} />
    </g>
  );
}

function Side({
  plan,
  x,
  axis,
  floor,
  top: ceiling,
  scale,
  view,
}: Props & { x: number; axis: number | undefined; floor: number; top: number; scale: number }) {
  const { part, sheet } = plan;
  const show = bareIn(view);
  const [large, small] = sheet.ends;
  const long = (part.kind === "tube" ? part.length : part.height) * scale;
  const rim = part.kind === "cone" && axis !== undefined ? ((small?.outside ?? 0) / 2) * scale : undefined;
  const [low, high] = rim === undefined ? [floor, ceiling] : [(axis ?? 0) + rim, (axis ?? 0) - rim];
  const end = x + long;
  return (
    <g>
      <path class="sheet" d={`M${at(spot(x, floor))}L${at(spot(end, low))}L${at(spot(end, high))}L${at(spot(x, ceiling))}Z`} />
      {axis !== undefined && <Line from={spot(x - 8, axis)} to={spot(end + 8, axis)} kind="centre" />}
      <Size from={spot(x, floor)} to={spot(end, floor)} off={-18} text={show(part.kind === "tube" ? part.length : part.height)} />
      {part.kind === "cone" && large && (
        <Size from={spot(x, floor)} to={spot(x, ceiling)} off={20} text={`⌀ ${show(large.outside)}`} />
      )}
      {part.kind === "cone" && small && (
        <Size from={spot(end, low)} to={spot(end, high)} off={-20} text={`⌀ ${show(small.outside)}`} />
      )}
    </g>
  );
}
