import type { ComponentChildren } from "preact";
import type { Part } from "../../lib/sheet/cut-order.ts";
import type { Alike, CutStep } from "../../lib/sheet/cut-steps.ts";
import { useTexts } from "../../texts/context.ts";
import { sheet } from "../../texts/en/sheet.ts";
import { box, SheetTable } from "../plan/SheetTable.tsx";
import { idsText, letterOf } from "./letters.ts";

interface Props {
  readonly title: string;
  readonly steps: readonly CutStep[];
  readonly names: readonly string[];
  readonly bare: (value: number) => string;
  readonly unit: string;
}

/** What the parts of a sheet are called in sentences. */
export function partWords({ kind, id, piece = 0 }: Part, names: readonly string[], texts: typeof sheet): string {
  if (kind === "piece") return `${letterOf(piece)} ${names[piece] ?? ""}`.trim();
  if (kind === "trim") return texts.trimStrip(1);
  if (kind === "rest") return texts.offcut(id || "1");
  return id === "" ? texts.theSheet : texts.plate(id);
}

/** The settings of the back stop for one sheet in order: what to put in, what falls behind the blade, what stays. */
export function CutSteps({ title, steps, names, bare, unit }: Props) {
  const texts = useTexts(sheet);
  const size = ({ width, length }: Part) => `${bare(width)} × ${bare(length)}`;
  const ids = (list: readonly string[]) => idsText(list, texts.to);
  const put = (plates: readonly Part[]) => {
    const [first] = plates;
    if (plates.length === 1 && first) return first.id === "" ? texts.theSheet : `${texts.plate(first.id)}, ${size(first)}`;
    return texts.plates(plates.length, ids(plates.map(({ id }) => id)));
  };
  /** The step that a plate goes to next. */
  const nextOf = (id: string, after: number) =>
    steps.find(({ number, plates }) => number > after && plates.some((plate) => plate.id === id))?.number;
  const group = ({ part, count, ids: those }: Alike, step: number): ComponentChildren => {
    if (part.kind === "piece")
      return (
        <>
          <strong>
            {count > 1 && texts.ofEach(count)} {partWords(part, names, texts)}
          </strong>
          , {size(part)}
        </>
      );
    if (part.kind === "trim") return `${texts.trimStrip(count)}, ${size(part)}`;
    if (part.kind === "rest")
      return `${count === 1 ? texts.offcut(ids(those) || "1") : texts.offcuts(count, ids(those))}, ${size(part)}`;
    const next = nextOf(those[0] ?? "", step);
    const where = next === undefined ? "" : `; ${texts.toStep(next)}`;
    const what =
      count > 1 ? texts.platesPlain(count, ids(those)) : those[0] === "" ? texts.theSheet : texts.plate(those[0] ?? "");
    return `${what}, ${size(part)}${where}`;
  };
  return (
    <section class="cut-steps">
      <h3>{title}</h3>
      <SheetTable
        caption={texts.stepsCaption(unit)}
        head={Object.values(texts.stepsHead)}
        rows={steps.map((step) => [
          <>
            {box} {step.number}
          </>,
          step.stop === undefined ? (
            texts.toLine(bare(step.across === "width" ? step.off.part.width : step.off.part.length))
          ) : (
            <>
              {!step.setsStop && `${texts.stopStays} `}
              <strong>{bare(step.stop)}</strong>
            </>
          ),
          step.last - step.first + 1,
          put(step.plates),
          group(step.off, step.number),
          <>
            {step.held.map((held, index) => (
              <div key={held.part.id}>
                {group(held, step.number)}
                {index < step.held.length - 1 && ";"}
              </div>
            ))}
            {step.faults.map((fault) => (
              <strong class="cut-fault" key={fault}>
                {texts.faults[fault]}
              </strong>
            ))}
          </>,
        ])}
      />
    </section>
  );
}
