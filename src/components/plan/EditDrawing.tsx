import type { ComponentChildren } from "preact";
import { useRef, useState } from "preact/hooks";
import type { Input, ListInput, Raw, RawRow } from "../../lib/inputs.ts";
import { type FlatHole, type FlatLayout, type FlatPoint, panelName } from "../../lib/part/flatten.ts";
import { partInputs, type Side, sideNames } from "../../lib/part/form.ts";
import { inside } from "../../lib/part/geometry.ts";
import { holeEdge } from "../../lib/part/hole-edge.ts";
import { type OnPanel, pick, toPanel } from "../../lib/part/pick.ts";
import type { RolledSheet } from "../../lib/part/rolled/model.ts";
import { toSurface } from "../../lib/part/rolled/pick.ts";
import { useTexts } from "../../texts/context.ts";
import { planEdit } from "../../texts/en/plan-edit.ts";
import { Field, type Form, ListCell, Messages } from "../calculator/Fields.tsx";
import { at, Line, paperWidth, type Spot, spot } from "../figures/pen.tsx";

/** What is chosen on the drawing: the base, a leg, a folded edge or a hole. */
type Chosen =
  | { readonly kind: "panel"; readonly id: string; readonly at?: FlatPoint }
  | { readonly kind: "edge"; readonly side: Side }
  | { readonly kind: "hole"; readonly number: number };

/** A blank to work on: what is drawn of it, and where a place on it is on the part. */
export interface Workpiece {
  readonly width: number;
  readonly depth: number;
  readonly outline: readonly FlatPoint[];
  readonly pieces: FlatLayout["pieces"];
  readonly holes: readonly FlatHole[];
  /** A place of the blank as holes are given on one of its panels. */
  readonly toPanel: (panel: string, point: FlatPoint) => OnPanel | undefined;
  /** The panel under a place of the blank. */
  readonly pick: (point: FlatPoint) => OnPanel | undefined;
  /** Fields that give the size of the base, or of the whole part. */
  readonly sizes: readonly SizeKey[];
  /** Legs can be added to it. */
  readonly takesLegs: boolean;
}

type SizeKey = "width" | "depth" | "diameter" | "length" | "arc" | "largeDiameter" | "smallDiameter" | "height";

/** A folded part to work on. */
export function foldedWorkpiece(layout: FlatLayout): Workpiece {
  return {
    ...layout,
    toPanel: (panel, point) => toPanel(layout, panel, point),
    pick: (point) => pick(layout, point),
    sizes: ["width", "depth"],
    takesLegs: true,
  };
}

/** A rolled part to work on: one surface, holes on it. */
export function rolledWorkpiece(sheet: RolledSheet): Workpiece {
  return {
    ...sheet,
    pieces: [{ id: "base", kind: "panel", axis: "y", polygon: sheet.outline }],
    toPanel: (_, point) => toSurface(sheet, point),
    pick: (point) => (inside(sheet.outline, point) ? toSurface(sheet, point) : undefined),
    sizes: sheet.part.kind === "tube" ? ["diameter", "length", "arc"] : ["largeDiameter", "smallDiameter", "height"],
    takesLegs: false,
  };
}

export interface EditDrawingProps {
  readonly layout: Workpiece;
  readonly form: Form;
  readonly change: (next: (before: Raw) => Raw) => void;
}

/** New holes and drags stop at whole millimetres; the fields take any number. */
const snap = 1;
const margin = 16;
const tallest = 340;

const rowsOf = (raw: Raw, key: string): readonly RawRow[] => {
  const rows = raw[key];
  return Array.isArray(rows) ? rows : [];
};

const millimetres = (value: number) => `${Math.round(value / snap) * snap}mm`;

/** Size of a new hole: one the smallest punch sets have. */
const newHole = "5mm";
const newLeg: RawRow = { leg: "20mm", angle: "90deg", way: "up", radius: "" };

/** The blank as something to work on: choose a part of it, change its numbers beside it, set holes where they are wanted. */
export function EditDrawing({ layout, form, change }: EditDrawingProps) {
  const texts = useTexts(planEdit);
  const [chosen, setChosen] = useState<Chosen>({ kind: "panel", id: "base" });
  const drawing = useRef<SVGSVGElement>(null);
  const dragged = useRef<{ readonly hole: FlatHole; readonly from: FlatPoint; moved: boolean }>();

  const scale = Math.min((paperWidth - 2 * margin) / layout.width, tallest / layout.depth);
  const height = layout.depth * scale + 2 * margin;
  const left = (paperWidth - layout.width * scale) / 2;
  const place = ({ x, y }: FlatPoint): Spot => spot(left + x * scale, height - margin - y * scale);
  const closed = (points: readonly FlatPoint[]) => `M${points.map((point) => at(place(point))).join("L")}Z`;
  const pointOf = (event: PointerEvent): FlatPoint => {
    const box = drawing.current?.getBoundingClientRect();
    if (!box || box.width === 0) return { x: 0, y: 0 };
    const unit = paperWidth / box.width;
    return {
      x: ((event.clientX - box.left) * unit - left) / scale,
      y: (height - margin - (event.clientY - box.top) * unit) / scale,
    };
  };

  /** Moves the row of a hole to a place of the blank, staying on its panel. */
  const moveTo = (hole: FlatHole, point: FlatPoint) => {
    const on = layout.toPanel(hole.panel, point);
    if (!on) return;
    const [key = "", index] = hole.field.split(".");
    change((before) => ({
      ...before,
      [key]: rowsOf(before, key).map((row, row_) =>
        String(row_) === index ? { ...row, x: millimetres(on.x), y: millimetres(on.y) } : row,
      ),
    }));
  };
  const single = (hole: FlatHole) => !hole.field.startsWith("circles");
  const nudge = (event: KeyboardEvent, hole: FlatHole) => {
    const step = { ArrowLeft: [-snap, 0], ArrowRight: [snap, 0], ArrowUp: [0, snap], ArrowDown: [0, -snap] }[event.key];
    if (!step || !single(hole)) return;
    event.preventDefault();
    moveTo(hole, { x: hole.flatX + (step[0] ?? 0), y: hole.flatY + (step[1] ?? 0) });
  };
  const state = (next: Chosen) => (same(next, chosen) ? "piece chosen" : "piece");

  return (
    <div class="edit-drawing">
      <p class="help">{texts.help}</p>
      <svg
        ref={drawing}
        class="fig edit-sheet"
        viewBox={`0 0 ${paperWidth} ${height.toFixed(1)}`}
        onPointerMove={(event) => {
          const drag = dragged.current;
          if (!drag || !single(drag.hole)) return;
          const to = pointOf(event);
          if (!drag.moved && Math.hypot(to.x - drag.from.x, to.y - drag.from.y) * scale < 4) return;
          drag.moved = true;
          moveTo(drag.hole, { x: drag.hole.flatX + to.x - drag.from.x, y: drag.hole.flatY + to.y - drag.from.y });
        }}
        onPointerUp={() => {
          dragged.current = undefined;
        }}
        onPointerLeave={() => {
          dragged.current = undefined;
        }}
      >
        <title>{texts.title}</title>
        {layout.pieces.map((piece) => {
          if (piece.kind === "bend") return <path key={`bend ${piece.id}`} class="band" d={closed(piece.polygon)} />;
          const next: Chosen =
            piece.kind === "edge" ? { kind: "edge", side: piece.side as Side } : { kind: "panel", id: piece.id };
          return (
            <Control
              key={piece.id}
              label={piece.kind === "edge" ? texts.edge(String(piece.side)) : panelName(piece.id)}
              class={state(next)}
              pressed={same(next, chosen)}
              onChoose={(event) => setChosen(event && next.kind === "panel" ? { ...next, at: pointOf(event) } : next)}
            >
              <path d={closed(piece.polygon)} />
            </Control>
          );
        })}
        <path class="outline" d={closed(layout.outline)} />
        {chosen.kind === "panel" && chosen.at && <Mark spot={place(chosen.at)} />}
        {layout.holes.map((hole) => {
          const next: Chosen = { kind: "hole", number: hole.number };
          const centre = place({ x: hole.flatX, y: hole.flatY });
          const edge = hole.shape === "round" ? undefined : holeEdge(hole);
          return (
            <Control
              key={hole.number}
              label={texts.holeOn(hole.number, panelName(hole.panel))}
              class={same(next, chosen) ? "hole chosen" : "hole"}
              pressed={same(next, chosen)}
              onChoose={() => setChosen(next)}
              onGrip={(event) => {
                dragged.current = { hole, from: pointOf(event), moved: false };
              }}
              onKey={(event) => nudge(event, hole)}
            >
              <circle class="grip" cx={centre.x} cy={centre.y} r={14} />
              {edge ? (
                <path class="cut" d={closed(edge.map(({ x, y }) => ({ x: hole.flatX + x, y: hole.flatY + y })))} />
              ) : (
                <circle class="cut" cx={centre.x} cy={centre.y} r={(hole.width / 2) * scale} />
              )}
            </Control>
          );
        })}
      </svg>
      <Beside chosen={chosen} setChosen={setChosen} layout={layout} form={form} change={change} />
    </div>
  );
}

interface ControlProps {
  readonly label: string;
  readonly class: string;
  readonly pressed: boolean;
  /** With the pointer where it was let go; without one from the keyboard. */
  readonly onChoose: (event?: PointerEvent) => void;
  readonly onGrip?: (event: PointerEvent) => void;
  readonly onKey?: (event: KeyboardEvent) => void;
  readonly children: ComponentChildren;
}

/** A piece of the drawing that can be chosen. */
function Control({ label, class: name, pressed, onChoose, onGrip, onKey, children }: ControlProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing has no button element
    <g
      role="button"
      class={name}
      // In a drawing, attributes keep their case, and this one is spelt small.
      tabindex={0}
      aria-label={label}
      aria-pressed={pressed}
      onPointerDown={onGrip}
      onPointerUp={(event) => onChoose(event)}
      onKeyDown={(event) => {
        onKey?.(event);
        if (event.key !== "Enter" && event.key !== " ") return;
        event.preventDefault();
        onChoose();
      }}
    >
      {children}
    </g>
  );
}

function same(a: Chosen, b: Chosen): boolean {
  if (a.kind === "panel") return b.kind === "panel" && a.id === b.id;
  if (a.kind === "edge") return b.kind === "edge" && a.side === b.side;
  return b.kind === "hole" && a.number === b.number;
}

function Mark({ spot: middle }: { spot: Spot }) {
  return (
    <g>
      <Line from={spot(middle.x - 8, middle.y)} to={spot(middle.x + 8, middle.y)} kind="sight" />
      <Line from={spot(middle.x, middle.y - 8)} to={spot(middle.x, middle.y + 8)} kind="sight" />
    </g>
  );
}

/** The numbers of what is chosen, and what can be added to it or taken away. */
function Beside({
  chosen,
  setChosen,
  layout,
  form,
  change,
}: EditDrawingProps & { chosen: Chosen; setChosen: (next: Chosen) => void }) {
  const texts = useTexts(planEdit);
  // The same fields stand in the form below, so these have names of their own.
  const own: Form = { ...form, instance: "drawing" };
  const set = (key: string, rows: (before: readonly RawRow[]) => readonly RawRow[]) =>
    change((before) => ({ ...before, [key]: rows(rowsOf(before, key)) }));
  const addHole = (id: string, point: FlatPoint | undefined) => {
    const on = point && layout.pick(point);
    const panel = layout.pieces.find((piece) => piece.kind === "panel" && piece.id === id);
    const middle = panel && {
      x: panel.polygon.reduce((sum, { x }) => sum + x, 0) / panel.polygon.length,
      y: panel.polygon.reduce((sum, { y }) => sum + y, 0) / panel.polygon.length,
    };
    const found = on?.panel === id ? on : middle && layout.toPanel(id, middle);
    if (!found) return;
    set("holes", (rows) => [...rows, { panel: id, x: millimetres(found.x), y: millimetres(found.y), diameter: newHole }]);
    setChosen({ kind: "hole", number: rowsOf(form.raw, "holes").length + 1 });
  };

  if (chosen.kind === "hole") {
    const hole = layout.holes.find(({ number }) => number === chosen.number);
    if (!hole) return null;
    const [key = "", index = ""] = hole.field.split(".");
    const list = partInputs[key as "holes" | "cutouts" | "circles"];
    return (
      <section class="beside" aria-label={texts.hole(hole.number)}>
        <h4>{key === "circles" ? texts.holeCircle : texts.hole(hole.number)}</h4>
        <Row form={own} list={key} input={list} index={Number(index)} />
        <button
          type="button"
          onClick={() => {
            set(key, (rows) => rows.filter((_, row) => String(row) !== index));
            setChosen({ kind: "panel", id: hole.panel });
          }}
        >
          {key === "circles" ? texts.removeHoleCircle : texts.removeHole(hole.number)}
        </button>
      </section>
    );
  }
  if (chosen.kind === "edge") {
    const index = rowsOf(form.raw, "edges").findIndex((row) => (row.side ?? "north") === chosen.side);
    if (index === -1) return null;
    return (
      <section class="beside" aria-label={texts.edge(chosen.side)}>
        <h4>{texts.edge(chosen.side)}</h4>
        <Row form={own} list="edges" input={partInputs.edges} index={index} />
        <button
          type="button"
          onClick={() => {
            set("edges", (rows) => rows.filter((_, row) => row !== index));
            setChosen({ kind: "panel", id: "base" });
          }}
        >
          {texts.removeEdge}
        </button>
      </section>
    );
  }
  const [side, number] = chosen.id.split(".") as [Side, string | undefined];
  const isBase = chosen.id === "base";
  const legs = isBase ? [] : rowsOf(form.raw, side);
  const outermost = legs.length === Number(number);
  const free = sideNames.filter((each) => rowsOf(form.raw, each).length === 0);
  return (
    <section class="beside" aria-label={panelName(chosen.id)}>
      <h4>{panelName(chosen.id)}</h4>
      {isBase ? (
        <div class="field-grid">
          {layout.sizes.map((key) => (
            <Field key={key} form={own} field={key} input={partInputs[key]} />
          ))}
        </div>
      ) : (
        <Row form={own} list={side} input={partInputs[side]} index={Number(number) - 1} />
      )}
      <div class="actions">
        <button type="button" onClick={() => addHole(chosen.id, chosen.at)}>
          {chosen.at ? texts.addHoleAtMark : texts.addHoleInMiddle}
        </button>
        {isBase &&
          layout.takesLegs &&
          free.map((each) => (
            <button
              key={each}
              type="button"
              onClick={() => {
                set(each, (rows) => [...rows, newLeg]);
                setChosen({ kind: "panel", id: `${each}.1` });
              }}
            >
              {texts.addLeg(each)}
            </button>
          ))}
        {!isBase && outermost && (
          <>
            <button
              type="button"
              onClick={() => {
                set(side, (rows) => [...rows, newLeg]);
                setChosen({ kind: "panel", id: `${side}.${legs.length + 1}` });
              }}
            >
              {texts.addLegBeyond}
            </button>
            <button
              type="button"
              onClick={() => {
                set(side, (rows) => rows.slice(0, -1));
                setChosen({ kind: "panel", id: legs.length > 1 ? `${side}.${legs.length - 1}` : "base" });
              }}
            >
              {texts.removeLeg}
            </button>
          </>
        )}
      </div>
    </section>
  );
}

/** The cells of one row of a list, each with its own label. */
function Row({ form, list, input, index }: { form: Form; list: string; input: ListInput; index: number }) {
  const row = rowsOf(form.raw, list)[index];
  if (!row) return null;
  return (
    <div class="field-grid">
      {Object.entries(input.columns).map(([name, cell]) => {
        const field = `${list}.${index}.${name}`;
        const text = row[name] ?? ("default" in cell ? cell.default : undefined) ?? "";
        return (
          <div class="field" key={field}>
            <span class="cell-name" aria-hidden="true">
              {cell.label}
            </span>
            <ListCell form={form} field={field} cell={cell as Input} text={text} label={cell.label} />
            <Messages form={form} field={field} id={`drawing-${field.replaceAll(".", "-")}`} />
          </div>
        );
      })}
    </div>
  );
}
