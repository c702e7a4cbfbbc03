"use strict";
// Keeps one whole version of the page for use without a network. Names of files hold the hash of
// their content; the version is the hash of all of them. A new version is loaded beside the old one
// and takes over as a whole: when every tab of the old one is closed, or when the learner asks.

const VERSION = "{{version}}";
const FILES = [ // name, and hash of its content: nothing else is kept under that name
  {{files}},
];
const MINE = `closingside:${new URL("./", location.href).pathname}:`;
const HOME = new URL("./", location.href).href;

self.addEventListener("install", (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(MINE + VERSION);
    const home = await fetch(new Request(HOME, { cache: "reload" }));
    if (!home.ok || !(await home.clone().text()).includes(VERSION)) {
      throw new Error("the page is of another version"); // tried again on the next visit
    }
    await cache.put(HOME, new Response(home.body, { headers: home.headers })); // not marked as redirected
    await cache.addAll(FILES.map(([name, integrity]) => new Request(name, { integrity })));
  })());
});

self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith(MINE) && name !== MINE + VERSION) await caches.delete(name);
    }
  })());
});

self.addEventListener("message", ({ data }) => {
  if (data === "take over") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(HOME)) return;
  event.respondWith(answer(request));
});

async function answer(request) {
  const path = request.url.split(/[?#]/)[0];
  const cache = await caches.open(MINE + VERSION);
  const kept = await cache.match(path === `${HOME}index.html` ? HOME : path, { ignoreVary: true });
  return kept || fetch(request);
}
