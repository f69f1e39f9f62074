// @ts-check
/**
 * What a worker says and hears: starts Python when told, then answers one request at a time.
 * In: {kind: "start", plan}, {kind: "answer", id, request} and, when it was wanted, {kind: "library", text}. Out: progress, beat, ready, failed; then begun, wanting (the library, from disk), and answered, broken (this question could not be
 * answered) or lost (nothing can be any more).
 */
import { Fault, bestRoad, bringEarly, bringParts, isAtWork, ofEngine, reached, reasonOf, stagesReached, whyNoWebAssembly } from "./python-parts.js";

/** How often a starting worker says that it has nothing to do; python.js has the same. */
const BEAT_MS = 250;

/**
 * Installs the message listener of a worker.
 * @param {(plan: {base: string}) => Promise<typeof import("./python-engine.js")>} bringEngine
 * @param {string} [early]  where the runtime is whose parts are to be brought before the page's script comes
 */
export function serve(bringEngine, early = "") {
  /** @type {import("./python-engine.js").Engine | undefined} */
  let engine;

  /** Who waits for the library. @type {((text: string) => void)[]} */
  const wanting = [];

  /** The library of the folder on disk, which only the page can read. @returns {Promise<string>} */
  function wantLibrary() {
    postMessage({ kind: "wanting" });
    return new Promise((resolve) => wanting.push(resolve));
  }

  /** @param {import("./python-engine.js").Engine} running @param {number} id @param {string} request */
  async function answer(running, id, request) {
    postMessage({ kind: "begun", id });
    try {
      postMessage({ kind: "answered", id, response: await running.answer(request) });
    } catch (error) {
      const reason = reasonOf(error);
      // A library that cannot be brought, or Python's own error, leaves the engine as it was.
      const isOver = !(error instanceof Fault) && reason.code !== "in-python";
      postMessage({ kind: isOver ? "lost" : "broken", id, reason });
    }
  }

  /** @param {any} asked */
  async function start(asked) {
    const refused = whyNoWebAssembly();
    if (refused) {
      postMessage({ kind: "failed", reason: refused, final: true });
      return;
    }
    // A start that hangs leaves this worker idle, and the beats go on; a slow device is at work, and they stop.
    const beating = setInterval(() => isAtWork() || postMessage({ kind: "beat" }), BEAT_MS);
    try {
      reached("asked");
      /** @type {import("./python-parts.js").Report} */
      const report = (progress) => postMessage(progress);
      const code = bringEngine(asked).catch((error) => {
        throw ofEngine(error);
      });
      code.catch(() => undefined); // told again where it is awaited
      const best = asked.road === "best" ? await bestRoad(asked, report) : asked.road;
      const plan = { ...asked, road: best, wantLibrary };
      postMessage({ kind: "progress", stage: "starting", road: best });
      const parts = bringParts(plan, report, code);
      const engines = await code.catch(async (error) => {
        if (!(error instanceof Fault)) await parts.proved; // that the file is damaged says more than what came of it
        throw error;
      });
      engine = await engines.startPython(plan, parts, report);
      postMessage({ kind: "ready", road: best, stages: stagesReached() });
    } catch (error) {
      postMessage({ kind: "failed", reason: reasonOf(error), final: false });
    } finally {
      clearInterval(beating);
    }
  }

  reached("worker");
  if (early && !whyNoWebAssembly()) {
    bringEngine({ base: early }).catch(() => undefined); // told by the start
    bringEarly(early);
  }
  postMessage({ kind: "beat" }); // the worker's code is here
  addEventListener("message", (event) => {
    const message = event.data;
    if (message.kind === "start") void start(message.plan);
    if (message.kind === "library") for (const take of wanting.splice(0)) take(String(message.text));
    if (message.kind === "answer" && engine) void answer(engine, message.id, String(message.request));
  });
}
