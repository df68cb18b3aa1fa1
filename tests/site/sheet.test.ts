import type { Locator, Page } from "playwright-core";
import { describe } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import type { CutFault, Part, Placed, SheetCuts } from "../../src/lib/sheet/cut-order.ts";
import type { Piece, Sheet, SheetJob } from "../../src/lib/sheet/model.ts";
import { replayAll } from "../sheet/replay.ts";
import { accessibilityFaults, expect, type Open, test } from "./harness.ts";

/** The page that cuts blanks out of sheets. Every plan is read from the page and replayed by the independent checker. */

const { shear } = loadCatalogue().shop;
const limits = {
  longestCut: shear.cuttingLength,
  shortestHold: shear.shortestPiece,
  shortestStop: shear.shortestStop,
  longestStop: shear.longestStop,
};
const stock: Sheet = { name: "", width: 1250, length: 2500 };
const piece = (name: string, width: number, length: number, count: number, grain: Piece["grain"] = "free"): Piece => ({
  name,
  width,
  length,
  count,
  grain,
});
const job = (pieces: readonly Piece[], more: Partial<SheetJob> = {}): SheetJob => ({
  sheets: [stock],
  trim: 0,
  pieces,
  shear: limits,
  ...more,
});
const trays = piece("tray", 226, 276, 30);

const address = (pieces: readonly Piece[], more = "") =>
  `/sheet/?sheet.pieces=${pieces.map(({ name, width, length, count, grain }) => [name, `${width}mm`, `${length}mm`, count ?? "", grain].join(":")).join(";")}${more}`;

/** Pieces that no two of fit together well: the best plan of them cannot be proved in a short time. */
const awkward = Array.from({ length: 80 }, (_, index) =>
  piece(`P${index + 1}`, 151 + ((index * 97) % 389), 163 + ((index * 181) % 547), 1 + (index % 5)),
);

async function live(open: Open, path: string, options: Parameters<Open>[1] = {}) {
  const page = await open(path, options);
  await page.locator("[data-cut-plan]").hover();
  await page.locator("[data-cut-plan][data-live]").waitFor();
  return page;
}
const settled = async (page: Page) => {
  await page.locator(".plan-result:not(.stale)").waitFor({ timeout: 60_000 });
  await page.locator('.cut-progress[data-state="working"]').waitFor({ state: "detached", timeout: 60_000 });
};

const textOf = async (where: Locator) => ((await where.textContent()) ?? "").trim();
const pair = (text: string) => {
  const [width = Number.NaN, length = Number.NaN] = text.split(" × ").map(Number);
  return { width, length };
};
function partOf(words: string, size: string): Part {
  const [, kind, id = ""] = /^(plate|offcut) ([\d.]+)$/.exec(words) ?? [];
  if (words === "the sheet") return { id: "", kind: "plate", ...pair(size) };
  if (words === "trim") return { id: "trim", kind: "trim", ...pair(size) };
  if (kind) return { id, kind: kind === "plate" ? "plate" : "rest", ...pair(size) };
  const [letter = ""] = words.split(" ");
  expect(letter, words).toMatch(/^[A-Z]{1,2}$/);
  const number = [...letter].reduce((sum, sign) => 26 * sum + sign.charCodeAt(0) - 64, 0) - 1;
  return { id: letter, kind: "piece", piece: number, ...pair(size) };
}
const faultOf = (note: string): CutFault[] => [
  ...(note.includes("longer than the shear") ? (["longer-than-shear"] as const) : []),
  ...(note.includes("hold-downs") ? (["too-small-to-hold"] as const) : []),
];

const cells = (table: Locator) =>
  table
    .locator("tbody tr")
    .evaluateAll((rows) => rows.map((each) => [...each.children].map((cell) => cell.textContent?.trim() ?? "")));

/** The plan as the page shows it: sizes, strokes, places, stop settings. */
async function planOnPage(page: Page, { sheets }: Pick<SheetJob, "sheets">) {
  const layouts = await page.locator(".cut-layout").count();
  const read: { sheet: number; times: number; cuts: SheetCuts }[] = [];
  for (let index = 0; index < layouts; index += 1) {
    const layout = page.locator(".cut-layout").nth(index);
    const [, first, last, said = ""] =
      /^Sheets? (\d+)(?: to (\d+), cut alike)?: (.*) mm\.$/.exec(await textOf(layout.locator("figcaption strong"))) ?? [];
    const fold = layout.locator("details.cut-every");
    if ((await fold.getAttribute("open")) === null) await fold.locator("summary").click();
    await fold.locator("table").nth(1).waitFor();
    const [name = "", size = ""] = said.includes(", ") ? said.split(", ") : ["", said];
    const sheet = sheets.findIndex((each) => {
      const { width, length } = pair(size);
      return each.name === name && each.width === width && each.length === length;
    });
    const strokes = await cells(fold.locator("table").first());
    const places = await cells(fold.locator("table").nth(1));
    const steps = await cells(layout.locator(".cut-steps table"));
    const placed = places.map(
      ([what = "", partSize = "", along = "", across = "", lies = ""]): Placed => ({
        ...partOf(what, partSize),
        ...(lies === "" ? {} : { turned: lies === "turned" }),
        x: Number(across),
        y: Number(along),
      }),
    );
    const cuts = strokes.map(
      ([
        ,
        put = "",
        putSize = "",
        stop = "",
        end = "",
        blade = "",
        off = "",
        offSize = "",
        held = "",
        heldSize = "",
        note = "",
      ]) => ({
        from: partOf(put, putSize),
        across: end === "left" || end === "right" ? ("length" as const) : ("width" as const),
        cutLength: Number(blade),
        ...(stop === "line" ? {} : { stop: Number(stop) }),
        off: partOf(off, offSize),
        offAt: end === "left" || end === "bottom" ? ("start" as const) : ("end" as const),
        held: partOf(held, heldSize),
        faults: faultOf(note),
      }),
    );
    const stopSettings = steps.filter(([, stop = ""]) => /^\d/.test(stop)).length;
    read.push({
      sheet,
      times: last ? Number(last) - Number(first) + 1 : 1,
      cuts: {
        cuts,
        pieces: placed.filter(({ kind }) => kind === "piece"),
        offcuts: placed.filter(({ kind }) => kind === "rest"),
        settings: [],
        stopSettings,
      },
    });
    // The steps are the strokes: the same number of each setting.
    expect(steps.reduce((sum, [, , count]) => sum + Number(count), 0)).toBe(cuts.length);
  }
  return read;
}

async function expectGood(page: Page, of: SheetJob) {
  await settled(page);
  const sheets = await planOnPage(page, of);
  expect(sheets.length).toBeGreaterThan(0);
  expect(replayAll(of, sheets, true)).toEqual([]);
  const count = sheets.reduce((sum, { times }) => sum + times, 0);
  expect(await textOf(page.locator(".plan-answer output").first())).toBe(String(count));
  return sheets;
}
/** Stops the planning as soon as there is a plan, within the page: on a busy machine it might be over before a click arrives. */
async function stop(page: Page): Promise<string> {
  const said = await page.waitForFunction(
    () => {
      const button = document.querySelector<HTMLButtonElement>('.cut-progress[data-state="working"] button');
      const text = document.querySelector(".cut-progress p")?.textContent;
      button?.click();
      return button ? text : undefined;
    },
    undefined,
    { timeout: 60_000, polling: 20 },
  );
  await page.locator('.cut-progress[data-state="stopped"]').waitFor();
  return String(await said.jsonValue());
}
const goodness = (page: Page) => textOf(page.locator(".cut-goodness"));

describe("a plan on the page", () => {
  test("the example stands there without scripts, and its drawing has every piece and stroke", async ({ open }) => {
    const page = await open("/sheet/", { javaScript: false });
    expect(await goodness(page)).toMatch(/^Proved best: no cuts from edge to edge do with fewer than 1 sheet\./);
    expect(await page.locator(".cut-layout svg .cut-piece").count()).toBe(42);
    const strokes = await cells(page.locator(".cut-steps table"));
    expect(await page.locator(".cut-layout svg .cut-stroke").count()).toBe(
      strokes.reduce((sum, [, , count]) => sum + Number(count), 0),
    );
    expect(await page.getByText("Scripts are off").isVisible()).toBe(true);
  });

  test("thirty trays typed: proved best with the bound shown, replayed without a fault", async ({ open }) => {
    const page = await live(open, "/sheet/");
    await expectGood(page, job([trays, piece("lid", 182, 232, 12)]));
    const start = Date.now();
    await page.getByLabel("Number 1").fill("60");
    await page.locator(".plan-result.stale").waitFor();
    await settled(page);
    expect(Date.now() - start).toBeLessThan(20_000);
    await expectGood(page, job([{ ...trays, count: 60 }, piece("lid", 182, 232, 12)]));
    expect(await goodness(page)).toMatch(/^Proved best: .* fewer than 2 sheets/);
    expect(new URL(page.url()).search).toContain("sheet.pieces=tray:226mm:276mm:60:free;lid");
  });

  test("grain is kept, several sizes and an offcut are used, and a reload keeps it all", async ({ open }) => {
    const pieces = [piece("door", 400, 900, 4, "along"), piece("shelf", 300, 380, 9, "across"), piece("clip", 60, 90, 40)];
    const sheets = [
      { ...stock, count: 1 },
      { name: "", width: 1000, length: 2000 },
      { name: "rest of ducts", width: 310, length: 800, count: 1 },
    ];
    const path = address(
      pieces,
      "&sheet.sheetCount=1&sheet.others=:1000mm:2000mm:;rest+of+ducts:310mm:800mm:1&sheet.thickness=1mm",
    );
    const page = await live(open, path);
    const first = await expectGood(page, job(pieces, { sheets }));
    expect(await goodness(page)).toMatch(
      /^(Proved best: .* less than|Within [\d.]+ % of the bound: every plan needs at least) [\d.]+ m² of these sheets\.$/,
    );
    await page.reload();
    await page.locator("[data-cut-plan][data-live]").waitFor();
    expect(await expectGood(page, job(pieces, { sheets }))).toEqual(first);
  });

  test("one sheet filled says how near the best it is", async ({ open }) => {
    const page = await live(
      open,
      "/sheet/?sheet.goal=fill-one-sheet&sheet.sheetWidth=1000mm&sheet.sheetLength=1000mm&sheet.pieces=a:310mm:420mm;b:205mm:335mm",
    );
    await settled(page);
    expect(await goodness(page)).toMatch(/^Proved best: no cuts from edge to edge get more than 0\.\d+ m² out of one sheet\.$/);
    const of = job([piece("a", 310, 420, 99), piece("b", 205, 335, 99)], { sheets: [{ name: "", width: 1000, length: 1000 }] });
    expect(replayAll(of, await planOnPage(page, of), false)).toEqual([]);
  });

  test("can be stopped, keeps the best so far, and begins anew when something is typed", async ({ open }) => {
    const page = await live(open, address(awkward));
    expect(await stop(page)).toMatch(/Best so far \d+ sheets?; no plan can beat \d+ sheets?; within/);
    expect(await goodness(page)).toMatch(/^Stopped: .* Within [\d.]+ % of the bound: every plan needs at least \d+ sheets?\.$/);
    await expectGood(page, job(awkward));
    await page.getByLabel("Number 1", { exact: true }).fill("9");
    await stop(page);
    await expectGood(page, job([{ ...(awkward[0] as Piece), count: 9 }, ...awkward.slice(1)]));
  });
});

describe("where pieces and sheets come from", () => {
  test("a pasted list: good lines are planned, bad ones stay with their messages, also after a reload", async ({ open }) => {
    const page = await live(open, "/sheet/");
    await page.getByText("Paste a list").click();
    const box = page.getByLabel("Lines from a spreadsheet or CSV file");
    await box.fill("Qty;Length (mm);Width (mm);Part;Grain\n6;300,5;200,25;bracket;along\n3;huge;100;plate;\n4;120;80;clip;");
    await page.getByRole("button", { name: "Take these pieces instead" }).click();
    await page.locator(".cut-paste .message li").waitFor();
    expect(await textOf(page.locator(".cut-paste .message"))).toMatch(/^Line 3: Length: /);
    expect(await box.inputValue()).toBe("Qty;Length (mm);Width (mm);Part;Grain\n3;huge;100;plate;");
    const pieces = [piece("bracket", 200.25, 300.5, 6, "along"), piece("clip", 80, 120, 4)];
    await expectGood(page, job(pieces));
    await page.reload();
    await page.locator("[data-cut-plan][data-live]").waitFor();
    expect(await box.inputValue()).toBe("Qty;Length (mm);Width (mm);Part;Grain\n3;huge;100;plate;");
    await box.fill("plate;100;100;3");
    await page.getByRole("button", { name: "Add to the pieces" }).click();
    await page.getByText("1 line taken.").waitFor();
    expect(await page.getByLabel("Name 3").inputValue()).toBe("plate");
  });

  test("the blanks of a plan with their number, size and grain", async ({ open }) => {
    const page = await open(
      "/plan/?plan.name=Clip&plan.quantity=24&plan.thickness=1mm&plan.width=80mm&plan.depth=40mm&plan.north=25mm:90deg:up:",
    );
    await page.locator("[data-plan][data-live]").waitFor();
    const blank = await textOf(page.locator(".plan-answer output").first());
    const { width, length } = pair(blank.replaceAll(" mm", ""));
    await page.getByRole("link", { name: "Cut these blanks out of stock sheets" }).click();
    await page.locator("[data-cut-plan][data-live]").waitFor();
    await settled(page);
    const rows = await cells(page.locator(".cut-pieces table"));
    expect(rows[0]?.slice(1, 6)).toEqual(["Clip", `${width.toFixed(2)} × ${length.toFixed(2)}`, "24", "24", "along its length"]);
    expect(rows.length).toBeGreaterThan(1);
    expect(await textOf(page.locator(".cut-sheet .title-block"))).toContain("1.00 mm");
  });

  test("an offcut is kept, used in another job, and taken off when it is cut", async ({ open }) => {
    const page = await live(open, `${address([piece("base", 1000, 1200, 1, "along")])}&sheet.thickness=1mm&sheet.name=Ducts`);
    await settled(page);
    const size = pair((await cells(page.locator(".cut-rests table")))[0]?.[2] ?? "");
    await page.getByRole("button", { name: "Keep as stock on this device" }).first().click();
    await page.getByText("kept on this device", { exact: true }).waitFor();
    const name = await textOf(page.locator(".cut-shelf li strong"));
    expect(name).toMatch(/^Ducts /);

    const clips = piece("clip", 100, 100, 4);
    const next = await live(open, `${address([clips])}&sheet.thickness=1mm`, { beside: page });
    await next.getByRole("button", { name: "Use in this plan" }).click();
    await next.getByText("in this plan", { exact: true }).waitFor();
    await next
      .locator(".plan-result.stale")
      .waitFor({ timeout: 2000 })
      .catch(() => undefined);
    const sheets = [stock, { name, ...size, count: 1 }];
    const plan = await expectGood(next, job([clips], { sheets }));
    expect(plan.map(({ sheet }) => sheet)).toEqual([1]);
    await next.getByRole("button", { name: "These are cut" }).click();
    await next.getByText("None yet.").waitFor();
    // The other page sees it too.
    await page.getByText("None yet.").waitFor();
  });

  test("another metal’s offcut is not offered, and one can be removed", async ({ open }) => {
    const page = await live(open, `${address([piece("base", 1000, 1200, 1, "along")])}&sheet.thickness=1mm`);
    await settled(page);
    await page.getByRole("button", { name: "Keep as stock on this device" }).first().click();
    await page.locator(".cut-shelf li").waitFor();
    await page.getByLabel("Thickness").fill("2");
    await page.getByText("another metal or thickness").waitFor();
    await page.getByRole("button", { name: /^Remove “Class set .*” from this device$/ }).click();
    await page.getByText("None yet.").waitFor();
  });

  test("a sheet of the shop’s stock", async ({ open }) => {
    const page = await live(open, address([trays]));
    const { width, length, thickness } = loadCatalogue().shop.stock[1] as { width: number; length: number; thickness: number };
    await page.getByLabel("From this shop’s stock").selectOption("1");
    await page.getByRole("button", { name: "Take as the sheet" }).click();
    expect(await page.getByLabel("Width of the sheet").inputValue()).toBe(String(width));
    expect(Number(await page.getByLabel("Thickness").inputValue())).toBe(thickness);
    await page
      .locator(`.cut-layout figcaption strong:has-text("${width.toFixed(2)} × ${length.toFixed(2)}")`)
      .first()
      .waitFor();
    await expectGood(page, job([trays], { sheets: [{ name: "", width, length }] }));
  });
});

describe("what cannot be planned", () => {
  test.for([
    ["a piece larger than every sheet", address([piece("wall", 1300, 2600, 1)]), /“wall”.* is larger than every sheet/],
    ["no number", address([{ ...trays, count: 0 }]), /Number must be a? ?(whole number )?from 1 to 9999; it is 0/],
    ["ten thousand", address([{ ...trays, count: 10_000 }]), /from 1 to 9999; it is 10000/],
    [
      "ten thousand together",
      address([
        { ...trays, count: 5000 },
        { ...trays, name: "lid", count: 5000 },
      ]),
      /1 to 9999 pieces in all; there are 10000/,
    ],
    ["no pieces", "/sheet/?sheet.pieces=", /must hold 1 to 200 pieces; it holds 0/],
    [
      "against its grain",
      address([piece("strip", 300, 1500, 1, "across")]),
      /“strip”.* fits the sheet only the other way round, against its grain/,
    ],
    [
      "too few sheets",
      address([trays], "&sheet.sheetWidth=300mm&sheet.sheetLength=300mm&sheet.sheetCount=2"),
      /No way was found to get all the pieces out of the sheets/,
    ],
  ] as const)("%s: one message, and nothing is lost", async ([, path, message], { open }) => {
    const page = await live(open, path);
    const before = new URL(page.url()).search;
    await page.locator(".stale-mark").waitFor({ timeout: 30_000 });
    expect(await page.locator(".stale-mark").count()).toBe(1);
    expect(await textOf(page.locator(".stale-mark"))).toMatch(message);
    expect(new URL(page.url()).search).toBe(before);
  });

  test("the link that is copied keeps what is fixed and the units the page was asked for", async ({ open }) => {
    const query = "sheet.thickness=1.5mm&sheet.trim=5mm&sheet.fixed=thickness,trim&units=inch";
    const page = await open(`/sheet/?${query}`);
    await page.locator("[data-cut-plan][data-live]").waitFor();
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await page.getByRole("button", { name: "Copy link to this plan" }).click();
    await expect.poll(() => page.locator(".copied").first().textContent()).not.toBe("");
    const copied = new URL(await page.evaluate(() => navigator.clipboard.readText()));
    expect(copied.pathname).toBe(new URL(page.url()).pathname);
    expect(Object.fromEntries(copied.searchParams)).toEqual(Object.fromEntries(new URLSearchParams(query)));
  });

  test("a damaged packed link says so", async ({ open }) => {
    const page = await open("/sheet/?sheet.packed=1.nonsense");
    await page.locator("[data-cut-plan][data-live]").waitFor();
    expect(await textOf(page.locator(".plan-form > .message[role=alert]"))).toMatch(/damaged/);
  });
});

describe("on paper, on a phone, for everyone", () => {
  test("prints drawing, settings and offcuts: the class set on one sheet, two kinds of layout on few", async ({ open }) => {
    const page = await live(open, "/sheet/");
    await settled(page);
    for (const format of ["A4", "Letter"]) {
      const pdf = (await page.pdf({ format })).toString("latin1");
      expect(pdf.match(/\/Type\s*\/Page\b/g)?.length, format).toBeLessThanOrEqual(2);
    }
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".cut-layout svg").first().isVisible()).toBe(true);
    expect(await page.locator(".cut-steps table").first().isVisible()).toBe(true);
    expect(await page.locator(".cut-rests table").isVisible()).toBe(true);
    expect(await page.locator(".plan-form").isVisible()).toBe(false);
  });

  test.for(["light", "dark"] as const)("fits 320 px and has no fault of access, %s", async (colorScheme, { open }) => {
    const page = await live(
      open,
      address(
        [trays, piece("lid", 182, 232, 12)],
        "&sheet.others=offcut:300mm:900mm:1&sheet.goal=fewest-sheets&sheet.thickness=1mm",
      ),
      {
        screen: "narrow",
        colorScheme,
      },
    );
    await settled(page);
    await page.getByText("Paste a list").click();
    await page.locator("details.cut-every summary").first().click();
    await page.locator("details.cut-every table").nth(1).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});
