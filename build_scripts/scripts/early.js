// Runs in the head, before anything is drawn: sets the page to the light or dark the reader chose, asks for the type, and
// gives the other scripts `linkwrightSay`: the words of this page's language, which stand in the page as data.
"use strict";
(() => {
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

  document.documentElement.classList.replace("no-js", "js");
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
  }
  let mode = null;
  try {
    mode = localStorage.getItem("linkwright.mode");
  } catch {
    // Storage forbidden: follow the device.
  }
  if (mode === "light" || mode === "dark") document.documentElement.dataset.mode = mode;
})();
