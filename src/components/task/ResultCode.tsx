import type { Assignment } from "../../lib/assign/definition.ts";
import { resultCode } from "../../lib/assign/result-code.ts";
import { useTexts } from "../../texts/context.ts";
import { task } from "../../texts/en/task.ts";
import { CopyButton } from "../calculator/CopyButton.tsx";
import { Fold } from "../calculator/Fold.tsx";
import { CodePicture } from "../scan-code/CodePicture.tsx";
import { useCode } from "../scan-code/use-code.ts";
import type { Standing } from "./answers.ts";

interface Props {
  readonly assignment: Assignment;
  readonly student: string;
  readonly standing: Standing;
}

/** The code on a screen, for the instructor's phone. */
function Scan({ text }: { readonly text: string }) {
  const words = useTexts(task);
  const code = useCode(text);
  return code && code !== "none" ? <CodePicture class="task-scan" code={code} label={words.scanLabel} /> : null;
}

/** What a student hands in. */
export function ResultCode({ assignment, student, standing }: Props) {
  const words = useTexts(task);
  const { results, right, asked } = standing;
  const code = resultCode(assignment, student, results);
  const shown = (
    <>
      <p>
        <output class="task-code">{code}</output>
      </p>
      <div class="actions not-on-paper">
        <CopyButton text={() => code}>{words.copyCode}</CopyButton>
      </div>
      <Fold class="scan-fold not-on-paper" summary={words.scan}>
        {() => <Scan text={`${student}: ${code}`} />}
      </Fold>
      <p class="help">{words.codeAbout}</p>
    </>
  );
  if (right === asked)
    return (
      <section class="task-done" aria-labelledby="task-done">
        <h2 id="task-done">{words.doneTitle}</h2>
        <p>{words.doneLead}</p>
        {shown}
      </section>
    );
  if (results.every((each) => each === "untried")) return null;
  return (
    <Fold class="task-part not-on-paper" summary={words.partTitle}>
      {() => (
        <div class="task-done">
          <p>{words.partLead}</p>
          {shown}
        </div>
      )}
    </Fold>
  );
}
