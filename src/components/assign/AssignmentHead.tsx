import { useState } from "preact/hooks";
import type { Assignment } from "../../lib/assign/definition.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import type { Fault } from "./faults.ts";

interface Props {
  readonly assignment: Assignment;
  readonly faults: readonly Fault[];
  readonly view: LengthView;
  change(next: (before: Assignment) => Assignment): void;
}

/** Title, course and text of the whole assignment. */
export function AssignmentHead({ assignment, faults, view, change }: Props) {
  const texts = useTexts(assign);
  /** Fields that were left: one that nobody has been to yet is not wrong for being empty. */
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const problemAt = (place: "title" | "course" | "intro") =>
    assignment[place] || left.has(place)
      ? faults.find((fault) => fault.question === undefined && fault.place === place)?.problem.text(view)
      : undefined;
  const field = (place: "title" | "course", label: string, help?: string) => {
    const id = `assign-${place}`;
    const problem = problemAt(place);
    const described = [problem && `${id}-message`, help && `${id}-help`].filter(Boolean).join(" ");
    return (
      <div class="field">
        <label for={id}>{label}</label>
        <input
          id={id}
          type="text"
          autocomplete="off"
          value={assignment[place]}
          aria-invalid={problem ? "true" : undefined}
          aria-describedby={described || undefined}
          onInput={(event) => {
            const text = event.currentTarget.value;
            change((before) => ({ ...before, [place]: text }));
          }}
          onBlur={() => setLeft((before) => new Set(before).add(place))}
        />
        <p class="message" id={`${id}-message`} aria-live="polite">
          {problem}
        </p>
        {help && (
          <p class="help" id={`${id}-help`}>
            {help}
          </p>
        )}
      </div>
    );
  };
  const problem = problemAt("intro");
  return (
    <section aria-labelledby="assign-about">
      <h2 id="assign-about">{texts.about}</h2>
      {field("title", texts.titleLabel)}
      {field("course", texts.courseLabel, texts.courseHelp)}
      <div class="field">
        <label for="assign-intro">
          {texts.introLabel} <span class="quiet">({texts.optional})</span>
        </label>
        <textarea
          id="assign-intro"
          rows={2}
          value={assignment.intro ?? ""}
          aria-invalid={problem ? "true" : undefined}
          aria-describedby={problem ? "assign-intro-message" : undefined}
          onInput={(event) => {
            const text = event.currentTarget.value;
            change(({ intro: _, ...before }) => (text === "" ? before : { ...before, intro: text }));
          }}
        />
        <p class="message" id="assign-intro-message" aria-live="polite">
          {problem}
        </p>
      </div>
    </section>
  );
}
