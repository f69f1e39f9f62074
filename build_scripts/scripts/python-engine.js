// @ts-check
/**
 * Starts Python in WebAssembly by one of three roads and hands back a function that answers worksheets.
 *
 *   snapshot  memory image with calc already imported and warmed (repeat visits, and the folder opened from disk)
 *   library   trimmed, compiled standard library with calc and the tables in it (first visit)
 *   ordinary  the standard library as published, calc installed from its wheel through a lock file
 *
 * The parts come ready (python-parts.js); the runtime's own requests for them are answered from memory, so the same
 * engine runs where nothing can be fetched (file://).
 */
import { loadPyodide, version } from "pyodide";
import createPyodideModule from "pyodide/pyodide.asm.mjs";
import { restore } from "./memory-image.mjs";
import { Fault, reached } from "./python-parts.js";

/** @typedef {{answer: (request: string) => Promise<string>}} Engine */

/**
 * An archive with nothing in it, which stands for the library beside the memory image: all that the examples need is in
 * the image. A question that needs more (a table that no example asks) ends in an EOFError of Python's own reader of
 * archives, which nothing in calc catches; then the library is brought, and the question asked again.
 */
const NO_LIBRARY = new Uint8Array([0x50, 0x4b, 5, 6, ...Array(18).fill(0)]).buffer;
const LIBRARY_IS_WANTED = /\bEOFError\b/;

/** A lock file that knows no package (the snapshot and library roads install none), with the release's own description. */
const NO_PACKAGES = JSON.stringify({ info: { ...LINKWRIGHT_RELEASE, version }, packages: {} });

/**
 * Lets the runtime's own requests be answered from parts already at hand. Gives back the undoing.
 * @param {string} interpreterAddress
 * @param {WebAssembly.Module} interpreter
 * @param {string} libraryAddress
 * @param {ArrayBuffer} library
 * @returns {() => void}
 */
function answerFrom(interpreterAddress, interpreter, libraryAddress, library) {
  const { fetch: realFetch } = globalThis;
  const realInstantiate = WebAssembly.instantiateStreaming;
  const stand_in = new Response();
  globalThis.fetch = (input, init) => {
    const address = input instanceof Request ? input.url : String(input);
    if (address === interpreterAddress) return Promise.resolve(stand_in);
    if (address === libraryAddress) return Promise.resolve(new Response(library));
    return realFetch.call(globalThis, input, init);
  };
  WebAssembly.instantiateStreaming = async (source, imports) =>
    (await source) === stand_in
      ? { module: interpreter, instance: await WebAssembly.instantiate(interpreter, imports) }
      : realInstantiate.call(WebAssembly, source, imports);
  return () => {
    globalThis.fetch = realFetch;
    WebAssembly.instantiateStreaming = realInstantiate;
  };
}

/**
 * @param {import("./python-parts.js").Plan} plan
 * @param {import("./python-parts.js").Parts} parts
 * @param {import("./python-parts.js").Report} report
 * @returns {Promise<Engine>}
 */
export async function startPython(plan, parts, report) {
  /** @param {string} stage */
  const tell = (stage) => {
    reached(stage);
    report({ kind: "progress", stage });
  };
  tell("engine");
  if (plan.packed && plan.road === "ordinary") throw new Fault("no-such-road");

  const image = await parts.snapshot;
  if (image) tell("image");
  const library = (await parts.library) ?? NO_LIBRARY;
  const interpreter = await parts.interpreter;
  tell("interpreter");
  const lock = await parts.lock;
  tell("parts");

  const indexURL = plan.packed ? "file:///linkwright/" : plan.base;
  const libraryAddress = `${indexURL}library`;
  const undo = answerFrom(`${indexURL}pyodide.asm.wasm`, interpreter, libraryAddress, library);
  try {
    const python = await loadPyodide({
      indexURL,
      stdLibURL: libraryAddress,
      env: { PYTHONHASHSEED: "0", HOME: "/home/reader" },
      stdout: () => undefined,
      stderr: () => undefined,
      ...(plan.road === "ordinary"
        ? { packages: ["linkwright"], packageBaseUrl: plan.base, lockFileContents: lock ?? "" }
        : { lockFileContents: NO_PACKAGES }),
      createPyodideModule: image ? withImage(image) : createPyodideModule,
      ...(image ? { _loadSnapshot: image.head } : {}),
    });
    tell("python");
    const answer = python.runPython(
      "import sys\n" +
        "if 'random' in sys.modules:\n" +
        "    sys.modules['random'].seed()  # the memory image holds one state for every reader\n" +
        "from build_scripts.answer_view import view_json\n" +
        "view_json\n",
    );
    tell("calc");
    await parts.proved;
    tell("proved");
    return { answer: parts.library === undefined ? bringingLibrary(python, answer, parts.lateLibrary) : async (request) => String(answer(request)) };
  } catch (error) {
    await parts.proved; // that a part is damaged says more than what came of it
    throw error;
  } finally {
    undo();
  }
}

/**
 * Makes the interpreter and puts the memory image into it before the loader goes on; to the loader the image is then its
 * head alone.
 * @param {import("./memory-image.mjs").MemoryImage} image
 * @returns {typeof createPyodideModule}
 */
function withImage(image) {
  return async (/** @type {any} */ settings) => {
    const module = await createPyodideModule(settings);
    reached("instance");
    restore(image, module.HEAPU8);
    reached("memory");
    return module;
  };
}

/**
 * Asks, and where the memory image lacks what a question needs, brings the library and asks again.
 * @param {import("pyodide").PyodideAPI} python
 * @param {(request: string) => unknown} ask
 * @param {() => Promise<ArrayBuffer>} bring
 * @returns {(request: string) => Promise<string>}
 */
function bringingLibrary(python, ask, bring) {
  let isThere = false;
  return async (request) => {
    try {
      return String(ask(request));
    } catch (error) {
      if (isThere || !(error instanceof Error && LIBRARY_IS_WANTED.test(error.message))) throw error;
    }
    const library = new Uint8Array(await bring());
    python.FS.writeFile(String(python.runPython("next(path for path in sys.path if path.endswith('.zip'))")), library);
    isThere = true;
    return String(ask(request));
  };
}
