import { useEffect, useState } from "preact/hooks";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { RawRow } from "../../lib/inputs.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { mostRows } from "../../lib/sheet/model.ts";
import { useTexts } from "../../texts/context.ts";
import { sheet } from "../../texts/en/sheet.ts";

interface Props {
  readonly catalogue: Catalogue;
  readonly view: LengthView;
  /** Rows the form holds. */
  readonly rows: number;
  readonly onTake: (rows: readonly RawRow[], replace: boolean) => void;
}

/** Where lines that wait to be taken outlive a reload. */
const draftKey = "flat-to-formed.pasted-pieces";

function draft(): string {
  try {
    return sessionStorage.getItem(draftKey) ?? "";
  } catch {
    return "";
  }
}

function keepDraft(text: string): void {
  try {
    if (text === "") sessionStorage.removeItem(draftKey);
    else sessionStorage.setItem(draftKey, text);
  } catch {
    // Storage is off or full: the lines are still in the box.
  }
}

/** A list to be pasted: good lines become pieces, bad ones stay with what is wrong with each. */
export function PasteBox({ catalogue, view, rows, onTake }: Props) {
  const texts = useTexts(sheet);
  const [text, setText] = useState("");
  const [said, setSaid] = useState("");
  const [problems, setProblems] = useState<readonly string[]>([]);

  const [opened, setOpened] = useState(false);

  useEffect(() => {
    const kept = draft();
    setText(kept);
    if (kept !== "") setOpened(true);
  }, []);
  const put = (next: string) => {
    setText(next);
    keepDraft(next);
  };
  const take = async (replace: boolean) => {
    if (text.trim() === "") {
      setSaid(texts.pasteNothing);
      setProblems([]);
      return;
    }
    const { readPieces } = await import("../../lib/sheet/pasted-list.ts");
    const read = readPieces(text, catalogue, replace ? mostRows : mostRows - rows);
    if (read.rows.length > 0) onTake(read.rows, replace);
    put(read.left);
    setSaid(texts.pasteTaken(read.rows.length, read.problems.length));
    setProblems(read.problems.map((problem) => problem.text(view)));
  };

  return (
    <details class="plan-group cut-paste" open={opened || undefined} onToggle={(event) => setOpened(event.currentTarget.open)}>
      <summary>{texts.pasteTitle}</summary>
      <label for="sheet-paste">{texts.pasteLabel}</label>
      <textarea
        id="sheet-paste"
        rows={6}
        spellcheck={false}
        autocomplete="off"
        value={text}
        aria-describedby="sheet-paste-help sheet-paste-said"
        onInput={(event) => put(event.currentTarget.value)}
      />
      <p class="help" id="sheet-paste-help">
        {texts.pasteHelp}
      </p>
      <div id="sheet-paste-said" role="status">
        {said !== "" && <p>{said}</p>}
        {problems.length > 0 && (
          <ul class="message">
            {problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
        )}
      </div>
      <div class="actions">
        <button type="button" onClick={() => void take(true)}>
          {texts.pasteReplace}
        </button>
        <button type="button" onClick={() => void take(false)}>
          {texts.pasteAdd}
        </button>
      </div>
    </details>
  );
}
