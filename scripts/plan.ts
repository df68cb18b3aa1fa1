import { readFileSync } from "node:fs";
import { loadCatalogue } from "../src/catalogue/load.ts";
import { InputError } from "../src/lib/input-error.ts";
import { rawFromPartFile } from "../src/lib/part/file.ts";
import { planFrom } from "../src/lib/part/plan.ts";
import { withOrder } from "../src/lib/part/plan-order.ts";
import { planReport } from "../src/lib/part/report.ts";
import { rolledReport } from "../src/lib/part/rolled/report.ts";

/** `npm run -s plan -- part.json` (or `-` for standard input): the plan of a part file as JSON. */
function main(args: readonly string[]): number {
  const [path] = args;
  if (path === undefined || args.length > 1)
    return fail("file", args.join(" "), "Give one part file: npm run -s plan -- part.json");
  let text: string;
  try {
    text = readFileSync(path === "-" ? 0 : path, "utf8");
  } catch (error) {
    return fail("file", path, `The file cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
  try {
    const catalogue = loadCatalogue();
    const { plan, rolled, problems } = planFrom(rawFromPartFile(text), catalogue);
    const [problem] = problems;
    if (problem) throw problem;
    const report = plan ? planReport(withOrder(plan, catalogue), catalogue) : rolled && rolledReport(rolled, catalogue);
    if (!report) throw new Error("neither a plan nor a problem");
    console.log(JSON.stringify(report, null, 2));
    return 0;
  } catch (error) {
    if (error instanceof InputError) return fail(error.field, error.value, error.message);
    throw error;
  }
}

function fail(field: string, value: string, message: string): number {
  console.error(JSON.stringify({ error: { field, value, message } }));
  return 2;
}

process.exitCode = main(process.argv.slice(2));
