// @ts-check
/** Drawings to drag: the page carries every place of the handle, drawn when the book was built; this shows the one asked for. */
"use strict";
(() => {
  /** @typedef {{ down: number, said: string, outlines: Record<string, string> }} Place */

  /** @param {HTMLElement} figure */
  function bind(figure) {
    const held = figure.querySelector("script.drag-places");
    const box = figure.querySelector("input.drag-box");
    const said = figure.querySelector("output");
    const drawing = figure.querySelector("svg");
    const row = figure.querySelector(".drag-row");
    if (!held || !(box instanceof HTMLInputElement) || !said || !drawing || !(row instanceof HTMLElement)) return;
    const places = /** @type {Place[]} */ (JSON.parse(held.textContent ?? "[]"));
    const handle = drawing.querySelector('[data-part="handle"]');

    function show() {
      const place = places[Number(/** @type {HTMLInputElement} */ (box).value)];
      if (!place) return;
      for (const [name, outline] of Object.entries(place.outlines)) {
        drawing?.querySelector(`[data-part="${name}"]`)?.setAttribute("d", outline);
      }
      /** @type {HTMLOutputElement} */ (said).textContent = place.said;
      box?.setAttribute("aria-valuetext", place.said);
    }

    /** @param {PointerEvent} event */
    function follow(event) {
      const frame = /** @type {SVGSVGElement} */ (drawing).getBoundingClientRect();
      const down = (event.clientY - frame.top) / frame.height;
      let nearest = 0;
      places.forEach((place, index) => {
        if (Math.abs(place.down - down) < Math.abs((places[nearest]?.down ?? 0) - down)) nearest = index;
      });
      /** @type {HTMLInputElement} */ (box).value = String(nearest);
      show();
    }

    box.addEventListener("input", show);
    handle?.addEventListener("pointerdown", (event) => {
      if (!(event instanceof PointerEvent)) return;
      event.preventDefault();
      handle.setPointerCapture(event.pointerId);
    });
    handle?.addEventListener("pointermove", (event) => {
      if (event instanceof PointerEvent && handle.hasPointerCapture(event.pointerId)) follow(event);
    });
    row.hidden = false;
    figure.dataset["dragReady"] = "";
  }

  function bindAll() {
    for (const figure of document.querySelectorAll("figure[data-drag]:not([data-drag-ready])")) {
      if (figure instanceof HTMLElement) bind(figure);
    }
  }

  document.addEventListener("linkwright-page", bindAll);
  bindAll();
})();
