// @ts-check
/**
 * The service worker: keeps one whole edition of the handbook on the device.
 *
 * Every file of the edition is in the list with its revision and its checksum, so a new edition is either kept whole
 * or not at all, and pages of one edition are never served with tables or code of another. A new edition waits until
 * the reader asks for it.
 */
/// <reference lib="webworker" />
import { clientsClaim, setCacheNameDetails } from "workbox-core";
import { addPlugins, cleanupOutdatedCaches, matchPrecache, precacheAndRoute } from "workbox-precaching";
import { registerRoute } from "workbox-routing";

const worker = /** @type {ServiceWorkerGlobalScope & {__WB_MANIFEST: (string | import("workbox-precaching").PrecacheEntry)[]}} */ (
  /** @type {unknown} */ (self)
);

setCacheNameDetails({ prefix: "linkwright" });

worker.addEventListener("message", (event) => {
  if (event.data?.type === "SKIP_WAITING") void worker.skipWaiting();
});

// The memory image travels packed and is kept unpacked: unpacking it anew would be a quarter of every later start.
addPlugins([
  {
    cacheWillUpdate: async ({ request, response }) =>
      response.ok && response.body && request.url.endsWith("/snapshot.bin")
        ? new Response(response.body.pipeThrough(new DecompressionStream("gzip")))
        : response.ok
          ? response
          : null,
  },
]);

precacheAndRoute(
  // @ts-expect-error the builder looks for exactly this expression and puts the list in its place
  self.__WB_MANIFEST,
  { ignoreURLParametersMatching: [/./], directoryIndex: "index.html", cleanURLs: false },
);
cleanupOutdatedCaches();
clientsClaim();

// An address that is not of this edition, without a network: the handbook's own "no such page".
registerRoute(
  ({ request }) => request.mode === "navigate",
  async ({ request }) => {
    try {
      return await fetch(request);
    } catch {
      return (await matchPrecache("404.html")) ?? (await matchPrecache("index.html")) ?? Response.error();
    }
  },
);
