import { loadCatalogue } from "../src/catalogue/load.ts";
import { calc } from "./calc/command.ts";

/** `npm run -s calc -- list`, or `npm run -s calc -- bend-length thickness=1.2mm angle=90`. */
const { code, out, error } = calc(process.argv.slice(2), loadCatalogue());
if (error) console.error(JSON.stringify({ error }));
else console.log(JSON.stringify(out, null, 2));
process.exitCode = code;
