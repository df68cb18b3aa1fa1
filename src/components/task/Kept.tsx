import { useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { task } from "../../texts/en/task.ts";
import type { Trouble } from "../shop/shelf.ts";

interface Props {
  readonly trouble: Trouble | undefined;
  /** Whether the last change could be kept. */
  readonly kept: boolean;
  forget(): void;
}

/** What this device keeps, and how to be rid of it. */
export function Kept({ trouble, kept, forget }: Props) {
  const words = useTexts(task);
  const troubles = { newer: words.keptNewer, unreadable: words.keptUnreadable };
  const [asking, setAsking] = useState(false);
  return (
    <section class="task-kept not-on-paper" aria-labelledby="task-kept">
      <h2 id="task-kept">{words.keptTitle}</h2>
      {trouble && trouble.why !== "off" && <p class="message">{troubles[trouble.why]}</p>}
      {kept && <p>{words.kept}</p>}
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

/** Says that nothing is kept; a frame in a page of another site is often refused what a tab is given. */
export function NotKept() {
  const words = useTexts(task);
  return (
    <p class="message not-on-paper" role="status">
      {words.keptOff}{" "}
      {parent !== window && (
        <a href={location.href} target="_blank" rel="noopener">
          {words.ownTab}
        </a>
      )}
    </p>
  );
}
