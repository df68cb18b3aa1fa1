import { trustOwnScripts } from "../site/trusted-scripts.ts";
import { search as english } from "../texts/en/search.ts";
import { pageTexts } from "../texts/page-language.ts";
import { type Found, type Hit, type Piece, toHit } from "./search-results.ts";

interface Pagefind {
  options(options: { baseUrl: string; excerptLength: number }): Promise<void>;
  init(): Promise<void>;
  debouncedSearch(text: string, options: object, wait: number): Promise<{ results: { data(): Promise<Found> }[] } | null>;
}

const shownAtMost = 8;
const wait = 150;

let loading: Promise<Pagefind> | undefined;

/** Loads the search on first use: it weighs as much as a page. */
function load(): Promise<Pagefind> {
  loading ??= (async () => {
    trustOwnScripts();
    const base = import.meta.env.BASE_URL;
    const pagefind: Pagefind = await import(/* @vite-ignore */ `${base}pagefind/pagefind.js`);
    // The search asks for its program only after two other answers. Asked for now, it comes meanwhile.
    fetch(`${base}pagefind/wasm.${document.documentElement.lang}.pagefind`).catch(() => {});
    await pagefind.options({ baseUrl: base, excerptLength: 18 });
    await pagefind.init();
    return pagefind;
  })();
  // What failed for want of a network may work the next time.
  loading.catch(() => {
    loading = undefined;
  });
  return loading;
}

function element<K extends keyof HTMLElementTagNameMap>(tag: K, className: string, ...children: (Node | string)[]) {
  const made = document.createElement(tag);
  made.className = className;
  made.append(...children);
  return made;
}

function excerptNodes(pieces: readonly Piece[]): (Node | string)[] {
  return pieces.map(({ text, marked }) => (marked ? element("mark", "search-mark", text) : text));
}

function resultItem({ title, section, address, excerpt }: Hit): HTMLLIElement {
  const link = element("a", "search-link", element("strong", "search-title", section ? `${title}: ${section}` : title));
  link.href = address;
  link.append(element("span", "search-excerpt", ...excerptNodes(excerpt)));
  return element("li", "search-result", link);
}

/** Starts one search box, as Search.astro writes it. */
function start(form: HTMLFormElement): void {
  const input = form.querySelector("input");
  const panel = form.querySelector<HTMLElement>(".search-panel");
  const status = form.querySelector(".search-status");
  const list = form.querySelector("ol");
  if (!input || !panel || !status || !list) throw new Error("The search box is incomplete");

  const links = () => [...list.querySelectorAll("a")];
  const close = () => {
    panel.hidden = true;
  };

  async function search(): Promise<void> {
    if (!input || !panel || !status || !list) return;
    const text = input.value.trim();
    if (text === "") {
      list.replaceChildren();
      status.textContent = "";
      close();
      return;
    }
    panel.hidden = false;
    const texts = await pageTexts(english);
    if (!status.textContent) status.textContent = texts.searching;
    try {
      const found = await (await load()).debouncedSearch(text, {}, wait);
      // Null: more was typed meanwhile, and that search answers.
      if (!found || input.value.trim() !== text) return;
      const hits = found.results.slice(0, shownAtMost).map(async (result) => toHit(await result.data()));
      status.textContent = texts.found(found.results.length, shownAtMost);
      // Those that are not waited for below may fail without being a fault of the page.
      void Promise.allSettled(hits);
      if (hits.length === 0) list.replaceChildren();
      // The best one is shown as soon as it is there, and does not wait for the last.
      for (const [index, hit] of hits.entries()) {
        const item = resultItem(await hit);
        if (input.value.trim() !== text) return;
        if (index === 0) list.replaceChildren(item);
        else list.append(item);
      }
    } catch {
      list.replaceChildren();
      status.textContent = texts.failed;
    }
  }

  /** Moves the focus from the field down the list and back up. */
  function move(step: 1 | -1): void {
    const stops: HTMLElement[] = [input as HTMLElement, ...links()];
    const at = stops.indexOf(document.activeElement as HTMLElement);
    stops[Math.min(Math.max(at + step, 0), stops.length - 1)]?.focus();
  }

  form.addEventListener("focusin", () => {
    load().catch(() => {});
    if (input.value.trim() !== "") panel.hidden = false;
  });
  form.addEventListener("focusout", ({ relatedTarget }) => {
    if (!(relatedTarget instanceof Node && form.contains(relatedTarget))) close();
  });
  input.addEventListener("input", search);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    links()[0]?.focus();
  });
  form.addEventListener("keydown", (event) => {
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      if (panel.hidden || links().length === 0) return;
      event.preventDefault();
      move(event.key === "ArrowDown" ? 1 : -1);
    } else if (event.key === "Escape" && !panel.hidden) {
      event.preventDefault();
      input.focus();
      close();
    }
  });
  // What was typed before this script came is searched for now.
  if (input.value.trim() !== "" && form.contains(document.activeElement)) search();
}

for (const form of document.querySelectorAll<HTMLFormElement>("form[data-search]")) start(form);
