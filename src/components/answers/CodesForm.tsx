import type { Student } from "../../lib/assign/class-list.ts";
import type { Assignment } from "../../lib/assign/definition.ts";
import type { CodesRead } from "../../lib/assign/read-codes.ts";
import { resultsCsv } from "../../lib/assign/results-csv.ts";
import { useTexts } from "../../texts/context.ts";
import { answers } from "../../texts/en/answers.ts";
import { fileName } from "../assign/file-name.ts";
import { saveFile } from "../plan/save-file.ts";

interface Props {
  readonly assignment: Assignment;
  readonly students: readonly Student[];
  readonly text: string;
  readonly codes: CodesRead;
  change(text: string): void;
}

function Names({ title, names }: { readonly title: string; readonly names: readonly string[] }) {
  const words = useTexts(answers);
  return (
    <div>
      <dt>
        {title} ({names.length})
      </dt>
      <dd>{names.length === 0 ? words.nobody : names.join(" · ")}</dd>
    </div>
  );
}

/** The codes handed in: who is done, who is not, and which codes do not count. */
export function CodesForm({ assignment, students, text, codes, change }: Props) {
  const words = useTexts(answers);
  const { handedIn, missing, problems, withoutCode } = codes;
  const isDone = ({ results }: CodesRead["handedIn"][number]) => results.every((each) => each === "right");
  const done = handedIn.filter(isDone);
  const partly = handedIn.filter((each) => !isDone(each));
  const twice = handedIn.filter(({ times }) => times > 1);
  return (
    <section class={text.trim() === "" ? "answers-part not-on-paper" : "answers-part"} aria-labelledby="result-codes">
      <h2 id="result-codes">{words.codesTitle}</h2>
      <div class="not-on-paper">
        <label for="codes-text">{words.codesLabel}</label>
        <textarea
          id="codes-text"
          rows={8}
          spellcheck={false}
          autocomplete="off"
          value={text}
          aria-describedby="codes-help"
          onInput={(event) => change(event.currentTarget.value)}
        />
        <p class="help" id="codes-help">
          {words.codesHelp}
        </p>
      </div>
      {text.trim() !== "" && students.length === 0 && (
        <p class="message" role="status">
          {words.codesNeedList}
        </p>
      )}
      {text.trim() !== "" && students.length > 0 && (
        <>
          <p role="status" class="codes-sum">
            <strong>{words.done(done.length, students.length)}</strong> · {words.partly(partly.length)} ·{" "}
            {words.missing(missing.length)}
          </p>
          <dl class="codes-names">
            <Names title={words.doneTitle} names={done.map(({ student }) => student)} />
            {partly.length > 0 && <Names title={words.partTitle} names={partly.map(({ student }) => student)} />}
            <Names title={words.missingTitle} names={missing} />
          </dl>
          {problems.length > 0 && (
            <>
              <h3>{words.refusedTitle(problems.length)}</h3>
              <ul class="codes-refused">
                {problems.map(({ field, value, message }) => (
                  <li key={field + value}>{message}</li>
                ))}
              </ul>
            </>
          )}
          {twice.length > 0 && (
            <>
              <h3>{words.twiceTitle}</h3>
              <ul>
                {twice.map(({ student, times }) => (
                  <li key={student}>{words.twice(student, times)}</li>
                ))}
              </ul>
            </>
          )}
          {withoutCode > 0 && <p class="help">{words.withoutCode(withoutCode)}</p>}
          <div class="actions not-on-paper">
            <button
              type="button"
              onClick={() =>
                saveFile(fileName(`${assignment.title} results`, "csv"), "text/csv", resultsCsv(assignment, students, codes))
              }
            >
              {words.saveResults}
            </button>
          </div>
        </>
      )}
    </section>
  );
}
