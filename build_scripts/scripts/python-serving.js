// @ts-check
/**
 * What a worker says and hears: starts Python when told, then answers one request at a time.
 * In: {kind: "start", plan} and {kind: "answer", id, request}. Out: progress, ready, failed, answered.
 */
import { snapshotIsKept, startPython, whyNoWebAssembly } from "./python-engine.js";

/** Installs the message listener of a worker. */
export function serve() {
  /** @type {import("./python-engine.js").Engine | undefined} */
  let engine;
  addEventListener("message", async (event) => {
    const message = event.data;
    if (message.kind === "answer" && engine) {
      try {
        postMessage({ kind: "answered", id: message.id, response: engine.answer(String(message.request)) });
      } catch (error) {
        postMessage({ kind: "broken", id: message.id, reason: error instanceof Error ? error.message : String(error) });
      }
      return;
    }
    if (message.kind !== "start") return;
    const refused = whyNoWebAssembly();
    if (refused) {
      postMessage({ kind: "failed", reason: refused, final: true });
      return;
    }
    try {
      const { road, ...rest } = message.plan;
      const chosen = road === "best" ? ((await snapshotIsKept(rest.base)) ? "snapshot" : "library") : road;
      postMessage({ kind: "progress", stage: "starting", road: chosen });
      engine = await startPython({ ...rest, road: chosen }, (progress) => postMessage(progress));
      postMessage({ kind: "ready", road: chosen, stages: engine.stages });
    } catch (error) {
      postMessage({ kind: "failed", reason: error instanceof Error ? error.message : String(error), final: false });
    }
  });
}
