import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import { addressParts } from "../../lib/address.ts";
import { assignmentFromAddress, assignmentQuery } from "../../lib/assign/address.ts";
import { type Assignment, limits, type Question } from "../../lib/assign/definition.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import { keptAssignments } from "../../texts/en/kept-assignments.ts";
import { KeptList } from "../kept/KeptList.tsx";
import { assignmentShelf } from "../kept/kept-list.ts";
import { loadSheet, planId } from "../task/load-sheets.ts";
import { useUnits } from "../use-units.ts";
import { AssignmentFiles } from "./AssignmentFiles.tsx";
import { AssignmentHead } from "./AssignmentHead.tsx";
import { emptyAssignment, isEmpty, withInserted, withMovedUp, withoutQuestion, withQuestion } from "./draft.ts";
import { example } from "./example.ts";
import { FaultList } from "./FaultList.tsx";
import { assignmentFaults, type Found } from "./faults.ts";
import { HandOut, setsOf } from "./HandOut.tsx";
import { PaperSheets } from "./PaperSheets.tsx";
import { Picker, type PickerGroup } from "./Picker.tsx";
import { Preview } from "./Preview.tsx";
import { QuestionCard } from "./QuestionCard.tsx";
import { questionForm, type Typing } from "./question-form.ts";
import { useDraft } from "./use-draft.ts";
import { useWorksheets } from "./use-worksheets.ts";

interface Props {
  readonly catalogue: Catalogue;
  readonly calculators: readonly PickerGroup[];
  readonly root: string;
}

/** A stroke is not judged before it has had time to be followed by another [ms]. */
const patience = 400;
const nothingFound: Found = { faults: [], tried: [] };

async function partToBeginWith(): Promise<Question["fixed"]> {
  const [{ startingPoints }, { partInputs }] = await Promise.all([
    import("../plan/starting-points.ts"),
    import("../../lib/part/form.ts"),
  ]);
  const bent = startingPoints.find(({ raw }) => Array.isArray(raw.south) && Array.isArray(raw.north)) ?? startingPoints[0];
  return bent ? Object.fromEntries(addressParts(partInputs, bent.raw)) : {};
}

/** What is typed, a moment after typing has paused. */
function useSettled<T>(value: T): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), patience);
    return () => clearTimeout(timer);
  }, [value]);
  return settled;
}

/** The form in which an assignment is made, what students will see of it, and what it is handed out as. */
export function AssignEditor({ catalogue, calculators, root }: Props) {
  const texts = useTexts(assign);
  const keptTexts = useTexts(keptAssignments);
  const { draft, damage, change, replace } = useDraft();
  const { assignment, names } = draft;
  const { questions } = assignment;
  const { worksheetOf, waiting } = useWorksheets(questions.map(({ calculator }) => calculator));
  const view = useUnits();
  const [typing, setTyping] = useState<Typing>();
  const [student, setStudent] = useState(texts.previewId);
  const [sets, setSets] = useState("4");
  const [printing, setPrinting] = useState(false);
  const [removed, setRemoved] = useState<{ question: Question; name: number; at: number }>();
  const focusNext = useRef("");
  const printNext = useRef(false);

  const settled = useSettled(assignment);
  const check = useMemo(assignmentFaults, []);
  const found = useMemo(
    () => (waiting || isEmpty(settled) ? nothingFound : check(settled, worksheetOf, catalogue)),
    [settled, waiting, catalogue],
  );
  const isRight = !waiting && settled === assignment && questions.length > 0 && found.faults.length === 0;

  // Paper gets the sheets, however it is asked for.
  const canPrint = isRight && setsOf(sets) !== undefined;
  useEffect(() => {
    const before = () => setPrinting(canPrint);
    const after = () => setPrinting(false);
    addEventListener("beforeprint", before);
    addEventListener("afterprint", after);
    return () => {
      removeEventListener("beforeprint", before);
      removeEventListener("afterprint", after);
    };
  }, [canPrint]);
  useLayoutEffect(() => {
    if (!printing || !printNext.current) return;
    printNext.current = false;
    print();
  });
  useLayoutEffect(() => {
    if (focusNext.current === "") return;
    document.getElementById(focusNext.current)?.focus();
    focusNext.current = "";
  });

  const instanceOf = (index: number) => `assign-${names[index]}`;
  const add = async (id: string) => {
    const [{ startingQuestion }, loaded] = await Promise.all([import("../../lib/assign/starting-question.ts"), loadSheet(id)]);
    // A plan begins with a part that has bends: of a flat sheet there is nothing to ask.
    const fixed = id === planId ? await partToBeginWith() : {};
    const question = loaded && startingQuestion(loaded.sheet, catalogue, fixed);
    if (!question) return;
    change((before) => {
      const after = withInserted(before, before.assignment.questions.length, question);
      focusNext.current = `assign-${after.names.at(-1)}-head`;
      return after;
    });
  };
  const head = (next: (before: Assignment) => Assignment) =>
    change((before) => ({ ...before, assignment: next(before.assignment) }));
  const move = (at: number, from: number) => {
    focusNext.current = `${instanceOf(from)}-head`;
    change((before) => withMovedUp(before, at));
  };
  const open = useCallback((query: string) => {
    const held = assignmentFromAddress(new URLSearchParams(query));
    if (held) replace(held);
  }, []);

  return (
    <div class="assign-body">
      <form class="assign-form" autocomplete="off" onSubmit={(event) => event.preventDefault()} noValidate>
        {damage !== "" && (
          <p class="damage" role="alert">
            {texts.damage} {damage} {texts.damageKept}
          </p>
        )}
        <AssignmentHead assignment={assignment} faults={found.faults} view={view} change={head} />
        <section aria-labelledby="assign-questions">
          <h2 id="assign-questions">{texts.questions}</h2>
          {questions.map((question, index) => {
            const sheet = worksheetOf(question.calculator);
            const instance = instanceOf(index);
            const edit = (next: (before: Question) => Question) => change((before) => withQuestion(before, index, next));
            return (
              <QuestionCard
                key={names[index]}
                number={index + 1}
                count={questions.length}
                question={question}
                sheet={sheet}
                waiting={waiting}
                instance={instance}
                form={
                  sheet &&
                  questionForm({
                    instance,
                    question,
                    sheet,
                    catalogue,
                    view: question.units ?? view,
                    typing,
                    setTyping,
                    setFocus: (id) => {
                      focusNext.current = id;
                    },
                    // Only of the same question: after it was moved they would stand at another.
                    faults: settled.questions[index] === question ? found.faults.filter((fault) => fault.question === index) : [],
                    change: edit,
                  })
                }
                change={edit}
                moveUp={() => move(index, index)}
                moveDown={() => move(index + 1, index)}
                copy={() =>
                  change((before) => {
                    const after = withInserted(before, index + 1, question);
                    focusNext.current = `assign-${after.names[index + 1]}-head`;
                    return after;
                  })
                }
                remove={() => {
                  setRemoved({ question, name: names[index] ?? 0, at: index });
                  focusNext.current = "assign-undo";
                  change((before) => withoutQuestion(before, index));
                }}
              />
            );
          })}
          {removed && (
            <p class="removed">
              {texts.removed(worksheetOf(removed.question.calculator)?.title ?? removed.question.calculator)}{" "}
              <button
                type="button"
                id="assign-undo"
                onClick={() => {
                  focusNext.current = `assign-${removed.name}-head`;
                  change((before) => withInserted(before, removed.at, removed.question, removed.name));
                  setRemoved(undefined);
                }}
              >
                {texts.undo}
              </button>
            </p>
          )}
          {questions.length < limits.questions && <Picker groups={calculators} add={add} isFirst={questions.length === 0} />}
        </section>
        <AssignmentFiles
          assignment={assignment}
          open={replace}
          begin={isEmpty(assignment) ? undefined : () => replace(emptyAssignment)}
          view={view}
        />
        <KeptList
          shelf={assignmentShelf}
          words={keptTexts}
          unnamed={keptTexts.unnamed}
          name={assignment.title}
          query={assignmentQuery(assignment)}
          onOpen={open}
        />
      </form>

      <div class="assign-result not-on-paper">
        {isEmpty(assignment) ? (
          <p>
            {texts.nothingYet}{" "}
            <button type="button" onClick={() => replace(example)}>
              {texts.exampleStart}
            </button>
          </p>
        ) : (
          <>
            <section class={settled === assignment ? "panel-of-result" : "panel-of-result stale"} aria-labelledby="assign-out">
              <h2 id="assign-out">{texts.handOut}</h2>
              {waiting ? (
                <p>{texts.loading}</p>
              ) : (
                <FaultList
                  found={found}
                  view={view}
                  instanceOf={instanceOf}
                  askedAt={(question, place) => settled.questions[question]?.asked[place]?.output}
                />
              )}
              {isRight ? (
                <HandOut
                  assignment={assignment}
                  root={root}
                  worksheetOf={worksheetOf}
                  catalogue={catalogue}
                  view={view}
                  sets={sets}
                  setSets={setSets}
                  print={() => {
                    printNext.current = true;
                    setPrinting(true);
                  }}
                />
              ) : (
                <p class="quiet">{texts.handOutWhenRight}</p>
              )}
            </section>
            {questions.length > 0 && (
              <section class={settled === assignment ? "" : "stale"} aria-labelledby="assign-preview">
                <h2 id="assign-preview">{texts.previewHead}</h2>
                <div class="field">
                  <label for="assign-student">{texts.previewStudent}</label>
                  <input
                    id="assign-student"
                    type="text"
                    autocomplete="off"
                    spellcheck={false}
                    maxLength={limits.student}
                    value={student}
                    onInput={(event) => setStudent(event.currentTarget.value)}
                  />
                </div>
                <p class="quiet">{texts.previewOf}</p>
                {!waiting && (
                  <Preview
                    assignment={settled}
                    student={student.trim() === "" ? texts.previewId : student}
                    worksheetOf={worksheetOf}
                    catalogue={catalogue}
                    view={view}
                  />
                )}
              </section>
            )}
          </>
        )}
      </div>
      {printing && canPrint && (
        <PaperSheets
          assignment={assignment}
          sets={setsOf(sets) ?? 1}
          worksheetOf={worksheetOf}
          catalogue={catalogue}
          view={view}
        />
      )}
    </div>
  );
}
