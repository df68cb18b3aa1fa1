import { inBrowser } from "./areas.ts";
import { atBuild } from "./build-areas.ts";
import { cautions } from "./library/cautions.ts";
import { shopNames } from "./library/shop.ts";
import { site } from "./library/site.ts";
import { library } from "./library.ts";
import { spanish } from "./spanish.ts";

/** All the Spanish there is. */
export default spanish(
  [...inBrowser, ...atBuild],
  new Map([...library, ...Object.entries(cautions), ...Object.entries(site), ...Object.entries(shopNames)]),
);
