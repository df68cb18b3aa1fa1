import { safeCsv } from "../../lib/csv.ts";
import { dataTable } from "../../texts/en/data-table.ts";
import { pageTexts } from "../../texts/page-language.ts";
import { tabText } from "./lines.ts";

/**
 * Brings the tables of a page to life: order, choice of rows and of columns, copy and file of what is shown.
 * What was chosen stands in the address, so that a link shows the same.
 */
const collator = new Intl.Collator("en", { numeric: true });
const nextOrder: Readonly<Record<string, string>> = { none: "ascending", ascending: "descending", descending: "none" };

/** Milliseconds: a browser may ask the visitor where to put a file before it reads it. */
const keptFor = 60_000;

/** Milliseconds: the address is written when typing pauses. */
const pause = 200;

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

function start(host: HTMLElement, id: string, texts: typeof dataTable): void {
  const table = host.querySelector("table");
  const body = table?.tBodies[0];
  const find = host.querySelector<HTMLInputElement>("[data-find]");
  const pick = host.querySelector<HTMLSelectElement>("[data-pick]");
  const status = host.querySelector("output");
  const save = host.querySelector<HTMLAnchorElement>("[data-save]");
  if (!table || !body || !find || !status || !save) throw new Error(`The table ${id} is incomplete`);

  const rows: readonly HTMLTableRowElement[] = [...body.rows];
  /** Everything that can be read in a row; gathered when somebody looks for words. */
  const wordsOf = new Map<HTMLTableRowElement, string>();
  const heads = [...table.querySelectorAll<HTMLTableCellElement>("th[data-column]")].sort(
    (a, b) => Number(a.dataset.column) - Number(b.dataset.column),
  );
  const groupHeads = [...table.querySelectorAll<HTMLTableCellElement>("th.group")];
  let sorted = -1;
  let shown = rows;

  function hasAll(row: HTMLTableRowElement, wanted: readonly string[]): boolean {
    const words = wordsOf.get(row) ?? (row.textContent ?? "").toLowerCase();
    wordsOf.set(row, words);
    return wanted.every((word) => words.includes(word));
  }

  const isPicked = ({ dataset }: HTMLElement) => !pick?.value || dataset.group === undefined || dataset.group === pick.value;
  const counted = () => (shown.length === rows.length ? texts.rows(rows.length) : texts.someRows(shown.length, rows.length));

  function show(): void {
    if (!find || !body || !save || !status) return;
    const wanted = find.value
      .toLowerCase()
      .split(/\s+/)
      .filter((word) => word !== "");
    const order = sorted < 0 ? "none" : (heads[sorted]?.ariaSort ?? "none");
    const sign = order === "descending" ? -1 : 1;
    const all = order === "none" ? rows : rows.toSorted((a, b) => compare(a.cells[sorted], b.cells[sorted], sign));
    for (const row of all) row.hidden = wanted.length > 0 && !hasAll(row, wanted);
    if (all.some((row, index) => body.rows[index] !== row)) body.append(...all);
    shown = all.filter((row) => !row.hidden);
    for (const [index, head] of heads.entries()) {
      const hidden = !isPicked(head);
      if (head.hidden === hidden) continue;
      head.hidden = hidden;
      for (const row of rows) (row.cells[index] as HTMLTableCellElement).hidden = hidden;
    }
    for (const head of groupHeads) head.hidden = !isPicked(head);
    save.textContent = shown.length === rows.length ? texts.save : texts.saveShown(shown.length);
    status.textContent = counted();
  }

  function order(index: number, to: string): void {
    for (const [place, head] of heads.entries()) head.ariaSort = place === index ? to : "none";
    sorted = to === "none" ? -1 : index;
  }

  /** Puts what is chosen here into the address; what else stands there stays as it is, letter by letter. */
  function write(): void {
    const by = sorted < 0 ? "" : `${heads[sorted]?.ariaSort === "descending" ? "-" : ""}${sorted + 1}`;
    const own = Object.entries({ find: find?.value.trim(), show: pick?.value, order: by });
    const pieces = location.search
      .slice(1)
      .split("&")
      .filter((piece) => piece !== "" && !piece.startsWith(`${id}.`));
    for (const [key, value] of own) if (value) pieces.push(`${id}.${key}=${encodeURIComponent(value)}`);
    try {
      history.replaceState(
        history.state,
        "",
        `${location.pathname}${pieces.length > 0 ? "?" : ""}${pieces.join("&")}${location.hash}`,
      );
    } catch {
      // Some browsers refuse when the address changes too often; the next change writes it.
    }
  }

  let timer: ReturnType<typeof setTimeout> | undefined;
  function writeSoon(): void {
    clearTimeout(timer);
    timer = setTimeout(write, pause);
  }

  function read(): void {
    if (!find) return;
    const given = new URLSearchParams(location.search);
    find.value = given.get(`${id}.find`) ?? "";
    if (pick) {
      pick.value = given.get(`${id}.show`) ?? "";
      // A name that no option has leaves nothing chosen.
      if (pick.selectedIndex < 0) pick.value = "";
    }
    const by = Number(given.get(`${id}.order`) ?? 0);
    const known = heads[Math.abs(by) - 1] !== undefined;
    order(known ? Math.abs(by) - 1 : -1, by < 0 ? "descending" : "ascending");
    show();
  }

  /** What is shown, as lines of fields, with the source of each row in the last one. */
  function lines(): string[][] {
    const visible = [...heads.keys()].filter((index) => !heads[index]?.hidden);
    const usual = table?.dataset.from ?? "";
    return [
      [...visible.map((index) => heads[index]?.dataset.head ?? ""), texts.source],
      ...shown.map((row) => [...visible.map((index) => plain(row.cells[index])), row.dataset.from ?? usual]),
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
      writeSoon();
    });
  }
  for (const control of [find, pick])
    control?.addEventListener("input", () => {
      show();
      writeSoon();
    });
  host.querySelector("[data-copy]")?.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(tabText(lines()));
      status.textContent = texts.copied(counted());
    } catch {
      // Without leave to write there, the rows are at least selected for the person's own copy.
      getSelection()?.selectAllChildren(table);
      status.textContent = texts.selected;
    }
  });
  save.addEventListener("click", () => {
    const place = URL.createObjectURL(new Blob([safeCsv(lines())], { type: "text/csv" }));
    const whole = save.href;
    save.href = place;
    // The browser follows the link after this; then its own address comes back.
    setTimeout(() => {
      save.href = whole;
    });
    setTimeout(() => URL.revokeObjectURL(place), keptFor);
  });
  addEventListener("popstate", read);
  if (location.search.includes(`${id}.`)) read();
  // What was typed before this script came.
  else if (find.value !== "" || pick?.value) show();
}

// A table is whole without all this: it waits until the page has been painted.
const whenIdle = window.requestIdleCallback ?? ((run: () => void) => setTimeout(run, 200));
for (const host of document.querySelectorAll<HTMLElement>("[data-table]"))
  whenIdle(async () => start(host, host.dataset.table ?? "", await pageTexts(dataTable)));
