import { heightMessage } from "./height-message.ts";

/**
 * Tells the page that frames this one how tall it is, so that the frame needs no scroll bar of its own:
 * a message `{ type: "flat-to-formed:height", id, height }`, `id` being the calculator's, or `plan`, or `task` for
 * the page of an assignment, and `height` in CSS pixels, sent once at the start and again whenever the height changes. A course page listens with the script of
 * frame-html.ts, which the page /links/ gives away.
 */
const named = document.querySelector<HTMLElement>("[data-calculator], [data-frame]");
const id = named?.dataset.calculator ?? named?.dataset.frame;
let told = 0;

function tell(): void {
  const height = Math.ceil(document.body.getBoundingClientRect().height);
  if (height === told) return;
  told = height;
  // Any page may frame these pages, and their height is no secret.
  parent.postMessage({ type: heightMessage, id, height }, "*");
}

if (parent !== window) new ResizeObserver(tell).observe(document.body);
