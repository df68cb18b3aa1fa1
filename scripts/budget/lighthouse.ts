import { spawn } from "node:child_process";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import lighthouse, { desktopConfig } from "lighthouse";
import { browserCommand } from "../browser/launch.ts";

const categories = ["performance", "accessibility", "best-practices", "seo"] as const;

export interface Marks {
  readonly form: "mobile" | "desktop";
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

/** Lighthouse's marks for a page, out of 100. */
export async function measureMarks(address: string): Promise<Marks[]> {
  const { port, stop } = await startBrowser();
  try {
    const all: Marks[] = [];
    for (const form of ["mobile", "desktop"] as const) {
      const flags = { port, output: "json", logLevel: "error", onlyCategories: [...categories] } as const;
      const result = await lighthouse(
        address,
        { ...flags, onlyCategories: [...categories] },
        form === "desktop" ? desktopConfig : undefined,
      );
      if (!result) throw new Error(`Lighthouse had no result for ${address}`);
      const { lhr } = result;
      const marks = Object.fromEntries(categories.map((id) => [id, Math.round((lhr.categories[id]?.score ?? 0) * 100)]));
      const weighty = categories.flatMap((id) => lhr.categories[id]?.auditRefs.filter(({ weight }) => weight > 0) ?? []);
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
