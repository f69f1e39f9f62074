// @ts-check
/** Packs the scripts of the kit into one classic script: node build_scripts/pack_kit.mjs SCRIPTS OUT */
import { join } from "node:path";
import { build } from "esbuild";
import { oldestBrowsers } from "./browsers.mjs";

const [scripts = "", out = ""] = process.argv.slice(2);
if (!scripts || !out) throw new Error("usage: pack_kit.mjs SCRIPTS OUT");

await build({
  entryPoints: [join(scripts, "kit.mjs")],
  outfile: out,
  bundle: true,
  minify: true,
  format: "iife",
  target: oldestBrowsers(),
  legalComments: "none",
  logLevel: "error",
  nodePaths: [join(process.cwd(), "node_modules")],
});
