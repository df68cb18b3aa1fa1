import { unified } from "@astrojs/markdown-remark";
import mdx from "@astrojs/mdx";
import { defineConfig } from "astro/config";
import rehypeKatex from "rehype-katex";
import remarkMath from "remark-math";
import { catalogueModule } from "./src/catalogue/vite-plugin.ts";
import { calculatorModules } from "./src/components/calculator/vite-plugin.ts";
import { equationAssets } from "./src/equations/assets.ts";
import { loadGlossary } from "./src/site/glossary.ts";
import { pagesIn } from "./src/site/pages-in.ts";
import { preactPages } from "./src/site/preact-pages.ts";
import { rehypeBase } from "./src/site/rehype-base.ts";
import { rehypeGlossary } from "./src/site/rehype-glossary.ts";
import { rehypeLanguage } from "./src/site/rehype-language.ts";
import { languages } from "./src/texts/at-build.ts";
import { shell } from "./src/texts/en/shell.ts";

const base = process.env.BASE_PATH ?? "/";
if (!/^\/(?:.*\/)?$/.test(base)) throw new Error(`BASE_PATH must begin and end with a slash; it is “${base}”`);

/** For links in Markdown. */
const languageLinks = {
  codeOf: (file = "") => /[\\/]techniques-(\w+)[\\/]/.exec(file)?.[1] ?? "en",
  pagesIn,
  inEnglish: (code) => languages[code].texts(shell).inEnglish,
};

export default defineConfig({
  base,
  site: process.env.SITE_URL,
  outDir: process.env.OUT_DIR ?? "dist",
  trailingSlash: "always",
  output: "static",
  integrations: [equationAssets(), mdx({ optimize: true }), preactPages()],
  markdown: {
    processor: unified({
      remarkPlugins: [remarkMath],
      rehypePlugins: [
        [rehypeKatex, { strict: "error", throwOnError: true }],
        rehypeGlossary(loadGlossary()),
        rehypeLanguage(languageLinks),
        rehypeBase(base),
      ],
    }),
    // Its colours are inline styles, which the content security policy forbids.
    syntaxHighlight: false,
  },
  // Inline styles and scripts are forbidden by the content security policy.
  build: { format: "directory", inlineStylesheets: "never" },
  vite: {
    plugins: [catalogueModule(), calculatorModules()],
    build: {
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      rolldownOptions: {
        onLog(level, log, report) {
          // Astro marks modules of its own in a way the bundler warns of; nothing here can change that.
          if (log.code !== "MODULE_LEVEL_DIRECTIVE") report(level, log);
        },
      },
    },
  },
  devToolbar: { enabled: false },
});
