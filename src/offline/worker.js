/*
 * Service worker: keeps the whole site on the device, so that it works with the network cable out after one visit.
 * The build puts two constants before this text (scripts/build/offline.ts):
 *   VERSION  a hash of everything published
 *   FILES    { path below the scope: hash of its content }
 *
 * A new version is fetched beside the old one and waits. It takes over when no page of the old version is open, or when the
 * one page that is open asks for it and then reloads: a page never gets files of another version than its own.
 *
 * To switch the offline copy off for everybody: publish once with OFFLINE=off (see src/offline/retired-worker.js).
 */
const scope = self.registration.scope;
const prefix = `flat-to-formed ${scope} `;
const cacheName = prefix + VERSION;
/** Where a cache keeps the FILES it was filled from. */
const listAddress = `${scope}offline-files`;

const addressOf = (path) => scope + path;

async function otherCaches() {
  return (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== cacheName);
}

/** Files of an earlier version that are the same in this one need not be fetched again. */
async function unchanged() {
  const found = new Map();
  for (const name of await otherCaches()) {
    const cache = await caches.open(name);
    const list = await (await cache.match(listAddress))?.json();
    for (const [path, hash] of Object.entries(list ?? {})) if (FILES[path] === hash) found.set(path, cache);
  }
  return found;
}

async function fill() {
  const cache = await caches.open(cacheName);
  const known = await unchanged();
  await Promise.all(
    Object.keys(FILES).map(async (path) => {
      const address = addressOf(path);
      const before = await known.get(path)?.match(address);
      const response = before ?? (await fetch(address, { cache: "reload" }));
      if (!response.ok || response.redirected) throw new Error(`${address} answered ${response.status}`);
      await cache.put(address, response);
    }),
  );
  await cache.put(listAddress, Response.json(FILES));
}

async function clearUp() {
  const others = await otherCaches();
  await Promise.all(others.map((name) => caches.delete(name)));
  // The very first version may serve the pages that are already open; a later one would mix with what they have loaded.
  if (others.length === 0) await self.clients.claim();
}

async function cached(address) {
  const cache = await caches.open(cacheName);
  return cache.match(address, { ignoreSearch: true, ignoreVary: true });
}

async function openPage(request) {
  const asked = new URL(request.url);
  const page = await cached(asked.origin + asked.pathname);
  if (page) return page;
  const folder = await cached(`${asked.origin + asked.pathname}/`);
  if (folder) return Response.redirect(`${asked.pathname}/${asked.search}`, 301);
  try {
    return await fetch(request);
  } catch {
    const missing = await cached(addressOf("404.html"));
    return missing ? new Response(missing.body, { status: 404, headers: missing.headers }) : Response.error();
  }
}

async function openFile(request) {
  return (await cached(request.url)) ?? fetch(request);
}

async function takeOver(asking) {
  const open = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  const others = open.filter((client) => client.url.startsWith(scope) && client.id !== asking.id);
  if (others.length === 0) await self.skipWaiting();
  else asking.postMessage({ type: "other-pages-open", count: others.length });
}

self.addEventListener("install", (event) => event.waitUntil(fill()));
self.addEventListener("activate", (event) => event.waitUntil(clearUp()));
self.addEventListener("message", (event) => {
  if (event.data?.type === "take-over") event.waitUntil(takeOver(event.source));
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(scope)) return;
  event.respondWith(request.mode === "navigate" ? openPage(request) : openFile(request));
});
