import { builtPages } from "./built.ts";
import { checkPages } from "./every-page.ts";

const pages = await builtPages();

/** What has a test file of its own. */
const elsewhere = /^\/(?:checked|(?:\w\w\/)?embed)\//;

checkPages(pages.map(({ path }) => path).filter((path) => !elsewhere.test(path)));
