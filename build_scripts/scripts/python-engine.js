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
import { restore, wake } from "./memory-image.mjs";
import { Fault, reached } from "./python-parts.js";

/** @typedef {{answer: (request: string) => Promise<string>}} Engine */

/**
 * An archive with nothing in it, which stands for the library beside the memory image: all that the examples need is in
 * the image. A question that needs more (a table that no example asks) ends in an EOFError of Python's own reader of
 * archives, which nothing in calc catches; then the library is brought, and the question asked again.
 */
const NO_LIBRARY = new Uint8Array([0x50, 0x4b, 5, 6, ...Array(18).fill(0)]).buffer;
const LIBRARY_IS_WANTED = /\bEOFError\b/;

/** To the loader, which does not begin Python where there is one; the image is put back by ourselves. */
const NO_SNAPSHOT = new Uint8Array(4);

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

  const interpreter = await parts.interpreter;
  tell("interpreter");
  const indexURL = plan.packed ? "file:///linkwright/" : plan.base;
  const settings = {
    indexURL,
    stdLibURL: `${indexURL}library`,
    env: { PYTHONHASHSEED: "0", HOME: "/home/reader" },
    stdout: () => undefined,
    stderr: () => undefined,
  };
  const undo = answerFrom(`${indexURL}pyodide.asm.wasm`, interpreter, settings.stdLibURL, (await parts.library) ?? NO_LIBRARY);
  try {
    const answer = parts.snapshot ? await fromImage(settings, parts.snapshot, parts.lateLibrary, tell) : await fromLibrary(settings, plan.road, await parts.lock, tell);
    await parts.proved;
    tell("proved");
    return { answer };
  } catch (error) {
    await parts.proved; // that a part is damaged says more than what came of it
    throw error;
  } finally {
    undo();
  }
}

/**
 * @typedef {{indexURL: string, stdLibURL: string, env: Record<string, string>, stdout: () => void, stderr: () => void}} Settings
 * @typedef {(request: string) => Promise<string>} Answer
 *
 * The start by Pyodide's own loader: Python begins, and imports calc.
 * @param {Settings} settings
 * @param {import("./python-parts.js").Road} road
 * @param {string | undefined} lock
 * @param {(stage: string) => void} tell
 * @returns {Promise<Answer>}
 */
async function fromLibrary(settings, road, lock, tell) {
  const python = await loadPyodide({
    ...settings,
    ...(road === "ordinary"
      ? { packages: ["linkwright"], packageBaseUrl: settings.indexURL, lockFileContents: lock ?? "" }
      : { lockFileContents: NO_PACKAGES }),
    createPyodideModule,
  });
  tell("python");
  const answer = python.runPython("from build_scripts.answer_view import view_json\nview_json");
  tell("calc");
  return async (request) => String(answer(request));
}

/**
 * The start from the memory image: the loader makes the interpreter and is then left, the image is put into its memory and
 * wakes. The image may come while the interpreter is made.
 * @param {Settings} settings
 * @param {Promise<import("./memory-image.mjs").MemoryImage>} coming
 * @param {() => Promise<ArrayBuffer>} bring  brings the library
 * @param {(stage: string) => void} tell
 * @returns {Promise<Answer>}
 */
async function fromImage(settings, coming, bring, tell) {
  /** @type {Answer | undefined} */
  let answer;
  const left = new Error("the loader is left");
  const createAndWake = async (/** @type {any} */ made) => {
    const module = await createPyodideModule(made);
    tell("instance");
    const image = await coming;
    restore(image, module.HEAPU8);
    tell("memory");
    const { ask, library } = wake(module, image.head);
    tell("python");
    answer = bringingLibrary(ask, async () => module.FS.writeFile(library, new Uint8Array(await bring())));
    throw left;
  };
  try {
    await loadPyodide({ ...settings, lockFileContents: NO_PACKAGES, createPyodideModule: createAndWake, _loadSnapshot: NO_SNAPSHOT });
  } catch (error) {
    if (error !== left) throw error;
  }
  if (!answer) throw new Error("the interpreter was not made");
  return answer;
}

/**
 * Asks, and where the memory image lacks what a question needs, brings the library and asks again.
 * @param {(request: string) => unknown} ask
 * @param {() => Promise<void>} bring
 * @returns {Answer}
 */
function bringingLibrary(ask, bring) {
  let isThere = false;
  return async (request) => {
    try {
      return String(ask(request));
    } catch (error) {
      if (isThere || !(error instanceof Error && LIBRARY_IS_WANTED.test(error.message))) throw error;
    }
    await bring();
    isThere = true;
    return String(ask(request));
  };
}
