import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { get, type IncomingMessage } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Serving, serve } from "../../scripts/server.ts";

let outer = "";
let server: Serving;

beforeAll(async () => {
  outer = await mkdtemp(join(tmpdir(), "server-test-"));
  const folder = join(outer, "site");
  await mkdir(join(folder, "a b"), { recursive: true });
  await mkdir(join(folder, "_astro"));
  await writeFile(join(outer, "secret.txt"), "secret");
  await writeFile(join(folder, "index.html"), "home");
  await writeFile(join(folder, "404.html"), "none");
  await writeFile(join(folder, "a b", "index.html"), "inner");
  await writeFile(join(folder, "_astro", "x.123.woff2"), "font");
  server = await serve({ folder, base: "/base/", port: 0 });
});

afterAll(async () => {
  await server.close();
  await rm(outer, { recursive: true });
});

/** A plain request: fetch would tidy the path and unpack the answer. */
function ask(path: string, headers: Record<string, string> = {}): Promise<{ message: IncomingMessage; body: Buffer }> {
  return new Promise((done, fail) => {
    get(server.origin + path, { headers }, (message) => {
      const pieces: Buffer[] = [];
      message.on("data", (piece) => pieces.push(piece)).on("end", () => done({ message, body: Buffer.concat(pieces) }));
    }).on("error", fail);
  });
}

test.each([
  ["/base/", 200, "home"],
  ["/base/?a=1", 200, "home"],
  ["/base/a%20b/", 200, "inner"],
  ["/base/nothing/", 404, "none"],
  ["/base/_astro/x.123.woff2", 200, "font"],
  ["/elsewhere", 404, ""],
  ["/base/%", 400, ""],
  ["/base/..%2fsecret.txt", 404, ""],
  ["/base/%2e%2e/secret.txt", 404, ""],
])("%s answers %i", async (path, status, text) => {
  const { message, body } = await ask(path);
  expect(message.statusCode).toBe(status);
  expect(body.toString()).toBe(text);
});

test.each([
  ["/", "/base/"],
  ["/base", "/base/"],
  ["/base/a%20b?x=1", "/base/a%20b/?x=1"],
])("%s is sent on to %s", async (path, location) => {
  expect((await ask(path)).message.headers.location).toBe(location);
});

test("text goes out zipped to those who take it, fonts never", async () => {
  const zipped = await ask("/base/", { "accept-encoding": "gzip, br" });
  expect(zipped.message.headers["content-encoding"]).toBe("gzip");
  expect(gunzipSync(zipped.body).toString()).toBe("home");
  const font = await ask("/base/_astro/x.123.woff2", { "accept-encoding": "gzip" });
  expect(font.message.headers["content-encoding"]).toBeUndefined();
  expect(font.message.headers["cache-control"]).toContain("immutable");
});

test("what is known already is not sent again", async () => {
  const tag = (await ask("/base/")).message.headers.etag ?? "";
  const again = await ask("/base/", { "if-none-match": tag });
  expect(again.message.statusCode).toBe(304);
  expect(again.body).toHaveLength(0);
});
