import { fillSlots } from "../../equations/fill.ts";
import type { FormulaSymbol } from "../../lib/formula.ts";
import { kindOf } from "../../lib/quantity/units.ts";
import type { Step } from "../../lib/worksheet.ts";
import { english } from "../../texts/english.ts";
import type { Language } from "../../texts/language.ts";
import { workedNumber } from "./texts.ts";

function unitBehind({ quantity }: FormulaSymbol): string {
  const { base, units } = kindOf(quantity);
  const text = units[base]?.text ?? "";
  return text === "" || text === "°" ? text : ` ${text}`;
}

/**
 * What the slots of a worked formula say: every number as used, the result with its unit.
 * A negative number is put in brackets, because a sign may stand before it.
 */
export function stepTexts({ formula, values }: Step, language = english): Record<string, string> {
  const texts: Record<string, string> = {};
  for (const [key, symbol] of Object.entries(formula.symbols)) {
    const value = values[key];
    if (value === undefined) continue;
    const text = language.say(workedNumber(value, symbol.quantity, symbol.fineness, symbol.decimals));
    const isResult = key === formula.result;
    texts[key] = isResult
      ? text + (typeof value === "number" ? language.say(unitBehind(symbol)) : "")
      : /^−/.test(text)
        ? `(${text})`
        : text;
  }
  return texts;
}

/** The steps each working is to show, also while its formulas are not there yet. */
const latest = new WeakMap<Element, { readonly steps: readonly Step[]; readonly language: Language }>();

/** Shows the steps of an answer in the list of all formulas of its calculator, and puts their numbers in. Browser only. */
export function showWorking(working: Element, steps: readonly Step[], language: Language): void {
  latest.set(working, { steps, language });
  const list = working.querySelector("[data-steps]");
  if (!list) return;
  const lines = [...list.children] as HTMLElement[];
  const free = new Set(lines);
  for (const line of lines) line.hidden = true;
  const empty = working.querySelector<HTMLElement>("[data-no-steps]");
  if (empty) empty.hidden = steps.length > 0;
  for (const step of steps) {
    const own = lines.filter((line) => line.dataset.formula === step.formula.id);
    // A formula used twice in one answer needs a second line.
    const line = own.find((each) => free.has(each)) ?? (own[0]?.cloneNode(true) as HTMLElement | undefined);
    const numbers = line?.querySelector("[data-numbers]");
    if (!line || !numbers)
      throw new Error(`The working has no line for the formula ${step.formula.id}: name it in the worksheet`);
    free.delete(line);
    fillSlots(numbers, stepTexts(step, language));
    line.hidden = false;
    list.append(line);
  }
}

/** A page of this site, read as a page: making one from a text is what Trusted Types forbid. */
function fetchPage(address: string): Promise<Document> {
  return new Promise((done, fail) => {
    const request = new XMLHttpRequest();
    request.responseType = "document";
    request.onload = () => (request.responseXML ? done(request.responseXML) : fail(new Error(`${address} is no page`)));
    request.onerror = () => fail(new Error(`${address} could not be loaded`));
    request.open("GET", address);
    request.send();
  });
}

/**
 * Formulas are the heaviest part of a page, so a page with several calculators does not hold their working: it is fetched from
 * the page of the calculator alone when somebody opens it. Until then, and without scripts, a link leads there.
 */
export function loadWhenOpened(working: HTMLDetailsElement): void {
  const { from } = working.dataset;
  if (from === undefined) return;
  const load = async () => {
    if (!working.open || working.dataset.from === undefined) return;
    delete working.dataset.from;
    try {
      const page = await fetchPage(from);
      const found = page.querySelector("[data-working]");
      if (!found) throw new Error(`${from} has no working`);
      for (const link of page.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]'))
        if (!document.querySelector(`link[href="${link.getAttribute("href")}"]`)) document.head.append(document.importNode(link));
      const [summary] = working.children;
      working.replaceChildren(
        ...(summary ? [summary] : []),
        ...[...found.children].slice(1).map((part) => document.importNode(part, true)),
      );
      const known = latest.get(working);
      showWorking(working, known?.steps ?? [], known?.language ?? english);
    } catch {
      // The link stays, and the next opening tries again.
      working.dataset.from = from;
    }
  };
  working.addEventListener("toggle", load);
  void load();
}
