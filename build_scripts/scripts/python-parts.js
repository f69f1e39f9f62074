// @ts-check
/**
 * Brings the parts that Python starts from: compiled interpreter, library, memory image.
 *
 * All parts are asked for at once, before the engine's own code is there, so that nothing waits for a thing it does
 * not need. Bytes that come in are reported, so that a slow line can be told from a start that hangs.
 */

/**
 * A fault of ours: a code and its facts. The page has the words (`fault-CODE`); a worker cannot pass on an Error whole.
 */
export class Fault extends Error {
  /** @param {string} code @param {Record<string, string | number>} [facts] */
  constructor(code, facts = {}) {
    super(code);
    this.code = code;
    this.facts = facts;
  }
}

/**
 * Why something failed, in a form that a worker can send.
 * @param {unknown} error
 * @returns {Reason}
 */
export function reasonOf(error) {
  if (error instanceof Fault) return { code: error.code, facts: error.facts };
  return error instanceof Error ? error.message : String(error);
}

/**
 * @typedef {string | {code: string, facts: Record<string, string | number>}} Reason  the browser's words, or ours by code
 * @typedef {"snapshot" | "library" | "ordinary"} Road
 * @typedef {{wasm: string, library: string, snapshot: string}} PackedParts  base64 of gzip, from the disk folder
 * @typedef {{road: Road, base: string, packed?: PackedParts}} Plan
 * @typedef {(progress: {kind: "progress", stage: string}) => void} Report
 * @typedef {{interpreter: Promise<WebAssembly.Module>, library: Promise<ArrayBuffer>,
 *   snapshot: Promise<ArrayBuffer> | undefined}} Parts
 */

/**
 * WebAssembly forbidden by a content policy makes the runtime hang, not fail: ask first, in a way that answers.
 * @returns {Reason | null} why WebAssembly cannot be used, or null when it can
 */
export function whyNoWebAssembly() {
  if (typeof WebAssembly !== "object") return { code: "no-webassembly", facts: {} };
  try {
    new WebAssembly.Module(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0]));
    return null;
  } catch (error) {
    return { code: "webassembly-forbidden", facts: { error: error instanceof Error ? error.name : String(error) } };
  }
}

/**
 * The memory image if this device keeps it; only then is it quicker than the trimmed library.
 * @param {string} base
 * @returns {Promise<Response | undefined>}
 */
export async function keptSnapshot(base) {
  try {
    return "caches" in globalThis ? await caches.match(`${base}snapshot.bin`) : undefined;
  } catch {
    return undefined; // storage forbidden
  }
}

/**
 * @param {Plan} plan
 * @param {Report} report
 * @returns {Parts}
 */
export function bringParts(plan, report) {
  const parts = plan.packed ? fromPack(plan.packed, plan.road) : fromServer(plan, report);
  // A part that fails is told where it is used; until then it must not count as a fault nobody looks at.
  for (const part of [parts.interpreter, parts.library, parts.snapshot]) part?.catch(() => undefined);
  return parts;
}

/**
 * @param {Plan} plan
 * @param {Report} report
 * @returns {Parts}
 */
function fromServer(plan, report) {
  const libraryName = plan.road === "ordinary" ? "python_stdlib.zip" : "library.zip";
  return {
    interpreter: fetched(`${plan.base}pyodide.asm.wasm`).then((response) =>
      // The browser keeps the compiled code of a response it made itself; a first visit is watched instead.
      plan.road === "snapshot" && response.headers.get("content-type") === "application/wasm"
        ? WebAssembly.compileStreaming(response)
        : WebAssembly.compileStreaming(
            new Response(watched(response, "interpreter", report), {
              headers: { "content-type": "application/wasm" },
            }),
          ),
    ),
    library: fetched(plan.base + libraryName).then((response) =>
      new Response(watched(response, "library", report)).arrayBuffer(),
    ),
    snapshot:
      plan.road === "snapshot"
        ? keptSnapshot(plan.base)
            .then((kept) => kept ?? fetched(`${plan.base}snapshot.bin`))
            .then((response) => response.arrayBuffer())
            .then((image) => (isPacked(image) ? unpacked(streamOf(new Uint8Array(image))) : image))
            .then(withZeroPages)
        : undefined,
  };
}

/**
 * @param {PackedParts} packed
 * @param {Road} road
 * @returns {Parts}
 */
function fromPack(packed, road) {
  /** @param {string} text */
  const bytes = async (text) => unpacked(streamOf(fromBase64(text)));
  return {
    interpreter: bytes(packed.wasm).then((wasm) => WebAssembly.compile(wasm)),
    library: bytes(packed.library),
    snapshot: road === "snapshot" ? bytes(packed.snapshot).then(withZeroPages) : undefined,
  };
}

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
 * Bytes as a stream. A Blob's own stream would do, but WebKit refuses to read one in a page opened from disk.
 * @param {Uint8Array<ArrayBuffer>} bytes
 * @returns {ReadableStream<Uint8Array<ArrayBuffer>>}
 */
function streamOf(bytes) {
  return new ReadableStream({
    start(controller) {
      controller.enqueue(bytes);
      controller.close();
    },
  });
}

/**
 * Unpacks gzip; a damaged file throws here (gzip carries a checksum).
 * @param {ReadableStream<Uint8Array<ArrayBuffer>>} stream
 * @returns {Promise<ArrayBuffer>}
 */
function unpacked(stream) {
  return new Response(stream.pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
}

/** The grain in which empty parts of the image were left out; make_runtime.mjs has the same. */
const PAGE = 4096;
/** More than this cannot be restored; a damaged head must not ask for gigabytes. */
const LARGEST_IMAGE = 32 * 1024 * 1024;

/**
 * The memory image with its empty pages back in place (make_runtime.mjs describes the form).
 * @param {ArrayBuffer} kept
 * @returns {ArrayBuffer}
 */
function withZeroPages(kept) {
  const [length = 0, count = 0] = new Uint32Array(kept, 0, 2);
  if (length % 4 !== 0 || length > LARGEST_IMAGE || 8 + 4 * count > kept.byteLength) throw new Fault("image-damaged");
  const pages = new Uint32Array(kept, 8, count);
  const image = new Uint8Array(length);
  let from = 8 + 4 * count;
  for (let i = 0; i < count; ) {
    let run = 1;
    while (i + run < count && pages[i + run] === (pages[i] ?? 0) + run) run += 1;
    const to = (pages[i] ?? 0) * PAGE;
    const size = Math.min(run * PAGE, length - to);
    image.set(new Uint8Array(kept, from, size), to);
    from += size;
    i += run;
  }
  return image.buffer;
}

/**
 * Whether it begins as gzip does: the image travels packed, and the service worker keeps it unpacked.
 * @param {ArrayBuffer} image
 * @returns {boolean}
 */
function isPacked(image) {
  const [first, second] = new Uint8Array(image, 0, 2);
  return first === 0x1f && second === 0x8b;
}

/**
 * A stream that tells the watcher when bytes come in.
 * @param {Response} response
 * @param {string} stage
 * @param {Report} report
 * @returns {ReadableStream<Uint8Array<ArrayBuffer>>}
 */
function watched(response, stage, report) {
  if (!response.body) throw new Fault("no-content", { file: stage });
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
  if (!response.ok) throw new Fault("server-said", { file: address.slice(address.lastIndexOf("/") + 1), status: response.status });
  return response;
}
