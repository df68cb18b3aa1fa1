import { render } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { OwnQuestion } from "../../lib/assign/own-question.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { runWorksheet } from "../../lib/worksheet.ts";
import { useTexts } from "../../texts/context.ts";
import { task } from "../../texts/en/task.ts";
import type { Sheets } from "./load-sheets.ts";
import { quietTexts } from "./quiet-drawing.ts";

interface Props {
  readonly own: OwnQuestion;
  readonly sheets: Sheets;
  readonly view: LengthView;
}

/** The drawing of the calculator with the student's numbers, without those that are asked for. */
export function QuietDrawing({ own, sheets, view }: Props) {
  const texts = useTexts(task);
  const place = useRef<HTMLDivElement>(null);
  const Drawing = sheets.drawingOf(own.sheet.id);
  useLayoutEffect(() => {
    const { current } = place;
    if (!Drawing || !current) return;
    const { values, answer } = runWorksheet(own.sheet, own.raw, sheets.catalogue);
    if (!answer) return;
    // Drawn aside first, so that nothing is shown, or read out, before it is made quiet.
    const aside = document.createElement("div");
    const id = `question-${own.number}`;
    render(<Drawing id={id} values={values} outputs={answer.outputs} view={view} shop={sheets.catalogue.shop} />, aside);
    const nodes = [...aside.querySelectorAll("text, tspan")].flatMap((text) =>
      [...text.childNodes].filter((node) => node instanceof Text),
    );
    const quiet = quietTexts(
      own,
      values,
      view,
      nodes.map(({ data }) => data),
    );
    nodes.forEach((node, index) => {
      node.data = quiet[index] ?? "";
    });
    for (const words of aside.querySelectorAll("desc")) words.textContent = texts.drawingNote;
    current.replaceChildren(...aside.childNodes);
  }, [Drawing, own, sheets, view]);
  return Drawing ? (
    <figure class="task-drawing not-on-paper">
      <div class="answer" ref={place} />
      <figcaption class="help">{texts.drawingNote}</figcaption>
    </figure>
  ) : null;
}
