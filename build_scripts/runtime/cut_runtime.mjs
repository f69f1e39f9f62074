// @ts-check
/**
 * Cuts what no page uses out of the interpreter and its glue, as Pyodide publishes them: OUT becomes a package of Pyodide
 * with a smaller `pyodide.asm.wasm` and `pyodide.asm.mjs`, all else as it was.
 *
 *   node build_scripts/runtime/cut_runtime.mjs PYODIDE BINARYEN OUT
 *
 * The published interpreter exports 8,560 things, so that compiled packages can be linked to it while it runs; no page of
 * this book loads one. Kept is what either loader script names, by itself or after a dot, and the start of Python; what
 * hangs on nothing kept falls away (binaryen's wasm-metadce). The glue then loses the variables and the imports that nobody
 * asks for. make_runtime.mjs proves the result: it makes the memory image with it, restores it, and compares all answers.
 *
 * The memory begins larger than published: one that grew while the image was made cannot be restored.
 */
import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { minify } from "terser";

const [pyodide = "", binaryen = "", out = ""] = process.argv.slice(2);
if (!pyodide || !binaryen || !out) throw new Error("usage: cut_runtime.mjs PYODIDE BINARYEN OUT");

const WASM = "pyodide.asm.wasm";
const GLUE = "pyodide.asm.mjs";
/** What of the package is taken as it is. */
const AS_THEY_ARE = ["pyodide.mjs", "package.json", "pyodide-lock.json", "python_stdlib.zip"];
/** What the interpreter may use of WebAssembly; all features at once would write forms that browsers do not know. */
const FEATURES = [
  ...["bulk-memory", "bulk-memory-opt", "sign-ext", "mutable-globals", "nontrapping-float-to-int"],
  ...["reference-types", "exception-handling", "multivalue"],
];
/** Called by the loader under a name that it puts together. */
const NAMED_NOWHERE = ["__main_argc_argv"];
/** The glue is of one release: fewer exports or imports found in it than this mean that it is written another way now. */
const FEWEST_ASSIGNED = 4000;
const FEWEST_IMPORTS = 1000;

const NAME = /[A-Za-z_$][\w$]*/g;
const AFTER_A_DOT = /\.([A-Za-z_$][\w$]*)/g;
/** `_malloc=Module["_malloc"]=wasmExports["malloc"];` */
const ASSIGNED = /([\w$]+)=Module\["([^"]+)"\]=wasmExports\["([^"]+)"\](?:\.value>>>0)?;/g;
/** `Module["_x"]=_x;` */
const PUBLISHED = /Module\["(_[\w$]+)"\]=[\w$]+;/g;
const IMPORTS = "wasmImports={";
/** Size of the memory at the start [pages of 64 KiB]: 40 MiB, published are 30. Empty pages are left out of the image. */
const FIRST_PAGES = 640;
const MEMORY_SECTION = 5;

/** @param {string} name */
const text = (name) => readFileSync(join(pyodide, name), "utf8");

const glue = text(GLUE);
const inLoader = new Set(text("pyodide.mjs").match(NAME));
const dotted = new Set([...glue.matchAll(AFTER_A_DOT)].map(([, name = ""]) => name));
/** @type {Map<string, number>} */
const times = new Map();
for (const [name] of glue.matchAll(NAME)) times.set(name, (times.get(name) ?? 0) + 1);

/**
 * The exports that the glue takes and never uses.
 * @returns {Set<string>}
 */
function takenForNothing() {
  const unused = new Set();
  const assigned = [...glue.matchAll(ASSIGNED)];
  if (assigned.length < FEWEST_ASSIGNED) throw new Error(`the glue takes ${assigned.length} exports in the known way`);
  for (const [, variable = "", key = "", name = ""] of assigned) {
    const inItself = (variable === key ? 2 : 1) + (name === variable ? 1 : 0);
    const elsewhere = (times.get(variable) ?? 0) - inItself - 1; // once where it is declared
    if (elsewhere <= 0 && !inLoader.has(variable) && !dotted.has(variable) && !dotted.has(name)) unused.add(name);
  }
  return unused;
}

/**
 * The exports that stay.
 * @returns {string[]}
 */
function kept() {
  const unused = takenForNothing();
  const all = WebAssembly.Module.exports(new WebAssembly.Module(readFileSync(join(pyodide, WASM))));
  return all
    .filter(({ name, kind }) => {
      if (NAMED_NOWHERE.includes(name) || kind !== "function" && kind !== "global") return true;
      return !unused.has(name) && (times.has(name) || times.has(`_${name}`));
    })
    .map(({ name }) => name);
}

/** @param {string[]} names */
function cutInterpreter(names) {
  const graph = [
    { name: "outside", root: true, reaches: names.map((name) => `export ${name}`) },
    ...names.map((name) => ({ name: `export ${name}`, export: name })),
  ];
  const file = join(out, "kept.json");
  writeFileSync(file, JSON.stringify(graph));
  const tool = [join(binaryen, "bin", "wasm-metadce"), join(pyodide, WASM), "-f", file, "-o", join(out, WASM)];
  const done = spawnSync(process.execPath, [...tool, ...FEATURES.map((feature) => `--enable-${feature}`)], { encoding: "utf8", maxBuffer: 2 ** 28 });
  if (done.status !== 0) throw new Error(`wasm-metadce failed: ${done.stderr.slice(-1000)}`);
}

/**
 * A number of a WebAssembly file (LEB128), and where the next begins.
 * @param {Uint8Array} bytes
 * @param {number} at
 * @returns {[number, number]}
 */
function numberAt(bytes, at) {
  let value = 0;
  for (let shift = 0; ; shift += 7) {
    const byte = bytes[at] ?? 0;
    value += (byte & 127) * 2 ** shift;
    at += 1;
    if (byte < 128) return [value, at];
  }
}

/**
 * The same written.
 * @param {number} value
 * @returns {number[]}
 */
function asNumber(value) {
  return value < 128 ? [value] : [(value % 128) + 128, ...asNumber(Math.floor(value / 128))];
}

/**
 * The interpreter with a memory of FIRST_PAGES at the start.
 * @param {Uint8Array} wasm
 * @returns {Buffer}
 */
function withRoom(wasm) {
  for (let at = 8; at < wasm.length; ) {
    const [size, inside] = numberAt(wasm, at + 1);
    if (wasm[at] !== MEMORY_SECTION) {
      at = inside + size;
      continue;
    }
    // One memory: its count, its flags, its least and, by the first flag, its greatest size.
    const [least, after] = numberAt(wasm, inside + 2);
    if (wasm[inside] !== 1 || least >= FIRST_PAGES) throw new Error(`the interpreter begins with ${least} pages of memory`);
    const section = [...wasm.subarray(inside, inside + 2), ...asNumber(FIRST_PAGES), ...wasm.subarray(after, inside + size)];
    const head = [MEMORY_SECTION, ...asNumber(section.length)];
    return Buffer.concat([wasm.subarray(0, at), Buffer.from([...head, ...section]), wasm.subarray(inside + size)]);
  }
  throw new Error("the interpreter has no memory of its own");
}

/**
 * The glue without what is gone, and without what only that used.
 * @param {Set<string>} names
 * @returns {Promise<string>}
 */
async function cutGlue(names) {
  const taken = glue.replace(ASSIGNED, (whole, _variable, _key, name) => (names.has(name) ? whole : ""));
  const from = taken.indexOf(IMPORTS) + IMPORTS.length;
  const to = taken.indexOf("}", from);
  const given = taken.slice(from, to).split(",");
  if (given.length < FEWEST_IMPORTS) throw new Error(`the glue gives ${given.length} imports in the known way`);
  const asked = new Set(WebAssembly.Module.imports(new WebAssembly.Module(readFileSync(join(out, WASM)))).map(({ name }) => name));
  const used = given.filter((entry) => asked.has((entry.split(":")[0] ?? "").replaceAll('"', "")));
  const short = (taken.slice(0, from) + used.join(",") + taken.slice(to)).replace(PUBLISHED, (whole, name) => (dotted.has(name) || inLoader.has(name) ? whole : ""));
  const made = await minify(short, {
    module: true,
    ecma: 2020,
    compress: { passes: 2, toplevel: true, pure_getters: true },
    mangle: { toplevel: true },
  });
  return made.code ?? "";
}

mkdirSync(out, { recursive: true });
for (const name of AS_THEY_ARE) copyFileSync(join(pyodide, name), join(out, name));
const names = kept();
cutInterpreter(names);
writeFileSync(join(out, WASM), withRoom(readFileSync(join(out, WASM))));
writeFileSync(join(out, GLUE), await cutGlue(new Set(names)));
