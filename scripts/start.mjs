/** `npm start [-- --port 4321] [--host 127.0.0.1]`: installs what is missing, builds the site and serves it. */
import { main, prepare, run } from "./setup/install.mjs";

await main(async () => {
  const ready = prepare();
  return (await run(ready, ["scripts/build.ts"])) || run(ready, ["scripts/serve.ts", ...process.argv.slice(2)]);
});
