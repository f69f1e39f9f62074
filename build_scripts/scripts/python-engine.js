// @ts-check
/**
 * Starts Python in WebAssembly by one of three roads and hands back a function that answers worksheets.
 *
 *   snapshot  memory image with calc already imported and warmed (repeat visits, and the folder opened from disk)
 *   library   trimmed, compiled standard library with calc and the tables in it (first visit)
 *   ordinary  the runtime as published, calc installed from its wheel through a lock file (when the others fail)
 *
 * The engine never fetches behind the reporter's back: every byte is read here, so that "no progress for a while" can
 * be told from "slow line", and so that the same engine runs where nothing can be fetched (file://).
 */
import { loadPyodide } from "pyodide";
import createPyodideModule from "pyodide/pyodide.asm.mjs";

/**
 * @typedef {"snapshot" | "library" | "ordinary"} Road
 * @typedef {{wasm: string, library: string, snapshot: string}} PackedParts  base64 of gzip, from the disk folder
 * @typedef {{road: Road, base: string, edition: string, packed?: PackedParts}} Plan
 * @typedef {{kind: "progress", stage: string}} Progress
 * @typedef {(progress: Progress) => void} Report
 * @typedef {{answer: (request: string) => string, stages: Record<string, number>}} Engine
 */

/** A lock file that knows no package: the snapshot and library roads install none. */
const NO_PACKAGES = JSON.stringify({
  info: { abi_version: "2026_0", arch: "wasm32", platform: "emscripten_5_0_3", python: "3.14.2", version: "314.0.7" },
  packages: {},
});

/**
 * Bytes from base64, by the browser's own decoder where it has one.
 * @param {string} text
 * @returns {Uint8Array<ArrayBuffer>}
 */
function fromBase64(text) {
  const decoder = /** @type {{fromBase64?: (text: string) => Uint8Array<ArrayBuffer>}} */ (
    /** @type {unknown} */ (Uint8Array)
  );
  if (decoder.fromBase64) return decoder.fromBase64(text);
  const binary = atob(text);
  const bytes = new Uint8Array(binary.length);
  for (let i = 0; i < binary.length; i += 1) bytes[i] = binary.charCodeAt(i);
  return bytes;
}

/**
 * Unpacks gzip; a damaged file throws here (gzip carries a checksum).
 * @param {ReadableStream<Uint8Array<ArrayBuffer>>} stream
 * @returns {Promise<ArrayBuffer>}
 */
function unpacked(stream) {
  return new Response(stream.pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
}

/**
 * A stream that tells the watcher each time bytes come in.
 * @param {Response} response
 * @param {string} stage
 * @param {Report} report
 * @returns {ReadableStream<Uint8Array<ArrayBuffer>>}
 */
function watched(response, stage, report) {
  if (!response.body) throw new Error(`${stage}: the answer has no content`);
  let last = 0;
  return response.body.pipeThrough(
    new TransformStream({
      transform(chunk, controller) {
        const now = performance.now();
        if (now - last > 250) {
          last = now;
          report({ kind: "progress", stage });
        }
        controller.enqueue(chunk);
      },
    }),
  );
}

/**
 * @param {string} address
 * @returns {Promise<Response>}
 */
async function fetched(address) {
  const response = await fetch(address, { credentials: "same-origin" });
  if (!response.ok) throw new Error(`${address.slice(address.lastIndexOf("/") + 1)}: the server said ${response.status}`);
  return response;
}

/**
 * Lets the runtime's own `fetch` calls be answered from parts already at hand. Gives back the undoing.
 * @param {Map<string, () => Promise<Response>>} parts
 * @returns {() => void}
 */
function answerFetchFrom(parts) {
  const real = globalThis.fetch;
  globalThis.fetch = (input, init) => {
    const part = parts.get(input instanceof Request ? input.url : String(input));
    return part ? part() : real.call(globalThis, input, init);
  };
  return () => {
    globalThis.fetch = real;
  };
}

/**
 * WebAssembly forbidden by a content policy makes the runtime hang, not fail: ask first, in a way that answers.
 * @returns {string | null} why WebAssembly cannot be used, or null when it can
 */
export function whyNoWebAssembly() {
  if (typeof WebAssembly !== "object") return "this browser has no WebAssembly";
  try {
    new WebAssembly.Module(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0]));
    return null;
  } catch (error) {
    return `this page is not allowed to use WebAssembly (${error instanceof Error ? error.name : String(error)})`;
  }
}

/** Is the memory image kept on this device? Only then is it quicker than the trimmed library.
 * @param {string} base
 * @returns {Promise<boolean>}
 */
export async function snapshotIsKept(base) {
  try {
    return "caches" in globalThis && (await caches.match(`${base}snapshot.bin`)) !== undefined;
  } catch {
    return false; // storage forbidden
  }
}

/**
 * @param {Plan} plan
 * @param {Report} report
 * @returns {Promise<Engine>}
 */
export async function startPython(plan, report) {
  /** @type {Record<string, number>} */
  const stages = {};
  const begun = performance.now();
  /** @param {string} stage */
  const reached = (stage) => {
    stages[stage] = Math.round(performance.now() - begun);
    report({ kind: "progress", stage });
  };

  const indexURL = plan.packed ? "file:///linkwright/" : plan.base;
  const wasmType = { headers: { "content-type": "application/wasm" } };
  /** @type {Map<string, () => Promise<Response>>} */
  const parts = new Map();
  const packed = plan.packed;
  const libraryName = plan.road === "ordinary" ? "python_stdlib.zip" : "library.zip";
  /** @type {Promise<ArrayBuffer> | undefined} */
  let snapshot;

  if (packed) {
    if (plan.road === "ordinary") throw new Error("from disk there is no ordinary road");
    /** @param {string} text */
    const bytes = (text) => new Blob([fromBase64(text)]).stream();
    const wasm = unpacked(bytes(packed.wasm));
    const library = unpacked(bytes(packed.library));
    parts.set(`${indexURL}pyodide.asm.wasm`, async () => new Response(await wasm, wasmType));
    parts.set(`${indexURL}library.zip`, async () => new Response(await library));
    if (plan.road === "snapshot") snapshot = unpacked(bytes(packed.snapshot));
  } else {
    // Asked for at once, side by side; the runtime takes them when it is ready for them.
    const wasm = fetched(`${plan.base}pyodide.asm.wasm`).then(
      (response) => new Response(watched(response, "reading the runtime", report), wasmType),
    );
    const library = fetched(plan.base + libraryName).then(
      (response) => new Response(watched(response, "reading the library", report)),
    );
    if (plan.road === "snapshot") {
      snapshot = fetched(`${plan.base}snapshot.bin`).then((response) =>
        unpacked(watched(response, "reading the memory image", report)),
      );
    }
    for (const promise of [wasm, library]) promise.catch(() => undefined); // told again where it is used
    parts.set(`${indexURL}pyodide.asm.wasm`, () => wasm);
    parts.set(indexURL + libraryName, () => library);
    await Promise.all([wasm, library]); // a missing part must fail here: the runtime would only log it and hang
  }
  snapshot?.catch(() => undefined);

  const undo = answerFetchFrom(parts);
  try {
    // A road that fails early must not wait for the others.
    const image = snapshot ? new Uint8Array(await snapshot) : undefined;
    reached("parts");
    const python = await loadPyodide({
      indexURL,
      stdLibURL: indexURL + libraryName,
      env: { PYTHONHASHSEED: "0", HOME: "/home/reader" },
      stdout: () => undefined,
      stderr: () => undefined,
      ...(plan.road === "ordinary"
        ? { packages: ["linkwright"], packageBaseUrl: plan.base, lockFileURL: `${plan.base}pyodide-lock.json` }
        : { lockFileContents: NO_PACKAGES }),
      createPyodideModule,
      ...(image ? { _loadSnapshot: image } : {}),
    });
    reached("python");
    const answer = python.runPython(
      "import sys\n" +
        "if 'random' in sys.modules:\n" +
        "    sys.modules['random'].seed()  # the memory image holds one state for every reader\n" +
        "from calc.answering import answer_json\n" +
        "answer_json\n",
    );
    reached("calc");
    return { answer: (request) => String(answer(request)), stages };
  } finally {
    undo();
  }
}
