// @ts-check
/**
 * Starts Python for the page and keeps it for the whole visit: one worker, which outlives moves between pages.
 *
 * Roads are tried in order, each dropped when it reports a fault or stands idle for STALL_MS:
 *   served:    memory image if this device keeps it or the line is quick, else trimmed library; trimmed library; the ordinary runtime
 *   from disk: memory image; trimmed library (parts are script files, because nothing can be fetched there)
 * A browser that refuses the worker runs Python in the page. When no road is left the state is "failed", with a reason.
 *
 * No failure is final: start() tries again, and is called when the reader asks, on the next page with a worksheet and when
 * the network returns. A worker that dies in the middle is made anew and asked again.
 */

/** Limits, of time in milliseconds; a test may set others before the page's scripts run. */
const LIMITS = {
  /** How long a road may stand idle without progress: it hangs. */
  stall: 6000,
  /** How long a worker's own small script may take. */
  arrive: 20_000,
  /** How long a worker may be busy without a word: an old phone compiles slowly, and must not be cut off. */
  silent: 45_000,
  /** How long an idle worker may take to begin with a question: after that it is dead, which no browser tells. */
  begin: 10_000,
  /** How long it may take to answer one, and for each letter of the question (a file can be long). */
  answer: 30_000,
  answer_each: 0.005,
  /** From which line on [bytes per ms, unpacked] a first visit takes the memory image: some 25 Mbit/s, where it costs 1.3 s and
   * spares a phone two; a desk, which it spares 0.7 s, would want 50. A busy processor makes a line look slower. */
  quick: 9000,
  ...globalThis.linkwrightLimits,
};
/** How often an idle worker says so; python-serving.js has the same. */
const BEAT_MS = 250;
/** A worker that dies so often without an answer between is not made anew. */
const MOST_LOSSES = 2;

/** The root of the site, found from this script's own address (runtime/linkwright.js). */
const siteRoot = new URL("..", /** @type {HTMLScriptElement} */ (document.currentScript).src).href;
const fromDisk = location.protocol === "file:";
const runtimeBase = `${siteRoot}runtime/${linkwrightBuild.runtime}/`;
/** Whether this script and the page that it runs in are of two editions: then nothing is worked out. */
const isMixed = document.documentElement.dataset["code"] !== linkwrightBuild.code;

/**
 * @typedef {"idle" | "starting" | "live" | "failed"} PythonState
 * @typedef {import("./python-parts.js").Reason} Reason
 * @typedef {{road: string, place: "worker" | "page"}} Attempt
 * @typedef {{live: boolean, road: string, reason: string, final: boolean, noWorker: boolean}} Outcome
 * @typedef {{resolve: (response: View | Refusal) => void, reject: (error: Error) => void, text: string,
 *   watch: ReturnType<typeof setTimeout>}} Waiting
 */

class PythonHost extends EventTarget {
  /** @type {PythonState} */
  state = "idle";
  /** Why the state is "failed", in words for the reader. */
  reason = "";
  /** Which road answered, where, and after how many milliseconds of this page each stage was reached: for the benchmark and for the curious. */
  /** @type {{road: string, place: string, stages: Record<string, number>} | null} */
  started = null;
  /** Faults of the roads that were dropped. */
  /** @type {string[]} */
  dropped = [];
  /** How many workers were ever made in this visit. */
  workersMade = 0;

  /** @type {Worker | null} */
  #worker = null;
  /** @type {((request: string) => Promise<string>) | null} */
  #inPage = null;
  /** @type {Map<number, Waiting>} */
  #waiting = new Map();
  #lastId = 0;
  /** Workers that died since the last answer. */
  #losses = 0;
  /** How often a start was tried. */
  #tries = 0;
  /** When the last start failed, in milliseconds of this page. */
  failedAt = 0;
  /** @type {Promise<Record<string, string>> | null} */
  #packed = null;
  /** Parts that script files of the disk folder handed over. @type {Record<string, string>} */
  #handed = {};

  /** Starts, and after a failure tries again; does nothing while it starts or runs. */
  start() {
    if (this.state === "starting" || this.state === "live") return;
    this.reason = "";
    this.#begin();
  }

  #begin() {
    this.#tries += 1;
    this.#packed = null;
    this.#inPage = null;
    this.#enter("starting");
    if (isMixed) {
      earlyWorker()?.terminate();
      this.#fail(say("fault-two-editions"));
    } else void this.#tryRoads();
  }

  /** @param {string} reason */
  #fail(reason) {
    this.reason = reason;
    this.failedAt = performance.now();
    this.#enter("failed");
  }

  /**
   * @param {Question} request
   * @returns {Promise<View | Refusal>}
   */
  answer(request) {
    const text = JSON.stringify(request);
    if (this.#inPage) return this.#answerHere(this.#inPage, text);
    const worker = this.#worker;
    if (!worker) return Promise.reject(new Error(say("fault-not-running")));
    this.#lastId += 1;
    const id = this.#lastId;
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { resolve, reject, text, watch: this.#watch(LIMITS.begin) });
      worker.postMessage({ kind: "answer", id, request: text });
    });
  }

  /** @param {(request: string) => Promise<string>} inPage @param {string} text @returns {Promise<View | Refusal>} */
  async #answerHere(inPage, text) {
    try {
      return JSON.parse(await inPage(text));
    } catch (error) {
      throw new Error(inWords(error));
    }
  }

  /** @param {number} limit_ms  after which the worker counts as dead */
  #watch(limit_ms) {
    return setTimeout(() => this.#lost(say("fault-no-reply")), limit_ms);
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
    let isTold = false;
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
      // The first fault of a start says most: what follows is often only its echo. A refused worker says little.
      if (!isTold) this.reason = outcome.reason;
      isTold ||= !outcome.noWorker;
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
    this.#fail(this.reason);
  }

  /**
   * A packed part of the disk folder, handed over by a script file that calls linkwrightDiskPart.
   * @param {string} name
   * @returns {Promise<string>}
   */
  async #diskPart(name) {
    globalThis.linkwrightDiskPart = (given, text) => {
      this.#handed[given] = text;
    };
    await loadScript(`${runtimeBase}disk/${name}.js`);
    const text = this.#handed[name] ?? "";
    delete this.#handed[name]; // it is large
    if (!text) throw new Error(say("fault-damaged", { file: `disk/${name}.js` }));
    return text;
  }

  /**
   * The parts of the disk folder that a road needs.
   * @param {string} road
   * @returns {Promise<Record<string, string>>}
   */
  async #diskParts(road) {
    const parts = await this.#partsOfEveryRoad();
    return road === "library" ? { ...parts, library: await this.#diskPart("library") } : parts;
  }

  /** @returns {Promise<Record<string, string>>} */
  #partsOfEveryRoad() {
    this.#packed ??= (async () => {
      const [wasm, snapshot] = await Promise.all([this.#diskPart("wasm"), this.#diskPart("snapshot"), loadScript(`${runtimeBase}disk/engine.js`)]);
      const parts = { wasm, snapshot };
      if (!(await isWhole("disk/engine.js", String(globalThis.linkwrightMakeEngine)))) throw new Error(say("fault-damaged", { file: "disk/engine.js" }));
      return parts;
    })();
    return this.#packed;
  }

  /**
   * @param {string} road
   * @returns {Promise<Outcome>}
   */
  async #inWorker(road) {
    let taken = road;
    /** @param {string} reason @param {boolean} final @param {boolean} noWorker */
    const fault = (reason, final = false, noWorker = false) => ({ live: false, road: taken, reason, final, noWorker });

    /** @type {Worker} */
    let worker;
    /** @type {Record<string, unknown>} */
    const plan = { road, base: runtimeBase, sums: linkwrightBuild.sums, quick: LIMITS.quick };
    try {
      if (typeof Worker !== "function") throw new Error(say("fault-no-workers"));
      if (fromDisk) {
        plan["packed"] = await this.#diskParts(road);
        const source = `(${String(globalThis.linkwrightMakeEngine)})().serve();`;
        const address = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
        worker = new Worker(address);
      } else {
        worker = earlyWorker() ?? new Worker(globalThis.linkwrightTrusted.script(`${runtimeBase}${WORKER}`), { type: "module" });
      }
      this.workersMade += 1;
    } catch (error) {
      return fault(inWords(error), false, true);
    }

    return new Promise((resolve) => {
      /** @type {ReturnType<typeof setTimeout> | undefined} */
      let stall;
      let heard = false;
      /** @type {Promise<string> | undefined} */
      let damage;
      /** @param {ReturnType<typeof fault>} outcome */
      const give_up = (outcome) => {
        clearTimeout(stall);
        worker.terminate();
        resolve(outcome);
      };
      let idle_ms = 0;
      /** @param {number} limit_ms */
      const watch = (limit_ms) => {
        clearTimeout(stall);
        stall = setTimeout(() => give_up(fault(say("fault-not-in-time"), false, !heard)), limit_ms);
      };
      watch(fromDisk ? LIMITS.silent : LIMITS.arrive);
      worker.onerror = (event) => {
        event.preventDefault();
        give_up(fault(event.message ? say("fault-browser-said", { error: event.message }) : say("fault-worker-refused"), false, !heard));
      };
      worker.onmessage = async (event) => {
        const message = event.data;
        heard = true;
        // Only now is its script in the browser's cache: asked for side by side, WebKit fetches it twice.
        damage ??= fromDisk ? Promise.resolve("") : damageOf(WORKER);
        watch(LIMITS.silent);
        idle_ms = message.kind === "beat" ? idle_ms + BEAT_MS : 0;
        if (idle_ms >= LIMITS.stall) give_up(fault(say("fault-not-in-time")));
        if (message.kind === "progress" && message.road) taken = message.road;
        if (message.kind === "failed") give_up(fault(inWords(message.reason), message.final));
        if (message.kind === "ready") {
          const damaged = await damage;
          if (damaged) {
            give_up(fault(damaged, false, true));
            return;
          }
          clearTimeout(stall);
          this.#worker = worker;
          this.started = { road: message.road, place: "worker", stages: sinceOpened(message.stages) };
          worker.onmessage = (later) => this.#heard(later.data);
          worker.onerror = (later) => {
            later.preventDefault();
            this.#lost(say("fault-worker-stopped"));
          };
          resolve({ live: true, road: taken, reason: "", final: false, noWorker: false });
        }
      };
      worker.postMessage({ kind: "start", plan });
    });
  }

  /**
   * @param {string} road
   * @returns {Promise<Outcome>}
   */
  async #onPage(road) {
    try {
      /** @type {Record<string, unknown>} */
      const plan = { road, base: runtimeBase, sums: linkwrightBuild.sums, quick: LIMITS.quick };
      /** @type {any} */
      let engines;
      if (fromDisk) {
        plan["packed"] = await this.#diskParts(road);
        plan["wantLibrary"] = () => this.#diskPart("library");
        engines = globalThis.linkwrightMakeEngine?.();
      } else {
        // A browser may remember a module that did not come: under another address it is asked for again.
        const brought = import(`${runtimeBase}python-engine.mjs${this.#tries > 1 ? `?again=${this.#tries}` : ""}`);
        const told = brought.catch((error) => {
          throw error instanceof TypeError ? new Error(say("fault-not-fetched-whole", { file: "python-engine.mjs" })) : error;
        });
        engines = await within(told, LIMITS.arrive);
      }
      const refused = engines.whyNoWebAssembly();
      if (refused) return { live: false, road, reason: inWords(refused), final: true, noWorker: false };
      const engine = await stalling(
        /** @param {() => void} progress */ (progress) => engines.startPython(plan, engines.bringParts(plan, progress), progress),
        () => engines.isAtWork(),
      );
      this.#inPage = engine.answer;
      this.started = { road, place: "page", stages: sinceOpened(engines.stagesReached()) };
      return { live: true, road, reason: "", final: false, noWorker: false };
    } catch (error) {
      return { live: false, road, reason: inWords(error), final: false, noWorker: false };
    }
  }

  /** @param {{kind: string, id: number, response: string, reason: Reason}} message */
  #heard(message) {
    if (message.kind === "wanting") {
      const worker = this.#worker;
      // Without it the question ends in the fault that the library is damaged.
      void this.#diskPart("library").catch(() => "").then((text) => worker?.postMessage({ kind: "library", text }));
      return;
    }
    const waiting = this.#waiting.get(message.id);
    if (!waiting) return;
    clearTimeout(waiting.watch);
    if (message.kind === "begun") {
      waiting.watch = this.#watch(LIMITS.answer + waiting.text.length * LIMITS.answer_each);
      return;
    }
    this.#waiting.delete(message.id);
    if (message.kind === "answered") {
      this.#losses = 0;
      waiting.resolve(JSON.parse(message.response));
      return;
    }
    waiting.reject(new Error(inWords(message.reason)));
    if (message.kind === "lost") this.#lost(inWords(message.reason));
  }

  /** The worker is dead: another one is made, and who waits asks it again. @param {string} reason */
  #lost(reason) {
    this.#worker?.terminate();
    this.#worker = null;
    this.reason = reason;
    this.dropped.push(`lost: ${reason}`);
    this.#losses += 1;
    if (this.#losses > MOST_LOSSES) {
      this.#losses = 0;
      this.#fail(reason);
    } else this.#begin();
    for (const { reject, watch } of this.#waiting.values()) {
      clearTimeout(watch);
      reject(new Error(reason));
    }
    this.#waiting.clear();
  }
}

/**
 * Moments of the shared clock as milliseconds since this page began.
 * @param {Record<string, number>} moments
 * @returns {Record<string, number>}
 */
function sinceOpened(moments) {
  const stages = { ...moments, ready: performance.timeOrigin + performance.now() };
  return Object.fromEntries(Object.entries(stages).map(([stage, moment]) => [stage, Math.round(moment - performance.timeOrigin)]));
}

/** The script of the worker of a served page. */
const WORKER = "python-worker.mjs";

/** The worker that early.js made, once, where it is of this runtime and well. @returns {Worker | undefined} */
function earlyWorker() {
  const early = globalThis.linkwrightEarly;
  globalThis.linkwrightEarly = undefined;
  if (!early || early.base === runtimeBase && !early.hasFailed) return early?.worker;
  early.worker.terminate();
  return undefined;
}

/**
 * The browser loads a worker's script and checks nothing: the same file is fetched again, from its cache, and checked.
 * @param {string} name
 * @returns {Promise<string>} what is wrong with it, or nothing
 */
async function damageOf(name) {
  const integrity = linkwrightBuild.sums[name] ?? "";
  try {
    const response = await within(fetch(runtimeBase + name, { credentials: "same-origin", integrity }), LIMITS.arrive);
    return response.ok ? "" : say("fault-server-said", { file: name, status: response.status });
  } catch {
    return say("fault-not-fetched-whole", { file: name });
  }
}

/**
 * Whether a text is as it was built; taken for whole where the browser has no digest.
 * @param {string} name
 * @param {string} text
 */
async function isWhole(name, text) {
  if (!globalThis.crypto?.subtle) return true;
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text)));
  return `sha256-${btoa(String.fromCharCode(...digest))}` === linkwrightBuild.sums[name];
}

/**
 * What is promised, or the fault that it did not come in time.
 * @template T
 * @param {Promise<T>} promised
 * @param {number} limit_ms
 * @returns {Promise<T>}
 */
function within(promised, limit_ms) {
  return new Promise((resolve, reject) => {
    const limit = setTimeout(() => reject(new Error(say("fault-not-in-time"))), limit_ms);
    promised.finally(() => clearTimeout(limit)).then(resolve, reject);
  });
}

/**
 * Why something failed, for the reader: our own faults have a code and its facts, those of the browser are quoted.
 * @param {unknown} reason
 * @returns {string}
 */
function inWords(reason) {
  if (typeof reason === "object" && reason !== null && "code" in reason && "facts" in reason) {
    return say(`fault-${reason.code}`, /** @type {Record<string, string>} */ (reason.facts));
  }
  if (!(reason instanceof Error)) return say("fault-browser-said", { error: typeof reason === "string" ? reason : typeof reason });
  // Only our own plain errors carry words for the reader; the browser's errors have names of their own.
  if (reason.name === "Error" && !reason.message.includes("\n")) return reason.message;
  return say("fault-browser-said", { error: `${reason.name}: ${reason.message.trim().split("\n").pop()}` });
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
    script.onerror = () => {
      script.remove();
      reject(new Error(say("fault-file-missing", { file: address.slice(siteRoot.length) })));
    };
    document.head.append(script);
  });
}

/**
 * Runs a start in the page and gives up when it reports no progress while the page stood idle.
 * @param {(progress: () => void) => Promise<any>} begin
 * @param {() => boolean} isAtWork  whether the browser works for it beside the page
 * @returns {Promise<any>}
 */
function stalling(begin, isAtWork) {
  return new Promise((resolve, reject) => {
    let idle_ms = 0;
    const beating = setInterval(() => {
      if (!isAtWork()) idle_ms += BEAT_MS;
      if (idle_ms < LIMITS.stall) return;
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
globalThis.linkwright = { python, siteRoot, edition: linkwrightBuild.edition, code: linkwrightBuild.code, runtime: linkwrightBuild.runtime };

addEventListener("online", () => {
  if (python.state === "failed") python.start();
});

/** Whether Python may start before anyone asks for it: unless the reader saves data; from disk each page starts its own. */
function mayStartUnasked() {
  const connection = /** @type {{connection?: {saveData?: boolean}}} */ (/** @type {unknown} */ (navigator)).connection;
  return !connection?.saveData && !fromDisk;
}

// On a page without a worksheet Python starts when the browser has nothing better to do.
addEventListener("load", () => {
  if (!mayStartUnasked()) return;
  const whenIdle = globalThis.requestIdleCallback ?? ((callback) => setTimeout(callback, 2000));
  setTimeout(() => whenIdle(() => python.start()), 1500);
});

// A finger or pointer on a link to a worksheet comes a moment before the page: Python begins then.
for (const moment of ["pointerover", "touchstart", "focusin"]) {
  document.addEventListener(
    moment,
    ({ target }) => {
      const isMeant = target instanceof Element && target.closest('a[href*="work-out/"]') !== null;
      if (isMeant && python.state === "idle" && mayStartUnasked()) python.start();
    },
    { passive: true },
  );
}
