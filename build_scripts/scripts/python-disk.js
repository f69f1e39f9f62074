// @ts-check
/**
 * The engine for a folder opened from disk, where no module and no fetch works: bundled as one classic script that
 * defines a function. The page turns that function's text into a Blob worker, or calls it in the page itself when the
 * browser refuses such a worker.
 */
import * as engine from "./python-engine.js";
import { serve as serveWith } from "./python-serving.js";

export { startPython } from "./python-engine.js";
export { bringParts, isAtWork, stagesReached, whyNoWebAssembly } from "./python-parts.js";

/** Installs the message listener of a Blob worker. */
export function serve() {
  serveWith(() => Promise.resolve(engine));
}
