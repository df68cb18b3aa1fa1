/**
 * Tells the page that frames this one how tall it is, so that the frame needs no scroll bar of its own:
 * a message `{ type: "flat-to-formed:height", id, height }`, `id` being the calculator's, or `task` for the page of an assignment, and `height` in CSS pixels,
 * sent once at the start and again whenever the height changes.
 *
 * In the course page:
 *   addEventListener("message", ({ data, source }) => {
 *     if (data?.type !== "flat-to-formed:height") return;
 *     for (const frame of document.querySelectorAll("iframe"))
 *       if (frame.contentWindow === source) frame.height = data.height;
 *   });
 */
const named = document.querySelector<HTMLElement>("[data-calculator], [data-frame]");
const id = named?.dataset.calculator ?? named?.dataset.frame;
let told = 0;

function tell(): void {
  const height = Math.ceil(document.body.getBoundingClientRect().height);
  if (height === told) return;
  told = height;
  // Any page may frame a calculator, and its height is no secret.
  parent.postMessage({ type: "flat-to-formed:height", id, height }, "*");
}

if (parent !== window) new ResizeObserver(tell).observe(document.body);
