/** Keeps every file of one version of the site, whole, and answers from there. */
import { clientsClaim } from "workbox-core";
import { addPlugins, getCacheKeyForURL, precacheAndRoute } from "workbox-precaching";
import { createHandlerBoundToURL } from "workbox-precaching";
import { NavigationRoute, registerRoute } from "workbox-routing";
import { POLICY } from "./policy.js";

const files = self.__WB_MANIFEST;
const urls = files.map(({ url }) => new URL(url, self.location).href);
const CONFINED = /\.(html|js)$/;

const inCache = async (url) => (await caches.match(getCacheKeyForURL(url))) !== undefined;

/** Return which files of this version are not in the cache: none, unless the browser threw some out. */
async function missing() {
  const there = await Promise.all(urls.map(inCache));
  return urls.filter((_, place) => !there[place]);
}

async function tellPages(news) {
  for (const page of await self.clients.matchAll({ includeUncontrolled: true, type: "window" })) page.postMessage(news);
}

addPlugins([
  {
    // Ask whether what the browser has just loaded is still the newest, and load only what is not.
    requestWillFetch: async ({ request }) => new Request(request, { cache: "no-cache" }),

    async cacheWillUpdate({ request, response }) {
      if (!response.ok) return null;
      if (!CONFINED.test(new URL(request.url).pathname)) return response;
      const headers = new Headers(response.headers);
      headers.set("Content-Security-Policy", POLICY);
      return new Response(response.body, { headers });
    },

    async cacheDidUpdate() {
      await tellPages({ keeping: { loaded: urls.length - (await missing()).length, total: urls.length } });
    },
  },
]);

precacheAndRoute(files);
registerRoute(new NavigationRoute(createHandlerBoundToURL("index.html")));
clientsClaim();

self.addEventListener("message", ({ data, ports }) => {
  // The version in use stays until the person takes the new one.
  if (data.ask === "take over") self.skipWaiting();
  if (data.ask === "missing") missing().then((list) => ports[0].postMessage({ missing: list, total: urls.length }));
});
