// @ts-check
/**
 * The worker that keeps Python apart from the page: starts it when told, then answers one request at a time.
 * Messages in: {kind: "start", plan} and {kind: "answer", id, request}. Out: progress, ready, failed, answered.
 */
import { snapshotIsKept, startPython } from "./python-engine.js";

/** @type {import("./python-engine.js").Engine | undefined} */
let engine;

addEventListener("message", async (event) => {
  const message = event.data;
  if (message.kind === "answer" && engine) {
    const request = String(message.request);
    postMessage({ kind: "answered", id: message.id, response: engine.answer(request) });
    return;
  }
  if (message.kind !== "start") return;
  try {
    const plan = message.plan;
    if (plan.road === "best") plan.road = (await snapshotIsKept(plan.base)) ? "snapshot" : "library";
    postMessage({ kind: "progress", stage: "starting", road: plan.road });
    engine = await startPython(plan, (progress) => postMessage(progress));
    postMessage({ kind: "ready", road: plan.road, stages: engine.stages });
  } catch (error) {
    postMessage({ kind: "failed", reason: error instanceof Error ? error.message : String(error) });
  }
});
