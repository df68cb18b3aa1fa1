/** Serves the built site: `node scripts/serve.ts [--port 4321] [--host 127.0.0.1]`. BASE_PATH and OUT_DIR as for the build. */
import { parseArgs } from "node:util";
import { type Serving, serve } from "./server.ts";

const firstPort = 4321;
const lastPort = firstPort + 50;

const { values } = parseArgs({ options: { port: { type: "string" }, host: { type: "string", default: "127.0.0.1" } } });
const place = { folder: process.env.OUT_DIR ?? "dist", base: process.env.BASE_PATH ?? "/", host: values.host };

function isTaken(error: unknown): boolean {
  return error instanceof Error && "code" in error && error.code === "EADDRINUSE";
}

/** The port asked for, or the first free one. */
async function start(): Promise<Serving> {
  if (values.port !== undefined) {
    const port = Number(values.port);
    if (!Number.isInteger(port) || port < 0 || port > 65_535)
      throw new Error(`--port must be from 0 to 65535; it is ${values.port}`);
    return serve({ ...place, port });
  }
  for (let port = firstPort; port < lastPort; port++) {
    try {
      return await serve({ ...place, port });
    } catch (error) {
      if (!isTaken(error)) throw error;
    }
  }
  throw new Error(`Ports ${firstPort} to ${lastPort - 1} are all in use: choose another with --port`);
}

try {
  const { origin } = await start();
  console.log(`\nFlat to Formed is at ${origin}${place.base}\nStop it with Ctrl+C.`);
} catch (error) {
  console.error(
    isTaken(error) ? `Port ${values.port} is in use: choose another with --port` : error instanceof Error ? error.message : error,
  );
  process.exitCode = 1;
}
