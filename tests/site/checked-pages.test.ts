import { builtPages } from "./built.ts";
import { checkPages } from "./every-page.ts";

const pages = await builtPages();

checkPages(pages.map(({ path }) => path).filter((path) => path.startsWith("/checked/")));
