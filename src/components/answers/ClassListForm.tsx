import { useState } from "preact/hooks";
import type { ClassList } from "../../lib/assign/class-list.ts";
import { useTexts } from "../../texts/context.ts";
import { answers } from "../../texts/en/answers.ts";

interface Props {
  readonly text: string;
  readonly column: number;
  readonly list: ClassList;
  readonly keeping: boolean;
  /** What this browser has to say about keeping it. */
  readonly trouble: string;
  change(text: string, column: number): void;
  keep(wanted: boolean): void;
}

/** Up to so many problems are shown one by one. */
const mostProblems = 8;

/** The class list: pasted or opened, with what is wrong in it. */
export function ClassListForm({ text, column, list, keeping, trouble, change, keep }: Props) {
  const words = useTexts(answers);
  const [message, setMessage] = useState("");
  const { students, problems, heading, columns, firstCells } = list;
  const openFile = async (input: HTMLInputElement) => {
    const [file] = input.files ?? [];
    if (!file) return;
    try {
      change(await file.text(), column);
      setMessage("");
    } catch {
      setMessage(words.openUnread);
    }
    input.value = "";
  };
  return (
    <section class="answers-part not-on-paper" aria-labelledby="class-list">
      <h2 id="class-list">{words.listTitle}</h2>
      <label for="class-text">{words.listLabel}</label>
      <textarea
        id="class-text"
        rows={8}
        spellcheck={false}
        autocomplete="off"
        value={text}
        aria-describedby="class-help class-said"
        onInput={(event) => change(event.currentTarget.value, column)}
      />
      <p class="help" id="class-help">
        {words.listHelp}
      </p>
      {columns > 1 && (
        <div class="field column-choice">
          <label for="class-column">{words.column}</label>
          <select
            id="class-column"
            autocomplete="off"
            value={String(column)}
            onChange={(event) => change(text, Number(event.currentTarget.value))}
          >
            {Array.from({ length: columns }, (_, index) => (
              <option key={index} value={String(index)}>
                {words.columnOption(index + 1, (firstCells[index] ?? "").slice(0, 30))}
              </option>
            ))}
          </select>
        </div>
      )}
      <div class="actions">
        <label class="button open-file">
          {words.openFile}
          <input
            type="file"
            accept=".csv,.txt,.tsv,text/csv,text/plain"
            onChange={(event) => void openFile(event.currentTarget)}
          />
        </label>
        <label class="tick">
          <input type="checkbox" checked={keeping} onChange={(event) => keep(event.currentTarget.checked)} />
          <span>{words.keep}</span>
        </label>
      </div>
      <p class="help">{words.keepHelp}</p>
      {trouble && <p class="message">{trouble}</p>}
      <div id="class-said" role="status">
        {message && <p class="message">{message}</p>}
        {text.trim() !== "" && (
          <p>
            <strong>{words.counted(students.length)}</strong>
          </p>
        )}
        {heading !== undefined && <p class="help">{words.heading(heading)}</p>}
        {problems.length > 0 && (
          <>
            <p class="message">{words.listProblems(problems.length)}</p>
            <ul>
              {problems.slice(0, mostProblems).map(({ field, message: said }) => (
                <li key={field}>{said}</li>
              ))}
              {problems.length > mostProblems && <li>…</li>}
            </ul>
          </>
        )}
      </div>
    </section>
  );
}
