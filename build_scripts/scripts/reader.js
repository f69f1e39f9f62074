// What the reader told the book once and every page keeps: where they are, whose rule therefore leads, and the menu that
// asks. Until they say, the region of the browser's language says it; without either the strictest rule leads.
"use strict";
(() => {
  const KEY = "linkwright-place";
  const BY_REGION = /** @type {Record<string, string>} */ ({ US: "us-federal", CA: "ca", GB: "gb", AU: "au", IE: "eu", DE: "eu", AT: "eu", FR: "eu", NL: "eu", BE: "eu", IT: "eu", ES: "eu", PL: "eu", SE: "eu", DK: "eu", FI: "eu" });

  /** @returns {string} */
  function place() {
    let kept = null;
    try {
      kept = localStorage.getItem(KEY);
    } catch {
      // Storage forbidden: the language alone says it.
    }
    if (kept !== null) return kept;
    const region = (navigator.language || "").split("-").pop() ?? "";
    return BY_REGION[region.toUpperCase()] ?? "";
  }

  function show() {
    const now = place();
    document.documentElement.dataset["place"] = now;
    const box = document.querySelector("[data-choose-place]");
    if (box instanceof HTMLSelectElement) box.value = now;
    document.dispatchEvent(new CustomEvent("linkwright-place", { detail: now }));
  }

  function bindPlace() {
    document.addEventListener("change", (event) => {
      const box = event.target;
      if (!(box instanceof HTMLSelectElement) || !box.hasAttribute("data-choose-place")) return;
      try {
        localStorage.setItem(KEY, box.value);
      } catch {
        document.documentElement.dataset["place"] = box.value; // Storage full or forbidden: for this page alone.
      }
      show();
    });
  }

  function bindMenu() {
    const menu = document.querySelector("[data-menu]");
    if (!(menu instanceof HTMLDetailsElement)) return;
    const shut = () => (menu.open = false);
    document.addEventListener("keydown", (event) => {
      if (event.key !== "Escape" || !menu.open) return;
      shut();
      /** @type {HTMLElement | null} */ (menu.querySelector("summary"))?.focus();
    });
    document.addEventListener("click", (event) => {
      if (menu.open && event.target instanceof Node && !menu.contains(event.target)) shut();
    });
    document.addEventListener("linkwright-page", shut);
  }

  bindMenu();
  bindPlace();
  show();
  document.addEventListener("linkwright-page", show);
})();
