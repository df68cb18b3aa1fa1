import { createHash } from "node:crypto";
import { readFile, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { extname, join, resolve, sep } from "node:path";
import { promisify } from "node:util";
import { gzip } from "node:zlib";
import { cacheHeader, headersFor } from "./build/policy.ts";

const compress = promisify(gzip);

const types: Readonly<Record<string, string>> = {
  ".css": "text/css; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".ico": "image/x-icon",
  ".jpg": "image/jpeg",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
  ".webp": "image/webp",
  ".woff2": "font/woff2",
  ".xml": "application/xml",
};
const compressible = /^text\/|json|javascript|xml/;

interface Sent {
  readonly body: Buffer;
  readonly zipped?: Buffer;
  readonly type: string;
  readonly tag: string;
}

export interface Serving {
  /** Such as `http://127.0.0.1:4321`. */
  readonly origin: string;
  close(): Promise<void>;
}

export interface Place {
  readonly folder: string;
  /** The path the site was built for, with a slash at both ends. */
  readonly base: string;
  readonly host?: string;
  /** 0: any free port. */
  readonly port: number;
  /**
   * The policy and its like with pages alone: as they weigh over HTTP/2, where a header that repeats is sent once. This
   * server speaks HTTP/1.1, which sends it with every file.
   */
  readonly headersOnce?: boolean;
}

async function isFile(path: string): Promise<boolean> {
  return stat(path).then(
    (found) => found.isFile(),
    () => false,
  );
}

/**
 * Serves a built site the way a static host should: gzip, an entity tag for everything, and the headers of scripts/build/policy.ts.
 * Files are read again when they change, so that a rebuild needs no restart.
 */
export async function serve({ folder, base, host = "127.0.0.1", port, headersOnce = false }: Place): Promise<Serving> {
  const top = resolve(folder);
  const known = new Map<string, { changed: number; sent: Sent }>();

  async function load(path: string): Promise<Sent> {
    const changed = (await stat(path)).mtimeMs;
    const before = known.get(path);
    if (before?.changed === changed) return before.sent;
    const body = await readFile(path);
    const type = types[extname(path)] ?? "application/octet-stream";
    const tag = `"${createHash("sha256").update(body).digest("base64url").slice(0, 16)}"`;
    const sent = { body, type, tag, ...(compressible.test(type) ? { zipped: await compress(body, { level: 9 }) } : {}) };
    known.set(path, { changed, sent });
    return sent;
  }

  /** @param path - below the path of the site: what the headers go by */
  function send(request: IncomingMessage, response: ServerResponse, status: number, sent: Sent, path: string): void {
    const isPage = sent.type.startsWith("text/html");
    for (const [name, value] of Object.entries(headersFor(path)))
      if (isPage || !headersOnce || name === cacheHeader) response.setHeader(name, value);
    response.setHeader("ETag", sent.tag);
    response.setHeader("Vary", "Accept-Encoding");
    if (status === 200 && request.headers["if-none-match"] === sent.tag) {
      response.writeHead(304).end();
      return;
    }
    const zipped = /\bgzip\b/.test(String(request.headers["accept-encoding"])) ? sent.zipped : undefined;
    if (zipped) response.setHeader("Content-Encoding", "gzip");
    const body = zipped ?? sent.body;
    response.writeHead(status, { "Content-Type": sent.type, "Content-Length": body.length });
    response.end(request.method === "HEAD" ? undefined : body);
  }

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    if (request.method !== "GET" && request.method !== "HEAD") {
      response.writeHead(405, { Allow: "GET, HEAD" }).end();
      return;
    }
    const asked = new URL(request.url ?? "/", "http://any");
    if (!asked.pathname.startsWith(base)) {
      const moved = asked.pathname === "/" || `${asked.pathname}/` === base;
      response.writeHead(moved ? 302 : 404, moved ? { Location: base } : {}).end();
      return;
    }
    const below = decodeURIComponent(asked.pathname.slice(base.length));
    const path = resolve(top, `.${sep}${below}`);
    if (path !== top && !path.startsWith(top + sep)) {
      response.writeHead(404).end();
      return;
    }
    const page = join(path, "index.html");
    if (asked.pathname.endsWith("/")) {
      if (await isFile(page)) return send(request, response, 200, await load(page), below);
    } else if (await isFile(path)) {
      return send(request, response, 200, await load(path), below);
    } else if (await isFile(page)) {
      response.writeHead(301, { Location: `${asked.pathname}/${asked.search}` }).end();
      return;
    }
    const missing = join(top, "404.html");
    if (await isFile(missing)) return send(request, response, 404, await load(missing), "404.html");
    response.writeHead(404).end();
  }

  const server: Server = createServer((request, response) => {
    answer(request, response).catch((error) => {
      // An address that cannot be decoded is the asker's fault, all else is ours.
      if (!response.headersSent) response.writeHead(error instanceof URIError ? 400 : 500);
      response.end();
      if (!(error instanceof URIError)) console.error(error);
    });
  });
  await new Promise<void>((done, fail) => {
    server.once("error", fail);
    server.listen(port, host, done);
  });
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The server has no port");
  return {
    origin: `http://${host}:${address.port}`,
    close: () =>
      new Promise((done, fail) => {
        server.close((error) => (error ? fail(error) : done()));
        server.closeAllConnections();
      }),
  };
}
