import { useState } from "preact/hooks";
import { checkId } from "../../lib/assign/own-numbers.ts";
import { InputError } from "../../lib/input-error.ts";
import { useTexts } from "../../texts/context.ts";
import { task } from "../../texts/en/task.ts";

interface Props {
  /** The id this device knows already. */
  readonly first: string;
  /** Whether this browser keeps anything for the page. */
  readonly keeps: boolean;
  choose(student: string): void;
}

/** Asks for the id that decides the numbers. */
export function StudentForm({ first, keeps, choose }: Props) {
  const words = useTexts(task);
  const [id, setId] = useState(first);
  const [problem, setProblem] = useState("");
  const submit = () => {
    try {
      checkId("student", id);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      setProblem(error.message);
      return;
    }
    choose(id.trim());
  };
  return (
    <form
      class="student-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <h2>{words.whoTitle}</h2>
      <div class="field">
        <label for="student">{words.who}</label>
        <input
          id="student"
          type="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          value={id}
          aria-invalid={problem ? "true" : undefined}
          aria-describedby="student-message student-help"
          onInput={(event) => {
            setId(event.currentTarget.value);
            setProblem("");
          }}
        />
        <p class="message" id="student-message" role="status">
          {problem}
        </p>
        <p class="help" id="student-help">
          {words.whoHelp}
        </p>
      </div>
      <div class="actions">
        <button type="submit" class="button first">
          {words.whoButton}
        </button>
      </div>
      <p>
        {words.whoPrivate} {keeps && words.whoKept}
      </p>
    </form>
  );
}
