import { expect, test } from "vitest";
import { packGaugeRows, unpackGaugeRows } from "../../src/catalogue/gauge-rows.ts";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { catalogueModuleText, slimCatalogue } from "../../src/catalogue/slim.ts";
import { catalogueModule } from "../../src/catalogue/vite-plugin.ts";

const whole = loadCatalogue();
const slim = slimCatalogue(whole, new Set(["jcgm-100", "sharp-edges"]));

test("packed gauge rows unpack to the same rows", () => {
  for (const { id, rows } of Object.values(whole.gaugeSystems))
    expect.soft(unpackGaugeRows(packGaugeRows(rows)), id).toEqual(rows);
});

test("the browser's numbers are the numbers of the files", () => {
  const close = (small: unknown, full: unknown, path: string): void => {
    if (typeof small === "number")
      expect.soft(Math.abs(small - Number(full)), path).toBeLessThanOrEqual(1e-8 * Math.abs(Number(full)));
    else if (typeof small === "object" && small !== null)
      for (const [key, inner] of Object.entries(small)) close(inner, (full as Record<string, unknown>)[key], `${path}.${key}`);
    else expect.soft(small, path).toEqual(full);
  };
  close(slim, whole, "");
  expect(Object.keys(slim)).toEqual(expect.arrayContaining(Object.keys(whole)));
  expect(Object.keys(slim.materials)).toEqual(Object.keys(whole.materials));
});

test("the browser gets no notes and no addresses, and the sources that it or its data name", () => {
  expect(JSON.stringify(slim)).not.toMatch(/"(note|address|where|edition|printed|rule)":/);
  expect(Object.keys(slim.cautions)).toEqual(["sharp-edges"]);
  expect(slim.sources["jcgm-100"]).toEqual({ id: "jcgm-100", title: whole.sources["jcgm-100"]?.title, seen: "memory" });
  expect(slim.sources[slim.materials["al-1100-o"].yield.source]?.title).toContain("Kutz");
  expect(slim.sources["copper-roofings"]).toBeUndefined();
  expect(Object.keys(slim.thicknessTolerances)).toEqual(["en-10131-normal", "en-10051-category-a", "en-10259"]);
});

test("the module text runs and gives the same catalogue", async () => {
  const text = catalogueModuleText(slim, "UNPACK").replace(/^import .*$/m, `const unpackGaugeRows = globalThis.unpackForTest;`);
  Object.assign(globalThis, { unpackForTest: unpackGaugeRows });
  const { default: catalogue } = await import(/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(text)}`);
  expect(catalogue).toEqual(slim);
});

test("the plugin answers to virtual:catalogue only", () => {
  const { resolveId } = catalogueModule();
  if (typeof resolveId !== "function") throw new Error("resolveId must be a plain function");
  const resolve = resolveId as unknown as (id: string) => string | undefined;
  expect(resolve("virtual:catalogue")).toBe("\0virtual:catalogue");
  expect(resolve("virtual:other")).toBeUndefined();
});
