import { buffer, text } from "node:stream/consumers";
import { unzipSync } from "fflate";
import type { Locator, Page } from "playwright-core";
import { describe } from "vitest";
import { assignmentFromAddress } from "../../src/lib/assign/address.ts";
import { readAssignment } from "../../src/lib/assign/file.ts";
import { ownTexts } from "../../src/lib/assign/own-numbers.ts";
import { worksheetById } from "../../src/lib/registry.ts";
import { readXml } from "../assign/xml-reader.ts";
import { accessibilityFaults, address, expect, type Open, type OpenOptions, test } from "./harness.ts";

/** The page on which an instructor makes an assignment: from nothing to a link, paper and files. */

const bracket =
  "assign.version=1&assign.title=Blank+of+a+bracket&assign.course=Sheet+metal+1&assign.1.calculator=bend-length" +
  "&assign.1.range.thickness=1mm:2mm:0.25mm&assign.1.range.legs.0.leg=40mm:80mm:5mm&assign.1.ask.blank=0.2mm" +
  "&assign.2.calculator=punch-load&assign.2.choices.material=steel-cr;al-5052-h32&assign.2.ask.force=2%25&assign.2.predict=yes";

const handOut = (page: Page) => page.locator(".hand-out-links[data-ready]");
const ready = (page: Page) => page.locator("[data-assign][data-live]").waitFor();

async function openAssign(open: Open, query = "", options: OpenOptions = {}): Promise<Page> {
  const page = await open(`/assign/${query === "" ? "" : `?${query}`}`, options);
  if (query !== "") await ready(page);
  return page;
}

/** What the page wrote to the clipboard, which a test may not read in every browser. */
async function catchCopies(page: Page): Promise<() => Promise<string>> {
  await page.evaluate(() => {
    Object.defineProperty(navigator.clipboard, "writeText", {
      value: async (written: string) => {
        document.documentElement.dataset.copied = written;
      },
    });
  });
  return () => page.evaluate(() => document.documentElement.dataset.copied ?? "");
}

/** Counts what a person does: a click, a choice, and each word typed. */
function counted(page: Page) {
  let clicks = 0;
  let letters = 0;
  return {
    async click(target: Locator) {
      clicks++;
      await target.click();
    },
    /** Opening a list and taking one of it. */
    async choose(target: Locator, value: string) {
      clicks += 2;
      await target.selectOption(value);
    },
    async type(target: Locator, words: string) {
      clicks++;
      letters += words.length;
      await target.fill(words);
    },
    sum: () => ({ clicks, letters, page: page.url() }),
  };
}

describe("making an assignment", () => {
  test("from nothing to a link in a course page takes a few clicks and words", async ({ open }) => {
    const page = await openAssign(open);
    const copied = await catchCopies(page);
    const hand = counted(page);
    await hand.type(page.locator("#assign-title"), "Blank of a bracket");
    await hand.type(page.locator("#assign-course"), "Sheet metal 1");
    await hand.choose(page.locator("#assign-pick"), "bend-length");
    await hand.click(page.getByRole("button", { name: "Add", exact: true }));
    await handOut(page).waitFor();
    await hand.click(page.getByRole("button", { name: "Copy for a course page" }));
    await expect.poll(copied).toContain("<iframe");
    // A minute for every ten clicks and a second a letter would still be less than three minutes.
    const { clicks, letters } = hand.sum();
    expect(clicks).toBeLessThanOrEqual(7);
    expect((clicks * 60) / 10 + letters).toBeLessThan(180);

    await page.getByRole("button", { name: "Copy the link for students" }).click();
    await expect.poll(copied).toMatch(/^http/);
    const link = new URL(await copied());
    expect(link.pathname).toBe(new URL(address("/task/")).pathname);
    const assignment = assignmentFromAddress(link.searchParams);
    expect(assignment).toMatchObject({ title: "Blank of a bracket", course: "Sheet metal 1" });
    expect(assignment?.questions[0]).toMatchObject({
      calculator: "bend-length",
      asked: [{ output: "blank", tolerance: "0.2mm" }],
    });

    // The numbers shown are those that the library draws for this student.
    const [question] = assignment?.questions ?? [];
    const own = ownTexts(worksheetById("bend-length")?.inputs ?? {}, question as never, 0, {
      course: "Sheet metal 1",
      student: "A. Example",
    });
    const shown = await page.locator(".assign-result .own").allTextContents();
    expect(shown.join(" ").replaceAll(" mm", "mm")).toContain(own["legs.0.leg"]);
  });

  test("a reload keeps everything, also what cannot be used, and says what is wrong at its field", async ({ open }) => {
    const page = await openAssign(open, bracket);
    await handOut(page).waitFor();
    await page.locator("#assign-1-varied-thickness-to").fill("90");
    await expect.poll(() => page.locator(".faults .fault").count()).toBe(1);
    expect(await page.locator(".faults .fault").textContent()).toContain("Thickness");
    await expect.poll(() => page.locator("#assign-1-varied-thickness-to").getAttribute("aria-invalid")).toBe("true");
    await expect.poll(() => page.url()).toContain("range.thickness=1mm:90mm:0.25mm");
    expect(await handOut(page).count()).toBe(0);
    await page.reload();
    await ready(page);
    await expect.poll(() => page.locator(".faults .fault").count()).toBe(1);
    expect(await page.locator("#assign-1-varied-thickness-to").inputValue()).toBe("90");
    expect(await page.locator("#assign-title").inputValue()).toBe("Blank of a bracket");
    await page.locator("#assign-1-varied-thickness-to").fill("2");
    await handOut(page).waitFor();
  });

  test("questions are moved, copied, removed and brought back", async ({ open }) => {
    const page = await openAssign(open, bracket);
    const heads = () => page.locator(".question > h3").allTextContents();
    await expect.poll(heads).toEqual(["1. Length of a bent strip", "2. Load on the punch"]);
    await page.getByRole("button", { name: "Move up: question 2" }).click();
    await expect.poll(heads).toEqual(["1. Load on the punch", "2. Length of a bent strip"]);
    await page.getByRole("button", { name: "Copy: question 1" }).click();
    await expect.poll(heads).toHaveLength(3);
    await page.getByRole("button", { name: "Remove: question 3" }).click();
    await expect.poll(heads).toEqual(["1. Load on the punch", "2. Load on the punch"]);
    await page.getByRole("button", { name: "Bring it back" }).click();
    await expect.poll(heads).toHaveLength(3);
    await expect.poll(() => page.url()).toContain("assign.3.calculator=bend-length");
  });

  test("a long one is packed in the address and comes back from it; the file comes back too", async ({ open }) => {
    const page = await openAssign(open, bracket);
    await handOut(page).waitFor();
    await page.locator("#assign-intro").fill("Work by hand with the formulas of the page. ".repeat(20));
    await expect.poll(() => page.url()).toContain("assign.packed=1.");
    await page.reload();
    await ready(page);
    await expect.poll(() => page.locator("#assign-intro").inputValue()).toHaveLength(880);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save assignment file" }).click(),
    ]);
    const saved = await text(await download.createReadStream());
    expect(readAssignment(JSON.parse(saved)).questions).toHaveLength(2);
    await page.getByRole("button", { name: "Begin a new one" }).click();
    await expect.poll(() => page.locator(".question").count()).toBe(0);
    const file = { name: "bracket.json", mimeType: "application/json", buffer: Buffer.from(saved) };
    await page.locator(".open-file input").setInputFiles(file);
    await expect.poll(() => page.locator(".question").count()).toBe(2);
    await page.locator(".open-file input").setInputFiles({ ...file, name: "broken.json", buffer: Buffer.from("{") });
    await expect.poll(() => page.locator(".assign-files .message").textContent()).toContain("broken.json");
    expect(await page.locator(".question").count()).toBe(2);
  });

  test("a whole part is asked about with the sizes of a link to its plan", async ({ open }) => {
    const page = await openAssign(open, "assign.version=1&assign.title=Part&assign.course=SM1");
    await page.locator("#assign-pick").selectOption("plan");
    await page.getByRole("button", { name: "Add", exact: true }).click();
    await page.locator(".question .asked").waitFor();
    await page.getByText("Take the values from a link").click();
    await page.getByLabel("Link with the values").fill(address("/plan/?plan.name=Clip&plan.width=70mm&plan.north=22mm:90deg:up"));
    await page.getByRole("button", { name: "Take them over" }).click();
    await expect.poll(() => page.url()).toContain("fix.name=Clip");
    await expect
      .poll(() => page.locator(".assign-result .as-student").textContent())
      .toContain("Base width, west to east: 70 mm");
  });
});

describe("what comes out", () => {
  test("question bank as QTI package and as table", async ({ open }) => {
    const page = await openAssign(open, bracket);
    await handOut(page).waitFor();
    await page.locator("#assign-sets").fill("3");
    const [zip] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Download question bank (QTI 2.1)" }).click(),
    ]);
    expect(zip.suggestedFilename()).toBe("blank-of-a-bracket-qti.zip");
    const files = unzipSync(new Uint8Array(await buffer(await zip.createReadStream())));
    const paths = Object.keys(files);
    expect(paths).toContain("imsmanifest.xml");
    // Three sets of the first question; of two metals there are two.
    expect(paths.filter((path) => path.startsWith("items/q1-"))).toHaveLength(3);
    for (const path of paths) readXml(new TextDecoder().decode(files[path]));
    const [csv] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Download question bank (CSV)" }).click(),
    ]);
    const lines = (await text(await csv.createReadStream())).trim().split("\r\n");
    expect(lines).toHaveLength(paths.filter((path) => path.startsWith("items/")).length + 1);

    await page.locator("#assign-sets").fill("0");
    expect(await page.getByRole("button", { name: "Download question bank (CSV)" }).isDisabled()).toBe(true);
    expect(await page.locator("#assign-sets-message").textContent()).toContain("from 1 to 100");
  });

  test("question sheets on paper, the key on a page of its own", async ({ open }) => {
    const page = await openAssign(open, bracket);
    await handOut(page).waitFor();
    await page.locator("#assign-sets").fill("2");
    // What the button asks of the browser, without its dialogue.
    await page.evaluate(() => {
      window.print = () => dispatchEvent(new Event("beforeprint"));
    });
    await page.getByRole("button", { name: "Print question sheets and key" }).click();
    await page.locator(".paper-sheets").waitFor({ state: "attached" });
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".paper-sheet").count()).toBe(2);
    expect(await page.locator(".paper-key").textContent()).toContain("Answer key: Blank of a bracket");
    expect(await page.locator(".paper-sheet").nth(1).textContent()).toContain("enter “bank 2” as the student id");
    for (const hidden of [".assign-form", ".assign-result", ".site-head"])
      expect(await page.locator(hidden).isVisible()).toBe(false);
    const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
    // Two sheets, and the key on a page of its own.
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(3);
  });

  test("code to scan holds the link", async ({ open }) => {
    const page = await openAssign(open, bracket);
    await handOut(page).waitFor();
    await page.getByText("Code to scan").click();
    expect(await page.locator(".scan-code .code-ink").getAttribute("d")).toMatch(/^M4 4h7/);
  });

  test("a student opens the link and finds the title", async ({ open }) => {
    const page = await openAssign(open, bracket);
    await handOut(page).waitFor();
    const link = await page.getByRole("link", { name: "Open as a student" }).getAttribute("href");
    const student = await open(String(link).slice(address("").length), { beside: page });
    await student.getByText("Blank of a bracket").first().waitFor();
  });
});

describe("the page", () => {
  test("has no faults that axe finds, filled", async ({ open }) => {
    const page = await openAssign(open, bracket);
    await handOut(page).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  }, 240_000);

  test("has no faults that axe finds, empty and dark", async ({ open }) => {
    const page = await openAssign(open, "", { colorScheme: "dark" });
    expect(await accessibilityFaults(page)).toEqual([]);
  }, 240_000);

  test("fits 320 px, with targets of 44 px", async ({ open }) => {
    const page = await openAssign(open, bracket, { screen: "narrow" });
    await handOut(page).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    const small = await page
      .locator(".assign-body :is(button, select, input[type=text], textarea, .tick-line)")
      .evaluateAll((all) =>
        all.flatMap((each) => {
          const { height, width } = each.getBoundingClientRect();
          return width > 0 && height < 43.5 ? [`${each.outerHTML.slice(0, 80)} ${height}`] : [];
        }),
      );
    expect(small).toEqual([]);
  });

  test("without scripts shows how it works and an assignment that is made", async ({ open }) => {
    const page = await open("/assign/", { javaScript: false });
    const words = (await page.locator("main").textContent()) ?? "";
    expect(words).toContain("Scripts are off");
    expect(words).toContain("Nothing is sent anywhere");
    expect(words).toContain("Prove who worked");
    expect(await page.locator(".assign-example .as-student").isVisible()).toBe(true);
    expect(await page.locator(".assign-form").isVisible()).toBe(false);
  });

  test("a damaged address says so and is left as it is", async ({ open }) => {
    const page = await openAssign(open, "assign.version=1&assign.nonsense=3");
    await page.locator(".damage").waitFor();
    expect(await page.locator(".damage").textContent()).toContain("assign.nonsense");
    expect(page.url()).toContain("assign.nonsense=3");
  });
});
