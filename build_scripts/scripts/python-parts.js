// @ts-check
/**
 * Brings the parts that Python starts from: compiled interpreter, library, memory image.
 *
 * All parts are asked for at once, before the engine's own code is there, so that nothing waits for a thing it does
 * not need. Bytes that come in are reported, so that a slow line can be told from a start that hangs.
 *
 * Every part is held against the checksum that the page was built with (`plan.sums`). That is done beside the start and
 * not before it: what a damaged part would do is never seen, because no start is whole before `parts.proved`.
 */

import { readImage } from "./memory-image.mjs";

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
  if (error instanceof Error && error.name === "PythonError") return { code: "in-python", facts: { error: lastLine(error.message) } };
  return { code: "browser-said", facts: { error: error instanceof Error ? `${error.name}: ${lastLine(error.message)}` : typeof error } };
}

/**
 * Each browser says in its own words, with an address, that it could not bring a module; the reader is told which file.
 * @param {unknown} error
 */
export function ofEngine(error) {
  return error instanceof TypeError ? new Fault("not-fetched-whole", { file: "python-engine.mjs" }) : error;
}

/** What the browser's own marks of a start are called: `python:image`. */
const MARK = "python:";

/** Notes that a stage of the start is reached. @param {string} stage */
export function reached(stage) {
  performance.mark(MARK + stage);
}

/** When each stage was reached [ms], on the clock that page and worker share. @returns {Record<string, number>} */
export function stagesReached() {
  const marks = performance.getEntriesByType("mark").filter(({ name }) => name.startsWith(MARK));
  return Object.fromEntries(marks.map(({ name, startTime }) => [name.slice(MARK.length), performance.timeOrigin + startTime]));
}

/** The line of a report that says what was wrong. @param {string} text */
function lastLine(text) {
  return text.trim().split("\n").pop()?.trim() ?? "";
}

/**
 * @typedef {{code: string, facts: Record<string, string | number>}} Reason  the page's words are `fault-CODE`
 * @typedef {"snapshot" | "library" | "ordinary"} Road
 * @typedef {{wasm: string, snapshot: string, library?: string}} PackedParts  base64 of gzip, from the disk folder
 * @typedef {import("./memory-image.mjs").MemoryImage} MemoryImage
 * @typedef {Record<string, string>} Sums  by name of a part, SHA-256 of its bytes as they are unpacked: `sha256-BASE64`
 * @typedef {{road: Road, base: string, sums: Sums | Promise<Sums>, quick: number, packed?: PackedParts, wantLibrary?: () => Promise<string>}} Plan
 *   quick is the line [bytes per ms] from which on the image is worth its length; wantLibrary brings the packed library, which the memory image seldom needs
 * @typedef {(progress: {kind: "progress", stage: string}) => void} Report
 * @typedef {{interpreter: Promise<WebAssembly.Module>, library: Promise<ArrayBuffer> | undefined,
 *   lateLibrary: () => Promise<ArrayBuffer>, snapshot: Promise<MemoryImage> | undefined, lock: Promise<string> | undefined, proved: Promise<unknown>}} Parts
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
 * A part if this device keeps it. The image is quicker than the trimmed library only then.
 * @param {string} base
 * @param {string} name
 * @returns {Promise<Response | undefined>}
 */
async function kept(base, name) {
  try {
    return "caches" in globalThis ? await caches.match(base + name) : undefined;
  } catch {
    return undefined; // storage forbidden
  }
}

/**
 * What was asked for before the road was known: before the page's own script came, the image and with it the interpreter,
 * from this device; on a first visit the interpreter. They are held against their checksums as ever, with the others.
 * @typedef {{bytes: Promise<ArrayBuffer>, module: Promise<WebAssembly.Module>}} Interpreter
 * @typedef {{base: string, isKept: Promise<boolean>, image: Promise<ArrayBuffer | undefined>, interpreter: Interpreter}} Early
 * @type {Early | undefined}
 */
let early;

/** @param {string} base @returns {Promise<boolean>} whether this device keeps the image */
export function bringEarly(base) {
  const image = kept(base, IMAGE);
  early = { base, isKept: image.then(Boolean), image: image.then((response) => response?.arrayBuffer()), interpreter: ownInterpreter(base) };
  early.image.catch(() => undefined); // told where it is used
  return early.isKept;
}

/**
 * The road of a start that may take the best: the memory image where this device keeps it, or where the line is so quick
 * that the image costs less than what it spares: on the line it is three times as long as the library.
 * @param {Plan} plan
 * @param {Report} report
 * @returns {Promise<Road>}
 */
export async function bestRoad(plan, report) {
  if (early?.base === plan.base) return (await early.isKept) ? "snapshot" : "library";
  if (await kept(plan.base, IMAGE)) return "snapshot";
  if (!canDigest) return "library"; // nobody would check the image, which travels packed
  const line = new Line(plan.quick);
  const interpreter = fromLine(plan.base, report, line);
  early = { base: plan.base, isKept: Promise.resolve(false), image: Promise.resolve(undefined), interpreter };
  return (await line.isQuick) ? "snapshot" : "library";
}

/**
 * Where the measuring of a line begins, and where it ends [bytes, unpacked]: the first ones come slowly on any line, and a
 * moment in which this thread was busy must not count for much. Nothing is lost meanwhile: the line is full.
 */
const MEASURED = { from: 500_000, to: 4_000_000 };

/** Finds out whether a line is quick, by how the first bytes come in. */
class Line {
  /** @type {Promise<boolean>} */
  isQuick;
  /** @type {(isQuick: boolean) => void} */
  #tell = () => undefined;
  #bytes = 0;
  #begun = 0;
  #quick;

  /** @param {number} quick  bytes per ms */
  constructor(quick) {
    this.#quick = quick;
    this.isQuick = new Promise((resolve) => {
      this.#tell = resolve;
    });
  }

  /** @param {number} bytes  that came in */
  saw(bytes) {
    const now = performance.now();
    this.#bytes += bytes;
    if (this.#bytes < MEASURED.from) this.#begun = now;
    else if (this.#bytes >= MEASURED.to) this.#tell((MEASURED.to - MEASURED.from) / (now - this.#begun) >= this.#quick);
  }

  /** Nothing more comes. */
  end() {
    this.#tell(false);
  }
}

/**
 * @param {Plan} plan
 * @param {Report} report
 * @param {Promise<unknown>} [engine]  settled when the browser has loaded the engine's code
 * @returns {Parts}
 */
export function bringParts(plan, report, engine = Promise.resolve()) {
  const proofs = new Proofs(plan.sums);
  const parts = plan.packed ? fromPack(plan, plan.packed, proofs) : fromServer(plan, report, proofs, engine);
  const used = [parts.interpreter, parts.library, parts.snapshot, parts.lock];
  const proved = Promise.all(used).then(() => proofs.all());
  // A part that fails is told where it is used; until then it must not count as a fault nobody looks at.
  for (const part of [...used, proved]) part?.catch(() => undefined);
  return { ...parts, proved };
}

/** How much the browser is doing for the start beside this thread. */
let works = 0;

/** Whether it is: an old phone may compile for long, and is then no start that hangs, though its worker is idle. */
export const isAtWork = () => works > 0;

/**
 * Counts as work what a browser does with bytes that are there: it ends.
 * @template T
 * @param {Promise<T>} work
 * @returns {Promise<T>}
 */
async function atWork(work) {
  works += 1;
  try {
    return await work;
  } finally {
    works -= 1;
  }
}

/** Where a browser has no digest (plain http, not on this machine), its own check of what it fetches stands in. */
const canDigest = globalThis.crypto?.subtle !== undefined;

/** Holds the bytes of parts against their checksums. */
class Proofs {
  /** @type {Promise<void>[]} */
  #under_way = [];
  /** @type {Promise<Sums>} */
  #sums;

  /** @param {Sums | Promise<Sums>} sums  which may come while the parts do */
  constructor(sums) {
    this.#sums = Promise.resolve(sums);
  }

  /** What a request for a part asks the browser to check. @param {string} name @returns {Promise<RequestInit>} */
  async asked(name) {
    return canDigest ? {} : this.sealed(name);
  }

  /** What a request asks that the browser must check in any case. @param {string} name @returns {Promise<RequestInit>} */
  async sealed(name) {
    return { integrity: (await this.#sums)[name] ?? "" };
  }

  /** Begins to check, and gives the bytes back at once. @param {string} name @param {ArrayBuffer} bytes @returns {ArrayBuffer} */
  of(name, bytes) {
    if (canDigest) this.#add(this.#digested(name, bytes));
    return bytes;
  }

  /**
   * A script that the browser loads itself, and checks nothing: the same file fetched again, from its cache. It is there
   * once the script is loaded; asked for side by side, WebKit fetches it twice.
   * @param {string} base
   * @param {string} name
   * @param {Promise<unknown>} loaded
   */
  code(base, name, loaded) {
    const check = async () => fetched(base, name, await this.sealed(name));
    this.#add(loaded.then(check, check).then(() => undefined));
  }

  /** @returns {Promise<unknown>} rejects with the fault of the first part that is not as it was built */
  all() {
    return Promise.all(this.#under_way);
  }

  /** @param {Promise<void>} proof */
  #add(proof) {
    proof.catch(() => undefined); // told by all()
    this.#under_way.push(proof);
  }

  /** @param {string} name @param {ArrayBuffer} bytes */
  async #digested(name, bytes) {
    const digest = new Uint8Array(await atWork(crypto.subtle.digest("SHA-256", bytes)));
    if (`sha256-${btoa(String.fromCharCode(...digest))}` !== (await this.#sums)[name]) throw new Fault("damaged", { file: name });
  }
}

/**
 * @typedef {Omit<Parts, "proved">} Unproved
 *
 * @param {Plan} plan
 * @param {Report} report
 * @param {Proofs} proofs
 * @param {Promise<unknown>} engine
 * @returns {Unproved}
 */
function fromServer(plan, report, proofs, engine) {
  const libraryName = plan.road === "ordinary" ? "python_stdlib.zip" : LIBRARY;
  const brought = early?.base === plan.base ? early : undefined;
  early = undefined; // it is large
  proofs.code(plan.base, "python-engine.mjs", engine);
  return {
    interpreter: interpreterFrom(plan, report, proofs, brought),
    library:
      plan.road === "snapshot"
        ? undefined
        : proofs
            .asked(libraryName)
            .then((asked) => fetched(plan.base, libraryName, asked))
            .then((response) => allOf(watched(response, libraryName, report), libraryName))
            .then((bytes) => proofs.of(libraryName, bytes)),
    lateLibrary: () => late(plan, async () => (await fetched(plan.base, LIBRARY, await proofs.asked(LIBRARY))).arrayBuffer()),
    snapshot:
      plan.road === "snapshot"
        ? imageFrom(plan.base, report, brought).then((image) => asImage(proofs.of(IMAGE, image)))
        : undefined,
    lock:
      plan.road === "ordinary"
        ? proofs
            .sealed("pyodide-lock.json")
            .then((asked) => fetched(plan.base, "pyodide-lock.json", asked))
            .then((response) => response.text())
        : undefined,
  };
}

const INTERPRETER = "pyodide.asm.wasm";
const IMAGE = "snapshot.bin";
const LIBRARY = "library.zip";

/**
 * The library, after all: brought, and held against its checksum before anyone reads it.
 * @param {Plan} plan
 * @param {() => Promise<ArrayBuffer>} bring
 */
async function late(plan, bring) {
  const proofs = new Proofs(plan.sums);
  const library = proofs.of(LIBRARY, await bring());
  await proofs.all();
  return library;
}

/**
 * The memory image, unpacked. The service worker keeps it unpacked; on the line it travels packed, and is unpacked while it
 * comes in.
 * @param {string} base
 * @param {Report} report
 * @param {Early | undefined} brought
 * @returns {Promise<ArrayBuffer>}
 */
async function imageFrom(base, report, brought) {
  const image = (await brought?.image) ?? (await (await kept(base, IMAGE))?.arrayBuffer());
  if (image) return isPacked(image) ? atWork(unpacked(streamOf(new Uint8Array(image)), IMAGE)) : image;
  return unpacked(watched(await fetched(base, IMAGE), IMAGE, report), IMAGE);
}

/**
 * The interpreter as this device keeps it, compiled, and its bytes, to be held against their checksum.
 * @param {string} base
 * @returns {Interpreter}
 */
function ownInterpreter(base) {
  const bytes = kept(base, INTERPRETER)
    .then((response) => response ?? fetched(base, INTERPRETER))
    .then((response) => response.arrayBuffer());
  const module = compiled(bytes.then((wasm) => atWork(WebAssembly.compile(wasm))));
  for (const part of [bytes, module]) part.catch(() => undefined); // told where it is used
  return { bytes, module };
}

/**
 * The interpreter from the network, compiled while it comes in, and its bytes.
 * @param {string} base
 * @param {Report} report
 * @param {Line} [line]
 * @param {Promise<RequestInit>} [asked]
 * @returns {Interpreter}
 */
function fromLine(base, report, line, asked = Promise.resolve({})) {
  const streams = asked.then((init) => fetched(base, INTERPRETER, init)).then((response) => watched(response, INTERPRETER, report, line).tee());
  const bytes = streams.then(([one]) => allOf(one, INTERPRETER));
  const module = compiled(
    streams.then(([_, other]) => WebAssembly.compileStreaming(new Response(other, { headers: { "content-type": "application/wasm" } }))),
  );
  for (const part of [bytes, module]) part.catch(() => line?.end()); // told where it is used
  return { bytes, module };
}

/**
 * @param {Plan} plan
 * @param {Report} report
 * @param {Proofs} proofs
 * @param {Early | undefined} brought
 * @returns {Promise<WebAssembly.Module>}
 */
async function interpreterFrom(plan, report, proofs, brought) {
  const ours = () => (plan.road === "snapshot" ? ownInterpreter(plan.base) : fromLine(plan.base, report, undefined, proofs.asked(INTERPRETER)));
  const { bytes, module } = brought?.interpreter ?? ours();
  proofs.of(INTERPRETER, await bytes);
  return atWork(module);
}

/** @param {Promise<WebAssembly.Module>} module */
async function compiled(module) {
  try {
    return await module;
  } catch (error) {
    throw error instanceof WebAssembly.CompileError ? new Fault("damaged", { file: INTERPRETER }) : error;
  }
}

/**
 * @param {Plan} plan
 * @param {PackedParts} packed
 * @param {Proofs} proofs
 * @returns {Unproved}
 */
function fromPack(plan, packed, proofs) {
  const { road } = plan;
  /** @param {string} text @param {string} name */
  const bytes = async (text, name) => proofs.of(name, await atWork(unpacked(streamOf(fromBase64(text, name)), name)));
  return {
    interpreter: bytes(packed.wasm, INTERPRETER).then((wasm) => compiled(atWork(WebAssembly.compile(wasm)))),
    library: road === "snapshot" ? undefined : bytes(packed.library ?? "", LIBRARY),
    lateLibrary: () =>
      late(plan, async () => {
        const text = packed.library ?? (await plan.wantLibrary?.()) ?? "";
        return unpacked(streamOf(fromBase64(text, LIBRARY)), LIBRARY);
      }),
    snapshot: road === "snapshot" ? bytes(packed.snapshot, IMAGE).then(asImage) : undefined,
    lock: undefined,
  };
}

/**
 * Bytes from base64, by the browser's own decoder where it has one.
 * @param {string} text
 * @param {string} name
 * @returns {Uint8Array<ArrayBuffer>}
 */
function fromBase64(text, name) {
  try {
    return decoded(text);
  } catch {
    throw new Fault("damaged", { file: name });
  }
}

/** @param {string} text @returns {Uint8Array<ArrayBuffer>} */
function decoded(text) {
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
 * Unpacks gzip; a damaged file ends here (gzip carries a checksum).
 * @param {ReadableStream<Uint8Array<ArrayBuffer>>} stream
 * @param {string} name
 * @returns {Promise<ArrayBuffer>}
 */
async function unpacked(stream, name) {
  try {
    return await new Response(stream.pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
  } catch {
    throw new Fault("damaged", { file: name });
  }
}

/**
 * All of a stream, or the fault that it ended early.
 * @param {ReadableStream<Uint8Array<ArrayBuffer>>} stream
 * @param {string} name
 * @returns {Promise<ArrayBuffer>}
 */
async function allOf(stream, name) {
  try {
    return await new Response(stream).arrayBuffer();
  } catch {
    throw new Fault("cut-short", { file: name });
  }
}

/** @param {ArrayBuffer} kept */
function asImage(kept) {
  const image = readImage(kept);
  if (!image) throw new Fault("damaged", { file: IMAGE });
  return image;
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
 * @param {Line} [line]
 * @returns {ReadableStream<Uint8Array<ArrayBuffer>>}
 */
function watched(response, stage, report, line) {
  if (!response.body) throw new Fault("no-content", { file: stage });
  let last = 0;
  return response.body.pipeThrough(
    new TransformStream({
      transform(chunk, controller) {
        const now = performance.now();
        line?.saw(chunk.byteLength);
        if (now - last > 250) {
          last = now;
          report({ kind: "progress", stage });
        }
        controller.enqueue(chunk);
      },
      flush: () => line?.end(),
    }),
  );
}

/**
 * @param {string} base
 * @param {string} file
 * @param {RequestInit} [asked]  with `integrity`, what the browser is to check before it gives anything
 * @returns {Promise<Response>}
 */
async function fetched(base, file, asked = {}) {
  let response;
  try {
    response = await fetch(base + file, { credentials: "same-origin", ...asked });
  } catch {
    // A browser does not say whether the line or the checksum was at fault.
    throw new Fault(asked.integrity ? "not-fetched-whole" : "not-fetched", { file });
  }
  if (!response.ok) throw new Fault("server-said", { file, status: response.status });
  return response;
}
