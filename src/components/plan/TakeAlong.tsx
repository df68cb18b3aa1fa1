import { useRef } from "preact/hooks";
import type { Plan } from "../../lib/part/plan.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
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
export function TakeAlong({ plan, view }: { readonly plan: Plan; readonly view: LengthView }) {
  const opener = useRef<HTMLButtonElement>(null);
  const open = async () => {
    const { openTemplate } = await import("./template-view.tsx");
    openTemplate(plan, view, () => opener.current?.focus());
  };
  const download = async () => {
    const { flatSvg } = await import("../../lib/part/flat-svg.ts");
    saveFile(fileName(`${plan.part.name} flat`, "svg"), "image/svg+xml", flatSvg(plan));
  };
  return (
    <div class="take-along not-on-paper needs-script">
      <button type="button" ref={opener} onClick={() => void open()}>
        Print template 1:1
      </button>
      <button type="button" onClick={() => void download()}>
        Download flat drawing (SVG, true mm)
      </button>
    </div>
  );
}
