import katex from "katex";
import { type Formula, letterTex, numberTex } from "../lib/formula.ts";

/** A number no formula contains; each use of a symbol gets the next one. */
const firstToken = 7_770_001;

function escapeHtml(text: string): string {
  return text.replace(/[&<>"]/g, (character) => `&#${character.charCodeAt(0)};`);
}

/**
 * TeX as HTML for the eye and MathML for screen readers. Runs at build: no page loads KaTeX.
 * @throws Error when KaTeX cannot read the TeX, or can only read it with a warning
 */
export function renderTex(tex: string, { display = false }: { display?: boolean } = {}): string {
  const html = katex.renderToString(tex, { displayMode: display, output: "htmlAndMathml", strict: "error", throwOnError: true });
  // The TeX that KaTeX adds for copying would be read by the search index and hold the tokens of slots.
  return html.replace(/<annotation encoding="application\/x-tex">[\s\S]*?<\/annotation>/, "");
}

/** Puts a slot in place of a token that must be there once. */
function replaceToken(html: string, element: RegExp, slot: string, what: string): string {
  const found = html.match(new RegExp(element, "g"))?.length ?? 0;
  if (found !== 1) throw new Error(`${what} came out ${found} times; write \\cdot between a digit and a symbol`);
  return html.replace(element, (match) => match.replace(/>\d+</, ` ${slot}<`));
}

/**
 * A formula of the library as HTML.
 * `letters`: with its symbols. `numbers`: every symbol is a slot `[data-v="key"]` in the visual part and in the MathML, which
 * `fillSlots` fills in the browser; a symbol used several times has several slots.
 *
 * @param texts - what the slots say to begin with, with the result's unit; without it they show the symbols in plain text
 * @throws Error when the formula cannot be set, or a text is missing
 */
export function renderEquation(formula: Formula, mode: "letters" | "numbers", texts?: Readonly<Record<string, string>>): string {
  if (mode === "letters") return renderTex(letterTex(formula), { display: true });
  const used: string[] = [];
  const tex = numberTex(formula, (key) => `{${firstToken + used.push(key) - 1}}`);
  const html = renderTex(tex, { display: true });
  return used.reduce((current, key, index) => {
    const text = texts ? texts[key] : formula.symbols[key]?.symbol;
    if (text === undefined) throw new Error(`Formula ${formula.id} has no text for “${key}”`);
    const slot = `data-v="${escapeHtml(key)}">${escapeHtml(text)}`;
    const token = firstToken + index;
    const what = `Formula ${formula.id}: “${key}”`;
    const seen = replaceToken(current, new RegExp(`<span class="[^"]*">${token}</span>`), slot, `${what} in the visual part`);
    return replaceToken(seen, new RegExp(`<mn>${token}</mn>`), slot, `${what} in the MathML`);
  }, html);
}
