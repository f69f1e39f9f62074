// @ts-check
/** Packs style sheets and classic scripts in place: node build_scripts/minify.mjs FILE... */
import { readFileSync, writeFileSync } from "node:fs";
import { transform } from "esbuild";
import { oldestBrowsers } from "./browsers.mjs";

/** It tells a browser that is too old from one that is not, so it must run in both. */
const RUNS_EVERYWHERE = "early.js";

for (const file of process.argv.slice(2)) {
  const loader = file.endsWith(".css") ? "css" : "js";
  const packed = await transform(readFileSync(file, "utf8"), { loader, minify: true, legalComments: "none", target: file.endsWith(RUNS_EVERYWHERE) ? ["es2015"] : oldestBrowsers() });
  writeFileSync(file, packed.code);
}
