/** `npm test`: installs what is missing, a browser included, and runs every check there is. */
import { provideBrowser } from "./setup/browser.mjs";
import { main, prepare, run } from "./setup/install.mjs";

await main(async () => {
  const ready = prepare();
  return run(ready, ["scripts/test/run.ts"], { CHROME_PATH: provideBrowser() });
});
