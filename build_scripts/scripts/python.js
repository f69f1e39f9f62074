// @ts-check
/**
 * Starts Python for the page and keeps it for the whole visit: one worker, which outlives moves between pages.
 *
 * Roads are tried in order, each dropped when it reports a fault or stands idle for STALL_MS:
 *   served:    memory image if this device keeps it, else trimmed library; trimmed library; the ordinary runtime
 *   from disk: memory image; trimmed library (parts are script files, because nothing can be fetched there)
 * A browser that refuses the worker runs Python in the page. When no road is left the state is "failed", with a reason.
 */

/** How long a road may stand idle without progress: it hangs. */
const STALL_MS = 6000;
/** How often an idle worker says so; python-serving.js has the same. */
const BEAT_MS = 250;
/** How long a worker may be busy without a word: an old phone compiles slowly, and must not be cut off. */
const SILENT_MS = 45_000;

/** The root of the site, found from this script's own address (runtime/linkwright.js). */
const siteRoot = new URL("..", /** @type {HTMLScriptElement} */ (document.currentScript).src).href;
const fromDisk = location.protocol === "file:";
const runtimeBase = `${siteRoot}runtime/${linkwrightBuild.runtime}/`;

/**
 * @typedef {"idle" | "starting" | "live" | "failed"} PythonState
 * @typedef {import("./python-parts.js").Reason} Reason
 * @typedef {{road: string, place: "worker" | "page"}} Attempt
 */

class PythonHost extends EventTarget {
  /** @type {PythonState} */
  state = "idle";
  /** Why the state is "failed", in words for the reader. */
  reason = "";
  /** Which road answered, where, and the milliseconds of each stage: for the benchmark and for the curious. */
  /** @type {{road: string, place: string, stages: Record<string, number>} | null} */
  started = null;
  /** Faults of the roads that were dropped. */
  /** @type {string[]} */
  dropped = [];
  /** How many workers were ever made in this visit. */
  workersMade = 0;

  /** @type {Worker | null} */
  #worker = null;
  /** @type {((request: string) => string) | null} */
  #inPage = null;
  /** @type {Map<number, {resolve: (response: View | Refusal) => void, reject: (error: Error) => void}>} */
  #waiting = new Map();
  #lastId = 0;
  /** @type {Promise<Record<string, string>> | null} */
  #packed = null;

  /** Starts once; later calls do nothing. */
  start() {
    if (this.state !== "idle") return;
    this.#enter("starting");
    void this.#tryRoads();
  }

  /**
   * @param {Question} request
   * @returns {Promise<View | Refusal>}
   */
  answer(request) {
    const text = JSON.stringify(request);
    if (this.#inPage) return Promise.resolve(JSON.parse(this.#inPage(text)));
    const worker = this.#worker;
    if (!worker) return Promise.reject(new Error(say("fault-not-running")));
    this.#lastId += 1;
    const id = this.#lastId;
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { resolve, reject });
      worker.postMessage({ kind: "answer", id, request: text });
    });
  }

  /** @param {PythonState} state */
  #enter(state) {
    this.state = state;
    this.dispatchEvent(new Event("state"));
  }

  async #tryRoads() {
    /** @type {Attempt[]} */
    const attempts = fromDisk
      ? [{ road: "snapshot", place: "worker" }, { road: "library", place: "worker" }]
      : [{ road: "best", place: "worker" }, { road: "ordinary", place: "worker" }];
    let pageIsLeft = true;
    for (let attempt = attempts.shift(); attempt; attempt = attempts.shift()) {
      const outcome = attempt.place === "worker" ? await this.#inWorker(attempt.road) : await this.#onPage(attempt.road);
      if (outcome.live) {
        this.#enter("live");
        return;
      }
      this.dropped.push(`${outcome.road} in ${attempt.place}: ${outcome.reason}`);
      if (outcome.final) {
        this.reason = outcome.reason;
        break;
      }
      this.reason = outcome.reason;
      if (attempt.road === "best" && outcome.road === "snapshot") attempts.unshift({ road: "library", place: "worker" });
      // A worker that is refused, or in which no road leads on, leaves the page itself.
      if (pageIsLeft && (outcome.noWorker || attempts.length === 0)) {
        pageIsLeft = false;
        attempts.length = 0;
        attempts.push({ road: "library", place: "page" });
        if (fromDisk) attempts.unshift({ road: "snapshot", place: "page" });
        else attempts.push({ road: "ordinary", place: "page" });
      }
    }
    this.#enter("failed");
  }

  /**
   * The parts of the disk folder, each handed over by a script file that calls linkwrightDiskPart.
   * @returns {Promise<Record<string, string>>}
   */
  #diskParts() {
    this.#packed ??= (async () => {
      /** @type {Record<string, string>} */
      const parts = {};
      globalThis.linkwrightDiskPart = (name, text) => {
        parts[name] = text;
      };
      await Promise.all(["engine", "wasm", "library", "snapshot"].map((name) => loadScript(`${runtimeBase}disk/${name}.js`)));
      return parts;
    })();
    return this.#packed;
  }

  /**
   * @param {string} road
   * @returns {Promise<{live: boolean, road: string, reason: string, final: boolean, noWorker: boolean}>}
   */
  async #inWorker(road) {
    let taken = road;
    /** @param {string} reason @param {boolean} final @param {boolean} noWorker */
    const fault = (reason, final = false, noWorker = false) => ({ live: false, road: taken, reason, final, noWorker });

    /** @type {Worker} */
    let worker;
    /** @type {Record<string, unknown>} */
    const plan = { road, base: runtimeBase };
    try {
      if (typeof Worker !== "function") throw new Error(say("fault-no-workers"));
      if (fromDisk) {
        plan["packed"] = await this.#diskParts();
        const source = `(${String(globalThis.linkwrightMakeEngine)})().serve();`;
        const address = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
        worker = new Worker(address);
      } else {
        worker = new Worker(`${runtimeBase}python-worker.mjs`, { type: "module" });
      }
      this.workersMade += 1;
    } catch (error) {
      return fault(inWords(error), false, true);
    }

    return new Promise((resolve) => {
      /** @type {ReturnType<typeof setTimeout> | undefined} */
      let stall;
      let heard = false;
      /** @param {ReturnType<typeof fault>} outcome */
      const give_up = (outcome) => {
        clearTimeout(stall);
        worker.terminate();
        resolve(outcome);
      };
      let idle_ms = 0;
      const watch = () => {
        clearTimeout(stall);
        stall = setTimeout(() => give_up(fault(say("fault-not-in-time"))), SILENT_MS);
      };
      watch();
      worker.onerror = (event) => {
        event.preventDefault();
        give_up(fault(event.message || say("fault-worker-refused"), false, !heard));
      };
      worker.onmessage = (event) => {
        const message = event.data;
        heard = true;
        watch();
        idle_ms = message.kind === "beat" ? idle_ms + BEAT_MS : 0;
        if (idle_ms >= STALL_MS) give_up(fault(say("fault-not-in-time")));
        if (message.kind === "progress" && message.road) taken = message.road;
        if (message.kind === "failed") give_up(fault(inWords(message.reason), message.final));
        if (message.kind === "ready") {
          clearTimeout(stall);
          this.#worker = worker;
          this.started = { road: message.road, place: "worker", stages: message.stages };
          worker.onmessage = (later) => this.#heard(later.data);
          worker.onerror = (later) => this.#lost(later.message || say("fault-worker-stopped"));
          resolve({ live: true, road: taken, reason: "", final: false, noWorker: false });
        }
      };
      worker.postMessage({ kind: "start", plan });
    });
  }

  /**
   * @param {string} road
   * @returns {Promise<{live: boolean, road: string, reason: string, final: boolean, noWorker: boolean}>}
   */
  async #onPage(road) {
    try {
      /** @type {Record<string, unknown>} */
      const plan = { road, base: runtimeBase };
      /** @type {any} */
      let engines;
      if (fromDisk) {
        plan["packed"] = await this.#diskParts();
        engines = globalThis.linkwrightMakeEngine?.();
      } else {
        engines = await import(`${runtimeBase}python-engine.mjs`);
      }
      const refused = engines.whyNoWebAssembly();
      if (refused) return { live: false, road, reason: inWords(refused), final: true, noWorker: false };
      const engine = await stalling(
        /** @param {() => void} progress */ (progress) => engines.startPython(plan, engines.bringParts(plan, progress), progress, performance.now()),
      );
      this.#inPage = engine.answer;
      this.started = { road, place: "page", stages: engine.stages };
      return { live: true, road, reason: "", final: false, noWorker: false };
    } catch (error) {
      return { live: false, road, reason: inWords(error), final: false, noWorker: false };
    }
  }

  /** @param {{kind: string, id: number, response: string, reason: Reason}} message */
  #heard(message) {
    const waiting = this.#waiting.get(message.id);
    if (!waiting) return;
    this.#waiting.delete(message.id);
    if (message.kind === "answered") waiting.resolve(JSON.parse(message.response));
    else waiting.reject(new Error(inWords(message.reason)));
  }

  /** @param {string} reason */
  #lost(reason) {
    this.#worker?.terminate();
    this.#worker = null;
    this.reason = reason;
    for (const { reject } of this.#waiting.values()) reject(new Error(reason));
    this.#waiting.clear();
    this.#enter("failed");
  }
}

/**
 * Why something failed, for the reader: our own faults have a code and its facts, those of the browser their own words.
 * @param {unknown} reason
 * @returns {string}
 */
function inWords(reason) {
  if (typeof reason === "object" && reason !== null && "code" in reason && "facts" in reason) {
    return say(`fault-${reason.code}`, /** @type {Record<string, string>} */ (reason.facts));
  }
  return reason instanceof Error ? reason.message : String(reason);
}

/**
 * @param {string} address
 * @returns {Promise<void>}
 */
function loadScript(address) {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.onload = () => {
      script.remove(); // its text is large and is no longer needed
      resolve();
    };
    script.onerror = () => reject(new Error(say("fault-file-missing", { file: address.slice(siteRoot.length) })));
    document.head.append(script);
  });
}

/**
 * Runs a start in the page and gives up when it reports no progress while the page stood idle for STALL_MS.
 * @param {(progress: () => void) => Promise<any>} begin
 * @returns {Promise<any>}
 */
function stalling(begin) {
  return new Promise((resolve, reject) => {
    let idle_ms = 0;
    const beating = setInterval(() => {
      idle_ms += BEAT_MS;
      if (idle_ms < STALL_MS) return;
      clearInterval(beating);
      reject(new Error(say("fault-not-in-time")));
    }, BEAT_MS);
    begin(() => {
      idle_ms = 0;
    })
      .finally(() => clearInterval(beating))
      .then(resolve, reject);
  });
}

const python = new PythonHost();

/** What the site's scripts show to each other and to tests. */
globalThis.linkwright = { python, siteRoot, edition: linkwrightBuild.edition };

// On a page without a worksheet Python starts when the browser has nothing better to do, unless the reader saves data.
addEventListener("load", () => {
  const connection = /** @type {{connection?: {saveData?: boolean}}} */ (/** @type {unknown} */ (navigator)).connection;
  if (connection?.saveData || fromDisk) return;
  const whenIdle = globalThis.requestIdleCallback ?? ((callback) => setTimeout(callback, 2000));
  setTimeout(() => whenIdle(() => python.start()), 1500);
});
