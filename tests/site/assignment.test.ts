import type { FrameLocator, Page } from "playwright-core";
import { describe } from "vitest";
import { sidewaysOverflow, smallControls } from "../../scripts/browser/layout.ts";
import { pack } from "../../src/components/packed.ts";
import { assignmentQuery } from "../../src/lib/assign/address.ts";
import { assignmentFile } from "../../src/lib/assign/file.ts";
import { ownQuestion } from "../../src/lib/assign/own-question.ts";
import { resultCode } from "../../src/lib/assign/result-code.ts";
import { bracket, catalogue, worksheetById } from "../assign/shared.ts";
import { serveCoursePage } from "./course-page.ts";
import { whenKept } from "./editions.ts";
import { accessibilityFaults, address, expect, type Open, test } from "./harness.ts";

/** An assignment from its link to the codes handed in, as students and their instructor go through it. */

const query = assignmentQuery(bracket);
const minutes = 60_000;

async function enter(page: Page | FrameLocator, student: string) {
  await page.getByLabel("Your student id").fill(student);
  await page.getByRole("button", { name: "Show my numbers" }).click();
  await page.locator(".task-question").first().waitFor();
}

async function asStudent(open: Open, student: string, options: Parameters<Open>[1] = {}): Promise<Page> {
  const page = await open(`/task/?${query}`, options);
  await enter(page, student);
  return page;
}

const strip = (page: Page | FrameLocator) => page.locator(".task-question").nth(0);
const punch = (page: Page | FrameLocator) => page.locator(".task-question").nth(1);
const verdicts = (page: Page) => page.locator(".verdict").allTextContents();

/** What the question gives, as a student reads it off the page. */
async function given(page: Page): Promise<Record<string, string>> {
  const names = await strip(page).locator(".task-given dt").allTextContents();
  const values = await strip(page).locator(".task-given dd").allTextContents();
  return Object.fromEntries(names.map((name, index) => [name, values[index]?.replace(" yours", "") ?? ""]));
}

/** By hand, for one bend of 90° with K = 0.4: BA = π/2 (R + 0.4 T), BD = 2 (R + T) − BA, L = legs − BD. */
async function byHand(page: Page): Promise<{ legs: number; deduction: number; blank: number }> {
  const read = await given(page);
  const [thickness, radius, one, two] = ["Thickness", "Inside radius", "Leg 1", "Leg 2"].map((name) =>
    Number.parseFloat(read[name] ?? ""),
  ) as [number, number, number, number];
  const deduction = 2 * (radius + thickness) - (Math.PI / 2) * (radius + 0.4 * thickness);
  return { legs: one + two, deduction, blank: one + two - deduction };
}

async function predict(page: Page) {
  await page.getByLabel(/^I expect for blank length/).fill("80");
  await page.getByLabel(/^I expect for bend deduction/).fill("1/8in");
  await page.getByRole("button", { name: "That is my prediction" }).click();
  await page.getByLabel(/^Blank length/).waitFor();
}

async function check(page: Page, question: ReturnType<typeof strip>, answers: Readonly<Record<string, string>>) {
  for (const [label, text] of Object.entries(answers)) await page.getByLabel(new RegExp(`^${label}`)).fill(text);
  await question.getByRole("button", { name: "Check" }).click();
}

/** The force of the second question, to the figure the handbook shows. */
function forceOf(student: string): string {
  const own = ownQuestion(bracket, 1, student, worksheetById, catalogue);
  return `${((own.asked[0]?.right ?? Number.NaN) / 1000).toFixed(1)} kN`;
}

async function doAll(page: Page, student: string): Promise<string> {
  await predict(page);
  const { blank, deduction } = await byHand(page);
  await check(page, strip(page), {
    "Blank length": `${blank.toFixed(2)} mm`,
    "Bend deduction": `${(deduction / 25.4).toFixed(4)} in`,
  });
  await check(page, punch(page), { "Punching force": forceOf(student) });
  await page.locator(".task-done .task-code").waitFor();
  return (await page.locator(".task-done .task-code").textContent()) ?? "";
}

test("two students get other numbers, slips are told, codes say who is done", { timeout: 5 * minutes }, async ({ open }) => {
  const page = await asStudent(open, "  Zoë   ÖZ ");
  const first = await given(page);

  // Without a prediction there are no formulas, and nothing to check.
  expect(await strip(page).locator("summary", { hasText: "Formulas" }).count()).toBe(0);
  await predict(page);
  await expect.poll(() => strip(page).locator("summary", { hasText: "Formulas" }).count()).toBe(1);
  const { legs, blank, deduction } = await byHand(page);

  // The drawing shows what is given, and no answer.
  const drawn = await strip(page).locator("svg.fig").first().textContent();
  expect(drawn).toContain("60");
  for (const answer of [blank, deduction]) expect(drawn).not.toContain(answer.toFixed(1));

  await check(page, strip(page), { "Blank length": String(legs), "Bend deduction": "about 3" });
  await expect
    .poll(() => verdicts(page))
    .toEqual([expect.stringMatching(/sum of the legs alone.*deduction/), expect.stringMatching(/“about 3” is not a length/), ""]);
  await check(page, strip(page), {
    "Blank length": (blank + 2 * deduction).toFixed(2),
    "Bend deduction": `${deduction.toFixed(3)} in`,
  });
  await expect
    .poll(() => verdicts(page))
    .toEqual([
      expect.stringMatching(/deduction added/),
      expect.stringMatching(/right as a length in mm, but it stands there in in/),
      "",
    ]);
  expect(await strip(page).locator(".task-answer .help").first().textContent()).toMatch(/You predicted 80 mm\. 2 tries\./);

  // A reload loses nothing: not the try, not what is half typed.
  await page.getByLabel(/^Blank length/).fill("8");
  await page.reload();
  await expect.poll(() => page.getByLabel(/^Blank length/).inputValue()).toBe("8");
  expect(await strip(page).locator(".task-answer .help").first().textContent()).toMatch(/2 tries\./);
  // The units of the screen do not change what a number was meant in.
  await page.locator("input[name=units][value=inch]").check();
  await check(page, strip(page), {
    "Blank length": `${blank.toFixed(1)}`,
    "Bend deduction": `${(deduction / 25.4).toFixed(4)} in`,
  });
  await expect.poll(() => verdicts(page)).toEqual([expect.stringMatching(/^Right/), expect.stringMatching(/^Right/), ""]);

  // Now the working is there with its numbers.
  const working = strip(page).locator("details[open]", { hasText: "The working with your numbers" });
  await expect.poll(() => working.locator("[data-numbers]:visible").count()).toBeGreaterThan(2);
  expect(await working.textContent()).toContain(blank.toFixed(2));

  await page.getByText("Not finished?").click();
  const part = (await page.locator(".task-code").textContent()) ?? "";
  await check(page, punch(page), { "Punching force": forceOf("zoë öz") });
  await page.locator("section.task-done .task-code").waitFor();
  const done = (await page.locator(".task-code").textContent()) ?? "";
  expect(done).not.toBe(part);
  // As the program in another language, against which the codes are frozen, would write it.
  expect(done).toBe(resultCode(bracket, "zoë öz", ["right", "right"]));
  await page.getByText("Show it as a code to scan").click();
  await page.locator(".task-scan").waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: "dark" });
  expect(await accessibilityFaults(page, ["color-contrast"])).toEqual([]);

  await page.getByRole("button", { name: /Not you/ }).click();
  await enter(page, "s-1002");
  expect(await given(page)).not.toEqual(first);
  const other = await doAll(page, "s-1002");
  // The first student's work is still on the device.
  await page.getByRole("button", { name: /Not you/ }).click();
  await enter(page, "zoë öz");
  await expect.poll(() => page.locator(".task-code").textContent()).toBe(done);

  await page.getByRole("button", { name: "Forget my answers here" }).click();
  await page.getByRole("button", { name: "Yes, forget it" }).click();
  await page.getByLabel("Your student id").waitFor();
  await page.reload();
  // The other student's work is what this device holds of the task now.
  await page.getByRole("button", { name: /Not you/ }).click();
  await enter(page, "zoë öz");
  expect(await page.locator(".task-code").count()).toBe(0);
  expect(await page.getByLabel(/^I expect for blank length/).inputValue()).toBe("");

  const desk = await open(`/answers/?${query}`);
  await desk
    .getByLabel("One student a line, the id first")
    .fill("\uFEFFStudent id;Name\r\nZOË ÖZ;=HYPERLINK(1)\r\ns-1002;Roe\r\ns-1003;Doe\r\n");
  await expect.poll(() => desk.locator(".answers-key tbody tr").count()).toBe(3);
  expect(await desk.locator(".answers-key tbody tr").first().textContent()).toContain(`${blank.toFixed(2)} mm`);
  const wrong = other.replace(/.$/, (sign) => (sign === "7" ? "8" : "7"));
  const elsewhere = resultCode({ ...bracket, title: "Another" }, "s-1003", ["right", "right"]);
  await desk
    .getByLabel("Everything that holds codes")
    .fill(`Hi, here it is:\n${done} thanks!\n> ${part}\nMine: ${wrong}\n${elsewhere}\ns-1003: ${other}`);
  await expect.poll(() => desk.locator(".codes-sum").textContent()).toBe("1 of 3 done · 0 in part · 2 without a code");
  expect(await desk.locator(".codes-refused li").allTextContents()).toEqual([
    expect.stringMatching(/^Line 4: .*not copied right/),
    expect.stringMatching(/^Line 5: .*belongs to another assignment/),
    expect.stringMatching(/^Line 6: .*code of s-1002, but the line names s-1003/),
  ]);
  await desk.getByLabel("Everything that holds codes").fill(`${done}\n${other}`);
  await expect.poll(() => desk.locator(".codes-sum").textContent()).toContain("2 of 3 done");
  expect(await desk.locator(".answers-key tbody tr").nth(1).textContent()).toContain("done");
  expect(await accessibilityFaults(desk)).toEqual([]);

  const [download] = await Promise.all([
    desk.waitForEvent("download"),
    desk.getByRole("button", { name: "Save the table as CSV" }).click(),
  ]);
  const csv = Buffer.concat(await (await download.createReadStream()).toArray()).toString();
  expect(csv).toContain("'=HYPERLINK(1)");
  expect(csv).toContain("1. Blank length [mm]");

  // The list is kept only where that is asked for; codes never.
  await desk.reload();
  await expect.poll(() => desk.getByLabel("One student a line, the id first").inputValue()).toBe("");
  await desk.getByLabel("One student a line, the id first").fill("a\nb");
  await desk.getByLabel("Keep this list on this device").check();
  await desk.reload();
  await expect.poll(() => desk.getByLabel("One student a line, the id first").inputValue()).toBe("a\nb");
  await desk.getByLabel("Keep this list on this device").uncheck();
  await desk.reload();
  await expect.poll(() => desk.getByLabel("One student a line, the id first").inputValue()).toBe("");
});

describe("the narrowest screen", () => {
  test("holds a task, its feedback and its code", { timeout: 3 * minutes }, async ({ open }) => {
    const page = await asStudent(open, "A student with a rather long name in the list", { screen: "narrow" });
    await doAll(page, "A student with a rather long name in the list");
    await strip(page).locator("[data-numbers]:visible").first().waitFor();
    expect(await sidewaysOverflow(page)).toEqual([]);
    expect(await smallControls(page, 44)).toEqual([]);
  });

  test("holds the answers of two hundred students", { timeout: 3 * minutes }, async ({ open }) => {
    const page = await open(`/answers/?${query}`, { screen: "narrow" });
    const ids = Array.from({ length: 200 }, (_, index) => `student ${index}; Name ${index}`);
    await page.getByLabel("One student a line, the id first").fill(ids.join("\n"));
    await expect.poll(() => page.locator(".answers-key tbody tr").count()).toBe(200);
    expect(await sidewaysOverflow(page)).toEqual([]);
    expect(await smallControls(page, 44)).toEqual([]);
  });
});

test("a task works in the frame of a course page on another host, which learns its height", { timeout: 3 * minutes }, async ({
  open,
}) => {
  const page = await open("/task/");
  // The script is the one that `embed-height.ts` documents.
  const course = await serveCoursePage(
    `<iframe src="${address("/task/")}?${query.replaceAll("&", "&amp;")}" title="Task" width="700" height="300"></iframe>
<script>addEventListener("message", ({ data, source }) => {
  if (data?.type !== "flat-to-formed:height") return;
  for (const frame of document.querySelectorAll("iframe"))
    if (frame.contentWindow === source) Object.assign(frame, { height: data.height, id: data.id });
});</script>`,
  );
  try {
    const around = await page.context().newPage();
    await around.goto(course.address);
    const frame = around.frameLocator("iframe");
    await enter(frame, "s-1001");
    await expect.poll(async () => Number(await around.locator("iframe#task").getAttribute("height"))).toBeGreaterThan(1200);
    await expect
      .poll(() => frame.locator("html").evaluate((root) => root.scrollHeight - root.clientHeight))
      .toBeLessThanOrEqual(0);
    // This browser gives a frame of another site no storage: the page says so, and where the task can be kept.
    await expect.poll(() => frame.locator("a", { hasText: "tab of its own" }).count()).toBe(1);
    expect(await frame.locator(".task-page").textContent()).not.toContain("stays in this browser");
  } finally {
    await course.close();
  }
});

test("after one visit a task works without a network", { timeout: 3 * minutes }, async ({ open }) => {
  const page = await open(`/task/?${query}`, { serviceWorker: true });
  await whenKept(page);
  await page.context().setOffline(true);
  await page.reload();
  await enter(page, "s-1001");
  expect(await doAll(page, "s-1001")).toBe(resultCode(bracket, "s-1001", ["right", "right"]));
  await strip(page).locator("[data-numbers]:visible").first().waitFor();
});

describe("a link", () => {
  test("that is packed opens, also when it is pasted", { timeout: 3 * minutes }, async ({ open }) => {
    const packed = `assign.packed=${await pack(query)}`;
    const page = await open("/task/");
    await page.getByLabel("Paste the link of the task").fill(`Your task: ${address("/task/")}?${packed}`);
    await page.getByRole("button", { name: "Open it" }).click();
    await expect.poll(() => page.locator("h1").textContent()).toBe(bracket.title);
    const desk = await open(`/answers/?${packed}`);
    await expect.poll(() => desk.locator("h1").textContent()).toContain(bracket.title);
  });

  test("of which a part is missing says so", { timeout: 5 * minutes }, async ({ open }) => {
    const page = await open("/task/");
    const says = async (path: string, damaged: string, words: string) => {
      await page.goto(address(`${path}?${damaged}`));
      await expect.poll(() => page.locator("h1").textContent(), { message: damaged }).toBe(words);
      expect(await page.locator("[role=alert].message").textContent()).toMatch(/\w/);
    };
    const cut = query.slice(0, query.indexOf("&assign.1.ask"));
    const packed = `assign.packed=${(await pack(query)).slice(0, -20)}`;
    for (const damaged of [
      cut,
      query.replace("bend-length", "bend-lenght"),
      query.replace("assign.version=1", "assign.version=7"),
      packed,
      "assign.packed=nonsense",
    ])
      await says("/task/", damaged, "This link does not work");
    for (const damaged of [cut, packed]) await says("/answers/", damaged, "This assignment cannot be used");
  });

  test("is not the only way: an assignment file opens too, and one that is none says so", { timeout: 3 * minutes }, async ({
    open,
  }) => {
    const page = await open("/task/");
    await page.getByLabel("Paste the link of the task").focus();
    await page.locator("[data-task][data-live]").waitFor();
    const file = (text: string) => ({ name: "task.json", mimeType: "application/json", buffer: Buffer.from(text) });
    await page.locator("input[type=file]").setInputFiles(file("{ not json"));
    await expect.poll(() => page.locator("#open-message").textContent()).toMatch(/task\.json is not an assignment file/);
    await page.locator("input[type=file]").setInputFiles(file('{"version":1,"title":"x"}'));
    await expect.poll(() => page.locator("#open-message").textContent()).toMatch(/task\.json: course must be a text/);
    await page.locator("input[type=file]").setInputFiles(file(assignmentFile(bracket)));
    await expect.poll(() => page.locator("h1").textContent()).toBe(bracket.title);
  });
});

test("the student's page leads nowhere near the answers", { timeout: 3 * minutes }, async ({ open }) => {
  const page = await asStudent(open, "s-1001");
  const links = await page.locator("a").evaluateAll((all) => all.map((each) => each.getAttribute("href") ?? ""));
  expect(links.length).toBeGreaterThan(1);
  expect(links.filter((link) => /\/(answers|assign)\//.test(link))).toEqual([]);
});
