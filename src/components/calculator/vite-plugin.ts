import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Plugin } from "vite";
import { dataFilePaths, projectFolder, readDataFiles } from "../../catalogue/load.ts";
import { catalogueModuleText, slimCatalogue } from "../../catalogue/slim.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import { shortTitles } from "./source-titles.ts";

/**
 * What the calculators of a page load, cut to what they need:
 * - `virtual:calculators`: for each worksheet a function that loads it
 * - `virtual:calculator/<id>`: the worksheet, its drawing, what may be done with its answer, and the names of the sources it may cite
 * - `virtual:calculator-data`: the catalogue without cautions, which stand in the page, and with the names of sources alone
 */
const list = "virtual:calculators";
const one = "virtual:calculator/";
const data = "virtual:calculator-data";

const slashed = (path: string) => path.replaceAll("\\", "/");

function worksheetIds(): string[] {
  const files = readdirSync(join(projectFolder(), "src/lib/worksheets"));
  return files.flatMap((file) => /^([\w-]+)\.ts$/.exec(file)?.[1] ?? []);
}

/** A module and everything it imports from this project. */
function graph(entry: string, seen: Set<string> = new Set()): Set<string> {
  if (seen.has(entry)) return seen;
  seen.add(entry);
  for (const [, specifier = ""] of readFileSync(entry, "utf8").matchAll(/\bfrom "(\.[^"]+)"/g))
    graph(join(dirname(entry), specifier), seen);
  return seen;
}

/** Every quoted word in some files: among them all ids of sources they cite. */
function quotedWords(files: Iterable<string>): Set<string> {
  const words = new Set<string>();
  for (const file of files)
    for (const [, word] of readFileSync(file, "utf8").matchAll(/"([a-z0-9-]+)"/g)) if (word) words.add(word);
  return words;
}

function oneText(id: string): string {
  const folder = projectFolder();
  const sheet = join(folder, `src/lib/worksheets/${id}.ts`);
  const drawing = join(folder, `src/components/drawings/${id}.tsx`);
  const after = join(folder, `src/components/after/${id}.ts`);
  const titles = shortTitles(readDataFiles().sources, quotedWords(graph(sheet)));
  return [
    `export { default as sheet } from ${JSON.stringify(slashed(sheet))};`,
    existsSync(drawing)
      ? `export { default as Drawing } from ${JSON.stringify(slashed(drawing))};`
      : "export const Drawing = undefined;",
    existsSync(after) ? `export { default as After } from ${JSON.stringify(slashed(after))};` : "export const After = undefined;",
    `export const titles = ${JSON.stringify(titles)};`,
  ].join("\n");
}

function dataText(): string {
  const catalogue = readDataFiles();
  // Nothing is named: what is kept of the sources are those that the data themselves cite.
  const slim = slimCatalogue(catalogue, new Set());
  const tables = slimCatalogue(catalogue, new Set(Object.keys(catalogue.thicknessTolerances))).thicknessTolerances;
  const sources = shortTitles(catalogue.sources, new Set(Object.keys(slim.sources)));
  const kept = { ...slim, thicknessTolerances: tables, cautions: {}, sources } as unknown as Catalogue;
  return catalogueModuleText(kept, slashed(join(projectFolder(), "src/catalogue/gauge-rows.ts")));
}

/**
 * A page asks for few files: what every page needs comes in one, what every calculator needs in another, what every drawing
 * needs in a third. Left alone, the bundler makes thirty files of it, and each costs a third of a kilobyte before its first letter.
 */
const groups = [
  {
    name: "page",
    test: /src[\\/](?:components[\\/](?:units|site-switches)|site[\\/]trusted-scripts|texts[\\/](?:page-language|en[\\/](?:search|offline)))\.ts$|preload-helper/,
    priority: 3,
  },
  {
    name: "calculator",
    test: /src[\\/](?:components[\\/]calculator[\\/](?!hydrate\.ts|waken\.ts|command-line)[\w-]+|texts[\\/]en[\\/](?:calculator|given))\.tsx?$/,
    priority: 2,
  },
  // Apart, for the pages that have components without a calculator.
  { name: "components", test: /node_modules[\\/]preact[\\/]|src[\\/]texts[\\/](?:context|english)\.ts$/, priority: 4 },
  { name: "drawing", test: /src[\\/](?:components[\\/]drawings[\\/]parts[\\/]|texts[\\/]en[\\/]drawings\.ts)/, priority: 1 },
];

/** Vite's own helper loads the style sheets of a script that is imported late; here no such script has one. */
const preloadHelper = "\0vite/preload-helper.js";

export function calculatorModules(): Plugin {
  return {
    name: "calculators",
    enforce: "pre",
    configEnvironment(name) {
      if (name !== "client") return undefined;
      // A list of what to load ahead for every calculator is longer than the one step it would save.
      return { build: { modulePreload: false, rolldownOptions: { output: { codeSplitting: { groups } } } } };
    },
    resolveId: (id) => (id === list || id === data || id.startsWith(one) ? `\0${id}` : undefined),
    load(id) {
      if (id === preloadHelper && this.environment.name === "client") return "export const __vitePreload = (load) => load();";
      if (!id.startsWith("\0virtual:calculator")) return undefined;
      for (const path of Object.values(dataFilePaths())) this.addWatchFile(path);
      const name = id.slice(1);
      if (name === data) return dataText();
      if (name.startsWith(one)) return oneText(name.slice(one.length));
      const entries = worksheetIds().map((sheet) => `${JSON.stringify(sheet)}: () => import(${JSON.stringify(one + sheet)})`);
      return `export default {\n${entries.join(",\n")}\n};`;
    },
  };
}
