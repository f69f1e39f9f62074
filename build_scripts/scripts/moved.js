// An old address: leads on to the page that it became part of, to the same cell of its table.
"use strict";
(() => {
  const place = /** @type {HTMLMetaElement | null} */ (document.querySelector("meta[name=moved-to]"));
  if (!place) return;
  const cell = /^#[cs]-\d+$/.test(location.hash) ? `${place.dataset["mark"] ?? ""}${location.hash.slice(1)}` : "";
  const anchor = cell || location.hash.slice(1) || (place.dataset["anchor"] ?? "");
  location.replace(place.content + (anchor ? `#${anchor}` : ""));
})();
