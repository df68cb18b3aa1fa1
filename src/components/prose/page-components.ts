import { type ComponentType, h } from "preact";
import { LanguageContext } from "../../texts/context.ts";
import type { Language } from "../../texts/language.ts";
import Calculator from "../calculator/Calculator.astro";

function byName<T>(modules: Record<string, T>): Record<string, T> {
  const named: Record<string, T> = {};
  for (const [path, component] of Object.entries(modules)) {
    const name = path.replace(/^.*\/|\.\w+$/g, "");
    if (name in named) throw new Error(`Two components for pages are called ${name}; one of them is ${path}`);
    named[name] = component;
  }
  return named;
}

const written = byName(import.meta.glob<unknown>("./*.astro", { eager: true, import: "default" }));
const figures = byName(import.meta.glob<ComponentType<object>>("../figures/**/[A-Z]*.tsx", { eager: true, import: "default" }));

/** A figure in a page is a tree of its own: the language has to be given to it. */
function inLanguage(Figure: ComponentType<object>, language: Language): ComponentType<object> {
  return (props) => h(LanguageContext.Provider, { value: language }, h(Figure, props));
}

/** Every component that a page in Markdown may use by name. */
export function pageComponents(language: Language): Record<string, unknown> {
  const said = Object.entries(figures).map(([name, Figure]) => [name, inLanguage(Figure, language)] as const);
  return { ...written, ...Object.fromEntries(said), Calculator };
}
