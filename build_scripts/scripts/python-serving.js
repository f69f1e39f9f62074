// @ts-check
/**
 * What a worker says and hears: starts Python when told, then answers one request at a time.
 * In: {kind: "start", plan} and {kind: "answer", id, request}. Out: progress, beat, ready, failed; then begun, and
 * answered, broken (this question could not be answered) or lost (nothing can be any more).
 */
import { bringParts, keptSnapshot, ofEngine, reasonOf, whyNoWebAssembly } from "./python-parts.js";

/** How often a starting worker says that it has nothing to do; python.js has the same. */
const BEAT_MS = 250;

/**
 * Installs the message listener of a worker.
 * @param {(plan: import("./python-parts.js").Plan) => Promise<typeof import("./python-engine.js")>} bringEngine
 */
export function serve(bringEngine) {
  /** @type {import("./python-engine.js").Engine | undefined} */
  let engine;

  /** @param {any} asked */
  async function start(asked) {
    const refused = whyNoWebAssembly();
    if (refused) {
      postMessage({ kind: "failed", reason: refused, final: true });
      return;
    }
    // A start that hangs leaves this worker idle, and the beats go on; a slow device is busy, and they stop.
    const beating = setInterval(() => postMessage({ kind: "beat" }), BEAT_MS);
    try {
      const begun = performance.now();
      /** @type {import("./python-parts.js").Report} */
      const report = (progress) => postMessage(progress);
      const code = bringEngine(asked).catch((error) => {
        throw ofEngine(error);
      });
      code.catch(() => undefined); // told again where it is awaited
      const best = asked.road === "best" ? ((await keptSnapshot(asked.base)) ? "snapshot" : "library") : asked.road;
      const plan = { ...asked, road: best };
      postMessage({ kind: "progress", stage: "starting", road: best });
      const parts = bringParts(plan, report);
      engine = await (await code).startPython(plan, parts, report, begun);
      postMessage({ kind: "ready", road: best, stages: engine.stages });
    } catch (error) {
      postMessage({ kind: "failed", reason: reasonOf(error), final: false });
    } finally {
      clearInterval(beating);
    }
  }

  postMessage({ kind: "beat" }); // the worker's code is here
  addEventListener("message", (event) => {
    const message = event.data;
    if (message.kind === "start") void start(message.plan);
    if (message.kind !== "answer" || !engine) return;
    postMessage({ kind: "begun", id: message.id });
    try {
      postMessage({ kind: "answered", id: message.id, response: engine.answer(String(message.request)) });
    } catch (error) {
      const reason = reasonOf(error);
      postMessage({ kind: reason.code === "in-python" ? "broken" : "lost", id: message.id, reason });
    }
  });
}
