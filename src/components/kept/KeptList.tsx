import { useEffect, useState } from "preact/hooks";
import type { plan } from "../../texts/en/plan.ts";
import { deviceStore, today } from "../shop/shelf.ts";
import { findKept, type Kept, type KeptShelf, keepAll, withKept } from "./kept-list.ts";

interface Props {
  readonly shelf: KeptShelf;
  readonly words: (typeof plan)["saved"];
  /** What one without a name is called. */
  readonly unnamed: string;
  readonly name: string;
  /** Of what is in the form. */
  readonly query: string;
  readonly onOpen: (query: string) => void;
}

/** What is kept on this device under a name: keep what is in the form, open or remove the others. */
export function KeptList({ shelf, words, unnamed, name, query, onOpen }: Props) {
  const [all, setAll] = useState<readonly Kept[]>([]);
  const [message, setMessage] = useState("");
  const [removed, setRemoved] = useState<{ readonly one: Kept; readonly at: number }>();

  useEffect(() => {
    const read = () => {
      const { kept, trouble } = findKept(deviceStore(), shelf);
      setAll(kept ?? []);
      setMessage(trouble ? words.troubles[trouble.why] : "");
    };
    const onStorage = ({ key }: StorageEvent) => {
      if (key === null || key === shelf.key) read();
    };
    read();
    addEventListener("storage", onStorage);
    return () => removeEventListener("storage", onStorage);
  }, [shelf, words]);

  const write = (next: readonly Kept[], done: string) => {
    const kept = keepAll(deviceStore(), shelf, next);
    if (kept) setAll(next);
    setMessage(kept ? done : words.full);
  };
  const keepThis = () => {
    // Another tab may have kept some since.
    const now = findKept(deviceStore(), shelf);
    if (now.trouble) {
      setMessage(words.troubles[now.trouble.why]);
      return;
    }
    setRemoved(undefined);
    write(withKept(now.kept ?? [], { name, kept: today(), query }), words.kept(name));
  };
  const remove = (one: Kept, at: number) => {
    setRemoved({ one, at });
    write(
      all.filter((each) => each !== one),
      words.removed(one.name),
    );
  };

  return (
    <section class="kept-list not-on-paper" aria-label={words.name}>
      <div class="actions">
        <button type="button" onClick={keepThis}>
          {words.keep}
        </button>
        {removed && (
          <button
            type="button"
            onClick={() => {
              write(all.toSpliced(removed.at, 0, removed.one), words.back(removed.one.name));
              setRemoved(undefined);
            }}
          >
            {words.undo(removed.one.name)}
          </button>
        )}
      </div>
      <p role="status">{message}</p>
      {all.length > 0 && (
        <ul>
          {all.map((one, index) => (
            <li key={one.name}>
              <button type="button" class="open-kept" onClick={() => onOpen(one.query)}>
                {one.name || unnamed}
              </button>{" "}
              <time dateTime={one.kept}>{one.kept.replace("T", ", ")}</time>{" "}
              <button type="button" class="remove" aria-label={words.remove(one.name)} onClick={() => remove(one, index)}>
                <svg viewBox="0 0 16 16" aria-hidden="true">
                  <path d="M3 3L13 13M13 3L3 13" />
                </svg>
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
