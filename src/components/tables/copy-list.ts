import { dataTable } from "../../texts/en/data-table.ts";
import { pageTexts } from "../../texts/page-language.ts";
import { tabText } from "./lines.ts";

/** Copies the list that a calculator answers with, cell by cell for a spreadsheet. */
for (const button of document.querySelectorAll<HTMLButtonElement>("[data-copy-list]")) {
  const status = button.parentElement?.querySelector("output");
  button.addEventListener("click", async () => {
    const list = document.querySelector<HTMLTableElement>(`[id="${button.dataset.copyList}"] .answer-list`);
    if (!list || !status) return;
    const texts = await pageTexts(dataTable);
    const lines = [...list.rows].map((row) => [...row.cells].map((cell) => (cell.textContent ?? "").trim()));
    try {
      await navigator.clipboard.writeText(tabText(lines));
      status.textContent = texts.copiedHoles(lines.length - 1);
    } catch {
      getSelection()?.selectAllChildren(list);
      status.textContent = texts.selected;
    }
  });
}
