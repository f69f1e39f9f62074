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

  /** A link to a folded part of a page opens it. */
  function openNamed() {
    const named = location.hash && document.getElementById(decodeURIComponent(location.hash.slice(1)));
    if (!(named instanceof HTMLDetailsElement) || named.open) return;
    named.open = true;
    named.scrollIntoView();
  }

  const container = () => /** @type {HTMLElement} */ (document.querySelector("[data-md-component=container]"));

  let turns = 0;

  /** Put another page of the book on screen, keeping the scripts (and so the running Python) alive.
   * @param {URL} url
   * @param {number | null} scroll */
  async function turnTo(url, scroll) {
    const turn = ++turns;
    const answer = await fetch(url.href.replace(/#.*$/, ""));
    if (!answer.ok || !(answer.headers.get("content-type") || "").includes("text/html")) throw new Error(url.href);
    const next = new DOMParser().parseFromString(await answer.text(), "text/html");
    if (turn !== turns) return; // a later turn began while this page was on its way: it must not cover the later one
    const fresh = next.querySelector("[data-md-component=container]");
    if (!fresh) throw new Error(url.href);
    // The address bar already shows the new page, so its relative addresses count from the right place.
    container().replaceWith(document.adoptNode(fresh));
    document.title = next.title;
    document.dispatchEvent(new Event("linkwright-page"));
    const anchor = url.hash && document.getElementById(decodeURIComponent(url.hash.slice(1)));
    if (anchor) {
      location.replace(url.hash);
      anchor.scrollIntoView();
    } else {
      scrollTo(0, scroll ?? 0);
      if (scroll === null) document.getElementById("content")?.focus({ preventScroll: true });
    }
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
      history.replaceState({ ...history.state, y: scrollY }, "");
      history.pushState({ y: 0 }, "", url);
      shown = url.pathname;
      turnTo(url, null).catch(() => location.pathname === url.pathname && location.assign(url));
    });
    addEventListener("popstate", (event) => {
      if (location.pathname === shown) return;
      shown = location.pathname;
      turnTo(new URL(location.href), event.state?.y ?? 0).catch(() => location.reload());
    });
  }

  function arrived() {
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
