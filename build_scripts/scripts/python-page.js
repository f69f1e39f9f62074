// @ts-check
/** Python in the page itself, for browsers that refuse the worker: the engine and its parts in one module. */
export { startPython } from "./python-engine.js";
export { bringParts, isAtWork, stagesReached, whyNoWebAssembly } from "./python-parts.js";
