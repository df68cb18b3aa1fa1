import { useState } from "preact/hooks";
import type { Assignment } from "../../lib/assign/definition.ts";
import { InputError } from "../../lib/input-error.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import { saveFile } from "../plan/save-file.ts";
import { fileName } from "./file-name.ts";

interface Props {
  readonly assignment: Assignment;
  readonly view: LengthView;
  /** Undefined where there is nothing to begin anew. */
  readonly begin: (() => void) | undefined;
  open(assignment: Assignment): void;
}

/** A file larger than this is none of an assignment [bytes]. */
const largest = 1_000_000;

/** Saves the assignment as a file and opens one; the file is looked at before anything here is replaced. */
export function AssignmentFiles({ assignment, view, begin, open }: Props) {
  const texts = useTexts(assign);
  const [problem, setProblem] = useState("");
  const files = () => import("../../lib/assign/file.ts");
  const save = async () => {
    const { assignmentFile } = await files();
    saveFile(fileName(assignment.title, "json"), "application/json", assignmentFile(assignment));
  };
  const read = async (file: File | undefined) => {
    if (!file) return;
    const refuse = (why: string) => setProblem(texts.fileProblem(file.name, why));
    setProblem("");
    if (file.size > largest) {
      refuse(texts.tooLarge);
      return;
    }
    const text = await file.text();
    const { readAssignment } = await files();
    try {
      open(readAssignment(JSON.parse(text)));
    } catch (error) {
      if (error instanceof SyntaxError) refuse(texts.notJson);
      else if (error instanceof InputError) refuse(error.text(view));
      else throw error;
    }
  };
  return (
    <div class="assign-files">
      <div class="assign-actions">
        <button type="button" onClick={() => void save()}>
          {texts.saveFile}
        </button>
        <label class="button open-file">
          {texts.openFile}
          <input
            type="file"
            accept=".json,application/json"
            onChange={(event) => {
              const { currentTarget } = event;
              void read(currentTarget.files?.[0]).finally(() => {
                // The same file can be opened again after it was mended.
                currentTarget.value = "";
              });
            }}
          />
        </label>
        {begin && (
          <button type="button" onClick={begin}>
            {texts.newOne}
          </button>
        )}
      </div>
      <p class="message" role="alert">
        {problem}
      </p>
    </div>
  );
}
