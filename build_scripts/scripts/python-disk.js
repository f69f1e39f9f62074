// @ts-check
/**
 * The engine for a folder opened from disk, where no module and no fetch works: bundled as one classic script that
 * defines a function. The page turns that function's text into a Blob worker, or calls it in the page itself when the
 * browser refuses such a worker.
 */
export { startPython, whyNoWebAssembly } from "./python-engine.js";
export { serve } from "./python-serving.js";
