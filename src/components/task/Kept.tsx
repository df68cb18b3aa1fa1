import { useState } from "preact/hooks";
import { task as words } from "../../texts/en/task.ts";
import type { Trouble } from "../shop/shelf.ts";

interface Props {
  readonly trouble: Trouble | undefined;
  /** Whether the last change could be kept. */
  readonly kept: boolean;
  forget(): void;
}

const troubles = { off: words.keptOff, newer: words.keptNewer, unreadable: words.keptUnreadable } as const;

/** What this device keeps, and how to be rid of it. */
export function Kept({ trouble, kept, forget }: Props) {
  const [asking, setAsking] = useState(false);
  return (
    <section class="task-kept not-on-paper" aria-labelledby="task-kept">
      <h2 id="task-kept">{words.keptTitle}</h2>
      {trouble && <p class="message">{troubles[trouble.why]}</p>}
      {!trouble && !kept && <p class="message">{words.keptOff}</p>}
      <p>{words.kept}</p>
      {asking ? (
        <fieldset class="forget">
          <legend>{words.forgetSure}</legend>
          <div class="actions">
            <button type="button" onClick={forget}>
              {words.forgetYes}
            </button>
            <button type="button" onClick={() => setAsking(false)}>
              {words.forgetNo}
            </button>
          </div>
        </fieldset>
      ) : (
        <button type="button" onClick={() => setAsking(true)}>
          {words.forget}
        </button>
      )}
    </section>
  );
}
