import { useEffect, useState } from "preact/hooks";
import { assignmentQuery } from "../../lib/assign/address.ts";
import { assignOwner } from "../../lib/assign/assign-owner.ts";
import { bankCsv, bankQuestions, mostVariants } from "../../lib/assign/bank.ts";
import type { Assignment } from "../../lib/assign/definition.ts";
import type { WorksheetOf } from "../../lib/assign/own-question.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import { InputError } from "../../lib/input-error.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import { CopyButton } from "../calculator/CopyButton.tsx";
import { Fold } from "../calculator/Fold.tsx";
import { frameHtml } from "../links/frame-html.ts";
import { saveFile } from "../plan/save-file.ts";
import { CodePicture } from "../scan-code/CodePicture.tsx";
import { useCode } from "../scan-code/use-code.ts";
import { fileName } from "./file-name.ts";

interface Props {
  readonly assignment: Assignment;
  /** Path the site is published under, without a slash at its end. */
  readonly root: string;
  readonly worksheetOf: WorksheetOf;
  readonly catalogue: Catalogue;
  readonly view: LengthView;
  /** As typed. */
  readonly sets: string;
  setSets(typed: string): void;
  print(): void;
}

/** Height of a frame for one question and a half; the page in it tells the rest [px]. */
const frameHeight = 900;

export function setsOf(typed: string): number | undefined {
  const sets = Number(typed);
  return /^\s*\d+\s*$/.test(typed) && sets >= 1 && sets <= mostVariants ? sets : undefined;
}

function ScanCode({ link }: { readonly link: string }) {
  const texts = useTexts(assign);
  const code = useCode(link);
  if (code === undefined) return null;
  if (code === "none") return <p>{texts.codeTooLong}</p>;
  return <CodePicture class="scan-code" code={code} label={texts.codeLabel} />;
}

/** What comes out of an assignment that is right: links, code, paper, files. */
export function HandOut(props: Props) {
  const texts = useTexts(assign);
  const { assignment, root, worksheetOf, catalogue, view, sets: typed, setSets, print } = props;
  const [shared, setShared] = useState("");
  const [failure, setFailure] = useState("");
  const query = assignmentQuery(assignment);
  useEffect(() => {
    let wanted = true;
    import("../packed.ts").then(({ sharedQuery }) => sharedQuery(assignOwner, query)).then((text) => wanted && setShared(text));
    return () => {
      wanted = false;
    };
  }, [query]);
  const address = (page: string) => `${location.origin}${root}${page}?${shared}`;
  const task = address("/task/");
  const answers = address("/answers/");
  const frame = frameHtml(task, assignment.title, frameHeight);

  const sets = setsOf(typed);
  const bank = () => bankQuestions(assignment, sets ?? 1, worksheetOf, catalogue);
  const save = async (make: () => Promise<void>) => {
    setFailure("");
    try {
      await make();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      setFailure(`${texts.bankFailed} ${error.text(view)}`);
    }
  };
  const saveCsv = () => save(async () => saveFile(fileName(assignment.title, "csv"), "text/csv", bankCsv(bank(), view)));
  const saveQti = () =>
    save(async () => {
      const { qtiPackage } = await import("./qti-package.ts");
      saveFile(fileName(`${assignment.title} qti`, "zip"), "application/zip", qtiPackage(assignment, bank(), view));
    });

  return (
    <>
      <div class="hand-out-links" data-ready={shared === "" ? undefined : ""}>
        <section>
          <h3>{texts.linkLabel}</h3>
          <p class="assign-actions">
            <CopyButton text={() => task}>{texts.copyLink}</CopyButton>
            <a class="button" href={task} target="_blank" rel="noopener">
              {texts.openTask}
            </a>
          </p>
        </section>
        <section>
          <h3>{texts.snippetLabel}</h3>
          <p class="assign-actions">
            <CopyButton text={() => frame}>{texts.copySnippet}</CopyButton>
          </p>
          <p class="help">{texts.snippetHelp}</p>
        </section>
        <section>
          <h3>{texts.answersLabel}</h3>
          <p class="assign-actions">
            <CopyButton text={() => answers}>{texts.copyAnswers}</CopyButton>
            <a class="button" href={answers} target="_blank" rel="noopener">
              {texts.openAnswers}
            </a>
          </p>
          <p class="help">{texts.answersHelp}</p>
        </section>
        <Fold class="elsewhere" summary={texts.code}>
          {() => <ScanCode link={task} />}
        </Fold>
      </div>
      <section class="bank" aria-labelledby="assign-files">
        <h3 id="assign-files">{texts.files}</h3>
        <div class="field">
          <label for="assign-sets">{texts.sets}</label>
          <input
            id="assign-sets"
            type="text"
            inputMode="numeric"
            autocomplete="off"
            value={typed}
            aria-invalid={sets === undefined ? "true" : undefined}
            aria-describedby={sets === undefined ? "assign-sets-message assign-sets-help" : "assign-sets-help"}
            onInput={(event) => setSets(event.currentTarget.value)}
          />
          <p class="message" id="assign-sets-message" aria-live="polite">
            {sets === undefined ? texts.setsBad(typed, mostVariants) : ""}
          </p>
          <p class="help" id="assign-sets-help">
            {texts.setsHelp(mostVariants)}
          </p>
        </div>
        <ul class="files">
          <li>
            <button type="button" disabled={sets === undefined} onClick={print}>
              {texts.print}
            </button>
            <span class="help">{texts.printHelp}</span>
          </li>
          <li>
            <button type="button" disabled={sets === undefined} onClick={() => void saveCsv()}>
              {texts.csv}
            </button>
            <span class="help">{texts.csvHelp}</span>
          </li>
          <li>
            <button type="button" disabled={sets === undefined} onClick={() => void saveQti()}>
              {texts.qti}
            </button>
            <span class="help">{texts.qtiHelp}</span>
          </li>
        </ul>
        <p class="message" role="alert">
          {failure}
        </p>
      </section>
    </>
  );
}
