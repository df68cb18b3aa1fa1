import { type CheckFile, checkFileSchema } from "./schema.ts";

const modules = import.meta.glob<unknown>("../../tests/published/*.json", { eager: true, import: "default" });

export interface NamedCheckFile extends CheckFile {
  /** File name without its ending; part of addresses on the page. */
  readonly name: string;
}

/** Every file of published checks, by name. @throws ZodError naming what is wrong in a file */
export const checkFiles: readonly NamedCheckFile[] = Object.entries(modules)
  .map(([path, content]) => ({ name: /([^/]+)\.json$/.exec(path)?.[1] ?? path, ...checkFileSchema.parse(content) }))
  .sort((one, other) => one.name.localeCompare(other.name, "en"));
