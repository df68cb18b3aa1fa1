import type { ComponentChildren } from "preact";
import { useLanguage } from "../../texts/context.ts";

/**
 * What every figure is drawn with. Lines follow ISO 128 (outlines wide, everything else narrow) and sizes ISO 129:
 * the stroke widths and colours are in figures.css, the places come from numbers.
 */

/** A place on the paper, in units of the figure's view box; y grows downwards. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export const spot = (x: number, y: number): Spot => ({ x, y });

const tidy = (value: number) => Number(value.toFixed(1));
export const at = ({ x, y }: Spot) => `${tidy(x)} ${tidy(y)}`;

/** The spot at a distance from another in a direction [deg], counted anticlockwise from the right. */
export function away(from: Spot, direction: number, distance: number): Spot {
  const angle = (direction * Math.PI) / 180;
  return spot(from.x + distance * Math.cos(angle), from.y - distance * Math.sin(angle));
}

/** Every figure is 360 units wide, about the width of a phone, so that its letters stay readable there. */
export const paperWidth = 360;

export function Paper({ height, title, children }: { height: number; title: string; children: ComponentChildren }) {
  return (
    <svg class="fig" viewBox={`0 0 ${paperWidth} ${height}`} role="img" aria-label={useLanguage().digits(title)}>
      {children}
    </svg>
  );
}

type LineKind = "outline" | "thin" | "centre" | "hidden" | "sight" | "neutral" | "motion";

export function Path({ d, kind }: { d: string; kind: LineKind | "sheet" | "sheet-ghost" | "tool" | "tool-ghost" }) {
  return <path class={kind} d={d} />;
}

export function Line({ from, to, kind = "thin" }: { from: Spot; to: Spot; kind?: LineKind }) {
  return <path class={kind} d={`M${at(from)}L${at(to)}`} />;
}

const arrowLength = 7;
const arrowHalfWidth = 2.2;

/** Arrowhead with its tip at a spot, pointing in a direction [deg]. */
export function Arrowhead({ tip, direction, kind = "arrow" }: { tip: Spot; direction: number; kind?: "arrow" | "arrow-motion" }) {
  const back = away(tip, direction + 180, arrowLength);
  const left = away(back, direction + 90, arrowHalfWidth);
  const right = away(back, direction - 90, arrowHalfWidth);
  return <path class={kind} d={`M${at(tip)}L${at(left)}L${at(right)}Z`} />;
}

type Anchor = "start" | "middle" | "end";

/** One or more lines of text; the first stands at the spot. */
export function Text({
  spot: place,
  lines,
  anchor = "start",
  kind = "label",
}: {
  spot: Spot;
  lines: string | readonly string[];
  anchor?: Anchor;
  kind?: "label" | "size" | "name" | "big";
}) {
  const language = useLanguage();
  const all = (typeof lines === "string" ? [lines] : lines).map(language.digits);
  return (
    <text class={kind} x={tidy(place.x)} y={tidy(place.y)} text-anchor={anchor}>
      {all.length === 1
        ? all[0]
        : all.map((line, index) => (
            <tspan key={line} x={tidy(place.x)} dy={index === 0 ? 0 : 15}>
              {line}
            </tspan>
          ))}
    </text>
  );
}

/**
 * A size between two spots, in the manner of ISO 129.
 * @param off - how far the dimension line is moved to the left of the way from `from` to `to`
 * @param outside - where there is no room between the arrows: they point inwards and the text stands beyond `from` or `to`
 */
export function Size({
  from,
  to,
  off,
  text,
  outside,
  gap = 3,
}: {
  from: Spot;
  to: Spot;
  off: number;
  text: string;
  outside?: "from" | "to";
  gap?: number;
}) {
  const language = useLanguage();
  const direction = (Math.atan2(from.y - to.y, to.x - from.x) * 180) / Math.PI;
  const side = direction + (off < 0 ? -90 : 90);
  const reach = Math.abs(off);
  const a = away(from, side, reach);
  const b = away(to, side, reach);
  const extend = (end: Spot) => <Line from={away(end, side, Math.min(gap, reach))} to={away(end, side, reach + 4)} />;
  // Text reads from below or from the right.
  const flipped = direction <= -90 || direction > 90;
  const upright = flipped ? direction + 180 : direction;
  const turn = -upright;
  const middle = outside ? away(outside === "to" ? b : a, outside === "to" ? direction : direction + 180, 16) : mid(a, b);
  const place = away(middle, upright + 90, outside ? -4 : 5);
  const anchor: Anchor = !outside ? "middle" : (outside === "to") !== flipped ? "start" : "end";
  return (
    <g>
      {extend(from)}
      {extend(to)}
      {outside ? (
        <>
          <Line from={away(a, direction + 180, 14)} to={away(b, direction, 14)} />
          <Arrowhead tip={a} direction={direction} />
          <Arrowhead tip={b} direction={direction + 180} />
        </>
      ) : (
        <>
          <Line from={a} to={b} />
          <Arrowhead tip={a} direction={direction + 180} />
          <Arrowhead tip={b} direction={direction} />
        </>
      )}
      <text
        class="size"
        x={tidy(place.x)}
        y={tidy(place.y)}
        text-anchor={anchor}
        transform={turn === 0 ? undefined : `rotate(${tidy(turn)} ${at(place)})`}
      >
        {language.digits(text)}
      </text>
    </g>
  );
}

export function mid(a: Spot, b: Spot): Spot {
  return spot((a.x + b.x) / 2, (a.y + b.y) / 2);
}

/** A name with a line to the thing it names, which ends in a dot on a face or an arrow on an edge. */
export function Note({
  to,
  from,
  lines,
  anchor = "start",
  end = "dot",
}: {
  /** the thing */
  to: Spot;
  /** the words */
  from: Spot;
  lines: string | readonly string[];
  anchor?: Anchor;
  end?: "dot" | "arrow";
}) {
  const direction = (Math.atan2(from.y - to.y, to.x - from.x) * 180) / Math.PI;
  // Centred words stand clear of the end of their line, above or below it.
  const drop = anchor === "middle" ? (from.y > to.y ? 14 : -5) : 4;
  const text = spot(from.x + (anchor === "start" ? 4 : anchor === "end" ? -4 : 0), from.y + drop);
  return (
    <g>
      <Line from={from} to={to} />
      {end === "dot" ? (
        <circle class="dot" cx={tidy(to.x)} cy={tidy(to.y)} r={2.2} />
      ) : (
        <Arrowhead tip={to} direction={direction} />
      )}
      <Text spot={text} lines={lines} anchor={anchor} kind="name" />
    </g>
  );
}

/** Arc from one direction to another [deg] about a centre, anticlockwise when `to` is greater. */
export function arcPath(centre: Spot, radius: number, from: number, to: number, move: "M" | "L" = "M"): string {
  const start = away(centre, from, radius);
  const end = away(centre, to, radius);
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  const sweep = to > from ? 0 : 1;
  return `${move}${at(start)}A${tidy(radius)} ${tidy(radius)} 0 ${large} ${sweep} ${at(end)}`;
}

/** An angle with its arc, arrowheads and text. */
export function AngleSize({
  centre,
  radius,
  from,
  to,
  text,
  textOff = 14,
  kind = "thin",
}: {
  centre: Spot;
  radius: number;
  from: number;
  to: number;
  text: string;
  textOff?: number;
  kind?: "thin" | "motion";
}) {
  const head = kind === "motion" ? "arrow-motion" : "arrow";
  // The chord of an arrowhead leans into the arc by half the angle it covers.
  const lean = ((arrowLength / radius) * 90) / Math.PI;
  const sign = to > from ? 1 : -1;
  const place = away(centre, (from + to) / 2, radius + textOff);
  const anchor: Anchor = Math.abs(place.x - centre.x) < 6 ? "middle" : place.x > centre.x ? "start" : "end";
  return (
    <g>
      <Path d={arcPath(centre, radius, from, to)} kind={kind} />
      <Arrowhead tip={away(centre, to, radius)} direction={to + sign * 90 - sign * lean} kind={head} />
      {kind === "thin" && <Arrowhead tip={away(centre, from, radius)} direction={from - sign * 90 + sign * lean} />}
      <Text spot={spot(place.x, place.y + 4)} lines={text} anchor={anchor} kind="size" />
    </g>
  );
}
