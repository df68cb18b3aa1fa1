import { render } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { type FullSize, type LayerId, layers, lineStyles, type Mark, pathData } from "../../lib/part/drawing.ts";
import type { FlatPoint } from "../../lib/part/flatten.ts";
import { barLength, overlap, type PaperId, papers, type Tile, type Tiling, tileHead, tiling } from "../../lib/part/template.ts";
import { formatQuantity, type LengthView } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { planTemplate } from "../../texts/en/plan-template.ts";

const layerIds = Object.keys(layers) as LayerId[];

const tidy = (value: number) => Number(value.toFixed(3));

interface Window {
  readonly width: number;
  readonly height: number;
}

type Put = (point: FlatPoint) => FlatPoint;

/** Words on a sheet, in millimetres. */
function Words({
  x,
  y,
  size = 2.9,
  upright,
  children,
}: {
  x: number;
  y: number;
  size?: number;
  upright?: boolean;
  children: string;
}) {
  return (
    <text
      x={tidy(x)}
      y={tidy(y)}
      font-size={size}
      fill="#000"
      stroke="none"
      transform={upright ? `rotate(-90 ${tidy(x)} ${tidy(y)})` : undefined}
    >
      {children}
    </text>
  );
}

/** Shortest stretch of a line beside which its name is written [mm]. */
const roomForName = 30;
const fromEdge = 3;

/** The name of a line where it is seen on a sheet; none where hardly any of it is. */
function LineName({ mark, place, size }: { mark: Mark & { kind: "line" }; place: Put; size: Window }) {
  if (mark.name === undefined) return null;
  const [a, b] = [place(mark.from), place(mark.to)];
  const level = Math.abs(a.y - b.y) < Math.abs(a.x - b.x);
  const [off, across, room] = level ? [a.y, size.height, size.width] : [a.x, size.width, size.height];
  const [start, end] = level ? [a.x, b.x] : [a.y, b.y];
  const from = Math.max(fromEdge, Math.min(start, end));
  const to = Math.min(room - fromEdge, Math.max(start, end));
  if (off < fromEdge || off > across || to - from < roomForName) return null;
  return level ? (
    <Words x={from + 2} y={a.y - 0.7}>
      {mark.name}
    </Words>
  ) : (
    <Words x={a.x - 0.7} y={to - 2} upright>
      {mark.name}
    </Words>
  );
}

function Layer({ id, marks, place, size }: { id: LayerId; marks: readonly Mark[]; place: Put; size: Window }) {
  const { width, dashes } = lineStyles[id];
  return (
    <g class={`layer-${id}`} fill="none" stroke="#000" stroke-width={width} stroke-dasharray={dashes}>
      {marks.map((mark, index) => {
        const at = mark.kind === "cross" ? place(mark.centre) : undefined;
        return (
          <g key={String(index)}>
            <path d={pathData(mark, place)} />
            {mark.kind === "line" && <LineName mark={mark} place={place} size={size} />}
            {mark.kind === "cross" && mark.name !== undefined && at && (
              <Words x={at.x + mark.reach * 0.75} y={at.y - mark.reach * 0.75}>
                {mark.name}
              </Words>
            )}
          </g>
        );
      })}
    </g>
  );
}

const tickApart = 10;

/** The bar to hold a rule against, ticked every centimetre. */
function Bar({ x, y }: { x: number; y: number }) {
  const ticks = Array.from({ length: barLength / tickApart + 1 }, (_, index) => x + index * tickApart);
  return (
    <g fill="none" stroke="#000" stroke-width="0.25">
      <path class="check-bar" d={`M${x} ${y}h${barLength}`} />
      <path d={ticks.map((tick, index) => `M${tick} ${y}v${index % 5 === 0 ? -3 : -1.5}`).join("")} />
    </g>
  );
}

/** Where a sheet is cut to be joined to its neighbours: the middle of what they share, right across the paper. */
function CutMarks({ tile: { joins }, size: { width, height } }: { tile: Tile; size: Window }) {
  const half = overlap / 2;
  const lines = [
    ...(joins.west ? [`M${half} 0V${height}`] : []),
    ...(joins.east ? [`M${width - half} 0V${height}`] : []),
    ...(joins.north ? [`M0 ${half}H${width}`] : []),
    ...(joins.south ? [`M0 ${height - half}H${width}`] : []),
  ];
  if (lines.length === 0) return null;
  return <path class="cut-marks" d={lines.join("")} fill="none" stroke="#000" stroke-width="0.18" stroke-dasharray="4 2" />;
}

function Sheet({ sheet, tiles, tile }: { sheet: FullSize; tiles: Tiling; tile: Tile }) {
  const texts = useTexts(planTemplate);
  const { width, height } = tiles;
  const size = { width, height };
  const place: Put = ({ x, y }) => ({ x: x - tile.x, y: height - (y - tile.y) });
  const whole = height + tileHead;
  const number = texts.place(tile.row, tiles.rows, tile.column, tiles.columns);
  return (
    <svg
      class="tile"
      viewBox={`0 0 ${width} ${whole}`}
      width={`${width}mm`}
      height={`${whole}mm`}
      role="img"
      aria-label={texts.sheet(sheet.name, number)}
    >
      <rect width={width} height={whole} fill="#fff" />
      <Words x={0} y={4} size={4}>
        {sheet.name.length > 36 ? `${sheet.name.slice(0, 35)}…` : sheet.name}
      </Words>
      <Words x={0} y={8.4}>
        {`${sheet.face.charAt(0).toUpperCase()}${sheet.face.slice(1)}, ${number}.`}
      </Words>
      <Words x={0} y={12.4}>
        {tiles.tiles.length > 1 ? texts.cut : texts.glue}
      </Words>
      <Bar x={width - barLength - 0.5} y={5} />
      <Words x={width - barLength - 0.5} y={8.4}>
        {texts.bar(barLength)}
      </Words>
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: it is part of the picture it stands in, which is named */}
      <svg x="0" y={tileHead} width={width} height={height} viewBox={`0 0 ${width} ${height}`}>
        {layerIds.map((id) => (
          <Layer key={id} id={id} marks={sheet.drawing[id]} place={place} size={size} />
        ))}
        <CutMarks tile={tile} size={size} />
      </svg>
    </svg>
  );
}

/** Which sheet shows what, small. */
function Overview({ sheet, tiles }: { sheet: FullSize; tiles: Tiling }) {
  const texts = useTexts(planTemplate);
  const xs = tiles.tiles.flatMap(({ x }) => [x, x + tiles.width]);
  const ys = tiles.tiles.flatMap(({ y }) => [y, y + tiles.height]);
  const [left, top] = [Math.min(...xs), Math.max(...ys)];
  const [wide, deep] = [Math.max(...xs) - left, top - Math.min(...ys)];
  const place: Put = ({ x, y }) => ({ x: x - left, y: top - y });
  const hair = Math.max(wide, deep) / 200;
  return (
    <svg class="tile-map" viewBox={`0 0 ${wide} ${deep}`} role="img" aria-label={texts.overview(tiles.rows, tiles.columns)}>
      <g fill="#fff" fill-opacity="0.7" stroke="#777" stroke-width={hair}>
        {tiles.tiles.map(({ x, y, row, column }) => {
          const corner = place({ x, y: y + tiles.height });
          return <rect key={`${row} ${column}`} x={corner.x} y={corner.y} width={tiles.width} height={tiles.height} />;
        })}
      </g>
      <path d={pathData({ kind: "polygon", points: sheet.outline }, place)} fill="none" stroke="#000" stroke-width={2 * hair} />
    </svg>
  );
}

interface Props {
  readonly sheet: FullSize;
  readonly view: LengthView;
  readonly close: () => void;
}

function TemplateView({ sheet, view, close }: Props) {
  const texts = useTexts(planTemplate);
  const [paper, setPaper] = useState<PaperId>("a4");
  const heading = useRef<HTMLHeadingElement>(null);
  const tiles = tiling(sheet, paper);
  const used = tiles.tiles.filter((tile) => tile.used);
  const size = (value: number) => formatQuantity(value, "length", view, "setting");
  useEffect(() => {
    heading.current?.focus();
    const leave = ({ key }: KeyboardEvent) => {
      if (key === "Escape") close();
    };
    addEventListener("keydown", leave);
    return () => removeEventListener("keydown", leave);
  }, [close]);
  return (
    <main class="page template-page">
      <div class="not-on-paper">
        <h1 tabIndex={-1} ref={heading}>
          {texts.title(sheet.name || texts.withoutName)}
        </h1>
        <p>
          {texts.howToPrint(papers[paper].name)}{" "}
          {texts.blank(
            size(sheet.width),
            size(sheet.depth),
            used.length,
            tiles.rows,
            tiles.columns,
            used.length < tiles.tiles.length,
          )}
        </p>
        <p>
          {texts.paperMoves}
          {sheet.drawing["sight-lines"].length > 0 && ` ${texts.linesOnBack}`}
        </p>
        <div class="template-actions">
          <fieldset class="switch">
            <legend class="for-ears">{texts.paper}</legend>
            {(Object.keys(papers) as PaperId[]).map((id) => (
              <label key={id}>
                <input type="radio" name="template-paper" value={id} checked={paper === id} onChange={() => setPaper(id)} />
                {papers[id].name}
              </label>
            ))}
          </fieldset>
          <button type="button" class="button first" onClick={() => print()}>
            {texts.print(used.length)}
          </button>
          <button type="button" onClick={close}>
            {texts.back}
          </button>
        </div>
        {tiles.tiles.length > 1 && <Overview sheet={sheet} tiles={tiles} />}
      </div>
      <div class="tiles">
        {used.map((tile) => (
          <Sheet key={`${paper} ${tile.row} ${tile.column}`} sheet={sheet} tiles={tiles} tile={tile} />
        ))}
      </div>
    </main>
  );
}

/**
 * Shows the template of a blank in place of the page, to be printed.
 * @param back - called when the page is there again
 */
export function openTemplate(sheet: FullSize, view: LengthView, back: () => void): void {
  const host = document.createElement("div");
  host.className = "template-view";
  const root = document.documentElement;
  const before = scrollY;
  const close = () => {
    render(null, host);
    host.remove();
    root.classList.remove("shows-template");
    scrollTo({ top: before, behavior: "instant" });
    back();
  };
  root.classList.add("shows-template");
  document.body.append(host);
  scrollTo({ top: 0, behavior: "instant" });
  render(<TemplateView sheet={sheet} view={view} close={close} />, host);
}
