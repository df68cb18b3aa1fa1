import type { Part, SheetCuts } from "../../lib/sheet/cut-order.ts";
import { useTexts } from "../../texts/context.ts";
import { sheet } from "../../texts/en/sheet.ts";
import { SheetTable } from "../plan/SheetTable.tsx";
import { partWords } from "./CutSteps.tsx";

interface Props {
  readonly cuts: SheetCuts;
  readonly names: readonly string[];
  readonly bare: (value: number) => string;
  readonly unit: string;
}

/** Stroke by stroke, for whoever wants to follow one part, and the places of all parts, for whoever marks out instead. */
export function EveryStroke({ cuts, names, bare, unit }: Props) {
  const texts = useTexts(sheet);
  const size = ({ width, length }: Part) => `${bare(width)} × ${bare(length)}`;
  const words = (part: Part) => partWords(part, names, texts);
  return (
    <>
      <SheetTable
        caption={texts.strokesCaption(unit)}
        head={Object.values(texts.strokesHead)}
        rows={cuts.cuts.map(({ from, across, cutLength, stop, off, offAt, held, faults }, index) => [
          index + 1,
          words(from),
          size(from),
          stop === undefined ? texts.line : bare(stop),
          texts.ends[across][offAt],
          bare(cutLength),
          words(off),
          size(off),
          words(held),
          size(held),
          faults.map((fault) => texts.faults[fault]).join("; "),
        ])}
      />
      <SheetTable
        caption={texts.placesCaption(unit)}
        head={Object.values(texts.placesHead)}
        rows={[...cuts.pieces, ...cuts.offcuts].map((part) => [
          words(part),
          size(part),
          bare(part.y),
          bare(part.x),
          part.kind === "piece" ? (part.turned ? texts.turned : texts.straight) : "",
        ])}
      />
    </>
  );
}
