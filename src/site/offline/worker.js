/* The binder in this browser's own store, so that it opens with the network off. VERSION and FILES stand above, written by the build. */
/* global VERSION, FILES, self, caches, fetch, Response */

const FAMILY = `slantwork ${self.registration.scope} `;
const NAME = FAMILY + VERSION;
/** Files asked for at one time. */
const AT_ONCE = 6;

const address = (file) => new URL(file, self.registration.scope).href;

/** Every file or none: half a binder must not pass for one. */
async function fill() {
  const cache = await caches.open(NAME);
  const left = [...FILES];
  const one = async () => {
    for (let file = left.pop(); file !== undefined; file = left.pop()) {
      const answer = await fetch(address(file), { cache: "no-cache" });
      if (!answer.ok) throw new Error(`${file}: ${answer.status}`);
      await cache.put(address(file), answer);
    }
  };
  try {
    await Promise.all(Array.from({ length: AT_ONCE }, one));
  } catch (error) {
    left.length = 0;
    await caches.delete(NAME);
    throw error;
  }
}

/** The version before stays for pages that are still open in it; older ones go. */
async function clear() {
  const own = (await caches.keys()).filter((name) => name.startsWith(FAMILY) && name !== NAME);
  await Promise.all(own.slice(0, -1).map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function answer(request) {
  const url = new URL(request.url);
  url.hash = url.search = "";
  if (url.pathname.endsWith("/")) url.pathname += "index.html";
  const own = (await caches.keys()).filter((name) => name.startsWith(FAMILY)).reverse();
  for (const name of [NAME, ...own]) {
    const kept = await (await caches.open(name)).match(url.href);
    if (kept) return kept;
  }
  try {
    return await fetch(request);
  } catch (error) {
    const none = request.mode === "navigate" && (await (await caches.open(NAME)).match(address("404.html")));
    if (none) return new Response(none.body, { status: 404, headers: none.headers });
    throw error;
  }
}

self.addEventListener("install", (event) => event.waitUntil(fill()));
self.addEventListener("activate", (event) => event.waitUntil(clear()));
self.addEventListener("message", (event) => {
  if (event.data === "take the new version") void self.skipWaiting();
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && request.url.startsWith(self.registration.scope))
    event.respondWith(answer(request));
});
