import { spawn } from "node:child_process";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import lighthouse, { desktopConfig, type Flags } from "lighthouse";
import { browserCommand } from "../browser/launch.ts";

const categories = ["performance", "accessibility", "best-practices", "seo"] as const;

export type Form = "mobile" | "desktop";

export interface Marks {
  readonly form: Form;
  /** Out of 100, by category. */
  readonly marks: Readonly<Record<string, number>>;
  /** Audits below full marks, in words. */
  readonly faults: readonly string[];
}

/** A browser of its own: Lighthouse wants a port to talk to. */
async function startBrowser(): Promise<{ port: number; stop(): Promise<void> }> {
  const profile = await mkdtemp(join(tmpdir(), "lighthouse-"));
  const { path, args } = browserCommand();
  const child = spawn(
    path,
    [...args, "--headless=new", "--remote-debugging-port=0", `--user-data-dir=${profile}`, "about:blank"],
    {
      stdio: "ignore",
    },
  );
  const exited = new Promise((done) => child.once("exit", done));
  const stop = async () => {
    child.kill();
    await exited;
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  for (let tries = 0; tries < 100; tries++) {
    const [port] = (await readFile(join(profile, "DevToolsActivePort"), "utf8").catch(() => "")).split("\n");
    if (port) return { port: Number(port), stop };
    await wait(100);
  }
  await stop();
  throw new Error("The browser for Lighthouse did not start");
}

/**
 * Lighthouse's marks for a page.
 * @param isTimed - false: without the mark for speed, once, and as fast as the machine goes
 */
export async function measureMarks(address: string, isTimed: boolean): Promise<Marks[]> {
  const asked = categories.filter((id) => isTimed || id !== "performance");
  const forms: readonly Form[] = isTimed ? ["mobile", "desktop"] : ["mobile"];
  const { port, stop } = await startBrowser();
  try {
    const all: Marks[] = [];
    for (const form of forms) {
      const flags: Flags = { port, output: "json", logLevel: "error", onlyCategories: [...asked] };
      if (!isTimed) flags.throttlingMethod = "provided";
      const result = await lighthouse(address, flags, form === "desktop" ? desktopConfig : undefined);
      if (!result) throw new Error(`Lighthouse had no result for ${address}`);
      const { lhr } = result;
      if (lhr.runtimeError) throw new Error(`Lighthouse could not measure ${address}: ${lhr.runtimeError.message}`);
      const marks = Object.fromEntries(asked.map((id) => [id, Math.round((lhr.categories[id]?.score ?? 0) * 100)]));
      const weighty = asked.flatMap((id) => lhr.categories[id]?.auditRefs.filter(({ weight }) => weight > 0) ?? []);
      const faults = weighty.flatMap(({ id }) => {
        const audit = lhr.audits[id];
        return audit && audit.score !== null && audit.score < 1
          ? [`${form}: ${audit.title} ${audit.displayValue ?? ""}`.trim()]
          : [];
      });
      all.push({ form, marks, faults });
    }
    return all;
  } finally {
    await stop();
  }
}
