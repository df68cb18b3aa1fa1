import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Catalogue } from "../lib/catalogue.ts";
import { type DataFileName, dataFiles } from "./data-files.ts";
import { readCatalogue } from "./read-catalogue.ts";

/**
 * The folder the data files are in: the nearest one above this module that has them. A build puts this module into
 * another folder of the project, so a fixed number of steps up would miss.
 */
export function projectFolder(): string {
  for (const start of [dirname(fileURLToPath(import.meta.url)), process.cwd()])
    for (let folder = start; ; folder = dirname(folder)) {
      if (existsSync(join(folder, dataFiles.materials))) return folder;
      if (folder === dirname(folder)) break;
    }
  throw new Error(`The data files were not found: no folder above this program has ${dataFiles.materials}.`);
}

/** Full path of every data file. */
export function dataFilePaths(): Record<DataFileName, string> {
  const folder = projectFolder();
  const paths = Object.entries(dataFiles).map(([name, file]) => [name, join(folder, file)]);
  return Object.fromEntries(paths) as Record<DataFileName, string>;
}

let last: { readonly texts: string; readonly catalogue: Catalogue } | undefined;

/** Reads the data files as they are now. @throws DataError listing every mistake in them */
export function readDataFiles(): Catalogue {
  const texts = Object.fromEntries(
    Object.entries(dataFilePaths()).map(([name, path]) => [name, readFileSync(path, "utf8")]),
  ) as Record<DataFileName, string>;
  // A build asks once for each of its parts; the files are the same nearly always.
  const key = JSON.stringify(texts);
  if (last?.texts !== key) last = { texts: key, catalogue: readCatalogue(texts) };
  return last.catalogue;
}

let loaded: Catalogue | undefined;

/**
 * The catalogue for code that runs in Node: pages, command line, tests. Read once, from any working directory.
 * @throws DataError listing every mistake in the data files
 */
export function loadCatalogue(): Catalogue {
  loaded ??= readDataFiles();
  return loaded;
}
