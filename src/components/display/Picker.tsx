import { useTexts } from "../../texts/context.ts";
import { display } from "../../texts/en/display.ts";

interface Props {
  readonly title: string;
  readonly options: Readonly<Record<string, string>>;
  readonly chosen: string;
  pick(key: string): void;
  close(): void;
}

/** A list as large keys, all in sight. */
export function Picker({ title, options, chosen, pick, close }: Props) {
  const texts = useTexts(display);
  return (
    <section class="picker" aria-label={title}>
      <div class="picker-head">
        <h2>{title}</h2>
        <button type="button" class="key words" onClick={close}>
          {texts.close}
        </button>
      </div>
      <div class="picker-keys">
        {Object.entries(options).map(([key, words]) => (
          <button key={key} type="button" class="option" aria-pressed={key === chosen} onClick={() => pick(key)}>
            {words}
          </button>
        ))}
      </div>
    </section>
  );
}
