// @ts-check
/**
 * Keeps the whole handbook on the device (service worker) and tells the reader when a new edition is ready.
 *
 * The new edition never takes over by itself: tables and code of two editions must not meet on one page. What the
 * reader typed is in the address, so a reload keeps it.
 */

const sayOfPage = /** @type {(key: string) => string} */ (/** @type {any} */ (window).linkwrightSay);

const UPDATE_EVERY_MS = 60 * 60 * 1000;

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

/** Says "works without a signal" only after looking that the last and largest part is really kept. */
async function tellKept() {
  const isKept = (await caches.match(`${runtimeBase}snapshot.bin`)) && (await caches.match(`${siteRoot}index.html`, { ignoreSearch: true }));
  if (!isKept) return;
  document.documentElement.dataset["offline"] = "kept";
  for (const place of document.querySelectorAll("[data-offline-note]")) {
    place.textContent = sayOfPage("kept");
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
  const registration = await workers.register(`${siteRoot}offline-worker.js`, { scope: siteRoot, updateViaCache: "none" });
  const look = () => {
    if (registration.waiting && workers.controller) tellNewEdition(registration.waiting);
  };
  look();
  registration.addEventListener("updatefound", () => {
    const coming = registration.installing;
    coming?.addEventListener("statechange", () => {
      if (coming.state === "installed") look();
      if (coming.state === "activated") void tellKept();
    });
  });
  let asked = Date.now();
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "visible" || Date.now() - asked < UPDATE_EVERY_MS) return;
    asked = Date.now();
    registration.update().catch(() => undefined); // offline: the next look will do
  });
  if (registration.active) await tellKept();
  document.addEventListener("linkwright-page", () => void tellKept());
}

// After the first answer, or well after the page is there: keeping 20 MB must not delay what the reader came for.
(() => {
  if (fromDisk || !("serviceWorker" in navigator)) return;
  let begun = false;
  const begin = () => {
    if (begun) return;
    begun = true;
    // Forbidden storage, a full disk or a plain http host: the handbook works, only not offline.
    keepEdition().catch((error) => console.info("offline", error));
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
