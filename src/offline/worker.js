/*
 * Service worker: keeps the whole site on the device, so that it works with the network cable out after one visit.
 * The build puts three constants before this text (scripts/build/offline.ts):
 *   VERSION  a hash of everything published
 *   BYTES    what it all weighs
 *   FILES    { path below the scope: hash of its content }
 *
 * A new version is fetched beside the old one and waits. It takes over when no page of the old version is open, or when the
 * one page that is open asks for it and then reloads: a page never gets files of another version than its own.
 * Every file is held against its hash: what a server hands out while it is being renewed never gets into a copy.
 *
 * To switch the offline copy off for everybody: publish once with OFFLINE=off (see src/offline/retired-worker.js).
 */
const scope = self.registration.scope;
const prefix = `flat-to-formed ${scope} `;
const cacheName = prefix + VERSION;
/** Where a complete copy keeps what it was filled from; the last thing that is put into it. */
const listAddress = `${scope}offline-files`;
/** Files fetched at a time. */
const abreast = 8;

const addressOf = (path) => scope + path;

async function pagesOpen() {
  const open = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  return open.filter(({ url }) => url.startsWith(scope));
}

/**
 * How many pages besides the one that asks would change version under their reader. Looked at for a second: a page that is
 * being closed or loaded again is listed for a moment longer.
 */
async function othersOpen(asking) {
  let count = 0;
  for (let look = 0; look < 5; look += 1) {
    count = (await pagesOpen()).filter(({ id }) => id !== asking?.id).length;
    if (count === 0) break;
    await new Promise((done) => setTimeout(done, 200));
  }
  return count;
}

async function otherCopies() {
  return (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== cacheName);
}

/** From the copy of this version only, without what follows a question mark. */
function cached(address) {
  const { origin, pathname } = new URL(address);
  return caches.match(origin + pathname, { cacheName, ignoreVary: true });
}

/**
 * What earlier versions kept: files that are the same in this version need not be fetched again.
 * A copy that was never completed is deleted, to make room for this one.
 */
async function unchanged() {
  const found = new Map();
  for (const name of await otherCopies()) {
    const cache = await caches.open(name);
    const list = await cache.match(listAddress);
    if (!list) {
      await caches.delete(name);
      continue;
    }
    for (const [path, hash] of Object.entries((await list.json()).files)) if (FILES[path] === hash) found.set(path, cache);
  }
  return found;
}

async function hashOf(body) {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", body));
  const text = btoa(String.fromCharCode(...bytes));
  return text.replaceAll("+", "-").replaceAll("/", "_").slice(0, 8);
}

/** A file as it belongs to this version. @throws when the server has another one */
async function fetchFile(path, signal) {
  const address = addressOf(path);
  const response = await fetch(address, { cache: "reload", signal });
  if (!response.ok) throw new Error(`${address} answered ${response.status}`);
  const body = await response.arrayBuffer();
  if ((await hashOf(body)) !== FILES[path]) throw new Error(`${address} is not of version ${VERSION}, or was changed on its way`);
  // Made anew: one that was redirected may not answer for a page, and these two headers told of its packing.
  const headers = new Headers(response.headers);
  headers.delete("Content-Encoding");
  headers.delete("Content-Length");
  return new Response(body, { headers });
}

/** @throws when the browser says beforehand that the copy does not fit */
async function checkRoom() {
  const { quota = Number.POSITIVE_INFINITY, usage = 0 } = (await navigator.storage?.estimate?.()) ?? {};
  if (quota - usage < BYTES) throw new DOMException("There is no room for a copy of the site", "QuotaExceededError");
}

/** Fetches what is missing in the copy of this version. An attempt that was broken off is gone on with by the next one. */
async function fill() {
  const cache = await caches.open(cacheName);
  const there = new Set((await cache.keys()).map(({ url }) => url));
  const waiting = Object.keys(FILES).filter((path) => !there.has(addressOf(path)));
  if (waiting.length === 0 && there.has(listAddress)) return;
  const known = await unchanged();
  const stop = new AbortController();
  const work = async () => {
    for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
      const before = await known.get(path)?.match(addressOf(path));
      const response = before ?? (await fetchFile(path, stop.signal));
      stop.signal.throwIfAborted();
      if (isRetired) throw new Error("The copy is being deleted");
      await cache.put(addressOf(path), response);
    }
  };
  try {
    if (there.size === 0) await checkRoom();
    await Promise.all(Array.from({ length: abreast }, work));
    await cache.put(listAddress, new Response(JSON.stringify({ files: FILES, bytes: BYTES, kept: new Date().toISOString() })));
  } catch (error) {
    stop.abort();
    // Half a copy on a full device is in the way of everything else, what the reader keeps there included.
    if (error?.name === "QuotaExceededError") await caches.delete(cacheName);
    throw error;
  }
}

/** The reader has the copy deleted: nothing more is handed out or put into it, though pages that are open keep this worker. */
let isRetired = false;

let mending;

/** Something of this version was deleted from outside: the copy is made whole again, once for each start of the worker. */
function mend() {
  if (isRetired) return;
  mending ??= fill().catch(() => {});
  return mending;
}

/**
 * Deletes the copies of other versions, unless a page may still need one: of two that are open, one may be older than this
 * version, and a newer version may be on its way.
 */
async function clearUp() {
  const { installing, waiting } = self.registration;
  if (installing || waiting || (await pagesOpen()).length > 1) return;
  await Promise.all((await otherCopies()).map((name) => caches.delete(name)));
}

async function takeCharge() {
  // The very first version may serve the pages that are already open; a later one would mix with what they have loaded.
  const first = (await otherCopies()).length === 0;
  await clearUp();
  if (first) await self.clients.claim();
}

async function openPage(event) {
  const { request } = event;
  const { origin, pathname, search } = new URL(request.url);
  const page = await cached(request.url);
  if (page) return page;
  if (FILES[(origin + pathname).slice(scope.length)]) event.waitUntil(mend());
  const folder = pathname.endsWith("/index.html") ? pathname.slice(0, -"index.html".length) : `${pathname}/`;
  if (await cached(origin + folder)) return Response.redirect(folder + search, 301);
  try {
    return await fetch(request);
  } catch {
    const missing = await cached(addressOf("404.html"));
    return missing ? new Response(missing.body, { status: 404, headers: missing.headers }) : Response.error();
  }
}

async function openFile({ request }) {
  const own = await cached(request.url);
  if (own) return own;
  // Names in this folder hold a hash: whichever version kept it, it is the file that was asked for.
  const older = request.url.startsWith(`${scope}_astro/`) ? await caches.match(request.url, { ignoreVary: true }) : undefined;
  return older ?? fetch(request);
}

async function takeOver(asking) {
  const count = await othersOpen(asking);
  if (count === 0) await self.skipWaiting();
  else asking?.postMessage({ type: "other-pages-open", count });
}

self.addEventListener("install", (event) => event.waitUntil(fill()));
self.addEventListener("activate", (event) => event.waitUntil(takeCharge()));
self.addEventListener("message", (event) => {
  if (event.data?.type === "take-over") event.waitUntil(takeOver(event.source));
  if (event.data?.type === "version") event.ports[0]?.postMessage(VERSION);
  if (event.data?.type === "retire") {
    isRetired = true;
    event.ports[0]?.postMessage(VERSION);
  }
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (isRetired || request.method !== "GET" || !request.url.startsWith(scope)) return;
  if (request.mode === "navigate") {
    event.respondWith(openPage(event));
    event.waitUntil(clearUp());
  } else event.respondWith(openFile(event));
});
