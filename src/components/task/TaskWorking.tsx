import { useLayoutEffect, useRef } from "preact/hooks";
import type { Step } from "../../lib/worksheet.ts";
import { useLanguage, useTexts } from "../../texts/context.ts";
import { task } from "../../texts/en/task.ts";
import { loadWhenOpened, showWorking } from "../calculator/working.ts";

interface Props {
  /** Page of the calculator alone, which holds its formulas. */
  readonly page: string;
  readonly steps: readonly Step[];
  /** With the student's numbers and the answer in them; otherwise letters alone. */
  readonly withNumbers: boolean;
}

/**
 * The formulas of a question, fetched when they are opened. What is fetched is no part of this form, so the place for it is
 * made by hand.
 */
export function TaskWorking({ page, steps, withNumbers }: Props) {
  const texts = useTexts(task);
  const language = useLanguage();
  const place = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const details = document.createElement("details");
    details.className = "calculator-part task-working";
    details.dataset.from = page;
    const link = document.createElement("a");
    Object.assign(link, { href: page, target: "_blank", rel: "noopener", textContent: texts.workingPage });
    const instead = document.createElement("p");
    instead.append(`${texts.workingElsewhere} `, link, ".");
    details.append(document.createElement("summary"), instead);
    place.current?.replaceChildren(details);
    showWorking(details, steps, language);
    loadWhenOpened(details);
  }, [page, steps, language]);
  useLayoutEffect(() => {
    const details = place.current?.querySelector("details");
    const [summary] = details?.children ?? [];
    if (!details || !summary) return;
    summary.textContent = withNumbers ? texts.working : texts.formulas;
    details.classList.toggle("letters-only", !withNumbers);
    if (withNumbers) details.open = true;
  }, [page, steps, language, withNumbers]);
  return <div ref={place} />;
}
