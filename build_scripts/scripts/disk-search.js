// Opened from disk (file://) a browser refuses a worker made from a file, so the engine's search could not start. There a
// hidden frame stands in for that one worker; every other Worker (the one that runs Python) stays the browser's own.
"use strict";
(() => {
  if (location.protocol !== "file:") return;
  const Native = window.Worker;
  const scope = /** @type {any} */ (window).__md_scope;
  const shim = document.createElement("script");
  shim.src = String(new URL("scripts/frame-worker.js", scope));
  const Frame = () => /** @type {any} */ (window).IFrameWorker;
  // The shim sets window.Worker itself; this setter keeps it from touching the others.
  Object.defineProperty(window, "Worker", {
    configurable: true,
    get: () => function (/** @type {string | URL} */ url, /** @type {WorkerOptions} */ options) {
      const search = /javascripts\/workers\/search\./.test(String(url));
      return search ? new (Frame())(url) : new Native(url, options);
    },
    set: () => undefined,
  });
  document.write('<script src="' + shim.src + '"><\/script>');
})();
