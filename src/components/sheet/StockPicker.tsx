import { useState } from "preact/hooks";
import type { Catalogue, StockSheet } from "../../lib/catalogue.ts";
import { formatQuantity, type LengthView, showQuantity } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { sheet as sheetTexts } from "../../texts/en/sheet.ts";

interface Props {
  readonly catalogue: Catalogue;
  readonly view: LengthView;
  readonly onTake: (sheet: StockSheet) => void;
  readonly onAdd: (sheet: StockSheet) => void;
}

/** The sheets this shop has in stock, to be taken into the form. */
export function StockPicker({ catalogue, view, onTake, onAdd }: Props) {
  const texts = useTexts(sheetTexts);
  const { stock } = catalogue.shop;
  const [chosen, setChosen] = useState(0);
  const bare = (value: number) => showQuantity(value, "length", view).number;
  const sheet = stock[chosen] ?? stock[0];
  if (!sheet) return null;
  return (
    <div class="field wide cut-stock needs-script">
      <label for="sheet-stock">{texts.stockLabel}</label>
      <select
        id="sheet-stock"
        autocomplete="off"
        value={String(chosen)}
        onChange={(event) => setChosen(Number(event.currentTarget.value))}
      >
        {stock.map(({ material, thickness, width, length }, index) => (
          <option key={`${material} ${thickness} ${width} ${length}`} value={String(index)}>
            {`${bare(width)} × ${bare(length)}, ${formatQuantity(thickness, "length", view, "setting")}, ${catalogue.materials[material].name}`}
          </option>
        ))}
      </select>
      <div class="actions">
        <button type="button" onClick={() => onTake(sheet)}>
          {texts.takeStock}
        </button>
        <button type="button" onClick={() => onAdd(sheet)}>
          {texts.addStock}
        </button>
      </div>
    </div>
  );
}
