// @ts-check
/**
 * Keeps the whole handbook on the device (service worker) and tells the reader when a new edition is ready.
 *
 * The new edition never takes over by itself: tables and code of two editions must not meet on one page. What the
 * reader typed is in the address, so a reload keeps it.
 */

const sayOfPage = /** @type {(key: string, facts?: Record<string, string | number>) => string} */ (/** @type {any} */ (window).linkwrightSay);

const UPDATE_EVERY_MS = 60 * 60 * 1000;
/** What the whole edition takes on a device, and some room. */
const NEEDED_BYTES = 60_000_000;

/** @param {ServiceWorker} waiting */
function tellNewEdition(waiting) {
  if (document.querySelector(".edition-notice")) return;
  const notice = document.createElement("div");
  notice.className = "edition-notice";
  notice.setAttribute("role", "status");
  const words = document.createElement("p");
  words.textContent = sayOfPage("new-edition");
  const take = document.createElement("button");
  take.type = "button";
  take.textContent = sayOfPage("new-edition-take");
  take.addEventListener("click", () => {
    take.disabled = true;
    waiting.postMessage({ type: "SKIP_WAITING" });
  });
  const later = document.createElement("button");
  later.type = "button";
  later.textContent = sayOfPage("new-edition-later");
  later.addEventListener("click", () => notice.remove());
  notice.append(words, take, later);
  document.body.append(notice);
}

/** @typedef {{files: number, missing: number, bytes: number, since: string}} Kept  what the service worker tells */

/** How long the service worker may take to tell; fetching what is missing takes as long as the line needs. */
const LONGEST_REPLY_MS = 5 * 60 * 1000;

/** @param {ServiceWorker} worker @param {"STATUS" | "HEAL"} type @returns {Promise<Kept>} */
function askKept(worker, type) {
  const channel = new MessageChannel();
  /** @type {Promise<Kept>} */
  const told = new Promise((resolve) => {
    channel.port1.onmessage = (event) => resolve(event.data);
  });
  worker.postMessage({ type }, [channel.port2]);
  return within(told, LONGEST_REPLY_MS);
}

/** What the foot of each page says of this device. @type {{code: string, facts: Record<string, string | number>}} */
let toldKept = { code: "", facts: {} };

/** @param {string} code @param {Record<string, string | number>} [facts] */
function sayKept(code, facts = {}) {
  toldKept = { code, facts };
  document.documentElement.dataset["offline"] = code.replace("kept-safe", "kept");
  showKept();
}

function showKept() {
  if (!toldKept.code) return;
  for (const place of document.querySelectorAll("[data-offline-note]")) {
    place.textContent = sayOfPage(toldKept.code, toldKept.facts);
    place.closest("[data-offline]:not(html)")?.removeAttribute("hidden");
  }
}

/** Says "works without a signal" only after the service worker has counted, and has what was missing fetched. @param {ServiceWorker} worker */
async function tellKept(worker) {
  let kept = await askKept(worker, "STATUS");
  if (kept.missing > 0) kept = await askKept(worker, "HEAL");
  if (kept.missing > 0) {
    sayKept("kept-in-part", { missing: kept.missing, files: kept.files });
    return;
  }
  const isSafe = await staysKept();
  const date = new Date(kept.since);
  const since = Number.isNaN(date.getTime()) ? "none" : date.toISOString().slice(0, 10);
  sayKept(isSafe ? "kept-safe" : "kept", { megabytes: Math.round(kept.bytes / 1e6), since, edition: linkwrightBuild.edition });
}

/** Asks the browser not to drop the book when space runs short. @returns {Promise<boolean>} whether it said so */
async function staysKept() {
  try {
    return (await navigator.storage.persisted()) || (await navigator.storage.persist());
  } catch {
    return false;
  }
}

/** The browser would not keep it: refused, or no room. */
async function tellNotKept() {
  try {
    const { quota = Infinity, usage = 0 } = await navigator.storage.estimate();
    sayKept(quota - usage < NEEDED_BYTES ? "not-kept-full" : "not-kept");
  } catch {
    sayKept("not-kept");
  }
}

/**
 * Loads the page anew, once for these two editions: a host that goes on sending them together would go round for ever.
 * @param {string} other  the hash of the other edition
 */
function loadWholeOnce(other) {
  const both = `${linkwrightBuild.code} ${other}`;
  try {
    if (sessionStorage.getItem("linkwright-loaded-whole") === both) return;
    sessionStorage.setItem("linkwright-loaded-whole", both);
  } catch {
    return; // Storage forbidden: it could not be known that it was done already.
  }
  location.reload();
}

/** A start that failed may have asked for parts of an edition that the host no longer has. */
async function lookForOtherEdition() {
  try {
    const page = await (await fetch(location.pathname, { cache: "no-store" })).text();
    const [, code = ""] = /<html[^>]* data-code="?([0-9a-f]+)/.exec(page) ?? [];
    if (code && code !== linkwrightBuild.code) loadWholeOnce(code);
  } catch {
    // No signal: nothing newer to be had.
  }
}

async function keepEdition() {
  const workers = navigator.serviceWorker;
  // The first visit is taken over without a reload; whatever comes after that is a new edition that the reader took.
  let isKept = workers.controller !== null;
  workers.addEventListener("controllerchange", () => {
    if (isKept) location.reload();
    isKept = true;
  });
  const address = globalThis.linkwrightTrusted.script(`${siteRoot}offline-worker.js`);
  const registration = await workers.register(address, { scope: siteRoot, updateViaCache: "none" });
  const look = () => {
    if (registration.waiting && workers.controller) tellNewEdition(registration.waiting);
  };
  look();
  /** @param {ServiceWorker | null} coming */
  const follow = (coming) => coming?.addEventListener("statechange", () => {
    if (coming.state === "installed") look();
    if (coming.state === "activated") tellKept(coming).catch(tellNotKept);
    if (coming.state === "redundant" && !registration.active) void tellNotKept();
  });
  follow(registration.installing);
  registration.addEventListener("updatefound", () => follow(registration.installing));
  let asked = Date.now();
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "visible" || Date.now() - asked < UPDATE_EVERY_MS) return;
    asked = Date.now();
    registration.update().catch(() => undefined); // offline: the next look will do
  });
  if (registration.active) await tellKept(registration.active);
}

if (isMixed) loadWholeOnce(document.documentElement.dataset["code"] ?? "");
python.addEventListener("state", () => {
  if (python.state === "failed" && !isMixed && !fromDisk) void lookForOtherEdition();
});
document.addEventListener("linkwright-page", showKept);

// After the first answer, or well after the page is there: keeping it must not delay what the reader came for.
(() => {
  if (fromDisk) return;
  if (!("serviceWorker" in navigator)) {
    sayKept(globalThis.isSecureContext ? "not-kept" : "not-kept-no-https");
    return;
  }
  let begun = false;
  const begin = () => {
    if (begun) return;
    begun = true;
    // Forbidden storage or a full disk: the handbook works, only not offline.
    keepEdition().catch(tellNotKept);
  };
  if (navigator.serviceWorker.controller) {
    addEventListener("load", () => setTimeout(begin, 1000));
    return;
  }
  python.addEventListener("state", () => {
    if (python.state === "live" || python.state === "failed") setTimeout(begin, 500);
  });
  addEventListener("load", () => setTimeout(begin, 30_000));
})();
