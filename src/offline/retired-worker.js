/*
 * The kill switch: published in place of the service worker by a build with OFFLINE=off. It deletes every offline copy of this
 * site and takes itself out, so that pages come from the network again. Keep publishing it until nobody has an old copy left.
 */
self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => {
  const clear = async () => {
    const prefix = `flat-to-formed ${self.registration.scope} `;
    const own = (await caches.keys()).filter((name) => name.startsWith(prefix));
    await Promise.all(own.map((name) => caches.delete(name)));
    await self.registration.unregister();
  };
  event.waitUntil(clear());
});
