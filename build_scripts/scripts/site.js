// The thin glue of every page: light or dark, moving between pages without starting Python again, the date
// on a printed sheet, and scroll regions that a keyboard can reach. Everything here is extra; without it each page still
// reads whole. A page that has been turned to is told by the event "linkwright-page" on the document.
"use strict";
(() => {
  const root = document.documentElement;
  const scope = /** @type {URL} */ (/** @type {any} */ (window).__md_scope);

  /** Light or dark: one button, remembered; until used, the device decides. */
  function bindMode() {
    const button = document.querySelector("[data-mode-switch]");
    button?.addEventListener("click", () => {
      const dark = root.dataset.mode
        ? root.dataset.mode === "dark"
        : matchMedia("(prefers-color-scheme: dark)").matches;
      root.dataset.mode = dark ? "light" : "dark";
      try {
        localStorage.setItem("linkwright.mode", root.dataset.mode);
      } catch {
        // Storage full or forbidden: the choice lasts for this page only.
      }
    });
  }

  /** Mark the door that the shown page belongs to. */
  function markDoor() {
    const now = document.querySelector("[data-door-now]")?.getAttribute("data-door-now") || "";
    for (const door of document.querySelectorAll("[data-door], [data-part]")) {
      if ((door.getAttribute("data-door") ?? door.getAttribute("data-part")) === now) door.setAttribute("aria-current", "true");
      else door.removeAttribute("aria-current");
    }
  }

  /** A wide table scrolls inside its frame: reachable by keyboard only when it does scroll. */
  function frames() {
    for (const frame of document.querySelectorAll(".table-frame")) {
      frame.removeAttribute("data-fits");
      const wide = frame.scrollWidth > frame.clientWidth + 1;
      if (wide) frame.setAttribute("tabindex", "0");
      else frame.removeAttribute("tabindex");
      frame.toggleAttribute("data-scrolls", wide);
      frame.toggleAttribute("data-fits", !wide); // its heads may then stay in view while the page scrolls
    }
  }

  function stampPrint() {
    const today = new Date();
    const text = today.getFullYear() + "-" + String(today.getMonth() + 1).padStart(2, "0") + "-" + String(today.getDate()).padStart(2, "0");
    for (const cell of document.querySelectorAll("[data-printed-on]")) cell.textContent = text;
  }

  /** Closed notes are printed open, and closed again afterwards. */
  function openForPrint() {
    /** @type {HTMLDetailsElement[]} */
    let opened = [];
    addEventListener("beforeprint", () => {
      stampPrint();
      opened = [.../** @type {NodeListOf<HTMLDetailsElement>} */ (document.querySelectorAll("details:not([open])"))];
      for (const one of opened) one.open = true;
    });
    addEventListener("afterprint", () => {
      for (const one of opened) one.open = false;
      opened = [];
    });
  }

  /** What a fragment of an address names. @param {string} fragment @returns {HTMLElement | null} */
  function namedBy(fragment) {
    try {
      return fragment ? document.getElementById(decodeURIComponent(fragment.slice(1))) : null;
    } catch {
      return null; // no name at all, such as #%
    }
  }

  /** A link to a folded part of a page opens it. */
  function openNamed() {
    const named = namedBy(location.hash);
    if (!(named instanceof HTMLDetailsElement) || named.open) return;
    named.open = true;
    named.scrollIntoView();
  }

  const container = () => /** @type {HTMLElement} */ (document.querySelector("[data-md-component=container]"));

  let turns = 0;
  /** After so long the browser loads the page itself, and says itself what is wrong. */
  const LONGEST_TURN_MS = 8000;

  /** Put another page of the book on screen, keeping the scripts (and so the running Python) alive.
   * @param {URL} url
   * @param {{y?: number, link?: string} | null} back  how the page was left, when the reader comes back to it */
  async function turnTo(url, back) {
    const turn = ++turns;
    // Where the calculator's own script did not come, the next page tries again.
    if (!globalThis.linkwright) throw new Error("whole");
    const giveUp = new AbortController();
    const limit = setTimeout(() => giveUp.abort(), LONGEST_TURN_MS);
    const answer = await fetch(url.href.replace(/#.*$/, ""), { signal: giveUp.signal });
    if (!answer.ok || !(answer.headers.get("content-type") || "").includes("text/html")) throw new Error(url.href);
    const next = new DOMParser().parseFromString(globalThis.linkwrightTrusted.page(await answer.text()), "text/html");
    clearTimeout(limit);
    if (turn !== turns) return; // a later turn began while this page was on its way: it must not cover the later one
    // A page of another edition, among scripts and a Python of this one: it is loaded whole.
    if (next.documentElement.dataset["code"] !== root.dataset["code"]) throw new Error("another edition");
    const fresh = next.querySelector("[data-md-component=container]");
    if (!fresh) throw new Error(url.href);
    // The address bar already shows the new page, so its relative addresses count from the right place.
    container().replaceWith(document.adoptNode(fresh));
    document.title = next.title;
    document.dispatchEvent(new Event("linkwright-page"));
    const anchor = namedBy(url.hash);
    if (anchor) {
      location.replace(url.hash);
      anchor.scrollIntoView();
      return;
    }
    scrollTo(0, back?.y ?? 0);
    const left = back?.link ? document.querySelector(`main a[href="${CSS.escape(back.link)}"]`) : null;
    const place = left ?? document.getElementById("content");
    if (place instanceof HTMLElement) place.focus({ preventScroll: true });
  }

  /** What a turn could not do the browser does: the address is already that of the page. @param {URL} url */
  function loadWhole(url) {
    if (location.pathname === url.pathname) location.reload();
  }

  function bindTurning() {
    if (!location.protocol.startsWith("http")) return;
    // The header and the icon stay while pages turn: make their addresses whole, so that they hold from any page.
    for (const one of document.querySelectorAll("header [href], .doors [href], header form, link[rel=icon], link[rel=manifest]")) {
      if (one instanceof HTMLAnchorElement || one instanceof HTMLLinkElement) one.href = String(one.href);
      if (one instanceof HTMLFormElement) one.action = String(one.action);
    }
    history.scrollRestoration = "manual";
    let shown = location.pathname;
    document.addEventListener("click", (event) => {
      const link = /** @type {Element} */ (event.target).closest("a");
      if (!link || event.defaultPrevented || event.button || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
      if (link.target || link.hasAttribute("download")) return;
      const url = new URL(link.href);
      if (url.origin !== location.origin || !url.pathname.startsWith(scope.pathname)) return;
      if (url.pathname === location.pathname && url.hash) return;
      if (!/(\.html|\/)$/.test(url.pathname)) return;
      event.preventDefault();
      history.replaceState({ ...history.state, y: scrollY, link: link.getAttribute("href") }, "");
      history.pushState({ y: 0 }, "", url);
      shown = url.pathname;
      turnTo(url, null).catch(() => loadWhole(url));
    });
    addEventListener("popstate", (event) => {
      if (location.pathname === shown) return;
      shown = location.pathname;
      const url = new URL(location.href);
      turnTo(url, event.state ?? {}).catch(() => loadWhole(url));
    });
  }

  /** Scripts that come with the first page that has a place for them. */
  const EXTRAS = [["scripts/kit.js", "[data-kit], [data-kit-judged], [data-kit-pick]"], ["scripts/from-paper.js", "[data-job], [data-back]"]];
  /** @type {Set<string>} */
  const loaded = new Set();

  function loadExtras() {
    for (const [address = "", places = ""] of EXTRAS) {
      if (loaded.has(address) || !document.querySelector(places) || !globalThis.linkwright) continue;
      loaded.add(address);
      globalThis.linkwrightScript(new URL(address, scope)).catch(() => loaded.delete(address));
    }
  }

  function arrived() {
    loadExtras();
    markDoor();
    stampPrint();
    frames();
    openNamed();
  }

  bindMode();
  openForPrint();
  bindTurning();
  addEventListener("resize", frames);
  addEventListener("hashchange", openNamed);
  document.addEventListener("linkwright-page", arrived);
  arrived();
})();
