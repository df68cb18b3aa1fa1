import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { worksheets } from "../../src/lib/registry.ts";

const { sources, cautions } = loadCatalogue();

test.each(worksheets.map(({ id, ...sheet }) => [id, sheet] as const))(
  "%s names only sources and cautions that are kept",
  (_, sheet) => {
    for (const id of sheet.sources) expect.soft(sources, id).toHaveProperty([id]);
    for (const id of sheet.cautions) expect.soft(cautions, id).toHaveProperty([id]);
  },
);

test("every source named in the library is in the bibliography", () => {
  /** Marks a property the user typed over; it is shown as such and is no document. */
  const notDocuments = new Set(["entered"]);
  const folder = new URL("../../src/lib/", import.meta.url);
  const named = new Set<string>();
  for (const file of readdirSync(folder, { recursive: true, encoding: "utf8" }))
    if (file.endsWith(".ts"))
      for (const [, id = ""] of readFileSync(new URL(file.replaceAll("\\", "/"), folder), "utf8").matchAll(
        /\bsource: "([^"]+)"/g,
      ))
        named.add(id);
  expect(named.size).toBeGreaterThan(10);
  for (const id of named) if (!notDocuments.has(id)) expect.soft(sources, id).toHaveProperty([id]);
});
