import { inBrowser } from "./areas.ts";
import { library } from "./library.ts";
import { spanish } from "./spanish.ts";

/** Spanish as a page fetches it: without what is only written when the site is built. */
export default spanish(inBrowser, library);
