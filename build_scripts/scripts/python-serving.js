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

  /** @type {import("./python-parts.js").Report} */
  const report = (progress) => postMessage(progress);

  /** The engine's code, whose fault is told where it is awaited. @param {{base: string}} plan */
  function engineOf(plan) {
    const code = bringEngine(plan).catch((error) => {
      throw ofEngine(error);
    });
    code.catch(() => undefined);
    return code;
  }

  /**
   * @param {import("./python-parts.js").Plan} plan
   * @param {ReturnType<typeof engineOf>} code
   * @returns {Promise<import("./python-engine.js").Engine>}
   */
  async function run(plan, code) {
    const parts = bringParts(plan, report, code);
    const engines = await code.catch(async (error) => {
      if (!(error instanceof Fault)) await parts.proved; // that the file is damaged says more than what came of it
      throw error;
    });
    return engines.startPython(plan, parts, report);
  }

  /**
   * The start from what this device keeps, begun before the page's script comes: all is done but the comparing of checksums,
   * which come with that script. Without them there is no engine.
   * @param {string} base
   */
  function begin(base) {
    /** @type {(sums: import("./python-parts.js").Sums) => void} */
    let take = () => undefined;
    /** @type {Promise<import("./python-parts.js").Sums>} */
    const sums = new Promise((resolve) => {
      take = resolve;
    });
    const code = engineOf({ base });
    const isKept = bringEarly(base);
    const engine = isKept.then((kept) => (kept ? run({ road: "snapshot", base, sums, quick: 0 }, code) : undefined));
    engine.catch(() => undefined); // told by the start
    return { base, isKept, engine, take };
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
      const isBegun = begun?.base === asked.base && asked.road === "best" && (await begun?.isKept);
      const code = engineOf(asked);
      const road = isBegun ? "snapshot" : asked.road === "best" ? await bestRoad(asked, report) : asked.road;
      postMessage({ kind: "progress", stage: "starting", road });
      begun?.take(asked.sums);
      engine = (isBegun ? await begun?.engine : undefined) ?? (await run({ ...asked, road, wantLibrary }, code));
      postMessage({ kind: "ready", road, stages: stagesReached() });
    } catch (error) {
      postMessage({ kind: "failed", reason: reasonOf(error), final: false });
    } finally {
      clearInterval(beating);
    }
  }

  reached("worker");
  const begun = early && !whyNoWebAssembly() ? begin(early) : undefined;
  postMessage({ kind: "beat" }); // the worker's code is here
  addEventListener("message", (event) => {
    const message = event.data;
    if (message.kind === "start") void start(message.plan);
    if (message.kind === "library") for (const take of wanting.splice(0)) take(String(message.text));
    if (message.kind === "answer" && engine) void answer(engine, message.id, String(message.request));
  });
}
