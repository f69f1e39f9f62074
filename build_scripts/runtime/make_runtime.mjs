// @ts-check
/**
 * Makes the Python parts of the browser runtime with Node: the trimmed library and the memory image.
 *
 *   node build_scripts/runtime/make_runtime.mjs ROOT OUT SOURCES CUT
 *
 * Reads SOURCES/calc, SOURCES/build_scripts and SOURCES/tables, writes OUT/library.zip and OUT/snapshot.bin (gzip), and
 * proves the image: put back as a page does, without the library, it must answer as the library did, and what it lacks must
 * be there once the library is. CUT is the package of Pyodide that
 * cut_runtime.mjs made: the library is packed by Pyodide as published, the image is made and proved by the one that the page
 * runs, and its answers are held against those of the published one.
 */
import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { loadPyodide } from "pyodide";
import { TAKEN, packedImage, readImage, restore, wake } from "../scripts/memory-image.mjs";

/** A heap that grew past its first size cannot be restored; the image is that heap (FIRST_PAGES of cut_runtime.mjs) and a header under 64 KiB. */
const LARGEST_IMAGE = 640 * 65_536 + 65_535;

const here = dirname(fileURLToPath(import.meta.url));
const [root, out, sources, cut] = process.argv.slice(2);
if (!root || !out || !sources || !cut) throw new Error("usage: make_runtime.mjs ROOT OUT SOURCES CUT");
mkdirSync(out, { recursive: true });

// The runtime's own stack is one unreadable line; what Python said is what helps.
process.on("uncaughtException", (error) => {
  console.error(error.message);
  process.exit(1);
});

const environment = { PYTHONHASHSEED: "0", HOME: "/home/reader" };

/**
 * Copies a folder of the project into Pyodide's file system.
 * @param {import("pyodide").PyodideAPI} python
 * @param {string} from
 * @param {string} to
 */
function copyIn(python, from, to) {
  python.FS.mkdirTree(to);
  for (const entry of readdirSync(from, { withFileTypes: true })) {
    if (entry.name === "__pycache__") continue;
    if (entry.isDirectory()) copyIn(python, join(from, entry.name), `${to}/${entry.name}`);
    else if (/\.(py|csv|json)$/.test(entry.name)) {
      python.FS.writeFile(`${to}/${entry.name}`, readFileSync(join(from, entry.name)));
    }
  }
}

// Code that Python compiles here keeps its line numbers and not its columns: packed, they are a quarter of the library.
const stock = await loadPyodide({ env: { ...environment, PYTHONNODEBUGRANGES: "1" } });
for (const folder of ["calc", "build_scripts", "tables"]) copyIn(stock, join(sources, folder), `/src/${folder}`);
stock.runPython(readFileSync(join(here, "trim_library.py"), "utf8"), { filename: "trim_library.py" });
const library = stock.globals.get("library").toJs();
const libraryFile = join(out, "library.zip");
writeFileSync(libraryFile, library);

const lockFileContents = {
  info: { ...JSON.parse(readFileSync(join(root, "node_modules/pyodide/pyodide-lock.json"), "utf8")).info, version: stock.version },
  packages: {},
};

/** What a way of starting is asked: every example in both unit systems. */
const REQUESTS = `
import json
from calc.answering import declared_names, worksheet

json.dumps([
    json.dumps({"worksheet": name, "inputs": worksheet(name).example, "units": units, "root": "../"})
    for name in declared_names()
    for units in ("us", "si")
])
`;
/** Each answer leaves Python before the next is made: all of them at once would not fit. */
const WARM = `
import gc
from build_scripts.answer_view import view_json

def answer_of(request):
    answer = view_json(request)
    gc.collect()
    return answer

answer_of
`;
const FORGET = "del answer_of, view_json, worksheet, declared_names, json\ngc.collect()\ndel gc";

/**
 * Answers what a way of starting is asked.
 * @param {import("pyodide").PyodideAPI} python
 * @returns {{asked: string[], answers: string[]}}
 */
function answersOf(python) {
  const asked = JSON.parse(python.runPython(REQUESTS));
  const answer = python.runPython(WARM);
  const answers = asked.map((/** @type {string} */ request) => String(answer(request)));
  answer.destroy();
  python.runPython(FORGET);
  return { asked, answers };
}

/** What a page takes from the image: its questions go to what `begin` gives back, and the library goes to where Python looks for it. */
const LEFT_FOR_PAGES = `
import sys
import _pyodide

def begin():
    import sys
    from build_scripts.answer_view import view_json
    if "random" in sys.modules:
        sys.modules["random"].seed()  # the memory image holds one state for every reader
    return view_json

setattr(_pyodide, "${TAKEN.begin}", begin)
setattr(_pyodide, "${TAKEN.library}", next(path for path in sys.path if path.endswith(".zip")))
del begin, _pyodide, sys
`;

/** What no example needs: every table, and a module that is in the library and in no image. */
const WANTED = `
import stringprep
from calc.tables import table, table_names
for name in table_names():
    table(name)
`;

/**
 * What is not in the image must be missed in the way that python-engine.js knows, and be there once the library is.
 * @param {any} module
 * @param {string} place  where Python looks for its library
 */
function proveLateLibrary(module, place) {
  const [missing, missed] = module.API.rawRun(WANTED);
  if (missing === 0 || !/\bEOFError\b/.test(missed)) throw new Error(`without its library Python misses: ${missed}`);
  module.FS.writeFile(place, library);
  const [failed, said] = module.API.rawRun(WANTED);
  if (failed !== 0) throw new Error(`with its library Python still misses: ${said}`);
}

/**
 * The memory of the cut interpreter before it begins, as a page finds it that puts the image back.
 * @returns {Promise<Uint8Array>}
 */
async function freshMemory() {
  /** @type {Uint8Array | undefined} */
  let memory;
  const stopping = short.loadPyodide({
    stdLibURL: libraryFile,
    lockFileContents,
    env: environment,
    _loadSnapshot: new Uint8Array(4),
    createPyodideModule: async (/** @type {unknown} */ settings) => {
      memory = (await createPyodideModule(settings)).HEAPU8.slice();
      throw new Error("enough was seen");
    },
  });
  await stopping.catch(() => undefined);
  if (!memory) throw new Error("the cut interpreter does not come up");
  return memory;
}

/** @type {typeof import("pyodide")} */
const short = await import(pathToFileURL(join(cut, "pyodide.mjs")).href);
const { answers: published } = answersOf(stock);
const warm = await short.loadPyodide({
  stdLibURL: libraryFile,
  lockFileContents,
  env: environment,
  _makeSnapshot: true,
});
const { asked, answers } = answersOf(warm);
if (JSON.stringify(answers) !== JSON.stringify(published)) throw new Error("the cut interpreter answers differently from the published one");
warm.runPython(LEFT_FOR_PAGES);
const image = warm.makeMemorySnapshot();
if (image.length > LARGEST_IMAGE) {
  throw new Error(`the memory image is ${image.length} bytes; more than ${LARGEST_IMAGE} cannot be restored`);
}
const { default: createPyodideModule } = await import(pathToFileURL(join(cut, "pyodide.asm.mjs")).href);
const packed = packedImage(image, await freshMemory());
writeFileSync(join(out, "snapshot.bin"), gzipSync(packed, { level: 9 }));

// As on the page: the image is put straight into the memory, and beside it the library is an archive with nothing in it.
const nothing = join(out, "nothing.zip");
writeFileSync(nothing, Buffer.concat([Buffer.from("PK\x05\x06"), Buffer.alloc(18)]));
const kept = readImage(packed.buffer);
if (!kept) throw new Error("the memory image cannot be read back");
/** @type {any} */
let woken;
const left = new Error("the loader is left");
const leaving = short.loadPyodide({
  stdLibURL: nothing,
  lockFileContents,
  env: environment,
  _loadSnapshot: new Uint8Array(4),
  createPyodideModule: async (/** @type {unknown} */ settings) => {
    woken = await createPyodideModule(settings);
    restore(kept, woken.HEAPU8);
    const wrong = woken.HEAPU8.findIndex((/** @type {number} */ byte, /** @type {number} */ i) => byte !== image[kept.head.length + i]);
    if (wrong >= 0) throw new Error(`the memory image is put back wrongly from byte ${wrong} on`);
    throw left;
  },
});
await leaving.catch((error) => {
  if (error !== left) throw error;
});
const begun = wake(woken, kept.head);
const again = asked.map((request) => String(begun.ask(request)));
if (JSON.stringify(again) !== JSON.stringify(answers)) throw new Error("the memory image answers differently from the library");
rmSync(nothing);
proveLateLibrary(woken, begun.library);
console.log(JSON.stringify({ library: library.length, image: image.length, answers: answers.length }));
process.exit(0);
