import { heightMessage } from "./height-message.ts";

/** What an instructor puts into a course page. */

const attribute = (text: string) => text.replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("<", "&lt;");

/**
 * A frame of a course page.
 * @param height - in CSS pixels, for a page without `heightScript`: what is taller is scrolled inside the frame
 */
export function frameHtml(address: string, title: string, height: number): string {
  return `<iframe src="${attribute(address)}" title="${attribute(title)}" width="100%" height="${height}" loading="lazy" allow="clipboard-write"></iframe>`;
}

/** Script of a course page that makes each frame of the handbook as tall as the page in it says it is. */
export const heightScript = `<script>
addEventListener("message", ({ data, source }) => {
  if (data?.type !== "${heightMessage}" || !(data.height > 0)) return;
  for (const frame of document.querySelectorAll("iframe"))
    if (frame.contentWindow === source) frame.height = data.height;
});
</script>`;
