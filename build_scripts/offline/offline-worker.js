// @ts-check
/**
 * The service worker: keeps one whole edition of the handbook on the device.
 *
 * Every file of the edition is in the list with its revision and its checksum, so a new edition is either kept whole
 * or not at all, and pages of one edition are never served with tables or code of another. A new edition waits until
 * the reader asks for it.
 *
 * It hears {type: "SKIP_WAITING"}, and {type: "STATUS"} or {type: "HEAL"}, to which it replies through the port that came
 * with it: how many files are kept, how many are missing (a browser may drop what it likes), how large, and since when.
 */
/// <reference lib="webworker" />
import { cacheNames, clientsClaim, setCacheNameDetails } from "workbox-core";
import {
  addPlugins,
  cleanupOutdatedCaches,
  getCacheKeyForURL,
  matchPrecache,
  precacheAndRoute,
} from "workbox-precaching";
import { registerRoute } from "workbox-routing";

/** @typedef {import("workbox-precaching").PrecacheEntry & {bytes: number}} Entry */
const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));

/** @type {Entry[]} */
const edition =
  // @ts-expect-error the builder looks for exactly this expression and puts the list in its place
  self.__WB_MANIFEST;

setCacheNameDetails({ prefix: "linkwright" });

worker.addEventListener("message", (event) => {
  const type = event.data?.type;
  if (type === "SKIP_WAITING") void worker.skipWaiting();
  if (type !== "STATUS" && type !== "HEAL") return;
  const told = (type === "HEAL" ? heal() : Promise.resolve()).then(status);
  event.waitUntil(told.then((found) => event.ports[0]?.postMessage(found)));
});

/** The files of the edition that are not on this device. @returns {Promise<Entry[]>} */
async function missing() {
  const cache = await caches.open(cacheNames.precache);
  const kept = new Set((await cache.keys()).map((request) => request.url));
  return edition.filter((entry) => !kept.has(getCacheKeyForURL(entry.url) ?? ""));
}

/** What is kept: {files, missing, bytes, since}. */
async function status() {
  const gone = await missing();
  const bytes = edition.reduce((sum, entry) => sum + entry.bytes, 0) - gone.reduce((sum, entry) => sum + entry.bytes, 0);
  const first = await matchPrecache("index.html");
  return { files: edition.length, missing: gone.length, bytes, since: first?.headers.get("date") ?? "" };
}

/** Fetches what is missing, each file held against its checksum. */
async function heal() {
  const cache = await caches.open(cacheNames.precache);
  for (const entry of await missing()) {
    try {
      const asked = new Request(new URL(entry.url, worker.location.href), { integrity: entry.integrity ?? "", cache: "no-cache" });
      const response = await fetch(asked);
      if (response.ok) await cache.put(getCacheKeyForURL(entry.url) ?? entry.url, asKept(asked, response));
    } catch {
      return; // no signal, or no room: the next visit tries again
    }
  }
}

/** The memory image travels packed and is kept unpacked: unpacking it anew would be a quarter of every later start. @param {Request} request @param {Response} response */
function asKept(request, response) {
  if (!response.body || !request.url.endsWith("/snapshot.bin")) return response;
  return new Response(response.body.pipeThrough(new DecompressionStream("gzip")));
}

addPlugins([{ cacheWillUpdate: async ({ request, response }) => (response.ok ? asKept(request, response) : null) }]);

precacheAndRoute(edition, { ignoreURLParametersMatching: [/./], directoryIndex: "index.html", cleanURLs: false });
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
