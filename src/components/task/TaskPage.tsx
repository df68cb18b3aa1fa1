import { useMemo, useState } from "preact/hooks";
import type { Assignment } from "../../lib/assign/definition.ts";
import { type OwnQuestion, ownQuestions } from "../../lib/assign/own-question.ts";
import { InputError } from "../../lib/input-error.ts";
import { useTexts } from "../../texts/context.ts";
import { task as taskTexts } from "../../texts/en/task.ts";
import { deviceStore } from "../shop/shelf.ts";
import { useUnits } from "../use-units.ts";
import { standing } from "./answers.ts";
import { Kept, NotKept } from "./Kept.tsx";
import type { Sheets } from "./load-sheets.ts";
import { ResultCode } from "./ResultCode.tsx";
import { StudentForm } from "./StudentForm.tsx";
import { type Explained, TaskQuestion } from "./TaskQuestion.tsx";
import { findTasks, forgetTask, type KeptTask, keepTask, taskMark, taskOf } from "./task-shelf.ts";

interface Props {
  readonly assignment: Assignment;
  readonly sheets: Sheets;
  readonly root: string;
  readonly explained: Explained;
}

function questionsOf(assignment: Assignment, student: string, sheets: Sheets): readonly OwnQuestion[] | InputError {
  try {
    return ownQuestions(assignment, student, sheets.worksheetOf, sheets.catalogue);
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
}

/** An assignment as a student works on it. What is typed is kept on the device with every stroke. */
export function TaskPage({ assignment, sheets, root, explained }: Props) {
  const words = useTexts(taskTexts);
  const mark = useMemo(() => taskMark(assignment), [assignment]);
  const [found] = useState(() => findTasks(deviceStore()));
  const tasks = found.kept?.tasks ?? [];
  /** Who worked on this very task last; somebody who worked on another is only proposed. */
  const [task, setTask] = useState<KeptTask | undefined>(() => tasks.find((each) => each.mark === mark));
  const [proposed, setProposed] = useState(tasks[0]?.student ?? "");
  const [kept, setKept] = useState(found.trouble?.why !== "off");
  const view = useUnits();

  const student = task?.student;
  const questions = useMemo(
    () => (student === undefined ? [] : questionsOf(assignment, student, sheets)),
    [assignment, student, sheets],
  );
  const write = (next: KeptTask) => {
    setTask(next);
    setKept(keepTask(deviceStore(), next));
  };
  const choose = (chosen: string) => write(taskOf(findTasks(deviceStore()).kept?.tasks ?? [], mark, chosen));
  const forget = (gone: KeptTask) => {
    forgetTask(deviceStore(), gone);
    setProposed("");
    setTask(undefined);
  };

  const head = (
    <header class="task-head">
      <h1>{assignment.title}</h1>
      <p class="task-course">{words.courseLine(assignment.course)}</p>
      {assignment.intro && <p class="lead written">{assignment.intro}</p>}
    </header>
  );
  if (!task)
    return (
      <>
        {head}
        {!kept && <NotKept />}
        <StudentForm first={proposed} keeps={kept} choose={choose} />
      </>
    );

  const leave = () => {
    setProposed("");
    setTask(undefined);
  };
  if (questions instanceof InputError)
    return (
      <>
        {head}
        <p class="message" role="alert">
          {words.numbersProblem(task.student, questions.text(view))}
        </p>
        <button type="button" onClick={leave}>
          {words.another}
        </button>
      </>
    );

  const now = standing(task, questions, sheets.catalogue);
  return (
    <>
      {head}
      <div class="task-student">
        <p>
          <strong>{words.worksHere(task.student)}</strong> · <span role="status">{words.rightCount(now.right, now.asked)}</span>
        </p>
        <button type="button" class="not-on-paper" onClick={leave}>
          {words.another}
        </button>
      </div>
      {!kept && <NotKept />}
      <p class="help">
        {questions.some(({ given }) => given.some(({ own }) => own)) && `${words.ownNote} `}
        {words.lengthHelp}
      </p>
      {questions.map((own, index) => (
        <TaskQuestion
          key={own.number}
          own={own}
          result={now.results[index] ?? "untried"}
          sheets={sheets}
          task={task}
          view={view}
          root={root}
          explained={explained}
          change={(answers) => write({ ...task, answers: { ...task.answers, ...answers } })}
        />
      ))}
      <ResultCode assignment={assignment} student={task.student} standing={now} />
      <Kept trouble={found.trouble} kept={kept} forget={() => forget(task)} />
      <p class="help">{words.caution}</p>
    </>
  );
}
