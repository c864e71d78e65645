// The page in the phone: every file of this edition is fetched at once and
// answers from then on; the server is asked for records only.
// The build writes the files of this edition, and a name made from them, in the
// places of BAIZE_FILES and BAIZE_EDITION (scripts/field_worker.ts).
const shelf = "baize-field BAIZE_EDITION";
const files = BAIZE_FILES;
const at = (file) => new URL(file, self.registration.scope).href;

self.addEventListener("install", (event) => {
  event.waitUntil(
    caches.open(shelf).then((cache) => cache.addAll(files.map((file) => new Request(at(file), { cache: "reload" })))),
  );
});

self.addEventListener("activate", (event) => {
  const tidy = async () => {
    for (const name of await caches.keys()) if (name.startsWith("baize-field ") && name !== shelf) await caches.delete(name);
    await self.clients.claim();
  };
  event.waitUntil(tidy());
});

self.addEventListener("message", (event) => {
  if (event.data === "take over") void self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== self.location.origin || url.pathname.startsWith("/api/")) return;
  url.hash = "";
  url.search = "";
  const answer = async () => (await (await caches.open(shelf)).match(url.href)) ?? fetch(event.request);
  event.respondWith(answer());
});
