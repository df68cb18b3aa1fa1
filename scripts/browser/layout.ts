import type { Page } from "playwright-core";

/** Elements that stick out sideways, when the page can be scrolled sideways at all. */
export function sidewaysOverflow(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const root = document.documentElement;
    if (root.scrollWidth <= root.clientWidth) return [];
    const limit = root.clientWidth + 1;
    const isOut = (element: Element) => element.getBoundingClientRect().right > limit;
    /** Inside something that fits and cuts off or scrolls what does not. */
    const isHeld = (element: Element) => {
      for (let around = element.parentElement; around && around !== document.body; around = around.parentElement)
        if (getComputedStyle(around).overflowX !== "visible" && !isOut(around)) return true;
      return false;
    };
    const wide = [...document.body.querySelectorAll("*")].filter((element) => isOut(element) && !isHeld(element));
    const inner = wide.filter((element) => !wide.some((other) => other !== element && element.contains(other)));
    return [
      `page is ${root.scrollWidth} px wide on a screen of ${root.clientWidth}`,
      ...inner.map((element) => element.outerHTML.slice(0, 120)),
    ];
  });
}

/**
 * Controls smaller than a finger. What counts is the area that reacts: for a box in a label, the label.
 * A link within a sentence is as tall as its line and does not count (WCAG 2.2, 2.5.8).
 */
export function smallControls(page: Page, least: number): Promise<string[]> {
  return page.evaluate((size) => {
    const controls = document.querySelectorAll(
      "a[href], button, input:not([type=hidden]), select, textarea, summary, [role=button], [role=tab], [role=option], [tabindex='0']",
    );
    const inSentence = (element: Element) => {
      if (element.tagName !== "A" || getComputedStyle(element).display !== "inline") return false;
      let block = element.parentElement;
      while (block && getComputedStyle(block).display === "inline") block = block.parentElement;
      return (block?.textContent ?? "").trim().length > (element.textContent ?? "").trim().length;
    };
    return [...controls].flatMap((control) => {
      if (!control.checkVisibility({ visibilityProperty: true, opacityProperty: true }) || inSentence(control)) return [];
      const box = control instanceof HTMLInputElement && /^(?:checkbox|radio)$/.test(control.type);
      const area = (box && control.closest("label")) || control;
      const { width, height } = area.getBoundingClientRect();
      // A skip link waits outside the screen until it gets the focus.
      if (width <= 1 || height <= 1 || area.getBoundingClientRect().bottom <= 0) return [];
      // Half a pixel is rounding.
      return width < size - 0.5 || height < size - 0.5
        ? [`${Math.round(width)} × ${Math.round(height)} px: ${control.outerHTML.slice(0, 120)}`]
        : [];
    });
  }, least);
}
