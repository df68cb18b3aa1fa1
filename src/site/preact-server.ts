import { type ComponentType, h } from "preact";
import { renderToString } from "preact-render-to-string";

/**
 * Renders Preact components into pages at build. What becomes alive in the browser is started by the components' own scripts
 * (`components/calculator/hydrate.ts` and its like), so Astro needs only the markup.
 */
function check(component: unknown): boolean {
  return typeof component === "function";
}

function renderToStaticMarkup(
  component: ComponentType<Record<string, unknown>>,
  props: Record<string, unknown>,
  slots: Record<string, unknown>,
): { html: string } {
  const filled = Object.keys(slots);
  // Astro hands markup in as text, which a component could only take by innerHTML.
  if (filled.length > 0)
    throw new Error(
      `${component.name} stands in a page with something inside it (${filled.join(", ")}); give it properties instead`,
    );
  return { html: renderToString(h(component, props)) };
}

export default { name: "preact", check, renderToStaticMarkup };
