import type { Catalogue, MaterialId } from "../../lib/catalogue.ts";
import { formatQuantity, type LengthView, showQuantity } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { sheet } from "../../texts/en/sheet.ts";
import type { KeptOffcut } from "./offcut-shelf.ts";
import type { Offcuts } from "./use-offcuts.ts";

interface Props {
  readonly shelf: Offcuts;
  readonly catalogue: Catalogue;
  readonly view: LengthView;
  /** Metal and thickness of the job. */
  readonly material: string;
  readonly thickness: number | undefined;
  readonly isUsed: (offcut: KeptOffcut) => boolean;
  readonly onUse: (offcut: KeptOffcut) => void;
}

/** Offcuts that were kept, to be used again or removed. */
export function OffcutShelf({ shelf, catalogue, view, material, thickness, isUsed, onUse }: Props) {
  const texts = useTexts(sheet);
  const bare = (value: number) => showQuantity(value, "length", view, "setting").number;
  const suits = (offcut: KeptOffcut) =>
    offcut.material === material &&
    (offcut.thickness === undefined || thickness === undefined || Math.abs(offcut.thickness - thickness) < 0.01);
  return (
    <div class="field wide cut-shelf needs-script">
      <p class="cut-shelf-title">{texts.shelfTitle}</p>
      {shelf.trouble !== "" && <p class="message">{shelf.trouble}</p>}
      {shelf.offcuts.length === 0 ? (
        <p class="help">{texts.shelfNone}</p>
      ) : (
        <ul>
          {shelf.offcuts.map((offcut) => (
            <li key={offcut.name}>
              <span>
                {offcut.count > 1 && `${texts.ofEach(offcut.count)} `}
                <strong>{offcut.name}</strong> {bare(offcut.width)} × {bare(offcut.length)}
                {offcut.thickness !== undefined && `, ${formatQuantity(offcut.thickness, "length", view, "setting")}`},{" "}
                {catalogue.materials[offcut.material as MaterialId]?.name ?? offcut.material}
              </span>{" "}
              {isUsed(offcut) ? (
                <span class="quiet">{texts.shelfUsed}</span>
              ) : suits(offcut) ? (
                <button type="button" onClick={() => onUse(offcut)}>
                  {texts.shelfUse}
                </button>
              ) : (
                <span class="quiet">{texts.otherMetal}</span>
              )}
              <button
                type="button"
                class="remove"
                aria-label={texts.removeOffcut(offcut.name)}
                onClick={() => shelf.change((all) => all.filter(({ name }) => name !== offcut.name))}
              >
                <svg viewBox="0 0 16 16" aria-hidden="true">
                  <path d="M3 3L13 13M13 3L3 13" />
                </svg>
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
