import type { AstroIntegration } from "astro";

/** Lets pages hold Preact components. Their JSX is translated by Vite itself, by the `jsx` settings of tsconfig.json. */
export function preactPages(): AstroIntegration {
  return {
    name: "preact-pages",
    hooks: {
      "astro:config:setup": ({ addRenderer }) => {
        addRenderer({ name: "preact", serverEntrypoint: new URL("./preact-server.ts", import.meta.url) });
      },
    },
  };
}
