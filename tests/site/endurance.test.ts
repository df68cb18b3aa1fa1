import type { CDPSession, Page } from "playwright-core";
import { address, expect, test } from "./harness.ts";

/** One day at the screen: 200 visitors, each of whom touches it 50 times and walks away. */
const visitors = 200;
const touches = 50;
/** From one visitor's last touch to the next one's first [ms]: long enough to be forgotten and for cards to come. */
const between = (8 * 3_600_000) / visitors;

/** In the page: touches one visible control after the other, chosen by a fixed series. @returns headings it passed, and answers */
async function visit({ seed, count }: { seed: number; count: number }): Promise<{ seen: string[]; answers: number }> {
  // Timers of the page are held by the test's clock; a message is not.
  const rendered = () =>
    new Promise<void>((done) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        port1.close();
        done();
      };
      port2.postMessage(0);
    });
  const seen = new Set<string>();
  let answers = 0;
  let state = seed;
  const next = (below: number) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
  // Wakes the screen where it rests.
  document.body.dispatchEvent(new KeyboardEvent("keydown", { key: "Shift", bubbles: true, cancelable: true }));
  await rendered();
  for (let touch = 0; touch < count; touch += 1) {
    // The one that changes the language opens another page, and with it another day.
    const controls = [...document.querySelectorAll<HTMLElement>(".screen :is(button:not(.language), input, select)")].filter(
      (each) => each.offsetParent !== null && !each.matches(":disabled"),
    );
    const control = controls[next(controls.length)];
    if (!control) throw new Error("Nothing to touch");
    control.dispatchEvent(new PointerEvent("pointerdown", { bubbles: true, cancelable: true }));
    control.dispatchEvent(new PointerEvent("pointerup", { bubbles: true, cancelable: true }));
    control.focus();
    control.click();
    await rendered();
    await rendered();
    seen.add(document.querySelector("h1")?.textContent ?? "");
    answers += document.querySelectorAll(".answers dd").length;
  }
  return { seen: [...seen], answers };
}

interface Held {
  readonly nodes: number;
  readonly listeners: number;
  readonly heap: number;
}

/** What the page holds on to once everything that can be freed is freed. */
async function held(session: CDPSession): Promise<Held> {
  for (let time = 0; time < 3; time += 1) await session.send("HeapProfiler.collectGarbage");
  const { nodes, jsEventListeners } = await session.send("Memory.getDOMCounters");
  const { metrics } = await session.send("Performance.getMetrics");
  return {
    nodes,
    listeners: jsEventListeners,
    heap: metrics.find(({ name }) => name === "JSHeapUsedSize")?.value ?? Number.NaN,
  };
}

async function forgotten(page: Page): Promise<void> {
  await page.clock.runFor(between);
  await page.evaluate(() => document.body.dispatchEvent(new KeyboardEvent("keydown", { key: "Shift", bubbles: true })));
  await page.locator(".place").first().waitFor();
}

test("a day of 10 000 touches leaves nothing behind on the shop screen", { timeout: 600_000 }, async ({ open }) => {
  const page = await open("/display/", { screen: "kiosk" });
  await page.clock.install();
  await page.goto(address("/display/"));
  await page.locator("[data-display][data-live]").waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable");
  await session.send("HeapProfiler.enable");
  const seen = new Set<string>();
  let answers = 0;
  const day = async (from: number, count: number) => {
    for (let visitor = from; visitor < from + count; visitor += 1) {
      const result = await page.evaluate(visit, { seed: visitor, count: touches });
      for (const heading of result.seen) seen.add(heading);
      answers += result.answers;
      await forgotten(page);
    }
  };
  await day(1, 20);
  const before = await held(session);
  const start = performance.now();
  await day(1000, visitors / 2);
  const middle = await held(session);
  await day(2000, visitors / 2);
  const after = await held(session);
  const line = ({ nodes, listeners, heap }: Held) => `${nodes} nodes, ${listeners} listeners, ${(heap / 1e6).toFixed(2)} MB`;
  console.log(
    `${visitors * touches} touches in ${((performance.now() - start) / 1000).toFixed(0)} s: ${line(before)} → ${line(middle)} → ${line(after)}`,
  );
  // It was a day at the machines, not at the start.
  expect(seen.size).toBeGreaterThanOrEqual(9);
  expect(answers).toBeGreaterThan(1000);
  expect(after.nodes - before.nodes).toBeLessThan(200);
  expect(after.listeners - before.listeners).toBeLessThan(50);
  // Compiled code and the test's own clock grow a little; a page that is kept is some 100 kB each time.
  expect(after.heap - before.heap).toBeLessThan(3_000_000);
});
