import { useRef } from "preact/hooks";
import type { FullSize } from "../../lib/part/drawing.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import { url } from "../../site/url.ts";
import { useTexts } from "../../texts/context.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { saveFile } from "./save-file.ts";

/** `Box with lid` as the name of a file, without what some systems refuse. */
function fileName(name: string, ending: string): string {
  const plain = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  return `${plain || "part"}.${ending}`;
}

/** What the flat layout is good for away from this page; few want it, so it is fetched when it is asked for. */
export function TakeAlong({
  sheet,
  view,
  query,
}: {
  readonly sheet: () => Promise<FullSize>;
  readonly view: LengthView;
  /** The query of the plan's address. */
  readonly query: string;
}) {
  const texts = useTexts(planSheet);
  const opener = useRef<HTMLButtonElement>(null);
  const open = async () => {
    const { openTemplate } = await import("./template-view.tsx");
    openTemplate(await sheet(), view, () => opener.current?.focus());
  };
  const download = async () => {
    const { flatSvg } = await import("../../lib/part/flat-svg.ts");
    const made = await sheet();
    saveFile(fileName(`${made.name} flat`, "svg"), "image/svg+xml", flatSvg(made));
  };
  return (
    <div class="take-along not-on-paper needs-script">
      <button type="button" ref={opener} onClick={() => void open()}>
        {texts.printTemplate}
      </button>
      <button type="button" onClick={() => void download()}>
        {texts.downloadFlat}
      </button>
      <a class="button" href={`${url("/sign-off/")}${query === "" ? "" : `?${query}`}`}>
        {texts.signOff}
      </a>
    </div>
  );
}
