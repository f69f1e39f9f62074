// Runs in the head, before anything is drawn: sets the page to the light or dark the reader chose, asks for the type, and
// gives the engine's bundle the three small storage functions it expects.
"use strict";
(() => {
  const script = /** @type {HTMLScriptElement} */ (document.currentScript);
  const scope = new URL(script.dataset.base || ".", location.href);
  /** @type {any} */ (window).__md_scope = scope;
  /** @type {any} */ (window).__md_get = (/** @type {string} */ key, storage = localStorage) => {
    try {
      return JSON.parse(String(storage.getItem(scope.pathname + "." + key)));
    } catch {
      return null;
    }
  };
  /** @type {any} */ (window).__md_set = (/** @type {string} */ key, /** @type {unknown} */ value, storage = localStorage) => {
    try {
      storage.setItem(scope.pathname + "." + key, JSON.stringify(value));
    } catch {
      // Storage full or forbidden: the choice lasts for this page only.
    }
  };
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
