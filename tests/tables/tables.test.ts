import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { allTables } from "../../src/components/tables/all-tables.ts";
import {
  cellOf,
  isKey,
  isNumber,
  markOf,
  originOf,
  originsOf,
  placeOf,
  rowSource,
  type Table,
} from "../../src/components/tables/table.ts";
import { tableLines } from "../../src/components/tables/table-lines.ts";

const catalogue = loadCatalogue();
const tables = allTables(catalogue);
const named = tables.map((table) => [table.id, table] as const);

function tableOf(id: string): Table {
  const found = tables.find((table) => table.id === id);
  if (!found) throw new Error(`no table ${id}`);
  return found;
}

/** The cells of the row that begins with these words, by the heads of their columns. */
function rowOf(id: string, ...first: string[]): Record<string, string> {
  const table = tableOf(id);
  const [head = [], ...rows] = tableLines(catalogue, table);
  const row = rows.find((each) => first.every((word, index) => each[index] === word));
  if (!row) throw new Error(`${id} has no row ${first.join(", ")}`);
  return Object.fromEntries(head.map((name, index) => [name, row[index] ?? ""]));
}

test("every table has a name of its own, which can be part of an address", () => {
  const ids = tables.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  expect(tables.length).toBeGreaterThan(15);
});

describe.each(named)("%s", (_, table) => {
  test("has rows, each with a cell a column, and begins with what a row is about", () => {
    expect(table.rows.length).toBeGreaterThan(2);
    for (const { cells } of table.rows) expect(cells.length).toBe(table.columns.length);
    expect(table.columns[0] && isKey(table.columns[0])).toBe(true);
  });

  test("says of every value where it comes from", () => {
    const without = table.rows.flatMap((row) =>
      table.columns.flatMap((column, index) => {
        if (isKey(column) || cellOf(row.cells[index]).text === "") return [];
        const origin = originOf(table, row, index);
        return origin && catalogue.sources[origin.source] ? [] : [`${cellOf(row.cells[0]).text}: ${column.label}`];
      }),
    );
    expect(without).toEqual([]);
    for (const line of tableLines(catalogue, table).slice(1))
      expect(line.at(-1)).toMatch(/(read|from memory|no document).* \[[a-z0-9-]+\]/);
  });

  test("has heads that can be told apart in a file", () => {
    const [head = []] = tableLines(catalogue, table);
    expect(new Set(head).size).toBe(head.length);
  });

  test("shows numbers that are the exact ones, rounded", () => {
    const wrong = table.rows.flatMap(({ cells }) =>
      cells.flatMap((each, index) => {
        const { text, value } = cellOf(each);
        const column = table.columns[index];
        if (text === "" || value === undefined || !column || !isNumber(column) || /[°′]/.test(text)) return [];
        const decimals = text.split(".")[1]?.length ?? 0;
        const shown = Number(text.replace("−", "-").replace(/\s/g, ""));
        return Math.abs(shown - value) <= 0.5 * 10 ** -decimals + 1e-9 ? [] : [`${text} for ${value}`];
      }),
    );
    expect(wrong).toEqual([]);
  });
});

// Values below were printed elsewhere; each names where.
describe("holds what its sources print", () => {
  test("gauge 16 of plain steel, galvanised and aluminium (gauge lists as in sources.yaml)", () => {
    const row = rowOf("gauges", "16");
    expect(row["Manufacturers' Standard gauge: thickness (in)"]).toBe("0.0598");
    expect(row["Galvanised sheet gauge: thickness (in)"]).toBe("0.0635");
    expect(row["Brown & Sharpe gauge: thickness (in)"]).toBe("0.0508");
    // 0.0598 in × 25.4 by hand.
    expect(row["Manufacturers' Standard gauge: thickness (mm)"]).toBe("1.51892");
  });

  test("33/64 in is 0.515625 in and 13.0969 mm (inch table of any machinist's handbook)", () => {
    const row = rowOf("fractions", "33/64");
    expect(row["Decimal (in)"]).toBe("0.515625");
    expect(Number(row["Length (mm)"]).toFixed(4)).toBe("13.0969");
  });

  test.each([
    ["3", 0.866025],
    ["5", 0.587785],
    ["12", 0.258819],
    // The printed list has 0.2070 here; sin 12° by any table of sines.
    ["15", 0.207912],
    ["24", 0.130526],
  ])("the chord of %s holes is %f diameters (chordal spacing list; tables of sines)", (holes, chord) => {
    expect(Number(rowOf("hole-circle-chords", holes)["Chord ÷ diameter"])).toBeCloseTo(chord, 6);
  });

  test("the second of five holes lies at 0.309 and 0.951 radii (pentagon)", () => {
    const row = rowOf("hole-circle-centres", "5", "2");
    expect(Number(row["To the right ÷ radius"])).toBeCloseTo((Math.sqrt(5) - 1) / 4, 12);
    expect(Number(row["Upwards ÷ radius"])).toBeCloseTo(Math.sqrt(10 + 2 * Math.sqrt(5)) / 4, 12);
  });

  test("1 mm steel: medium force takes 9 to 12 cycles of 0.02 s (ISO 14373 table)", () => {
    const row = rowOf("spot-settings", "0.8", "1", "medium force, longer time");
    expect([row["Weld time at 50 Hz: from (cycles)"], row["Weld time at 50 Hz: to (cycles)"]]).toEqual(["9", "12"]);
    expect([row["Weld time: from (s)"], row["Weld time: to (s)"]]).toEqual(["0.18", "0.24"]);
    expect([row["Current: from (kA)"], row["Current: to (kA)"]]).toEqual(["6", "8"]);
  });

  test("a rivet of 1/8 in takes a drill of 0.1285 in and stands 4 diameters from nothing (manuals)", () => {
    const row = rowOf("rivets", "1/8 in");
    expect(row["Drill, by the handbook: diameter (in)"]).toBe("0.1285");
    expect(row["Least distance: pitch (mm)"]).toBe("9.525");
  });

  test("over 30 to 120 mm is ± 0.3 in the medium class, an angle of 50 mm ± 30′ (ISO 2768-1)", () => {
    expect(rowOf("general-tolerances-lengths", "30", "120")["± for class: m, medium (mm)"]).toBe("0.3");
    expect(rowOf("general-tolerances-angles", "10", "50")["± for class: m, medium (degrees)"]).toBe("0.5");
  });

  test("DC01 of 1.2 mm up to 1200 mm wide is ± 0.06 mm (EN 10131)", () => {
    expect(rowOf("thickness-en-10131-normal", "1", "1.2")["± (mm) for a width of: up to 1200 (mm)"]).toBe("0.06");
  });

  test("what the standard leaves open says so", () => {
    expect(rowOf("general-tolerances-lengths", "0.5", "3")["± for class: v, very coarse (mm)"]).toBe("none given");
  });
});

describe("marks", () => {
  test.each([
    [0, "a"],
    [25, "z"],
    [26, "aa"],
    [51, "az"],
    [52, "ba"],
  ])("number %i is %s", (place, mark) => {
    expect(markOf(place)).toBe(mark);
  });

  test("lead to every origin of the table once", () => {
    const origins = originsOf(tableOf("gauges"));
    expect(origins.map(({ source, seen }) => `${source} ${seen}`).sort()).toEqual(
      [...new Set(origins.map(({ source, seen }) => `${source} ${seen}`))].sort(),
    );
    for (const [place, origin] of origins.entries()) expect(placeOf(origins, { ...origin })).toBe(place);
    expect(() => placeOf(origins, { source: "elsewhere" })).toThrow("elsewhere");
  });
});

test("a row with several sources says which columns each stands for", () => {
  const table: Table = {
    id: "t",
    caption: "T",
    columns: [
      { label: "No.", kind: "key" },
      { label: "from", unit: "mm", group: "Drill", kind: "number", from: { source: "geometry" } },
      { label: "to", unit: "mm", group: "Drill", kind: "number", from: { source: "geometry" } },
      { label: "Pitch", unit: "mm", kind: "number", from: { source: "inch-definition" } },
    ],
    rows: [],
  };
  const [both, part] = [
    { cells: ["1", "2", "3", "4"] },
    { cells: ["1", "2", { text: "3", from: { source: "iso-2768-1", note: "seen once" } }, null] },
  ];
  const words = (id: string) => catalogue.sources[id]?.title.split(/[,:;]/)[0];
  expect(rowSource(catalogue, table, both)).toBe(
    `Drill: ${words("geometry")}, no document [geometry] | Pitch (mm): ${words("inch-definition")}, from memory [inch-definition]`,
  );
  expect(rowSource(catalogue, table, part)).toBe(
    `Drill: from (mm): ${words("geometry")}, no document [geometry] | Drill: to (mm): ${words("iso-2768-1")}, read; seen once [iso-2768-1]`,
  );
});
