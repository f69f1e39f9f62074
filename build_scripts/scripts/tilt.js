// The phone as an angle gauge, where the browser has its sensor of tilt: zero on a known level, a reading that is held, and its
// range of doubt. What it says stands in the page; here stands only which sentence is shown.
"use strict";
(() => {
  /** Under this angle from the horizontal no sling is used, and under that one it is looked at twice [deg] (calc/lifting/leg_geometry.py). */
  const LEAST = 30;
  const CAREFUL = 45;
  /** What a phone laid along a leg may be off [deg], and how much more while nobody set its zero (our own marks, no source). */
  const LAID = 1;
  const NOT_ZEROED = 2;
  /** How long readings are looked back on, and how long a sensor may be silent [ms]. */
  const LOOKED_BACK = 2000;
  const SILENT = 3000;
  /** A known level is not further off than this [deg]: more is a slope, or a phone that stands on its end. */
  const FURTHEST_ZERO = 10;

  /** How far the long side of the phone rises from the horizontal [deg], from the sensor's turn about its short side. @param {number} beta */
  const risen = (beta) => (Math.asin(Math.sin((beta * Math.PI) / 180)) * 180) / Math.PI;

  /** @param {HTMLElement} box */
  function bind(box) {
    box.dataset["tiltReady"] = "";
    /** @param {string} name */
    const part = (name) => /** @type {HTMLElement} */ (box.querySelector(`[data-tilt-${name}]`));
    /** @type {{at: number, risen: number}[]} */
    let seen = [];
    let zero = 0;
    let isZeroed = false;
    let isHeld = false;

    function show() {
      const last = seen[seen.length - 1];
      if (!last) return;
      const all = seen.map((one) => one.risen);
      const angle = Math.min(90, Math.abs(last.risen - zero));
      const doubt = Math.ceil((Math.max(...all) - Math.min(...all)) / 2 + LAID + (isZeroed ? 0 : NOT_ZEROED));
      const least = Math.max(0, Math.floor(angle - doubt + 1e-6)); // 60 may come out of the sine a hair under 60
      part("angle").textContent = `${Math.round(angle)}°`;
      part("doubt").textContent = `${doubt}°`;
      part("least").textContent = `${least}°`;
      part("never").hidden = least >= LEAST;
      part("careful").hidden = least < LEAST || least >= CAREFUL;
      part("unset").hidden = isZeroed;
    }

    /** @param {Event} event */
    function hear(event) {
      const beta = /** @type {DeviceOrientationEvent} */ (event).beta;
      if (!box.isConnected) removeEventListener("deviceorientation", hear);
      if (beta === null || beta === undefined || isHeld) return;
      const now = Date.now();
      seen = [...seen.filter((one) => now - one.at < LOOKED_BACK), { at: now, risen: risen(beta) }];
      part("on").hidden = false;
      part("silent").hidden = true;
      show();
    }

    part("start").addEventListener("click", async () => {
      const sensor = /** @type {{requestPermission?: () => Promise<string>}} */ (/** @type {unknown} */ (DeviceOrientationEvent));
      const isLet = await Promise.resolve(sensor.requestPermission ? sensor.requestPermission() : "granted").catch(() => "denied");
      part("silent").hidden = isLet === "granted";
      if (isLet !== "granted") return;
      addEventListener("deviceorientation", hear);
      part("start").setAttribute("aria-pressed", "true");
      setTimeout(() => (part("silent").hidden = seen.length > 0), SILENT);
    });
    part("zero").addEventListener("click", () => {
      const last = seen[seen.length - 1];
      if (!last) return;
      isZeroed = Math.abs(last.risen) <= FURTHEST_ZERO;
      zero = isZeroed ? last.risen : 0;
      part("slope").hidden = isZeroed;
      show();
    });
    part("hold").addEventListener("click", () => {
      isHeld = !isHeld;
      part("hold").setAttribute("aria-pressed", String(isHeld));
    });
    box.hidden = false;
  }

  function bindAll() {
    const box = document.querySelector("[data-tilt]:not([data-tilt-ready])");
    if (box instanceof HTMLElement && "DeviceOrientationEvent" in window) bind(box);
  }

  document.addEventListener("linkwright-page", bindAll);
  bindAll();
})();
