import { useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { task } from "../../texts/en/task.ts";
import { addressOn, openText } from "./open-assignment.ts";

/** Opens an assignment on this page from a link or a file: it is put into the address, so that a reload keeps it. */
export function OpenAssignment({ label }: { readonly label: string }) {
  const texts = useTexts(task);
  const [link, setLink] = useState("");
  const [message, setMessage] = useState("");
  const open = async (text: string, name?: string) => {
    const opened = await openText(text, texts, name);
    if ("problem" in opened) setMessage(opened.problem);
    else location.assign(await addressOn(location.pathname, opened.assignment));
  };
  const openFile = async (input: HTMLInputElement) => {
    const [file] = input.files ?? [];
    if (!file) return;
    try {
      await open(await file.text(), file.name);
    } catch {
      setMessage(texts.openUnread);
    }
    input.value = "";
  };
  return (
    <form class="open-assignment needs-script" autocomplete="off" noValidate onSubmit={(event) => event.preventDefault()}>
      <label for="open-link">{label}</label>
      <textarea
        id="open-link"
        rows={3}
        spellcheck={false}
        value={link}
        aria-describedby="open-message"
        onInput={(event) => setLink(event.currentTarget.value)}
      />
      <div class="actions">
        {/* No submit button: pressed before the page is awake it would load the page anew. */}
        <button type="button" class="button first" onClick={() => void open(link)}>
          {texts.openButton}
        </button>
        <label class="button open-file">
          {texts.openFile}
          <input type="file" accept=".json,application/json" onChange={(event) => void openFile(event.currentTarget)} />
        </label>
      </div>
      <p class="message" id="open-message" role="status">
        {message}
      </p>
    </form>
  );
}
