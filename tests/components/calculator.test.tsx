import fc from "fast-check";
import type { ComponentType } from "preact";
import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { Calculator } from "../../src/components/calculator/Calculator.tsx";
import { Field, type Form } from "../../src/components/calculator/Fields.tsx";
import { shortTitles } from "../../src/components/calculator/source-titles.ts";
import type { DrawingProps } from "../../src/components/drawings/parts/Drawing.tsx";
import type { Raw } from "../../src/lib/inputs.ts";
import { lengthViews } from "../../src/lib/quantity/format.ts";
import { worksheetById } from "../../src/lib/registry.ts";
import { runWorksheet, type Worksheet } from "../../src/lib/worksheet.ts";
import { anyRaw, everySheet, goodRaw } from "../worksheets/arbitrary.ts";
import { asTyped } from "./as-typed.ts";

const catalogue = loadCatalogue();
const drawings = import.meta.glob<ComponentType<DrawingProps>>("../../src/components/drawings/*.tsx", {
  eager: true,
  import: "default",
});
const drawingOf = (id: string) => drawings[`../../src/components/drawings/${id}.tsx`];
const unshowable = /NaN|Infinity|undefined|\[object/;

function sheetOf(id: string): Worksheet {
  const sheet = worksheetById(id);
  if (!sheet) throw new Error(`no worksheet ${id}`);
  return sheet;
}

function page(sheet: Worksheet, start: Raw = {}): string {
  return renderToString(
    <Calculator
      sheet={sheet}
      catalogue={catalogue}
      titles={shortTitles(catalogue.sources, Object.keys(catalogue.sources))}
      Drawing={drawingOf(sheet.id)}
      instance={sheet.id}
      start={start}
      base="/"
      pages={{}}
    />,
  );
}

/** Attributes of the element with this id. */
function element(html: string, id: string): string {
  return new RegExp(`<[^<>]*\\bid="${id}"[^<>]*>`).exec(html)?.[0] ?? "";
}

describe("every calculator at build", () => {
  test.each(everySheet)("$id shows its fields and its answer", ({ id, sheet }) => {
    const html = page(sheet);
    expect(html).not.toMatch(unshowable);
    expect(html).not.toMatch(/ style=| on[a-z]+=/);
    const main = sheet.outputs[sheet.main];
    expect(html).toContain(main?.label ?? "no main output");
    expect(html).not.toContain("stale-mark");
    for (const [key, input] of Object.entries(sheet.inputs)) {
      if (input.kind === "list" || sheet.shownWhen?.[key] || (input.kind === "quantity" && input.override)) continue;
      expect(element(html, `${id}-${key}`), key).toMatch(/^<(input|select)/);
      expect(html, key).toContain(`for="${id}-${key}"`);
    }
  });

  test.each(everySheet)("$id uses every id once, and describes fields only by what is there", ({ sheet }) => {
    fc.assert(
      fc.property(anyRaw(sheet.inputs), (any) => {
        const raw = asTyped(sheet.inputs, any);
        const html = page(sheet, raw);
        const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, name]) => name);
        expect(ids).toHaveLength(new Set(ids).size);
        for (const [, names = ""] of html.matchAll(/ aria-(?:describedby|labelledby)="([^"]*)"/g))
          for (const name of names.split(" ")) expect(ids).toContain(name);
      }),
      { numRuns: 8 },
    );
  });

  test.each(everySheet)("$id puts whatever is typed back into its fields, and every message at one of them", ({ id, sheet }) => {
    fc.assert(
      fc.property(anyRaw(sheet.inputs), (any) => {
        const raw = asTyped(sheet.inputs, any);
        const html = page(sheet, raw);
        const { problems } = runWorksheet(sheet, raw, catalogue);
        for (const { field } of problems) {
          const [key = ""] = field.split(".");
          if (!Object.hasOwn(sheet.inputs, key)) continue;
          const message = new RegExp(`id="${id}-${field.replaceAll(".", "-")}-message"[^>]*>[^<]+<`);
          expect(html, `${field} of ${JSON.stringify(raw)}`).toMatch(message);
        }
        expect(html.includes("stale-mark")).toBe(problems.length > 0);
      }),
      { numRuns: 25 },
    );
  });
});

describe("an answer that is a range", () => {
  const shown = (start: Raw) => page(sheetOf("spot-setting"), start).replaceAll(/<(?!\/?(?:dt|dd|output)\b)[^>]*>/g, "");

  test("is one answer with its unit once, and its upper end stands nowhere else", () => {
    // ISO 14373, sheet over 0.8 and up to 1.0 mm, medium force: 9 to 12 cycles of 1/50 s, 6 to 8 kA.
    const text = shown({ thickness: "1mm" });
    expect(text).toContain(">0.18–0.24 s</output>");
    expect(text).toContain("<dt>Current</dt><dd>6.0–8.0 kA</dd>");
    expect(text).not.toContain("at most</dt>");
  });

  test("names both units where they differ, and one value where its ends are alike", () => {
    // The same table, over 0.4 and up to 0.6 mm: 0.9 to 1.1 kN. The stainless schedule has one force for sheet of 0.05 in.
    expect(shown({ thickness: "0.5mm", otherThickness: "0.5mm" })).toContain("<dt>Force</dt><dd>900 N – 1.1 kN</dd>");
    const stainless = { material: "stainless-304", thickness: "0.05in", otherThickness: "0.05in" };
    expect(shown(stainless)).toContain("<dt>Force</dt><dd>5.3 kN</dd>");
  });

  test.each(everySheet)("$id names outputs of its own as ± and as ends of ranges", ({ sheet }) => {
    for (const output of Object.values(sheet.outputs))
      if (output.kind === "quantity")
        for (const key of [output.plusMinus, output.upTo])
          if (key !== undefined) expect(sheet.outputs[key]).toMatchObject({ kind: "quantity", quantity: output.quantity });
  });
});

describe("a value that cannot be used", () => {
  const html = page(sheetOf("bend-length"), { thickness: "0mm", legs: [{ leg: "60mm" }, { leg: "abc" }] });

  test("stays in its field, which is marked and told why", () => {
    const field = element(html, "bend-length-thickness");
    expect(field).toContain('value="0"');
    expect(field).toContain('aria-invalid="true"');
    expect(field).toMatch(/aria-describedby="[^"]*bend-length-thickness-message/);
    expect(html).toMatch(
      /id="bend-length-thickness-message"[^>]*>Thickness must be from 0\.10 mm to 13\.00 mm; it is 0\.00 mm\.</,
    );
  });

  test("in a row of a list is told at that row", () => {
    const field = element(html, "bend-length-legs-1-leg");
    expect(field).toContain('value="abc"');
    expect(field).toContain('aria-invalid="true"');
    expect(element(html, "bend-length-legs-0-leg")).not.toContain("aria-invalid");
    expect(html).toMatch(/id="bend-length-legs-1-leg-message"[^>]*>Leg: “abc” is not a length/);
  });

  test("leaves no answer that could be taken for one", () => {
    expect(html).toContain("No answer yet.");
    expect(html).toContain("2 fields need other values.");
    expect(html).not.toContain("answer-number");
  });

  test("is shown even where its field is usually hidden", () => {
    expect(element(page(sheetOf("bend-length")), "bend-length-hardness")).toBe("");
    expect(element(page(sheetOf("bend-length"), { hardness: "rubber" }), "bend-length-hardness")).toContain(
      'aria-invalid="true"',
    );
  });

  test("opens the fold it is in", () => {
    expect(page(sheetOf("springback"))).toMatch(/<details class="overrides">/);
    expect(page(sheetOf("springback"), { yield: "-1" })).toMatch(/<details class="overrides" open>/);
  });

  test("of a choice stands in the list of choices", () => {
    expect(page(sheetOf("bend-length"), { method: "guess" })).toContain('<option selected value="guess">guess</option>');
  });
});

test("a value an address made up is named, with a way to drop it", () => {
  const html = page(sheetOf("bend-length"), { colour: "red" });
  expect(html).toContain("There is no input “colour” here.");
  expect(html).toContain("Leave out what is not known here");
});

test("a caution about a value stands at its field, and the answer points to it", () => {
  const html = page(sheetOf("bend-length"), { radius: "0.2mm" });
  expect(html).toMatch(/class="field-caution"><strong>Caution: <\/strong>Inside radius should be at least/);
  expect(html).toContain('href="#bend-length-radius"');
});

test("the row of a table that is the answer says so in words", () => {
  const html = page(sheetOf("bend-length"), { method: "faa-handbook" });
  expect(html).toMatch(/<tr class="chosen"><th scope="row">Aircraft handbook \(FAA\)<span class="chosen-mark"> this answer/);
});

test("the ± stands beside the answer and nowhere else", () => {
  const html = page(sheetOf("practice-pieces"));
  expect(html).toMatch(
    /<output class="answer-number">2\.18<span class="answer-unit"> mm<\/span><span class="answer-around"> ± 0\.07 mm/,
  );
  expect(html).not.toContain("<dt>Uncertainty");
});

test("practice pieces are handed on by plain links", () => {
  const html = page(sheetOf("practice-pieces"));
  expect(html).toMatch(/href="[^"]*\?bend-length\.thickness=1\.2mm&amp;[^"]*bend-length\.method=measured#bend-length"/);
  expect(html).toMatch(/href="[^"]*\?plan\.bendData=measured&amp;plan\.measuredDeduction=[\d.]+mm/);
});

describe("a field in another unit", () => {
  const input = sheetOf("bend-length").inputs.thickness;
  const formIn = (view: Form["view"]): Form => ({
    instance: "x",
    catalogue,
    view,
    context: {},
    raw: { thickness: "1.2mm" },
    live: true,
    material: "steel-cr",
    problems: new Map(),
    cautions: new Map(),
    draft: undefined,
    type: () => {},
    leave: () => {},
    addRow: () => {},
    removeRow: () => {},
  });
  const shown = (view: Form["view"]) =>
    input ? renderToString(<Field form={formIn(view)} field="thickness" input={input} />) : "";

  test("shows that unit, and says what is kept", () => {
    expect(shown("mm")).toMatch(/value="1\.2"[\s\S]*>mm</);
    expect(shown("mm")).not.toContain("kept as");
    // 1.2 / 25.4 = 0.0472…; 1.2 mm is 3.02 of 1/64 in.
    expect(shown("inch")).toMatch(/value="0\.0472"[\s\S]*>in<[\s\S]*kept as 1\.2 mm/);
    expect(shown("fraction")).toMatch(/value="3\/64"[\s\S]*kept as 1\.2 mm/);
  });

  test("gives its range in that unit", () => {
    expect(shown("mm")).toContain("0.1 to 13 mm");
    expect(shown("inch")).toContain("0.004 to 0.512 in");
  });

  test("offers a keyboard with the stroke of a fraction where fractions are typed", () => {
    expect(shown("mm")).toContain('inputmode="decimal"');
    expect(shown("fraction")).toContain('inputmode="text"');
  });
});

describe.each(everySheet.filter(({ id }) => drawingOf(id)))("the drawing of $id", ({ id, sheet }) => {
  const Drawing = drawingOf(id);

  test("can be drawn for every answer, and says what it shows", () => {
    fc.assert(
      fc.property(goodRaw(sheet.inputs), fc.constantFrom(...lengthViews), (raw, view) => {
        const { answer, values } = runWorksheet(sheet, raw, catalogue);
        if (!answer || !Drawing) return;
        const svg = renderToString(<Drawing id="a" values={values} outputs={answer.outputs} view={view} shop={catalogue.shop} />);
        expect(svg, JSON.stringify(raw)).not.toMatch(unshowable);
        expect(svg).not.toMatch(/ style=/);
        if (svg !== "")
          expect(svg).toMatch(/role="img"[^>]*aria-labelledby="a-drawing-title"[\s\S]*<desc id="a-drawing-text">[^<]{20,}/);
      }),
      { numRuns: 150 },
    );
  });
});
