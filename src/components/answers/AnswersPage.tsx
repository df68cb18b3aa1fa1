import { useMemo, useState } from "preact/hooks";
import { answerKey } from "../../lib/assign/answer-key.ts";
import { readClassList } from "../../lib/assign/class-list.ts";
import { readCodes } from "../../lib/assign/read-codes.ts";
import { useTexts } from "../../texts/context.ts";
import { answers } from "../../texts/en/answers.ts";
import { deviceStore } from "../shop/shelf.ts";
import type { Usable } from "../task/open-here.ts";
import { useUnits } from "../use-units.ts";
import { ClassListForm } from "./ClassListForm.tsx";
import { CodesForm } from "./CodesForm.tsx";
import { findClass, keepClass } from "./class-shelf.ts";
import { KeyTable } from "./KeyTable.tsx";

interface Props extends Usable {
  /** Address of the task as students open it. */
  readonly taskAddress: string;
}

/** An assignment as its instructor looks at it. */
export function AnswersPage({ assignment, sheets, taskAddress }: Props) {
  const words = useTexts(answers);
  const troubles = { off: "", newer: words.keptNewer, unreadable: words.keptUnreadable };
  const [found] = useState(() => findClass(deviceStore()));
  const [text, setText] = useState(found.kept?.text ?? "");
  const [column, setColumn] = useState(found.kept?.column ?? 0);
  const [keeping, setKeeping] = useState(found.kept !== undefined);
  const [trouble, setTrouble] = useState(found.trouble ? troubles[found.trouble.why] : "");
  const [typedCodes, setCodes] = useState("");
  const view = useUnits();

  const list = useMemo(() => readClassList(text, column), [text, column]);
  const { students } = list;
  const rows = useMemo(
    () => answerKey(assignment, students, sheets.worksheetOf, sheets.catalogue),
    [assignment, students, sheets],
  );
  const codes = useMemo(() => readCodes(assignment, students, typedCodes), [assignment, students, typedCodes]);
  const results = useMemo(
    () => (typedCodes.trim() === "" ? undefined : new Map(codes.handedIn.map((each) => [each.student, each.results]))),
    [codes, typedCodes],
  );
  const put = (kept: { text: string; column: number } | undefined) =>
    setTrouble(keepClass(deviceStore(), kept) ? "" : words.keepFailed);

  return (
    <>
      <h1>{words.forAssignment(assignment.title)}</h1>
      <p class="answers-course">{words.courseLine(assignment.course, assignment.questions.length)}</p>
      <p class="actions not-on-paper">
        <a class="button" href={taskAddress} target="_blank" rel="noopener">
          {words.asStudent}
        </a>
        <a class="button" href={location.pathname}>
          {words.other}
        </a>
      </p>
      <div class="answers-forms">
        <ClassListForm
          text={text}
          column={column}
          list={list}
          keeping={keeping}
          trouble={trouble}
          change={(nextText, nextColumn) => {
            setText(nextText);
            setColumn(nextColumn);
            if (keeping) put({ text: nextText, column: nextColumn });
          }}
          keep={(wanted) => {
            setKeeping(wanted);
            put(wanted ? { text, column } : undefined);
          }}
        />
        <CodesForm assignment={assignment} students={students} text={typedCodes} codes={codes} change={setCodes} />
      </div>
      <KeyTable title={assignment.title} rows={rows} view={view} results={results} />
    </>
  );
}
