// @ts-check
/**
 * Bundles the scripts that run Python: a module worker for served pages, a classic script for the folder on disk.
 *
 *   node build_scripts/runtime/bundle.mjs SCRIPTS OUT CUT
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { oldestBrowsers } from "../browsers.mjs";

const [scripts = "", out = "", cut = ""] = process.argv.slice(2);
if (!scripts || !out || !cut) throw new Error("usage: bundle.mjs SCRIPTS OUT CUT");

const release = JSON.parse(readFileSync(join(process.cwd(), "node_modules/pyodide/pyodide-lock.json"), "utf8")).info;

/** @type {import("esbuild").BuildOptions} */
const common = {
  bundle: true,
  minify: true,
  legalComments: "none",
  logLevel: "error",
  platform: "browser",
  target: oldestBrowsers(),
  external: ["node:*", "ws"],
  alias: { "pyodide/pyodide.asm.mjs": join(cut, "pyodide.asm.mjs") },
  define: { LINKWRIGHT_RELEASE: JSON.stringify(release) },
  nodePaths: [join(process.cwd(), "node_modules")],
};

/**
 * The glue is one function of half a megabyte, called once. In parentheses a browser compiles it with the file, and keeps the
 * result with it for the next visit; else it is read through, and read again when it is called.
 * @param {string} code
 * @returns {string}
 */
function compiledAtOnce(code) {
  const [head, name = ""] = /async function ([\w$]+)\(moduleArg=\{\}\)\{/.exec(code) ?? [""];
  const last = "moduleRtn}";
  const from = code.indexOf(head);
  const to = code.lastIndexOf(last) + last.length;
  if (!name || to < from) throw new Error("the glue is written another way now");
  const whole = code.slice(from, to).replace(`async function ${name}(`, "async function(");
  return `${code.slice(0, from)}var ${name}=(${whole});${code.slice(to)}`;
}

for (const [source, target] of [["python-worker", "python-worker"], ["python-page", "python-engine"]]) {
  await build({ ...common, entryPoints: [join(scripts, `${source}.js`)], format: "esm", outfile: join(out, `${target}.mjs`) });
}
const module = join(out, "python-engine.mjs");
writeFileSync(module, compiledAtOnce(readFileSync(module, "utf8")));

const disk = await build({
  ...common,
  entryPoints: [join(scripts, "python-disk.js")],
  format: "iife",
  globalName: "linkwrightEngine",
  define: { ...common.define, "import.meta.url": "self.location.href" },
  write: false,
});
const engine = disk.outputFiles?.[0]?.text;
if (!engine) throw new Error("the bundler gave no disk engine");
mkdirSync(join(out, "disk"), { recursive: true });
// One function whose text can be moved into a worker; it hides importScripts, which the runtime takes for an old worker.
writeFileSync(
  join(out, "disk", "engine.js"),
  `globalThis.linkwrightMakeEngine=function(){if(self.importScripts)self.importScripts=undefined;\n${engine}\nreturn linkwrightEngine};\n`,
);

/**
 * A classic script that hands over one part as base64.
 * @param {string} name
 * @param {Uint8Array} bytes
 */
function pack(name, bytes) {
  const text = Buffer.from(bytes).toString("base64");
  writeFileSync(join(out, "disk", `${name}.js`), `linkwrightDiskPart(${JSON.stringify(name)},"${text}");\n`);
}
pack("wasm", gzipSync(readFileSync(join(out, "pyodide.asm.wasm")), { level: 9 }));
pack("library", gzipSync(readFileSync(join(out, "library.zip")), { level: 9 }));
pack("snapshot", readFileSync(join(out, "snapshot.bin")));
