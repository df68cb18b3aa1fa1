import { useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { display } from "../../texts/en/display.ts";
import { pieces } from "./words.ts";

interface Props {
  readonly cautions: readonly { readonly title: string; readonly text: string }[];
}

/** The cautions of a machine, a few sentences at a time, all in letters that read across the room. */
export function Cautions({ cautions }: Props) {
  const texts = useTexts(display);
  const [at, setAt] = useState(0);
  const pages = cautions.flatMap(({ title, text }) => pieces(text).map((piece) => ({ title, piece })));
  const page = pages[at] ?? pages[0];
  if (!page) return null;
  return (
    <section class="cautions" aria-label={texts.allCautions}>
      <div class="caution-page" aria-live="polite">
        <h2>{page.title}</h2>
        <p>{page.piece}</p>
      </div>
      <div class="turn">
        <button type="button" class="key words" disabled={at === 0} onClick={() => setAt(at - 1)}>
          {texts.previousCaution}
        </button>
        <p class="far">{texts.cautionOf(at + 1, pages.length)}</p>
        <button type="button" class="key words" disabled={at === pages.length - 1} onClick={() => setAt(at + 1)}>
          {texts.nextCaution}
        </button>
      </div>
    </section>
  );
}
