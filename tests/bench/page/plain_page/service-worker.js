// The plainest way to do without network: whatever was asked for once is kept.
async function answer(request) {
  const kept = await caches.match(request);
  if (kept) return kept;
  const response = await fetch(request);
  await (await caches.open("plain")).put(request, response.clone());
  return response;
}

self.oninstall = () => self.skipWaiting();
self.onactivate = (event) => event.waitUntil(self.clients.claim());
self.onfetch = (event) => event.respondWith(answer(event.request));
