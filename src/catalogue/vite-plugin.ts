import { readdirSync, readFileSync } from "node:fs";
import { join, normalize, sep } from "node:path";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";
import { dataFilePaths, projectFolder, readDataFiles } from "./load.ts";
import { catalogueModuleText, slimCatalogue } from "./slim.ts";

const name = "virtual:catalogue";
const resolved = `\0${name}`;

/** Every quoted word in the code below `src`: among them all ids that it asks the catalogue for. */
function quotedWords(): Set<string> {
  const folder = join(projectFolder(), "src");
  const words = new Set<string>();
  for (const file of readdirSync(folder, { recursive: true, encoding: "utf8" })) {
    if (!/\.tsx?$/.test(file) || file.startsWith(`catalogue${sep}`)) continue;
    for (const [, word] of readFileSync(join(folder, file), "utf8").matchAll(/"([a-z0-9-]+)"/g)) if (word) words.add(word);
  }
  return words;
}

function moduleText(): string {
  const unpacker = fileURLToPath(new URL("./gauge-rows.ts", import.meta.url)).replaceAll("\\", "/");
  return catalogueModuleText(slimCatalogue(readDataFiles(), quotedWords()), unpacker);
}

/**
 * Serves `virtual:catalogue` to browser code: the catalogue without what only built pages show.
 * A mistake in a data file stops the build with every file and line. In dev the page reloads when a data file changes,
 * or code that may name other sources.
 */
export function catalogueModule(): Plugin {
  return {
    name: "catalogue",
    buildStart() {
      for (const path of Object.values(dataFilePaths())) this.addWatchFile(path);
      // Read here too, so that bad data stops a build in which no page happens to import the module.
      readDataFiles();
    },
    resolveId(id) {
      return id === name ? resolved : undefined;
    },
    load(id) {
      return id === resolved ? moduleText() : undefined;
    },
    configureServer({ watcher, environments }) {
      const data = new Set(Object.values(dataFilePaths()));
      watcher.add([...data]);
      watcher.on("change", (path) => {
        if (data.has(normalize(path))) {
          // Server code keeps the catalogue it loaded, so its modules have to be run anew as well.
          for (const { moduleGraph, hot } of Object.values(environments)) {
            moduleGraph.invalidateAll();
            hot.send({ type: "full-reload" });
          }
        } else if (/\.tsx?$/.test(path)) {
          const module = environments.client?.moduleGraph.getModuleById(resolved);
          if (module) environments.client?.moduleGraph.invalidateModule(module);
        }
      });
    },
  };
}
