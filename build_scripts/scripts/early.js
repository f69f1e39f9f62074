// Runs in the head, before anything is drawn: sets the page to the light or dark the reader chose, asks for the type, and
// gives the other scripts `linkwrightSay`: the words of this page's language, which stand in the page as data.
//
// It loads those scripts, each held against the checksum that the page was built with: page and scripts are of one build, and
// a changed byte is a fault. It is itself the one script that nothing checks. (From disk a browser can check none.)
//
// It also watches over worksheets until their own script has taken them over: what is typed meanwhile is marked, so that it
// is not lost, and a script that does not come or does not run is told in words. A browser that is too old for the other
// scripts is told from one that is not: there the page stays as it was built.
"use strict";
(() => {
  const isFit = "customElements" in window && "DecompressionStream" in window && "at" in Array.prototype && "hasOwn" in Object;
  const script = /** @type {HTMLScriptElement} */ (document.currentScript);
  const scope = new URL(script.dataset.base || ".", location.href);
  /** @type {any} */ (window).__md_scope = scope;
  /** Text, or pieces: text, ["f", fraction], ["v", fact], ["s", fact, variants, other]. @typedef {string | (string | any[])[]} Pattern */
  /** @type {Record<string, Pattern> | null} */
  let words = null;

  /** A pattern of the catalogue with its facts put in. @param {Pattern} pattern @param {Record<string, string | number>} facts @returns {string} */
  function filled(pattern, facts) {
    if (typeof pattern === "string") return pattern;
    return pattern.map((piece) => {
      if (typeof piece === "string") return piece;
      if (piece[0] === "f") return piece[1];
      const fact = facts[piece[1]] ?? "";
      if (piece[0] === "v") return String(fact);
      const plural = typeof fact === "number" ? new Intl.PluralRules(document.documentElement.lang).select(fact) : "";
      return filled(piece[2][String(fact)] ?? piece[2][plural] ?? piece[2][piece[3]] ?? "", facts);
    }).join("");
  }

  /** What the page says, by its key in page/scripts.ftl. @param {string} key @param {Record<string, string | number>} facts */
  const say = (key, facts = {}) => {
    words ??= /** @type {Record<string, Pattern>} */ (JSON.parse(document.getElementById("page-words")?.textContent ?? "{}"));
    return filled(words[key] ?? key, facts);
  };
  /** @type {any} */ (window).linkwrightSay = say;
  globalThis.linkwrightFilled = filled;

  // Where a host demands it, addresses of scripts and texts of pages pass this policy: only what is of this book does.
  const policy = /** @type {any} */ (window).trustedTypes?.createPolicy("linkwright", {
    createScriptURL: (/** @type {string} */ address) => {
      if (!new URL(address, location.href).href.startsWith(scope.href)) throw new TypeError(address);
      return address;
    },
    createHTML: (/** @type {string} */ text) => text,
  });
  globalThis.linkwrightTrusted = {
    script: (address) => policy?.createScriptURL(String(address)) ?? String(address),
    page: (text) => policy?.createHTML(text) ?? text,
  };

  /** @typedef {{src: string, sum: string, later?: boolean}} PageScript */
  const listed = /** @type {PageScript[]} */ (JSON.parse(document.getElementById("page-scripts")?.textContent ?? "[]"))
    .map((one) => ({ ...one, src: String(new URL(one.src, location.href)) }));

  /** @param {string} address @returns {Promise<void>} */
  function addScript(address) {
    return new Promise((loaded, missing) => {
      const one = document.createElement("script");
      const known = listed.find((other) => other.src === address);
      if (known && location.protocol !== "file:") one.integrity = known.sum;
      one.async = false;
      one.onload = () => loaded();
      one.onerror = () => missing(new Error(address));
      one.src = globalThis.linkwrightTrusted.script(address);
      document.head.append(one);
    });
  }
  globalThis.linkwrightScript = (address) => addScript(String(address));

  document.addEventListener("DOMContentLoaded", () => {
    for (const one of listed) if (!one.later) addScript(one.src).catch(() => undefined); // told by the listener below
  });

  if (isFit) document.documentElement.classList.replace("no-js", "js");
  else document.documentElement.classList.add("old");

  const UNTAKEN = 'calc-sheet[data-state="static"]';

  document.addEventListener("input", ({ target }) => {
    if (!(target instanceof HTMLElement) || !target.closest(UNTAKEN)) return;
    target.dataset["typed"] = "";
    target.closest(UNTAKEN)?.setAttribute("data-typed", "");
  });

  /** Says in every worksheet that no script has taken over why there is no answer. @param {string} file */
  function tellMissing(file) {
    for (const sheet of document.querySelectorAll(UNTAKEN)) {
      sheet.setAttribute("data-fault", "");
      for (const place of sheet.querySelectorAll("[data-why]")) place.textContent = say("script-missing", { file });
      for (const place of sheet.querySelectorAll("[data-foot]")) place.textContent = say("bar-not-started");
      for (const place of sheet.querySelectorAll("[data-live]")) place.textContent = sheet.querySelector(".not-started")?.textContent ?? "";
    }
  }

  // A plain link, which loads the page anew where no script runs at all; here the address keeps what was typed.
  document.addEventListener("click", (event) => {
    const link = event.target instanceof Element && event.target.closest("[data-reload]");
    if (!link) return;
    event.preventDefault();
    const fields = new URLSearchParams(location.hash.includes("=") ? location.hash.slice(1) : "");
    const boxes = link.closest(UNTAKEN)?.querySelectorAll("[data-typed]:not([type=file], [type=radio]:not(:checked))") ?? [];
    for (const box of /** @type {Iterable<HTMLInputElement>} */ (boxes)) {
      fields.set(box.name, box.type !== "checkbox" ? box.value : box.checked ? "yes" : "no");
    }
    if (String(fields)) history.replaceState(history.state, "", `#${fields}`);
    location.reload();
  });

  /** A script that does not fit its page may be of a newer edition than the page: once, both are loaded anew. */
  function loadOnceMore() {
    const code = document.documentElement.dataset["code"] ?? "";
    try {
      if (location.protocol === "file:" || document.querySelector("[data-typed]") || sessionStorage.getItem("linkwright-loaded-anew") === code) return false;
      sessionStorage.setItem("linkwright-loaded-anew", code);
    } catch {
      return false; // Storage forbidden: it could not be known that it was done already.
    }
    location.reload();
    return true;
  }

  addEventListener("error", (event) => {
    const address = event.target instanceof HTMLScriptElement ? event.target.src : event instanceof ErrorEvent ? event.filename : "";
    if (!/\/runtime\/[^/]+\.js$/.test(address)) return;
    if (loadOnceMore()) return;
    const file = address.slice(address.lastIndexOf("/") + 1);
    if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", () => tellMissing(file));
    else tellMissing(file);
    document.addEventListener("linkwright-page", () => tellMissing(file));
  }, true);

  // The two faces of the first screen are asked for early; from disk (file://) a browser refuses such a hint.
  if (location.protocol !== "file:") {
    for (const face of ["text", "head-bold"]) {
      const hint = document.createElement("link");
      hint.rel = "preload";
      hint.as = "font";
      hint.type = "font/woff2";
      hint.crossOrigin = "";
      hint.href = String(new URL(`assets/fonts/${face}.woff2`, scope));
      document.head.append(hint);
    }
    for (const one of listed) {
      if (one.later) continue;
      const hint = document.createElement("link");
      hint.rel = "preload";
      hint.as = "script";
      hint.integrity = one.sum;
      hint.href = one.src;
      document.head.append(hint);
    }
  }
  // Where this device keeps the book, the worker of a worksheet is made before the page is read, and its name tells it to
  // bring at once what it needs (a message would wait for the page); python.js takes it over. On a first visit the line is
  // left to the page.
  const runtime = script.dataset["runtime"];
  if (runtime && isFit && navigator.serviceWorker?.controller && typeof Worker === "function") {
    const base = String(new URL(`runtime/${runtime}/`, scope));
    try {
      const worker = new Worker(globalThis.linkwrightTrusted.script(`${base}python-worker.mjs`), { type: "module", name: "early" });
      const early = { base, worker, hasFailed: false };
      worker.onerror = (event) => {
        event.preventDefault();
        early.hasFailed = true;
      };
      globalThis.linkwrightEarly = early;
    } catch {
      // python.js finds out why, and says it.
    }
  }
  let mode = null;
  try {
    mode = localStorage.getItem("linkwright.mode");
  } catch {
    // Storage forbidden: follow the device.
  }
  if (mode === "light" || mode === "dark") document.documentElement.dataset.mode = mode;
})();
