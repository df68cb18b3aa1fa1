import { createServer } from "node:http";
import type { AddressInfo } from "node:net";

/** A page of somebody else's, with frames of the handbook in it: served from an origin of its own. */
export interface CoursePage {
  readonly address: string;
  close(): Promise<void>;
}

export async function serveCoursePage(body: string): Promise<CoursePage> {
  const html = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Week 3</title></head><body><h1>Week 3</h1>${body}</body></html>`;
  const server = createServer((_, response) => {
    response.setHeader("Content-Type", "text/html; charset=utf-8");
    response.end(html);
  });
  await new Promise<void>((done) => server.listen(0, "localhost", done));
  const { port } = server.address() as AddressInfo;
  return {
    // By name, not by number: another host and another port than the handbook's.
    address: `http://localhost:${port}/`,
    close: () => new Promise((done, fail) => server.close((error) => (error ? fail(error) : done()))),
  };
}
