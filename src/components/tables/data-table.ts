import { addressParameters, watchAddress, writeSoon } from "../calculator/address-bar.ts";
import { csvText, tabText } from "./lines.ts";

/**
 * Brings the tables of a page to life: order, choice of rows and of columns, copy and file of what is shown.
 * What was chosen stands in the address, so that a link shows the same.
 */
const collator = new Intl.Collator("en", { numeric: true });
const nextOrder: Readonly<Record<string, string>> = { none: "ascending", ascending: "descending", descending: "none" };

/** Milliseconds: a browser may ask the visitor where to put a file before it reads it. */
const keptFor = 60_000;

interface Place {
  readonly row: HTMLTableRowElement;
  /** Everything that can be read in the row. */
  readonly words: string;
}

/** What a file holds of a cell: the exact value, or the words without its mark and its second line. */
function plain(cell: HTMLTableCellElement | undefined): string {
  const first = cell?.firstChild;
  return cell?.dataset.v ?? (first instanceof Text ? first.data.trim() : "");
}

function compare(one: HTMLTableCellElement | undefined, other: HTMLTableCellElement | undefined, sign: number): number {
  const [a, b] = [one, other].map((cell) => cell?.dataset.o ?? plain(cell)) as [string, string];
  // What is not given comes last, whichever way the rest goes.
  if (a === "" || b === "") return Number(a === "") - Number(b === "");
  const difference = Number(a) - Number(b);
  return sign * (Number.isNaN(difference) ? collator.compare(a, b) : difference);
}

function start(host: HTMLElement, id: string): void {
  const table = host.querySelector("table");
  const body = table?.tBodies[0];
  const find = host.querySelector<HTMLInputElement>("[data-find]");
  const pick = host.querySelector<HTMLSelectElement>("[data-pick]");
  const status = host.querySelector("output");
  const save = host.querySelector<HTMLAnchorElement>("[data-save]");
  if (!table || !body || !find || !status || !save) throw new Error(`The table ${id} is incomplete`);

  const rows: readonly Place[] = [...body.rows].map((row) => ({ row, words: (row.textContent ?? "").toLowerCase() }));
  const heads = [...table.querySelectorAll<HTMLTableCellElement>("th[data-column]")].sort(
    (a, b) => Number(a.dataset.column) - Number(b.dataset.column),
  );
  const groupHeads = [...table.querySelectorAll<HTMLTableCellElement>("th.group")];
  let sorted = -1;
  let shown = rows;

  const isPicked = ({ dataset }: HTMLElement) => !pick?.value || dataset.group === undefined || dataset.group === pick.value;
  const say = (words = "") => {
    const count = shown.length === rows.length ? `${rows.length} rows` : `${shown.length} of ${rows.length} rows`;
    status.textContent = words + (words ? count.replace(/^\w/, (first) => first.toLowerCase()) : count);
  };

  function show(): void {
    if (!find || !body || !save) return;
    const wanted = find.value.toLowerCase().split(/\s+/);
    const order = sorted < 0 ? "none" : (heads[sorted]?.ariaSort ?? "none");
    const sign = order === "descending" ? -1 : 1;
    const all = order === "none" ? rows : rows.toSorted((a, b) => compare(a.row.cells[sorted], b.row.cells[sorted], sign));
    for (const { row, words } of all) row.hidden = !wanted.every((word) => words.includes(word));
    body.append(...all.map(({ row }) => row));
    shown = all.filter(({ row }) => !row.hidden);
    for (const [index, head] of heads.entries()) {
      const hidden = !isPicked(head);
      if (head.hidden === hidden) continue;
      head.hidden = hidden;
      for (const { row } of rows) (row.cells[index] as HTMLTableCellElement).hidden = hidden;
    }
    for (const head of groupHeads) head.hidden = !isPicked(head);
    save.textContent = shown.length === rows.length ? "Save as CSV" : `Save ${shown.length} rows as CSV`;
    say();
  }

  function order(index: number, to: string): void {
    for (const [place, head] of heads.entries()) head.ariaSort = place === index ? to : "none";
    sorted = to === "none" ? -1 : index;
  }

  function write(): void {
    const by = sorted < 0 ? "" : `${heads[sorted]?.ariaSort === "descending" ? "-" : ""}${sorted + 1}`;
    const parts: [string, string][] = [
      ["find", find?.value.trim() ?? ""],
      ["show", pick?.value ?? ""],
      ["order", by],
    ];
    writeSoon(
      id,
      parts.filter(([, value]) => value !== ""),
    );
  }

  function read(): void {
    if (!find) return;
    const given = new Map(
      addressParameters().flatMap(([name, value]) => (name.startsWith(`${id}.`) ? [[name.slice(id.length + 1), value]] : [])) as [
        string,
        string,
      ][],
    );
    find.value = given.get("find") ?? "";
    if (pick) {
      pick.value = given.get("show") ?? "";
      // A name that no option has leaves nothing chosen.
      if (pick.selectedIndex < 0) pick.value = "";
    }
    const by = Number(given.get("order") ?? 0);
    const known = heads[Math.abs(by) - 1] !== undefined;
    order(known ? Math.abs(by) - 1 : -1, by < 0 ? "descending" : "ascending");
    show();
  }

  /** What is shown, as lines of fields, with the source of each row in the last one. */
  function lines(): string[][] {
    const visible = [...heads.keys()].filter((index) => !heads[index]?.hidden);
    const usual = table?.dataset.from ?? "";
    return [
      [...visible.map((index) => heads[index]?.dataset.head ?? ""), "Source"],
      ...shown.map(({ row }) => [...visible.map((index) => plain(row.cells[index])), row.dataset.from ?? usual]),
    ];
  }

  for (const [index, head] of heads.entries()) {
    const label = head.querySelector("span.sort");
    if (!label) continue;
    const button = document.createElement("button");
    button.type = "button";
    button.className = "sort";
    button.append(...label.childNodes);
    label.replaceWith(button);
    head.ariaSort = "none";
    button.addEventListener("click", () => {
      order(index, nextOrder[head.ariaSort ?? "none"] ?? "none");
      show();
      write();
    });
  }
  for (const control of [find, pick])
    control?.addEventListener("input", () => {
      show();
      write();
    });
  host.querySelector("[data-copy]")?.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(tabText(lines()));
      say("Copied ");
    } catch {
      // Without leave to write there, the rows are at least selected for the person's own copy.
      getSelection()?.selectAllChildren(table);
      status.textContent = "Selected: copy with Ctrl+C";
    }
  });
  save.addEventListener("click", () => {
    const place = URL.createObjectURL(new Blob([csvText(lines())], { type: "text/csv" }));
    const whole = save.href;
    save.href = place;
    // The browser follows the link after this; then its own address comes back.
    setTimeout(() => {
      save.href = whole;
    });
    setTimeout(() => URL.revokeObjectURL(place), keptFor);
  });
  watchAddress(read);
  read();
}

for (const host of document.querySelectorAll<HTMLElement>("[data-table]")) start(host, host.dataset.table ?? "");
